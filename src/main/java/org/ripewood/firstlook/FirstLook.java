package org.ripewood.firstlook;

import java.time.LocalDate;
import java.util.List;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.MeasureNext;
import org.ripewood.core.progress.Source;
import org.ripewood.standing.StageView;
import org.ripewood.standing.TreeOnDay;

/**
 * How far the first look at a tree has come.
 *
 * @param open questions still to be asked in this walk, in their order; none when all is said
 * @param verdict what can be said of the tree by now
 * @param measureNext at most three things to measure next, the most useful first
 */
public record FirstLook(
        TreeOnDay tree,
        LocalDate on,
        Walk walk,
        List<LookQuestion> open,
        LookVerdict verdict,
        StageView stage,
        List<Checklist.Measure> measureNext) {

    public FirstLook {
        open = List.copyOf(open);
        measureNext = List.copyOf(measureNext);
    }

    /**
     * Of a tree that was just looked at.
     *
     * @param eye who looks
     */
    public static FirstLook of(TreeOnDay tree, Source eye, Walk walk) {
        return new FirstLook(
                tree,
                tree.on(),
                walk,
                OpenQuestions.of(tree, eye, walk),
                LookVerdict.of(tree),
                tree.tellStage(),
                MeasureNext.of(tree));
    }
}
