package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How the load left on a day goes down if the tree is left alone.
 *
 * <p>Every work's part falls in a straight line of growth-time, so their sum is a chain of straight
 * lines that bends where a part ends; the growth-time at which it has come down to a load is exact.
 */
final class LoadDecline {

    /**
     * One work's part.
     *
     * @param lasts growth-time until it is gone
     */
    private record Part(double left, double lasts) {
        double slope() {
            return left / lasts;
        }
    }

    private final WorkLedger ledger;
    private final LocalDate from;
    private final List<Part> parts;

    /**
     * @param ledger holds no work after {@code from}
     */
    LoadDecline(WorkLedger ledger, LocalDate from) {
        this.ledger = ledger;
        this.from = from;
        this.parts = parts(ledger, from);
    }

    private static List<Part> parts(WorkLedger ledger, LocalDate from) {
        var recovery = ledger.recovery();
        var parts = new ArrayList<Part>();
        for (var work : ledger.works()) {
            double share = recovery.shareLeft(work, from);
            double amount = recovery.amountFor(work);
            if (work.stress() * share > 0) {
                parts.add(new Part(work.stress() * share, share * amount / recovery.pace()));
            }
        }
        parts.sort(Comparator.comparingDouble(Part::lasts));
        return parts;
    }

    Optional<LocalDate> dayAtMost(double load) {
        if (ledger.loadLeft(from) <= load) {
            return Optional.of(from);
        }
        var growth = ledger.recovery().time();
        if (!(load >= 0 && growth.meanPerYear() > 0)) {
            return Optional.empty();
        }
        return growth.dayReaching(from, timeAtMost(load)).map(day -> settle(day, load));
    }

    private double timeAtMost(double load) {
        double left = parts.stream().mapToDouble(Part::left).sum();
        double slope = parts.stream().mapToDouble(Part::slope).sum();
        double time = 0;
        for (var part : parts) {
            double ends = left - slope * (part.lasts() - time);
            if (ends <= load) {
                return time + (left - load) / slope;
            }
            left = ends;
            slope -= part.slope();
            time = part.lasts();
        }
        // what rounding has left of the last part is nothing
        return time;
    }

    /** Sums of fractions differ in their last digits: the ledger itself has the last word. */
    private LocalDate settle(LocalDate reached, double load) {
        var before = reached.minusDays(1);
        if (before.isAfter(from) && ledger.loadLeft(before) <= load) {
            return before;
        }
        return ledger.loadLeft(reached) <= load ? reached : reached.plusDays(1);
    }
}
