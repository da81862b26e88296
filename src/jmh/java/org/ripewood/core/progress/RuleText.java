package org.ripewood.core.progress;

import org.ripewood.core.progress.TechniqueText.Check;

import java.util.ArrayList;
import java.util.List;

/** Writes the rules for one species in a language. */
final class RuleText {

    private static final double DOSE_SLACK = 1e-3;

    private final Tongue tongue;
    private final Traits traits;
    private final Rules rules;
    private final ConditionText conditions;
    private final SeasonText seasons;

    RuleText(Tongue tongue, Traits traits, Rules rules) {
        this.tongue = tongue;
        this.traits = traits;
        this.rules = rules;
        this.conditions = new ConditionText(tongue);
        this.seasons = new SeasonText(tongue, traits);
    }

    List<TechniqueText> techniques() {
        var texts = new ArrayList<TechniqueText>();
        for (var rule : rules.techniques()) {
            texts.add(text(rule, texts.size()));
        }
        return texts;
    }

    private TechniqueText text(TechniqueRule rule, int place) {
        var done = tongue.done(rule.code());
        var repeat = rule.repeatAfterDays();
        var lesson = rule.skillLesson();
        return new TechniqueText(
                place,
                rule.code(),
                rule.isFor(traits),
                Bool.all(
                        Bool.atLeast(done, 0),
                        repeat == null ? Bool.TRUE : Bool.atLeast(done, repeat).not()),
                conditions.no(rule.neededWhen()),
                checks(rule),
                lesson == null ? Bool.TRUE : tongue.skilled(lesson),
                seasons.check(rule.season()));
    }

    private List<Check> checks(TechniqueRule rule) {
        var checks = new ArrayList<Check>();
        if (rule.neededWhen() != null) {
            checks.add(check("needed", conditions.yes(rule.neededWhen()), Bool.TRUE));
        }
        rule.after().forEach(code -> checks.add(order(rules.technique(code))));
        rule.criteria().forEach(criterion -> checks.add(criterion(criterion)));
        if (rule.stress() > 0) {
            var load = "%s + %s".formatted(tongue.figure("load"), rule.stress());
            var fits = Bool.atMost(load, tongue.figure("budget"));
            checks.add(check("load", tongue.known(Fact.VIGOUR_INDEX), fits));
        }
        if (rule.stress() >= TechniqueRule.HEAVY_STRESS) {
            checks.add(check("heavy", Bool.TRUE, Bool.equal(tongue.figure("heavy"), 0)));
        }
        if (rule.quietDaysBefore() > 0) {
            var rested = Bool.atLeast(tongue.figure("quiet"), rule.quietDaysBefore());
            checks.add(check("quiet", Bool.TRUE, rested));
        }
        var dose = rule.dose();
        if (dose != null) {
            checks.add(check("dose", Bool.TRUE, withinDose(dose)));
        }
        return checks;
    }

    private static Check check(String key, Bool known, Bool met) {
        return new Check(key, known, met, Bool.FALSE);
    }

    private Check order(TechniqueRule first) {
        var met =
                first.isFor(traits)
                        ? Bool.any(
                                Bool.atLeast(tongue.done(first.code()), 0),
                                conditions.no(first.neededWhen()))
                        : Bool.TRUE;
        var known = Bool.any(met, conditions.yes(first.neededWhen()));
        return check("after." + first.code(), known, met);
    }

    private Check criterion(Criterion criterion) {
        var fact = criterion.fact();
        var age = tongue.age(fact);
        var fresh = criterion.freshDays();
        return new Check(
                criterion.key(),
                Bool.all(Bool.atLeast(age, 0), fresh == null ? Bool.TRUE : Bool.atMost(age, fresh)),
                conditions.met(fact, criterion.requirementFor(traits)),
                criterion.instructorsEye() ? tongue.byStudent(fact) : Bool.FALSE);
    }

    private Bool withinDose(DoseRule dose) {
        var limit = dose.limitShare();
        if (dose.kind() == DoseRule.Kind.ROOT) {
            limit = Math.min(limit, traits.maxRootShare());
        }
        var taken = tongue.figure(dose.kind() == DoseRule.Kind.ROOT ? "root" : "foliage");
        var dosed = "%s + %s".formatted(taken, Math.min(dose.typicalShare(), limit));
        return Bool.atMost(dosed, limit + DOSE_SLACK);
    }
}
