package org.ripewood.firstlook;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Verdict;
import org.ripewood.standing.AliveDoubt;
import org.ripewood.standing.HeldBy;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.standing.Unknown;

/**
 * What can be said of a tree in one sentence.
 *
 * @param technique the step it is about; null when it is about none
 * @param title of that step
 * @param ready whether that step may be done now
 */
public record LookVerdict(
        String sentence, @Nullable String technique, @Nullable String title, boolean ready) {

    static LookVerdict of(TreeOnDay tree) {
        var doubt = AliveDoubt.of(tree);
        if (doubt.isPresent()) {
            return new LookVerdict(doubt.get(), null, null, false);
        }
        var useful = new TechniquePriority(tree.content()).mostUsefulFirst();
        var ready = tree.free().stream().min(useful);
        if (ready.isPresent()) {
            return about(tree, ready.get(), "", " is ready now.");
        }
        var given = tree.open().keySet().stream().sorted().findFirst().flatMap(tree::find);
        if (given.isPresent()) {
            return about(tree, given.get(), "", " is under way.");
        }
        var undecided =
                tree.steps(Verdict.MEASURE)
                        .filter(TreeOnDay::inSeason)
                        .min(
                                Comparator.<Standing>comparingInt(LookVerdict::looks)
                                        .thenComparing(useful));
        if (undecided.isPresent()) {
            var looks = looks(undecided.get());
            return about(
                    tree,
                    undecided.get(),
                    "No step is ready yet. "
                            + (looks == 1 ? "One more look decides " : looks + " looks decide "),
                    ".");
        }
        return waiting(tree, useful);
    }

    private static LookVerdict waiting(TreeOnDay tree, Comparator<Standing> useful) {
        var held = tree.steps(Verdict.HELD).min(useful);
        if (held.isPresent()) {
            return about(
                    tree,
                    held.get(),
                    "No step is ready. ",
                    " is held: " + HeldBy.shortly(tree.tell(held.get())) + ".");
        }
        var lesson = tree.steps(Verdict.LESSON).min(useful);
        return lesson.isPresent()
                ? about(tree, lesson.get(), "No step is ready. ", " waits for its lesson.")
                : new LookVerdict("No step is ready today.", null, null, false);
    }

    private static int looks(Standing standing) {
        return Unknown.of(standing).size();
    }

    private static LookVerdict about(
            TreeOnDay tree, Standing standing, String before, String after) {
        var title = tree.content().titleOf(standing.technique());
        return new LookVerdict(
                before + "“" + title + "”" + after,
                standing.technique(),
                title,
                standing.verdict() == Verdict.READY);
    }
}
