package org.ripewood.core.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One technique's rules for one species. */
final class CompiledTechnique {

    private static final List<Reason> ELSEWHERE = List.of(new Reason.OfSpecies());
    private static final List<Reason> UNNEEDED = List.of(new Reason.OfNeed(Truth.NO, List.of()));

    private final TechniqueRule rule;
    private final int position;
    private final boolean forSpecies;
    private final CompiledOrder order;
    private final CompiledCriterion[] criteria;
    private final CompiledSeason season;

    /** The reason of those that come after it, by its truth; and of those that wait for it. */
    private final Reason firstDone;

    private final Reason firstUnknown;
    private final Reason firstNotDone;
    private final Reason asNeed;

    private CompiledTechnique(
            TechniqueRule rule,
            int position,
            boolean forSpecies,
            CompiledOrder order,
            CompiledCriterion[] criteria,
            CompiledSeason season) {
        this.rule = rule;
        this.position = position;
        this.forSpecies = forSpecies;
        this.order = order;
        this.criteria = criteria;
        this.season = season;
        this.firstDone = new Reason.OfOrder(rule.code(), Truth.YES);
        this.firstUnknown = new Reason.OfOrder(rule.code(), Truth.UNKNOWN);
        this.firstNotDone = new Reason.OfOrder(rule.code(), Truth.NO);
        this.asNeed = new Reason.OfDevelopment(rule.code());
    }

    /**
     * @param earlier the techniques compiled so far, all that may come before this one
     * @param development positions of those among them that make the material
     * @param asks numbers of what criteria ask so far
     */
    static CompiledTechnique compile(
            TechniqueRule rule,
            int position,
            Traits traits,
            Map<String, CompiledTechnique> earlier,
            int[] development,
            Map<CompiledCriterion.Ask, Integer> asks) {
        var criteria =
                rule.criteria().stream()
                        .map(
                                criterion ->
                                        CompiledCriterion.compile(
                                                criterion, traits, rule.stress(), asks))
                        .toArray(CompiledCriterion[]::new);
        return new CompiledTechnique(
                rule,
                position,
                rule.isFor(traits),
                CompiledOrder.compile(rule, criteria, earlier, development),
                criteria,
                CompiledSeason.compile(rule.season(), traits));
    }

    TechniqueRule rule() {
        return rule;
    }

    int position() {
        return position;
    }

    CompiledCriterion[] criteria() {
        return criteria;
    }

    /** The verdict alone; its reasons are told when they are read. */
    Standing judge(EvaluationContext moment) {
        var settled = settled(moment);
        return settled == null ? new Standing(this, moment, verdict(moment)) : settled;
    }

    CompiledSeason season() {
        return season;
    }

    /** Verdicts that need no weighing: another species' technique, done, or not needed. */
    private @Nullable Standing settled(EvaluationContext moment) {
        if (!forSpecies) {
            return standing(moment, Verdict.NOT_NEEDED, ELSEWHERE);
        }
        var doneOn = moment.doneOn(position);
        if (doneOn != null) {
            var repeat = rule.repeatAfterDays();
            var due = repeat == null ? null : doneOn.plusDays(repeat);
            if (due == null || due.isAfter(moment.on)) {
                return standing(moment, Verdict.DONE, List.of(new Reason.OfDone(doneOn, due)));
            }
        }
        return needed(moment) == Truth.NO ? standing(moment, Verdict.NOT_NEEDED, UNNEEDED) : null;
    }

    private Standing standing(EvaluationContext moment, Verdict verdict, List<Reason> reasons) {
        return new Standing(rule.code(), moment.on, verdict, reasons);
    }

    private Truth needed(EvaluationContext moment) {
        return moment.needed(position, rule.neededWhen());
    }

    /** Weighs skill and season behind the rest. */
    private Verdict verdict(EvaluationContext moment) {
        var truth = healthAndOrder(moment);
        if (truth == Truth.NO) {
            return Verdict.HELD;
        }
        var open = season.truth(moment);
        if (truth == Truth.UNKNOWN || open == Truth.UNKNOWN) {
            return Verdict.MEASURE;
        }
        if (!isSkilled(moment)) {
            return Verdict.LESSON;
        }
        return open == Truth.YES ? Verdict.READY : Verdict.SEASON;
    }

    /** Looks no further once something is known not to be met. */
    private Truth healthAndOrder(EvaluationContext moment) {
        var truth = needed(moment).and(order.truth(moment));
        for (int i = 0; i < criteria.length && truth != Truth.NO; i++) {
            truth = truth.and(criteria[i].truth(moment));
        }
        return truth == Truth.NO ? truth : truth.and(strain(moment));
    }

    private Truth strain(EvaluationContext moment) {
        var dose = rule.dose();
        if ((isHeavy() && moment.heavyThisSeason > 0)
                || !moment.quietFor(rule.quietDaysBefore())
                || (dose != null && moment.dose(dose).truth() == Truth.NO)) {
            return Truth.NO;
        }
        return rule.stress() > 0 ? bearable(moment) : Truth.YES;
    }

    private boolean isHeavy() {
        return rule.stress() >= TechniqueRule.HEAVY_STRESS;
    }

    private Truth bearable(EvaluationContext moment) {
        return Double.isNaN(moment.loadBudget)
                ? Truth.UNKNOWN
                : Truth.of(moment.loadLeft + rule.stress() <= moment.loadBudget);
    }

    private boolean isSkilled(EvaluationContext moment) {
        var skills = moment.subject.skills();
        return rule.skillLesson() == null || skills == null || skills.contains(rule.skillLesson());
    }

    /**
     * Adds the reasons of a technique that is not settled; skill and season come last.
     *
     * @param verdict on it
     * @param all met ones too
     */
    void tell(List<Reason> reasons, EvaluationContext moment, Verdict verdict, boolean all) {
        if (needed(moment) == Truth.UNKNOWN) {
            reasons.add(new Reason.OfNeed(Truth.UNKNOWN, missing(moment)));
        }
        order.tell(reasons, moment, all);
        for (var criterion : criteria) {
            criterion.tell(reasons, moment, all);
        }
        tellStrain(reasons, moment, all);
        var lesson = rule.skillLesson();
        if (lesson != null && moment.subject.skills() != null) {
            var skilled = isSkilled(moment);
            if (all || !skilled) {
                reasons.add(new Reason.OfSkill(lesson, skilled));
            }
        }
        if (all || season.truth(moment) != Truth.YES) {
            reasons.add(season.reason(moment, verdict == Verdict.SEASON));
        }
    }

    private void tellStrain(List<Reason> reasons, EvaluationContext moment, boolean all) {
        if (rule.stress() > 0) {
            var truth = bearable(moment);
            if (all || truth != Truth.YES) {
                reasons.add(load(moment, truth));
            }
        }
        if (isHeavy()) {
            tell(reasons, new Reason.OfHeavy(moment.heavyThisSeason), all);
        }
        if (rule.quietDaysBefore() > 0) {
            tell(reasons, moment.quiet(rule.quietDaysBefore()), all);
        }
        var dose = rule.dose();
        if (dose != null) {
            tell(reasons, moment.dose(dose), all);
        }
    }

    private static void tell(List<Reason> reasons, Reason reason, boolean all) {
        if (all || reason.truth() != Truth.YES) {
            reasons.add(reason);
        }
    }

    private Reason load(EvaluationContext moment, Truth truth) {
        return new Reason.OfLoad(moment.loadLeft, rule.stress(), moment.loadBudget, truth);
    }

    /** As something to be done first: signed off once is enough, and so is not being needed. */
    Truth truthAsPredecessor(EvaluationContext moment) {
        return !forSpecies || moment.doneOn(position) != null ? Truth.YES : needed(moment).not();
    }

    Reason asPredecessor(Truth truth) {
        return switch (truth) {
            case YES -> firstDone;
            case UNKNOWN -> firstUnknown;
            case NO -> firstNotDone;
        };
    }

    Reason asNeed() {
        return asNeed;
    }

    /** Whether a tree goes on without it: known not to be needed, and never done. */
    boolean isPassedOver(EvaluationContext moment) {
        return forSpecies && moment.doneOn(position) == null && needed(moment) == Truth.NO;
    }

    /** Whether the tree shows that it needs it, even if it was done before. */
    boolean isStillNeeded(EvaluationContext moment) {
        return forSpecies && needed(moment) == Truth.YES;
    }

    private List<Fact> missing(EvaluationContext moment) {
        var missing = new ArrayList<Fact>();
        var neededWhen = rule.neededWhen();
        if (neededWhen != null) {
            neededWhen.eachFact(
                    fact -> {
                        if (moment.facts.find(fact) == null && !missing.contains(fact)) {
                            missing.add(fact);
                        }
                    });
        }
        return missing;
    }
}
