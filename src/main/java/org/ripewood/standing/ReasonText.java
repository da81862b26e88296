package org.ripewood.standing;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Criterion.Ages;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.course.Content;
import org.ripewood.steps.Wording;

/** Puts the engine's reasons into words: title, what is asked for, what there is, and why. */
public final class ReasonText {

    private static final String STILL_GOOD = " (judged before its rest, still good)";

    private final Content content;
    private final SeasonReasonText seasons;

    public ReasonText(Content content, Traits traits) {
        this.content = content;
        this.seasons = new SeasonReasonText(content, traits);
    }

    public List<ReasonView> tell(Standing standing) {
        var title = content.titleOf(standing.technique());
        return standing.reasons().stream()
                .map(
                        reason ->
                                reason instanceof Reason.OfCriterion criterion
                                        ? tellCriterion(criterion, standing.on())
                                        : tell(reason, title))
                .toList();
    }

    /**
     * A reason in words.
     *
     * @param technique title of the technique it is a reason of
     */
    public ReasonView tell(Reason reason, String technique) {
        if (reason instanceof Reason.OfCriterion criterion) {
            return tellCriterion(criterion, null);
        }
        if (reason instanceof Reason.OfNeed need) {
            return tell(need);
        }
        if (reason instanceof Reason.OfOrder order) {
            return tell(order, technique);
        }
        if (reason instanceof Reason.OfDevelopment development) {
            return tell(development);
        }
        if (reason instanceof Reason.OfLoad load) {
            return tell(load);
        }
        if (reason instanceof Reason.OfQuiet quiet) {
            return tell(quiet);
        }
        if (reason instanceof Reason.OfHeavy heavy) {
            return tell(heavy);
        }
        if (reason instanceof Reason.OfDose dose) {
            return tell(dose);
        }
        if (reason instanceof Reason.OfSkill skill) {
            return tell(skill);
        }
        if (reason instanceof Reason.OfSeason season) {
            return seasons.tell(season);
        }
        if (reason instanceof Reason.OfDone done) {
            return tell(done);
        }
        if (reason instanceof Reason.OfSpecies species) {
            return new ReasonWords(species, "Species")
                    .required("a species it is for")
                    .observed("another species")
                    .why("It would harm this species or does nothing for it.")
                    .view();
        }
        throw new IllegalStateException("no words for " + reason);
    }

    /**
     * @param on the day it is told for; null when nobody asks how old the evidence is
     */
    private ReasonView tellCriterion(Reason.OfCriterion reason, @Nullable LocalDate on) {
        var criterion = reason.criterion();
        var fact = criterion.fact();
        var text = content.text(fact);
        var words =
                new ReasonWords(reason, text.title())
                        .required(Wording.required(fact, reason.required()))
                        .why(criterion.why())
                        .look(reason.look());
        var evidence = reason.evidence();
        if (evidence != null && reason.look() != Reason.Look.MISSING) {
            var value = Wording.value(fact, evidence.value());
            words.observed(rested(reason, evidence, on) ? value + STILL_GOOD : value)
                    .from(evidence);
        }
        if (reason.truth() == Truth.UNKNOWN) {
            var how =
                    reason.look() == Reason.Look.PROVISIONAL
                            ? "An instructor has to look. " + text.how()
                            : text.how();
            words.how(how);
        }
        return reason.truth() == Truth.YES ? words.view() : words.toRecord(fact).view();
    }

    /** Whether evidence would be too old by the calendar and is not, as the tree was at rest. */
    private static boolean rested(
            Reason.OfCriterion reason, Evidence evidence, @Nullable LocalDate on) {
        var fresh = reason.criterion().freshDays();
        return on != null
                && fresh != null
                && reason.criterion().ages() == Ages.GROWTH
                && reason.look() != Reason.Look.STALE
                && evidence.observedOn().plusDays(fresh).isBefore(on);
    }

    private ReasonView tell(Reason.OfNeed reason) {
        var words = new ReasonWords(reason, "Need").required("needed by this tree");
        if (reason.truth() == Truth.NO) {
            return words.observed("not needed")
                    .why("The tree shows nothing that asks for it.")
                    .notWaivable()
                    .view();
        }
        var titles = listOf(reason.missing(), fact -> content.text(fact).title());
        words.why("Whether the tree needs it hangs on what is not known yet: " + titles + ".");
        if (!reason.missing().isEmpty()) {
            words.how(hows(reason.missing())).toRecord(reason.missing().get(0));
        }
        return words.view();
    }

    private ReasonView tell(Reason.OfOrder reason, String technique) {
        return new ReasonWords(reason, content.titleOf(reason.technique()))
                .required("signed off first")
                .observed(
                        switch (reason.truth()) {
                            case YES -> "signed off, or not needed here";
                            case NO -> "not signed off yet";
                            case UNKNOWN ->
                                    "not signed off, and not known whether this tree needs it";
                        })
                .why("“%s” builds on it.".formatted(technique))
                .view();
    }

    private ReasonView tell(Reason.OfDevelopment reason) {
        return new ReasonWords(reason, content.titleOf(reason.technique()))
                .required("done, or no longer needed")
                .observed("still needed by this tree")
                .why("The material is made before it is styled: what is styled grows less.")
                .view();
    }

    /** The sum that is held against the limit first, as on the sheets; then how much there was. */
    private static String withThisWork(String sum, String before, String when) {
        return "%s with this work, %s of it %s".formatted(sum, before, when);
    }

    private ReasonView tell(Reason.OfLoad reason) {
        if (reason.asksForStrength()) {
            return new ReasonWords(reason, "Strength for this work")
                    .required(
                            "at least "
                                    + Wording.number(reason.added())
                                    + ", which this work takes")
                    .observed(
                            "with its vigour the tree bears a load of %s at once"
                                    .formatted(Wording.number(reason.budget())))
                    .why("A tree mends only so much at once, and the stronger it is the more.")
                    .view();
        }
        var words =
                new ReasonWords(reason, "Recovery from earlier work")
                        .observed(
                                withThisWork(
                                        Wording.number(reason.left() + reason.added()),
                                        Wording.number(reason.left()),
                                        "from before"))
                        .why("A tree mends only so much at once, and the stronger it is the more.");
        if (reason.truth() != Truth.UNKNOWN) {
            return words.required("at most " + Wording.number(reason.budget()) + " in all").view();
        }
        var vigour = content.text(Fact.VIGOUR_INDEX);
        return words.required("as much as its vigour can mend")
                .how(vigour.how())
                .toRecord(Fact.VIGOUR_INDEX)
                .view();
    }

    private static ReasonView tell(Reason.OfQuiet reason) {
        var since = reason.daysSinceHeavy();
        return new ReasonWords(reason, "Quiet time after heavy work")
                .required(
                        "at least "
                                + Wording.days(reason.required())
                                + (reason.required() < WorkLedger.SEASON_QUIET_DAYS
                                        ? ""
                                        : ", or a growing season"))
                .observed(
                        since >= WorkLedger.NEVER_DAYS
                                ? "no heavy work on record"
                                : Wording.days(since))
                .why("Roots and wounds need quiet time before the next work asks more of them.")
                .view();
    }

    private static ReasonView tell(Reason.OfHeavy reason) {
        return new ReasonWords(reason, "Heavy work this season")
                .required("none before this one")
                .observed(
                        reason.heavyThisSeason() == 0
                                ? "none"
                                : String.valueOf(reason.heavyThisSeason()))
                .why("One heavy work in a growing season is as much as a tree in training mends.")
                .view();
    }

    private static ReasonView tell(Reason.OfDose reason) {
        var foliage = reason.kind() == DoseRule.Kind.FOLIAGE;
        return new ReasonWords(
                        reason, foliage ? "Foliage taken this season" : "Roots cut this season")
                .required("at most " + Wording.percent(reason.limit()) + " in all")
                .observed(
                        withThisWork(
                                Wording.percent(reason.taken() + reason.planned()),
                                Wording.percent(reason.taken()),
                                "so far"))
                .why(
                        foliage
                                ? "Leaves pay for all that grows; too many taken and it starves."
                                : "Roots feed what stands above them; too many cut and it dries out.")
                .view();
    }

    private ReasonView tell(Reason.OfSkill reason) {
        var lesson = content.lessons().get(reason.lesson());
        var title = lesson == null ? reason.lesson() : lesson.title();
        var skill = lesson == null ? null : lesson.skill();
        var words =
                new ReasonWords(reason, "Skill: " + title)
                        .required("shown to an instructor")
                        .observed(reason.shown() ? "shown" : "not shown yet")
                        .why("What has been shown on practice wood is safe to do on a tree.");
        return reason.shown() || skill == null
                ? words.view()
                : words.how("Show an instructor: " + skill).view();
    }

    private static ReasonView tell(Reason.OfDone reason) {
        var due = reason.dueAgainOn();
        return new ReasonWords(reason, "Signed off")
                .required(due == null ? "once is enough" : "due again on " + Wording.day(due))
                .observed("done on " + Wording.day(reason.doneOn()))
                .on(reason.doneOn())
                .why(due == null ? "Once is enough for a tree." : "It is repeated after a while.")
                .view();
    }

    /** What a reason is about. */
    public String titleOf(Reason reason) {
        return tell(reason, "").title();
    }

    private String hows(List<Fact> facts) {
        return facts.stream()
                .map(content::text)
                .map(text -> text.title() + ": " + text.how())
                .collect(Collectors.joining(" "));
    }

    private static String listOf(List<Fact> facts, Function<Fact, String> title) {
        return Wording.list(facts.stream().map(title).toList(), "and");
    }
}
