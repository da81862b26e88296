package org.ripewood.core.progress;

/** A criterion with the requirement of one species. */
final class CompiledCriterion {

    private final Criterion criterion;
    private final Fact fact;
    private final Requirement required;
    private final long freshDays;
    private final boolean instructorsEye;

    private CompiledCriterion(Criterion criterion, Requirement required, long freshDays) {
        this.criterion = criterion;
        this.fact = criterion.fact();
        this.required = required;
        this.freshDays = freshDays;
        this.instructorsEye = criterion.instructorsEye();
    }

    static CompiledCriterion compile(Criterion criterion, Traits traits) {
        var fresh = criterion.freshDays();
        return new CompiledCriterion(
                criterion,
                criterion.requirementFor(traits),
                fresh == null ? Long.MAX_VALUE : fresh);
    }

    Reason judge(Moment moment) {
        var evidence = moment.facts.find(fact);
        if (evidence == null) {
            return new Reason.OfCriterion(criterion, required, Reason.Look.MISSING, null, 0);
        }
        var look = look(evidence, moment.ageDays(evidence));
        return new Reason.OfCriterion(
                criterion, required, look, evidence, required.howFar(evidence.value()));
    }

    private Reason.Look look(Evidence evidence, long ageDays) {
        if (ageDays < 0) {
            return Reason.Look.MISSING;
        }
        if (ageDays > freshDays) {
            return Reason.Look.STALE;
        }
        if (!required.metBy(evidence.value())) {
            return Reason.Look.NOT_MET;
        }
        return instructorsEye && evidence.source() == Source.STUDENT
                ? Reason.Look.PROVISIONAL
                : Reason.Look.MET;
    }
}
