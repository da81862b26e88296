package org.ripewood.core.progress;

import java.util.List;
import java.util.Map;

/** A criterion with the requirement of one species. */
final class CompiledCriterion {

    /**
     * What a criterion asks of a tree, whichever technique asks it: some 500 criteria of a species
     * ask no more than 150 different things, and each is held against a tree once.
     *
     * @param freshDays days evidence stays good; {@link Long#MAX_VALUE} when it does not age
     */
    record Ask(
            Fact fact,
            Requirement required,
            long freshDays,
            Criterion.Ages ages,
            boolean onTheDay,
            boolean instructorsEye) {

        Reason.Look look(EvaluationContext moment) {
            var seen = moment.facts.seen(fact);
            if (seen == null) {
                return unseen();
            }
            long ageDays = moment.ageDays(seen);
            // growing days are never more than days of the calendar, which cost nothing to count
            if (ageDays < 0) {
                return unseen();
            }
            if (ageDays > freshDays && moment.age(seen, ages) > freshDays) {
                return onTheDay ? Reason.Look.ON_THE_DAY : Reason.Look.STALE;
            }
            if (!required.metBy(seen.value())) {
                return Reason.Look.NOT_MET;
            }
            return instructorsEye && seen.evidence().source() == Source.STUDENT
                    ? Reason.Look.PROVISIONAL
                    : Reason.Look.MET;
        }

        private Reason.Look unseen() {
            return onTheDay ? Reason.Look.ON_THE_DAY : Reason.Look.MISSING;
        }
    }

    private final Criterion criterion;
    private final String key;
    private final Ask ask;
    private final int number;

    /** The reason of a tree of which nobody has seen the fact. */
    private final Reason.OfCriterion unseen;

    private CompiledCriterion(Criterion criterion, Ask ask, int number) {
        this.criterion = criterion;
        this.key = criterion.key();
        this.ask = ask;
        this.number = number;
        this.unseen =
                new Reason.OfCriterion(
                        key, criterion, ask.required, ask.unseen(), null, ask.onTheDay ? 1 : 0);
    }

    /**
     * Strength by a student's own grades is good enough for light work; what asks more of the tree
     * asks for an instructor's eye, whatever the criterion says.
     *
     * @param stress of the technique
     * @param asks numbers of what is asked so far, to which this one's is added
     */
    static CompiledCriterion compile(
            Criterion criterion, Traits traits, double stress, Map<Ask, Integer> asks) {
        var strengthForMore =
                criterion.fact() == Fact.VIGOUR_INDEX && stress > TechniqueRule.LIGHT_STRESS;
        var fresh = criterion.freshDays();
        var ask =
                new Ask(
                        criterion.fact(),
                        criterion.requirementFor(traits),
                        fresh == null ? Long.MAX_VALUE : fresh,
                        criterion.ages(),
                        criterion.onTheDay(),
                        criterion.instructorsEye() || strengthForMore);
        return new CompiledCriterion(
                criterion, ask, asks.computeIfAbsent(ask, added -> asks.size()));
    }

    String key() {
        return key;
    }

    Fact fact() {
        return ask.fact;
    }

    Truth truth(EvaluationContext moment) {
        return look(moment).truth();
    }

    private Reason.Look look(EvaluationContext moment) {
        return moment.look(number, ask);
    }

    /** Adds its reason, a met one only if all are wanted. */
    void tell(List<Reason> reasons, EvaluationContext moment, boolean all) {
        if (all || truth(moment) != Truth.YES) {
            reasons.add(reason(moment));
        }
    }

    Reason reason(EvaluationContext moment) {
        var seen = moment.facts.seen(ask.fact);
        if (seen == null) {
            return unseen;
        }
        double howFar = ask.required.howFar(seen.value());
        return new Reason.OfCriterion(
                key, criterion, ask.required, look(moment), seen.evidence(), howFar);
    }
}
