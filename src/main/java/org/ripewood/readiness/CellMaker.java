package org.ripewood.readiness;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Opening;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.season.Outlook;
import org.ripewood.course.Content;
import org.ripewood.readiness.ReadinessSheet.Cell;
import org.ripewood.readiness.ReadinessSheet.Weight;
import org.ripewood.standing.ReasonBrief;
import org.ripewood.standing.ReasonText;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Wording;

/** Makes the cells of a tree's row. */
final class CellMaker {

    private final Content content;
    private final LeadingTechnique leading;
    private final @Nullable String asked;
    private final ReasonBrief brief;

    /**
     * @param asked code of the technique that leads its own column; null for none
     */
    CellMaker(Content content, LeadingTechnique leading, @Nullable String asked) {
        this.content = content;
        this.leading = leading;
        this.asked = asked;
        this.brief = new ReasonBrief(content);
    }

    List<Cell> cells(TreeRead read) {
        return content.works().stream().map(work -> cell(read, work)).toList();
    }

    private Cell cell(TreeRead read, Content.Work work) {
        var day = read.day();
        var standings =
                day.standings().stream()
                        .filter(standing -> work.techniques().contains(standing.technique()))
                        .toList();
        return first(day, standings)
                .map(standing -> told(read, work.code(), standing))
                .orElseGet(() -> Cell.nothingLeft(work.code(), settled(standings)));
    }

    private Optional<Standing> first(TreeOnDay day, List<Standing> standings) {
        return standings.stream()
                .filter(standing -> standing.technique().equals(asked))
                .filter(LeadingTechnique::isOpen)
                .findFirst()
                .or(() -> leading.of(standings, day.open().keySet()));
    }

    private static Verdict settled(List<Standing> standings) {
        return standings.stream().anyMatch(standing -> standing.verdict() == Verdict.DONE)
                ? Verdict.DONE
                : Verdict.NOT_NEEDED;
    }

    private Cell told(TreeRead read, String work, Standing standing) {
        var day = read.day();
        var step = day.open().get(standing.technique());
        if (step != null) {
            return inHand(work, standing, step);
        }
        var opening = day.openings().of(standing.technique());
        var next = read.next();
        if (next != null && standing.equals(next.standing())) {
            return next.waits()
                    .flatMap(
                            wait ->
                                    opening.map(
                                            its -> waiting(day, work, standing, its, wait, true)))
                    .orElseGet(() -> ready(work, standing));
        }
        return opening.flatMap(its -> waiting(day, work, standing, its))
                .orElseGet(() -> ready(work, standing));
    }

    private Cell inHand(String work, Standing standing, StepBrief step) {
        var until = step.until();
        var lifts = until == null ? null : "by " + Wording.day(until);
        return cell(
                work,
                standing,
                Weight.READY,
                new ReasonBrief.Brief(title(standing), null),
                new Lift(
                        switch (step.state()) {
                            case REPORTED -> "reported: sign off";
                            case SENT_BACK -> "sent back";
                            default -> lifts == null ? "assigned" : lifts;
                        },
                        until),
                "YES",
                1,
                null,
                step.id(),
                step.state());
    }

    private Cell ready(String work, Standing standing) {
        return cell(
                work,
                standing,
                Weight.READY,
                new ReasonBrief.Brief(title(standing), null),
                null,
                "YES",
                1,
                null,
                null,
                null);
    }

    private Optional<Cell> waiting(TreeOnDay day, String work, Standing standing, Opening opening) {
        var itsTurn = opening.waits().stream().noneMatch(LeadingReason::isTurn);
        return LeadingReason.of(standing.verdict(), opening, false)
                .map(wait -> waiting(day, work, standing, opening, wait, itsTurn));
    }

    private Cell waiting(
            TreeOnDay day,
            String work,
            Standing standing,
            Opening opening,
            Opening.Wait wait,
            boolean itsTurn) {
        var weight = weight(standing.verdict(), wait.reason(), itsTurn);
        var reason = wait.reason();
        var season = standing.verdict() == Verdict.SEASON;
        var met = season || standing.verdict() == Verdict.LESSON;
        return cell(
                work,
                standing,
                weight,
                season ? new ReasonBrief.Brief(title(standing), null) : brief.of(reason),
                lift(day, standing, opening, wait),
                met ? "YES" : reason.truth().name(),
                met ? 1 : reason.howFar(),
                new ReasonText(content, day.subject().traits())
                        .tell(reason, content.titleOf(standing.technique()))
                        .sentence(),
                null,
                null);
    }

    private Cell cell(
            String work,
            Standing standing,
            Weight weight,
            ReasonBrief.Brief told,
            @Nullable Lift lift,
            String truth,
            double howFar,
            @Nullable String sentence,
            @Nullable Long stepId,
            @Nullable StepState step) {
        return new Cell(
                work,
                standing.verdict(),
                weight,
                standing.technique(),
                title(standing),
                told.words(),
                told.number(),
                lift == null ? null : lift.words(),
                lift == null ? null : lift.on(),
                truth,
                Math.max(0, Math.min(1, howFar)),
                sentence,
                stepId,
                step);
    }

    private String title(Standing standing) {
        return content.shortTitleOf(standing.technique());
    }

    /**
     * How much a cell matters.
     *
     * @param itsTurn whether nothing else comes first, or it is the next of styling
     */
    static Weight weight(Verdict verdict, Reason reason, boolean itsTurn) {
        return switch (verdict) {
            case HELD -> itsTurn && Holds.byTheTree(reason) ? Weight.HELD : Weight.WAITS;
            case MEASURE -> Weight.LOOK;
            case SEASON, LESSON -> Weight.LATER;
            case READY -> Weight.READY;
            case DONE, NOT_NEEDED -> Weight.NOTHING;
        };
    }

    /** Nothing is said where the words say it already. */
    private @Nullable Lift lift(
            TreeOnDay day, Standing standing, Opening opening, Opening.Wait wait) {
        var reason = wait.reason();
        if (standing.verdict() == Verdict.MEASURE
                || standing.verdict() == Verdict.LESSON
                || reason instanceof Reason.OfOrder
                || reason instanceof Reason.OfDevelopment) {
            return null;
        }
        if (standing.verdict() == Verdict.SEASON) {
            var lift = Lift.of(wait.outlook(), day.on());
            return wait.outlook() instanceof Outlook.Expected
                    ? new Lift("from " + lift.words(), lift.on())
                    : new Lift(brief.of(reason).words(), null);
        }
        return wait.outlook() instanceof Outlook.Expected expected
                ? byItself(day, opening, expected)
                : byWork(day, reason).orElse(Lift.NO_DATE);
    }

    /**
     * The day the technique itself is expected, as its page and the checklist tell it. Where other
     * reasons leave that open, the first day of its season on which this one no longer holds it.
     */
    private static Lift byItself(TreeOnDay day, Opening opening, Outlook.Expected reason) {
        if (reason.likelySince() != null) {
            return Lift.of(reason, day.on());
        }
        return opening.outlook() instanceof Outlook.Expected technique
                ? Lift.of(technique, day.on())
                : Lift.notBefore(day.openings().inSeason(opening.technique(), reason), day.on());
    }

    /** What no time mends another technique may: the one that makes the fact as it is asked for. */
    private Optional<Lift> byWork(TreeOnDay day, Reason reason) {
        if (!(reason instanceof Reason.OfCriterion asked)) {
            return Optional.empty();
        }
        return day.standings().stream()
                .filter(LeadingTechnique::isOpen)
                .map(Standing::technique)
                .filter(code -> mends(code, asked))
                .findFirst()
                .map(code -> new Lift("after: " + content.shortTitleOf(code), null));
    }

    private boolean mends(String technique, Reason.OfCriterion asked) {
        return content.technique(technique).effects().stream()
                .anyMatch(
                        effect ->
                                effect.fact() == asked.criterion().fact()
                                        && asked.required().metBy(effect.value()));
    }
}
