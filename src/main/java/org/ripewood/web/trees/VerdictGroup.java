package org.ripewood.web.trees;

import java.util.List;
import java.util.stream.Stream;
import org.ripewood.core.progress.Verdict;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeStanding;
import org.ripewood.web.kit.Mark;

/** Techniques that stand alike, under a heading that says what that means. */
record VerdictGroup(
        Verdict verdict, String title, String meaning, List<TechniqueStanding> standings) {

    /** Groups that hold anything, the most useful first; ready ones are shown as proposals. */
    static List<VerdictGroup> of(TreeStanding standing) {
        return Stream.of(
                        of(
                                standing,
                                Verdict.READY,
                                "Ready",
                                "Everything asked for is met and the season is open."),
                        of(
                                standing,
                                Verdict.MEASURE,
                                "To measure",
                                "Nothing known speaks against it, but something has to be looked"
                                        + " at."),
                        of(
                                standing,
                                Verdict.LESSON,
                                "To learn first",
                                "The tree is ready; the student has not shown the skill yet."),
                        of(
                                standing,
                                Verdict.SEASON,
                                "Out of season",
                                "The tree is ready; the growth stage is not the right one."),
                        of(
                                standing,
                                Verdict.HELD,
                                "Held",
                                "Something measured is not far enough yet."),
                        of(standing, Verdict.DONE, "Done", "Signed off and not due again yet."),
                        of(
                                standing,
                                Verdict.NOT_NEEDED,
                                "Not needed",
                                "This tree has no use for it as it stands."))
                .filter(group -> !group.standings().isEmpty())
                .toList();
    }

    private static VerdictGroup of(
            TreeStanding standing, Verdict verdict, String title, String meaning) {
        return new VerdictGroup(verdict, title, meaning, standing.with(verdict));
    }

    /** The verdict's shape and tone, with the heading for its word. */
    public Mark mark() {
        return Mark.of(verdict).saying(title);
    }
}
