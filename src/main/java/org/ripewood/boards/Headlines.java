package org.ripewood.boards;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.readiness.Holds;
import org.ripewood.standing.AliveDoubt;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Wording;

/** What an instructor should read first about a tree. */
final class Headlines {

    /**
     * A tree's headline.
     *
     * @param step the open step it is about; null when it is about none
     * @param standing what it is about; null when nothing is left to do, or when content has lost
     *     the step's technique
     */
    record Lead(
            TreeOnDay tree,
            Board.Headline headline,
            @Nullable StepBrief step,
            @Nullable Standing standing) {}

    /** A verdict to lead with; whether only techniques whose window is not shut may. */
    private record Choice(Verdict verdict, boolean inSeason) {}

    /** What is to be measured for work of another season can wait for it. */
    private static final List<Choice> ORDER =
            List.of(
                    new Choice(Verdict.READY, false),
                    new Choice(Verdict.MEASURE, true),
                    new Choice(Verdict.LESSON, false),
                    new Choice(Verdict.SEASON, false),
                    new Choice(Verdict.MEASURE, false));

    private final TechniquePriority usefulness;

    Headlines(TechniquePriority usefulness) {
        this.usefulness = usefulness;
    }

    Lead of(TreeOnDay tree) {
        var steps = tree.open().values().stream().sorted(ChecklistMaker.SENT_BACK_FIRST).toList();
        for (var step : steps) {
            if (step.state() == StepState.REPORTED) {
                return lead(tree, Board.Headline.SIGN_OFF, step);
            }
        }
        if (!steps.isEmpty()) {
            return lead(tree, Board.Headline.UNDER_WAY, steps.get(0));
        }
        for (var choice : AliveDoubt.of(tree).isPresent() ? List.<Choice>of() : ORDER) {
            var first =
                    tree.steps(choice.verdict())
                            .filter(standing -> !choice.inSeason() || TreeOnDay.inSeason(standing))
                            .min(usefulness.mostUsefulFirst());
            if (first.isPresent()) {
                var headline = Board.Headline.valueOf(choice.verdict().name());
                return new Lead(tree, headline, null, first.get());
            }
        }
        return new Lead(tree, Board.Headline.HELD, null, firstHeld(tree));
    }

    String sentence(Lead lead) {
        var step = lead.step();
        if (step != null) {
            return sentence(lead, step);
        }
        var doubt = AliveDoubt.of(lead.tree());
        if (doubt.isPresent()) {
            return doubt.get();
        }
        var standing = lead.standing();
        if (standing == null) {
            return "Nothing is left to do on this tree today.";
        }
        var told = lead.tree().tell(standing);
        if (standing.verdict() == Verdict.READY) {
            return "“%s” can be assigned.%s"
                    .formatted(told.title(), waitingFor(lead.tree(), standing.technique()));
        }
        return "“%s”: %s".formatted(told.title(), firstAgainst(told));
    }

    /** When what is held, or out of season, could be done; null for everything else. */
    static @Nullable String opening(Lead lead) {
        var headline = lead.headline();
        var standing = lead.standing();
        if (standing == null
                || (headline != Board.Headline.HELD && headline != Board.Headline.SEASON)) {
            return null;
        }
        var opening = lead.tree().opening(standing);
        return opening == null ? null : opening.sentence();
    }

    /** {@code " 5 other techniques wait for it."}, or nothing. */
    static String waitingFor(TreeOnDay tree, String technique) {
        var waiting = tree.waitingFor(technique);
        return switch (waiting) {
            case 0 -> "";
            case 1 -> " 1 other technique waits for it.";
            default -> " %d other techniques wait for it.".formatted(waiting);
        };
    }

    /** The reason told first: what decided the verdict, and of these none that is about order. */
    static String firstAgainst(TechniqueStanding told) {
        var truth = told.verdict() == Verdict.MEASURE ? Truth.UNKNOWN : Truth.NO;
        return told.against().stream()
                .filter(reason -> reason.truth().equals(truth.name()))
                .min(Comparator.comparing(reason -> reason.key().startsWith("after.")))
                .map(ReasonView::sentence)
                .orElse("");
    }

    private static String sentence(Lead lead, StepBrief step) {
        var title = lead.tree().content().titleOf(step.technique());
        var doneOn = step.doneOn();
        var until = step.until();
        if (step.state() == StepState.REPORTED && doneOn != null) {
            return "“%s” was done on %s and waits for a look."
                    .formatted(title, Wording.day(doneOn));
        }
        if (step.state() == StepState.SENT_BACK) {
            return "“%s” was sent back and waits for the student.".formatted(title);
        }
        return until == null
                ? "“%s” is with the student.".formatted(title)
                : "“%s” is with the student, to be done by %s."
                        .formatted(title, Wording.day(until));
    }

    private Lead lead(TreeOnDay tree, Board.Headline headline, StepBrief step) {
        return new Lead(tree, headline, step, tree.find(step.technique()).orElse(null));
    }

    /** Held by something of its own rather than only by its turn, if there is one. */
    private @Nullable Standing firstHeld(TreeOnDay tree) {
        return tree.steps(Verdict.HELD)
                .min(
                        Comparator.<Standing, Boolean>comparing(
                                        standing -> !Holds.byItself(standing))
                                .thenComparing(usefulness.mostUsefulFirst()))
                .orElse(null);
    }
}
