package org.ripewood.boards;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Technique;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.steps.StepBrief;
import org.ripewood.trees.Tree;

/**
 * What comes next for a tree, for a list of many.
 *
 * @param doNow steps the student has, sent-back ones first
 * @param reported titles of steps that wait for an instructor's sign-off
 * @param ready the most useful step that is ready and that nobody was given; null when there is
 *     none
 * @param moreReady how many such steps besides
 * @param measureNext title of the fact to look at first; null when nothing is to be measured
 * @param waiting the first technique that waits; null when none does
 * @param care aftercare of recent work that is due now
 */
public record TreeNext(
        Tree tree,
        String species,
        List<Given> doNow,
        List<String> reported,
        @Nullable TechniqueStanding ready,
        int moreReady,
        @Nullable String measureNext,
        @Nullable TechniqueStanding waiting,
        List<Checklist.Care> care) {

    /** A step the student has. */
    public record Given(StepBrief step, Technique technique, TechniqueStanding standing) {}

    public TreeNext {
        doNow = List.copyOf(doNow);
        reported = List.copyOf(reported);
        care = List.copyOf(care);
    }
}
