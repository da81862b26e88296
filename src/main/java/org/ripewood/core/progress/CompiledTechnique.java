package org.ripewood.core.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One technique's rules for one species. */
final class CompiledTechnique {

    private final TechniqueRule rule;
    private final int position;
    private final boolean forSpecies;
    private final CompiledOrder order;
    private final CompiledCriterion[] criteria;
    private final CompiledSeason season;

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
    }

    /**
     * @param earlier the techniques compiled so far, all that may come before this one
     * @param development positions of those among them that make the material
     */
    static CompiledTechnique compile(
            TechniqueRule rule,
            int position,
            Traits traits,
            Map<String, CompiledTechnique> earlier,
            int[] development) {
        var criteria =
                rule.criteria().stream()
                        .map(
                                criterion ->
                                        CompiledCriterion.compile(criterion, traits, rule.stress()))
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

    Standing judge(EvaluationContext moment, CompiledTechnique[] all) {
        var settled = settled(moment);
        if (settled != null) {
            return settled;
        }
        var reasons = new ArrayList<Reason>(criteria.length + 12);
        var truth = gather(reasons, moment, all);
        return new Standing(rule.code(), moment.on, weigh(truth, reasons, moment), reasons);
    }

    CompiledSeason season() {
        return season;
    }

    /** Verdicts that need no weighing: another species' technique, done, or not needed. */
    private @Nullable Standing settled(EvaluationContext moment) {
        if (!forSpecies) {
            return standing(moment, Verdict.NOT_NEEDED, new Reason.OfSpecies());
        }
        var doneOn = moment.doneOn(position);
        if (doneOn != null) {
            var repeat = rule.repeatAfterDays();
            var due = repeat == null ? null : doneOn.plusDays(repeat);
            if (due == null || due.isAfter(moment.on)) {
                return standing(moment, Verdict.DONE, new Reason.OfDone(doneOn, due));
            }
        }
        return needed(moment) == Truth.NO
                ? standing(moment, Verdict.NOT_NEEDED, new Reason.OfNeed(Truth.NO, List.of()))
                : null;
    }

    private Standing standing(EvaluationContext moment, Verdict verdict, Reason reason) {
        return new Standing(rule.code(), moment.on, verdict, List.of(reason));
    }

    private Truth needed(EvaluationContext moment) {
        return moment.needed(position, rule.neededWhen());
    }

    /** Collects every reason and tells the health-and-order truth; skill and season come last. */
    private Truth gather(List<Reason> reasons, EvaluationContext moment, CompiledTechnique[] all) {
        var truth = Truth.YES;
        if (needed(moment) == Truth.UNKNOWN) {
            reasons.add(new Reason.OfNeed(Truth.UNKNOWN, missing(moment)));
            truth = Truth.UNKNOWN;
        }
        truth = truth.and(order.judge(reasons, moment, all));
        for (var criterion : criteria) {
            truth = truth.and(add(reasons, criterion.judge(moment)));
        }
        if (rule.stress() > 0) {
            truth = truth.and(add(reasons, load(moment)));
        }
        if (rule.stress() >= TechniqueRule.HEAVY_STRESS) {
            truth = truth.and(add(reasons, new Reason.OfHeavy(moment.heavyThisSeason)));
        }
        if (rule.quietDaysBefore() > 0) {
            truth = truth.and(add(reasons, moment.quiet(rule.quietDaysBefore())));
        }
        var dose = rule.dose();
        if (dose != null) {
            truth = truth.and(add(reasons, moment.dose(dose)));
        }
        return truth;
    }

    /** Weighs skill and season behind the rest, and adds their reasons. */
    private Verdict weigh(Truth truth, List<Reason> reasons, EvaluationContext moment) {
        var lesson = rule.skillLesson();
        var skills = moment.subject.skills();
        var skilled = true;
        if (lesson != null && skills != null) {
            skilled = skills.contains(lesson);
            reasons.add(new Reason.OfSkill(lesson, skilled));
        }
        var others = truth == Truth.YES && skilled;
        var open = season.judge(moment, others);
        reasons.add(open);
        if (truth == Truth.NO) {
            return Verdict.HELD;
        }
        if (truth == Truth.UNKNOWN || open.truth() == Truth.UNKNOWN) {
            return Verdict.MEASURE;
        }
        if (!skilled) {
            return Verdict.LESSON;
        }
        return open.truth() == Truth.YES ? Verdict.READY : Verdict.SEASON;
    }

    private Reason load(EvaluationContext moment) {
        var budget = moment.loadBudget;
        var truth =
                Double.isNaN(budget)
                        ? Truth.UNKNOWN
                        : Truth.of(moment.loadLeft + rule.stress() <= budget);
        return new Reason.OfLoad(moment.loadLeft, rule.stress(), budget, truth);
    }

    /** As something to be done first: signed off once is enough, and so is not being needed. */
    Reason asPredecessor(EvaluationContext moment) {
        var truth =
                !forSpecies || moment.doneOn(position) != null ? Truth.YES : needed(moment).not();
        return new Reason.OfOrder(rule.code(), truth);
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

    static Truth add(List<Reason> reasons, Reason reason) {
        reasons.add(reason);
        return reason.truth();
    }
}
