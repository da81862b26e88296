package org.ripewood.standing;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Verdict;
import org.ripewood.platform.Actor;
import org.ripewood.trees.TreeDays;

/**
 * What an entry changed in how the steps of a tree stand, for every form that answers with it.
 *
 * <p>The form's action takes {@code var marks = whatChanged.before(actor, treeId);} before it
 * records, and hands these marks to the page it goes on to. That page, which reads the tree anyway,
 * tells {@code WhatChanged.since(marks, look.day()).sentence()}; marks that do not fit tell
 * nothing, and what is told always is as it stands now. Pages do both by {@code web.kit.Said}.
 */
@ApplicationScoped
@Transactional
public class WhatChanged {

    /** Stands between the content's revision and the verdicts. */
    private static final String BETWEEN = ".";

    private static final int REVISION_CHARS = 8;

    /** What marks look like; others are let pass as nothing. */
    private static final Pattern MARKS = Pattern.compile("[0-9a-z]{1,8}\\.[A-Z]{0,500}");

    private final SubjectGatherer gatherer;
    private final TreeDays treeDays;

    WhatChanged(SubjectGatherer gatherer, TreeDays treeDays) {
        this.gatherer = gatherer;
        this.treeDays = treeDays;
    }

    /**
     * How a tree within reach stands today, as short text for an address; 404 out of reach.
     *
     * @return letters, digits and a point only
     */
    public String before(Actor actor, long treeId) {
        return marks(today(actor, treeId));
    }

    /** A tree within reach as it stands today; 404 out of reach. */
    public TreeOnDay today(Actor actor, long treeId) {
        return gatherer.one(actor, treeId, treeDays.at(treeId));
    }

    /** The same of a tree that was just looked at. */
    public static String marks(TreeOnDay tree) {
        return revision(tree)
                + BETWEEN
                + tree.standings().stream()
                        .map(standing -> letter(standing.verdict()))
                        .collect(Collectors.joining());
    }

    /**
     * How the steps stand that stood otherwise before, the most useful first; care is no step.
     *
     * @param marks as {@link #before} gave them; none where they are of another content
     */
    public static Changes since(String marks, TreeOnDay now) {
        var standings = now.standings();
        if (!MARKS.matcher(marks).matches() || !marks.startsWith(revision(now) + BETWEEN)) {
            return Changes.NOT_KNOWN;
        }
        var letters = marks.substring(marks.indexOf(BETWEEN) + 1);
        if (letters.length() != standings.size()) {
            return Changes.NOT_KNOWN;
        }
        var changed = new ArrayList<Changes.Step>();
        for (int i = 0; i < standings.size(); i++) {
            var standing = standings.get(i);
            var was = letters.substring(i, i + 1);
            if (!was.equals(letter(standing.verdict())) && !now.isCare(standing)) {
                changed.add(step(was, standing, now));
            }
        }
        var useful = new TechniquePriority(now.content()).byCode();
        changed.sort(Comparator.comparing(Changes.Step::technique, useful));
        return new Changes(true, changed, nearest(now));
    }

    private static Changes.Step step(String was, Standing standing, TreeOnDay now) {
        var told = now.tell(standing);
        return new Changes.Step(
                standing.technique(),
                told.title(),
                verdict(was),
                standing.verdict(),
                HeldBy.shortly(told));
    }

    /** The step in season that the fewest looks decide; empty when none waits for looks. */
    private static List<Changes.Undecided> nearest(TreeOnDay now) {
        return now
                .steps(Verdict.MEASURE)
                .filter(TreeOnDay::inSeason)
                .map(
                        standing ->
                                new Changes.Undecided(
                                        now.content().titleOf(standing.technique()),
                                        Unknown.of(standing).size()))
                .filter(undecided -> undecided.looks() > 0)
                .min(Comparator.comparingInt(Changes.Undecided::looks))
                .stream()
                .toList();
    }

    private static String revision(TreeOnDay tree) {
        var revision = tree.content().revision();
        return revision.substring(0, Math.min(REVISION_CHARS, revision.length()));
    }

    private static String letter(Verdict verdict) {
        return switch (verdict) {
            case READY -> "R";
            case HELD -> "H";
            case MEASURE -> "M";
            case SEASON -> "S";
            case LESSON -> "L";
            case DONE -> "D";
            case NOT_NEEDED -> "N";
        };
    }

    /** A letter nobody gave stands for a verdict that changes nothing told. */
    private static Verdict verdict(String letter) {
        return EnumSet.allOf(Verdict.class).stream()
                .filter(verdict -> letter(verdict).equals(letter))
                .findFirst()
                .orElse(Verdict.NOT_NEEDED);
    }
}
