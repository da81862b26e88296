package org.ripewood.core.progress;

/** A criterion with the requirement of one species. */
final class CompiledCriterion {

    private final Criterion criterion;
    private final String key;
    private final Fact fact;
    private final Requirement required;
    private final long freshDays;
    private final boolean onTheDay;
    private final boolean instructorsEye;

    private CompiledCriterion(
            Criterion criterion, Requirement required, long freshDays, boolean instructorsEye) {
        this.criterion = criterion;
        this.key = criterion.key();
        this.fact = criterion.fact();
        this.required = required;
        this.freshDays = freshDays;
        this.onTheDay = criterion.onTheDay();
        this.instructorsEye = instructorsEye;
    }

    /**
     * Strength by a student's own grades is good enough for light work; what asks more of the tree
     * asks for an instructor's eye, whatever the criterion says.
     *
     * @param stress of the technique
     */
    static CompiledCriterion compile(Criterion criterion, Traits traits, double stress) {
        var strengthForMore =
                criterion.fact() == Fact.VIGOUR_INDEX && stress > TechniqueRule.LIGHT_STRESS;
        var fresh = criterion.freshDays();
        return new CompiledCriterion(
                criterion,
                criterion.requirementFor(traits),
                fresh == null ? Long.MAX_VALUE : fresh,
                criterion.instructorsEye() || strengthForMore);
    }

    String key() {
        return key;
    }

    Fact fact() {
        return fact;
    }

    Reason judge(EvaluationContext moment) {
        var seen = moment.facts.seen(fact);
        if (seen == null) {
            var look = onTheDay ? Reason.Look.ON_THE_DAY : Reason.Look.MISSING;
            return new Reason.OfCriterion(key, criterion, required, look, null, onTheDay ? 1 : 0);
        }
        var met = required.metBy(seen.value());
        var look = look(seen, moment, met);
        var howFar = met ? 1 : required.howFar(seen.value());
        return new Reason.OfCriterion(key, criterion, required, look, seen.evidence(), howFar);
    }

    private Reason.Look look(Facts.Seen seen, EvaluationContext moment, boolean met) {
        long ageDays = moment.ageDays(seen);
        if (ageDays < 0) {
            return onTheDay ? Reason.Look.ON_THE_DAY : Reason.Look.MISSING;
        }
        // growing days are never more than days of the calendar, which cost nothing to count
        if (ageDays > freshDays && moment.age(seen, criterion.ages()) > freshDays) {
            return onTheDay ? Reason.Look.ON_THE_DAY : Reason.Look.STALE;
        }
        if (!met) {
            return Reason.Look.NOT_MET;
        }
        return instructorsEye && seen.evidence().source() == Source.STUDENT
                ? Reason.Look.PROVISIONAL
                : Reason.Look.MET;
    }
}
