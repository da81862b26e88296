package org.ripewood.core.progress;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.ripewood.core.season.GrowingSeason;

/**
 * What a tree has gone through: the load still to be recovered from and the doses of the season.
 *
 * <p>Each work's load falls in a straight line of growth-time from its stress to nothing, as {@link
 * Recovery} tells; what is left adds up. Works after the day asked for are not counted. Common
 * practice, no source.
 *
 * @param works in any order
 * @param latitudeDegrees decides where the growing season begins
 * @param recovery how fast the tree recovers
 */
public record WorkLedger(List<Work> works, double latitudeDegrees, Recovery recovery) {

    /** Stands for "never": longer than any record. */
    public static final int NEVER_DAYS = 36_600;

    public WorkLedger {
        works = List.copyOf(works);
    }

    /** A ledger that counts recovery in days of the calendar. */
    public WorkLedger(List<Work> works, double latitudeDegrees) {
        this(works, latitudeDegrees, Recovery.PLAIN);
    }

    /** The load left on a day; 0 for a tree at rest. Unit: stress, 0 to 10 for one work. */
    public double loadLeft(LocalDate on) {
        double left = 0;
        for (var work : works) {
            if (!work.doneOn().isAfter(on)) {
                left += work.stress() * recovery.shareLeft(work, on);
            }
        }
        return left;
    }

    /**
     * The first day, from a day on, on which no more than this load is left if nothing is done
     * meanwhile; works after {@code from} are left out.
     *
     * @param load in stress units
     * @return empty when the tree never recovers that far, or not within reach
     */
    public Optional<LocalDate> dayWithLoadAtMost(double load, LocalDate from) {
        var done = works.stream().filter(work -> !work.doneOn().isAfter(from)).toList();
        return new LoadDecline(new WorkLedger(done, latitudeDegrees, recovery), from)
                .dayAtMost(load);
    }

    /** Days since the last heavy work, or {@link #NEVER_DAYS}. */
    public int daysSinceHeavy(LocalDate on) {
        long least = NEVER_DAYS;
        for (var work : works) {
            var days = days(work, on);
            if (work.heavy() && days >= 0) {
                least = Math.min(least, days);
            }
        }
        return (int) least;
    }

    /** Number of heavy works in the growing season that holds the day, up to it. */
    public int heavyThisSeason(LocalDate on) {
        var season = GrowingSeason.of(on, latitudeDegrees);
        int heavy = 0;
        for (var work : works) {
            if (work.heavy() && !work.doneOn().isAfter(on) && season.holds(work.doneOn())) {
                heavy++;
            }
        }
        return heavy;
    }

    /** Share taken of foliage or roots in the growing season that holds the day, up to it. */
    public double takenThisSeason(DoseRule.Kind kind, LocalDate on) {
        var season = GrowingSeason.of(on, latitudeDegrees);
        double taken = 0;
        for (var work : works) {
            if (!work.doneOn().isAfter(on) && season.holds(work.doneOn())) {
                taken +=
                        switch (kind) {
                            case FOLIAGE -> work.foliageShare();
                            case ROOT -> work.rootShare();
                        };
            }
        }
        return taken;
    }

    private static long days(Work work, LocalDate on) {
        return ChronoUnit.DAYS.between(work.doneOn(), on);
    }
}
