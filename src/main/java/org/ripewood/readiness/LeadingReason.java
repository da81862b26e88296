package org.ripewood.readiness;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ripewood.core.progress.Opening;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.season.Outlook;

/**
 * The one reason told of a technique that cannot be done today, with its own outlook.
 *
 * <p>Of what holds it the tree's own reasons go first, of these the one that lasts longest (what
 * has no date lasts longest); then plans nobody has made; then techniques that come first. A
 * technique that waits for its turn, and is not the next of styling, is told by its turn unless a
 * reason has a date: until then nobody can say more. Of what is to be measured the first that was
 * asked. A season or a lesson is told by itself.
 */
final class LeadingReason {

    private LeadingReason() {}

    /**
     * The reason told; empty when nothing waits.
     *
     * @param comesNext whether it is the next technique of styling on the tree
     */
    static Optional<Opening.Wait> of(Verdict verdict, Opening opening, boolean comesNext) {
        var truth = verdict == Verdict.MEASURE ? Truth.UNKNOWN : Truth.NO;
        var waits =
                opening.waits().stream()
                        .filter(wait -> wait.reason().truth() == truth)
                        .filter(wait -> !Holds.isToldByVigour(wait.reason(), opening))
                        .toList();
        if (verdict != Verdict.HELD) {
            return ofOthers(verdict, waits);
        }
        var turn = !comesNext && waits.stream().anyMatch(LeadingReason::isTurn);
        return ofHolds(
                turn ? waits.stream().filter(LeadingReason::hasDateOrIsTurn).toList() : waits);
    }

    private static boolean hasDateOrIsTurn(Opening.Wait wait) {
        return isTurn(wait)
                || (Holds.byTheTree(wait.reason()) && wait.outlook() instanceof Outlook.Expected);
    }

    /** Whether it waits for another technique to be done. */
    static boolean isTurn(Opening.Wait wait) {
        return isTurn(wait.reason());
    }

    private static boolean isTurn(Reason reason) {
        return reason.truth() != Truth.YES
                && (reason instanceof Reason.OfOrder || reason instanceof Reason.OfDevelopment);
    }

    private static Optional<Opening.Wait> ofHolds(List<Opening.Wait> waits) {
        return waits.stream()
                .min(
                        Comparator.<Opening.Wait>comparingInt(wait -> rank(wait.reason()))
                                .thenComparing(LeadingReason::end, Comparator.reverseOrder()));
    }

    /** Below 2 it is the tree or a plan, above it only something that comes first. */
    private static int rank(Reason reason) {
        if (Holds.byTheTree(reason)) {
            return 0;
        }
        if (Holds.byItself(reason)) {
            return 1;
        }
        return isTurn(reason) ? 2 : 3;
    }

    /** Only what holds by itself is compared by its end; turns stand as they were asked. */
    private static LocalDate end(Opening.Wait wait) {
        if (!Holds.byTheTree(wait.reason())) {
            return LocalDate.MIN;
        }
        return wait.outlook() instanceof Outlook.Expected expected
                ? expected.likely()
                : LocalDate.MAX;
    }

    private static Optional<Opening.Wait> ofOthers(Verdict verdict, List<Opening.Wait> waits) {
        return waits.stream()
                .min(Comparator.comparing(wait -> !isWhatDecides(verdict, wait.reason())));
    }

    private static boolean isWhatDecides(Verdict verdict, Reason reason) {
        return switch (verdict) {
            case SEASON -> reason instanceof Reason.OfSeason;
            case LESSON -> reason instanceof Reason.OfSkill;
            default -> !(reason instanceof Reason.OfOrder);
        };
    }

    /**
     * The day from which nothing of the tree's own holds it any more, in every second case; empty
     * when one of these reasons has no date, or only its turn holds it.
     */
    static Optional<LocalDate> freeOn(Opening opening) {
        LocalDate last = null;
        for (var wait : opening.waits()) {
            if (!Holds.byTheTree(wait.reason())) {
                continue;
            }
            if (!(wait.outlook() instanceof Outlook.Expected expected)) {
                return Optional.empty();
            }
            if (last == null || expected.likely().isAfter(last)) {
                last = expected.likely();
            }
        }
        return Optional.ofNullable(last);
    }
}
