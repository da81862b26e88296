package org.ripewood.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.ripewood.core.progress.Verdict;

/**
 * What an entry changed in how the steps of a tree stand.
 *
 * @param known whether it can be told at all: not, when there is nothing to compare with
 * @param steps those that stood otherwise before, the most useful first
 * @param undecided the step that the fewest looks decide now; none or one
 */
public record Changes(boolean known, List<Step> steps, List<Undecided> undecided) {

    static final Changes NOT_KNOWN = new Changes(false, List.of(), List.of());

    /** Titles told one by one; more are counted. */
    private static final int TOLD = 2;

    public Changes {
        steps = List.copyOf(steps);
        undecided = List.copyOf(undecided);
    }

    /**
     * A step that stands otherwise now.
     *
     * @param held what holds it, as part of a sentence; empty for nothing
     */
    public record Step(String technique, String title, Verdict was, Verdict now, String held) {}

    /** A step that so many looks decide. */
    public record Undecided(String title, int looks) {}

    /** Steps that became READY. */
    public List<Step> ready() {
        return which(step -> step.now() == Verdict.READY);
    }

    /** Steps that nothing measured held before, and something holds now. */
    public List<Step> held() {
        return which(step -> step.now() == Verdict.HELD);
    }

    /** Steps that are held no more, and wait for something else. */
    public List<Step> freed() {
        return which(
                step ->
                        step.was() == Verdict.HELD
                                && step.now() != Verdict.READY
                                && step.now() != Verdict.NOT_NEEDED);
    }

    /** Steps the tree turned out not to need. */
    public List<Step> notNeeded() {
        return which(step -> step.now() == Verdict.NOT_NEEDED);
    }

    /** What changed, in a sentence or two, the best news first; empty when it cannot be told. */
    public String sentence() {
        var news = news();
        return known && news.isEmpty() ? nothing() : news;
    }

    /** The same, and empty as well when nothing changed. */
    public String news() {
        if (!known) {
            return "";
        }
        var told = new ArrayList<String>();
        tell(told, ready(), "is ready now", "are ready now");
        tellHeld(told);
        if (told.isEmpty()) {
            tell(told, freed(), "is held no more", "are held no more");
        }
        if (told.isEmpty()) {
            tell(told, notNeeded(), "is not needed here", "are not needed here");
        }
        return String.join(" ", told);
    }

    private void tellHeld(List<String> told) {
        var held = held();
        if (held.isEmpty()) {
            return;
        }
        var first = held.get(0);
        var more = held.size() - 1;
        told.add(
                "%s is held now%s%s."
                        .formatted(
                                quoted(first.title()),
                                first.held().isEmpty() ? "" : ": " + first.held(),
                                more == 0 ? "" : "; so " + counted(more)));
    }

    private static void tell(List<String> told, List<Step> steps, String one, String several) {
        if (steps.isEmpty()) {
            return;
        }
        var titles = steps.stream().limit(TOLD).map(step -> quoted(step.title())).toList();
        var more = steps.size() - titles.size();
        told.add(
                "%s%s %s."
                        .formatted(
                                String.join(more == 0 ? " and " : ", ", titles),
                                more == 0 ? "" : " and %d more".formatted(more),
                                steps.size() == 1 ? one : several));
    }

    private static String counted(int more) {
        return more == 1 ? "is 1 more step" : "are %d more steps".formatted(more);
    }

    private String nothing() {
        return undecided.stream()
                .findFirst()
                .map(
                        near ->
                                near.looks() == 1
                                        ? "Nothing is freed or held by it yet; one more look decides %s."
                                                .formatted(quoted(near.title()))
                                        : "Nothing is freed or held by it yet; %d more looks decide %s."
                                                .formatted(near.looks(), quoted(near.title())))
                .orElse("Nothing is freed or held by it.");
    }

    private List<Step> which(Predicate<Step> asked) {
        return steps.stream().filter(asked).toList();
    }

    private static String quoted(String title) {
        return "“" + title + "”";
    }
}
