package org.ripewood.boards;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.standing.TreeOnDay;

/**
 * A tree with what a board tells of it.
 *
 * @param holds titles by code of what holds it back
 * @param ages evidence that grows old
 * @param stage code of the first stage with something left to do
 */
record TreeOnBoard(
        TreeOnDay day,
        Headlines.Lead lead,
        String keeper,
        Map<String, String> holds,
        Map<Fact, EvidenceAges.Age> ages,
        String stage) {

    /** Whether a board so asked for shows it. */
    boolean isAsked(BoardAsked asked) {
        return isOf(asked.headline(), lead.headline())
                && isOf(asked.species(), day.tree().species())
                && isOf(asked.student(), day.tree().keeperId())
                && isOf(asked.stage(), stage)
                && (asked.reason() == null || holds.containsKey(asked.reason()))
                && (asked.fact() == null || growsOld(asked.fact()));
    }

    private boolean growsOld(String fact) {
        return ages.keySet().stream().anyMatch(known -> known.code().equals(fact));
    }

    private static boolean isOf(@Nullable Object asked, Object found) {
        return asked == null || asked.equals(found);
    }
}
