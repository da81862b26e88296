package org.ripewood.readiness;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;

/**
 * Which of several techniques is told of a tree: the next one that is needed and not done.
 *
 * <p>A step somebody has in hand goes first. Then counts what comes first in the order of work (the
 * earlier stage, then what more others wait for). A technique nobody can say yet whether the tree
 * needs it, and that nothing known speaks against, is told only when there is no other: it is a
 * look, and no hold.
 */
final class LeadingTechnique {

    private final Comparator<String> order;

    /**
     * @param order of techniques by code, the first to be done first
     */
    LeadingTechnique(Comparator<String> order) {
        this.order = order;
    }

    /**
     * The one told; empty when all are done or not needed.
     *
     * @param inHand codes of techniques with an open step
     */
    Optional<Standing> of(Collection<Standing> standings, Set<String> inHand) {
        return standings.stream()
                .filter(standing -> isOpen(standing) || inHand.contains(standing.technique()))
                .min(
                        Comparator.<Standing, Boolean>comparing(
                                        standing -> !inHand.contains(standing.technique()))
                                .thenComparing(LeadingTechnique::isOnlyALook)
                                .thenComparing(Standing::technique, order));
    }

    static boolean isOpen(Standing standing) {
        return standing.verdict() != Verdict.DONE && standing.verdict() != Verdict.NOT_NEEDED;
    }

    private static boolean isOnlyALook(Standing standing) {
        return standing.verdict() == Verdict.MEASURE
                && standing.reasons().stream()
                        .anyMatch(
                                reason ->
                                        reason instanceof Reason.OfNeed
                                                && reason.truth() == Truth.UNKNOWN);
    }
}
