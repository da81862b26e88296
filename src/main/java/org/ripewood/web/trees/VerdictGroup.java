package org.ripewood.web.trees;

import java.util.List;
import java.util.stream.Stream;
import org.ripewood.core.progress.Verdict;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeStanding;
import org.ripewood.web.kit.Mark;
import org.ripewood.web.kit.StateMeaning;

/** Techniques that stand alike, under a heading that says what that means. */
record VerdictGroup(Verdict verdict, String meaning, List<TechniqueStanding> standings) {

    /** Groups that hold anything, the most useful first; ready ones are shown as proposals. */
    static List<VerdictGroup> of(TreeStanding standing) {
        return Stream.of(
                        Verdict.READY,
                        Verdict.MEASURE,
                        Verdict.LESSON,
                        Verdict.SEASON,
                        Verdict.HELD,
                        Verdict.DONE,
                        Verdict.NOT_NEEDED)
                .map(
                        verdict ->
                                new VerdictGroup(
                                        verdict, StateMeaning.of(verdict), standing.with(verdict)))
                .filter(group -> !group.standings().isEmpty())
                .toList();
    }

    /** The verdict's word, shape and tone. */
    public Mark mark() {
        return Mark.of(verdict);
    }
}
