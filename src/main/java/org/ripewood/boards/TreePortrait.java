package org.ripewood.boards;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.TechniqueStanding;

/**
 * What is read first about a tree: where styling stands, and what comes next.
 *
 * @param alive what is told before all else of a tree that may be dead; null for others
 * @param sentence the judgement, one sentence
 * @param styling the next technique of styling, the same as on the sheets of a course; null when
 *     nothing of styling is left
 * @param inHand whether somebody has a step of it
 * @param holds the reasons that keep it waiting, the one told on the sheets first; at most {@link
 *     #MOST_HOLDS}, none when it is ready or in hand
 * @param moreHolds how many reasons besides
 * @param next a ready step nobody was given yet, the most useful; null when there is none
 * @param moreReady how many ready steps besides
 * @param waitingForNext how many techniques wait for {@code next}
 * @param lookAt what to look at next; null when nothing is to be measured
 */
public record TreePortrait(
        @Nullable String alive,
        String sentence,
        @Nullable TechniqueStanding styling,
        boolean inHand,
        List<ReasonView> holds,
        int moreHolds,
        @Nullable TechniqueStanding next,
        int moreReady,
        int waitingForNext,
        Checklist.@Nullable Measure lookAt) {

    /** More than these are not taken in at one look. */
    public static final int MOST_HOLDS = 3;

    public TreePortrait {
        holds = List.copyOf(holds);
    }
}
