package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.List;

/**
 * How a technique stands for a tree on a day.
 *
 * @param reasons all of them, met and unmet, in the order they were asked
 */
public record Standing(String technique, LocalDate on, Verdict verdict, List<Reason> reasons) {

    /** The reasons that keep it from being READY. */
    public List<Reason> against() {
        return reasons.stream().filter(reason -> reason.truth() != Truth.YES).toList();
    }

    /** Whether its season is known to be closed; a season nobody can tell is not known to be. */
    public boolean outOfSeason() {
        return reasons.stream()
                .anyMatch(
                        reason -> reason instanceof Reason.OfSeason && reason.truth() == Truth.NO);
    }

    /** How near it is as a whole: the mean over its reasons, 1 when there are none. */
    public double howFar() {
        return reasons.stream().mapToDouble(Reason::howFar).average().orElse(1);
    }
}
