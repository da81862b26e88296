package org.ripewood.core.progress;

import org.ripewood.core.progress.TechniqueText.Check;

import java.util.ArrayList;
import java.util.Collections;
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
        var order = new OrderText(this, tongue, traits, rules);
        var checks = checks(rule, order);
        return new TechniqueText(
                place,
                rule.code(),
                rule.isFor(traits),
                Bool.all(
                        Bool.atLeast(done, 0),
                        repeat == null ? Bool.TRUE : Bool.atLeast(done, repeat).not()),
                conditions.yes(rule.neededWhen()),
                conditions.no(rule.neededWhen()),
                order.locals(),
                checks,
                lesson == null ? Bool.TRUE : tongue.skilled(lesson),
                seasons.check(rule.season()));
    }

    private List<Check> checks(TechniqueRule rule, OrderText order) {
        var checks = new ArrayList<Check>();
        if (rule.neededWhen() != null) {
            checks.add(check("needed", needed(rule), Bool.TRUE));
        }
        checks.addAll(order.checks(rule));
        rule.criteria().forEach(criterion -> checks.add(criterion(criterion, rule.stress())));
        if (rule.stress() > 0) {
            var load = "%s + %s".formatted(tongue.figure("load"), rule.stress());
            var fits = Bool.atMost(load, tongue.figure("budget"));
            checks.add(check("load", tongue.known(Fact.VIGOUR_INDEX), fits));
        }
        if (rule.stress() >= TechniqueRule.HEAVY_STRESS) {
            checks.add(check("heavy", Bool.TRUE, Bool.equal(tongue.figure("heavy"), 0)));
        }
        if (rule.quietDaysBefore() > 0) {
            checks.add(check("quiet", Bool.TRUE, tongue.quiet(rule.quietDaysBefore())));
        }
        var dose = rule.dose();
        if (dose != null) {
            checks.add(check("dose", Bool.TRUE, withinDose(dose)));
        }
        return checks;
    }

    static Check check(String key, Bool known, Bool met) {
        return new Check(key, known, met, Bool.FALSE);
    }

    Bool needed(TechniqueRule rule) {
        return tongue.shared("needed", place(rule), conditions.yes(rule.neededWhen()));
    }

    Bool spared(TechniqueRule rule) {
        return tongue.shared("spared", place(rule), conditions.no(rule.neededWhen()));
    }

    private int place(TechniqueRule rule) {
        return rules.techniques().indexOf(rule);
    }

    /** What is looked at on the day counts only as far as somebody has looked. */
    Check criterion(Criterion criterion, double stress) {
        var fact = criterion.fact();
        var seen = Bool.all(Bool.atLeast(tongue.age(fact), 0), fresh(criterion));
        var met = conditions.met(fact, criterion.requirementFor(traits));
        var eye =
                criterion.instructorsEye()
                        || (fact == Fact.VIGOUR_INDEX && stress > TechniqueRule.LIGHT_STRESS);
        var doubted = eye ? tongue.byStudent(fact) : Bool.FALSE;
        return criterion.onTheDay()
                ? new Check(
                        criterion.key(),
                        Bool.TRUE,
                        Bool.any(seen.not(), met),
                        Bool.all(seen, doubted))
                : new Check(criterion.key(), seen, met, doubted);
    }

    private Bool fresh(Criterion criterion) {
        var days = criterion.freshDays();
        if (days == null || criterion.ages() == Criterion.Ages.NEVER) {
            return Bool.TRUE;
        }
        var fresh = Bool.atMost(tongue.age(criterion.fact()), days);
        return criterion.ages() == Criterion.Ages.DAYS
                ? fresh
                : Bool.any(fresh, Bool.atMost(tongue.grown(criterion.fact()), days));
    }

    /** The first limit that fits counts; strong trees may have one of their own. */
    private Bool withinDose(DoseRule dose) {
        var within = withinLimit(dose, dose.limitShare());
        var limits = new ArrayList<>(dose.limits());
        Collections.reverse(limits);
        for (var limit : limits) {
            if (traits.isAnyOf(limit.species(), limit.groups())) {
                var vigour = tongue.number(Fact.VIGOUR_INDEX);
                var strong = Bool.atLeast(vigour, limit.fromVigour());
                var own = withinLimit(dose, limit.share());
                within =
                        limit.fromVigour() == 0
                                ? own
                                : Bool.any(Bool.all(strong, own), Bool.all(strong.not(), within));
            }
        }
        return within;
    }

    private Bool withinLimit(DoseRule dose, double share) {
        var roots = dose.kind() == DoseRule.Kind.ROOT;
        var limit = roots ? Math.min(share, traits.maxRootShare()) : share;
        var taken = tongue.figure(roots ? "root" : "foliage");
        var dosed = "%s + %s".formatted(taken, Math.min(dose.typicalShare(), limit));
        return Bool.atMost(dosed, limit + DOSE_SLACK);
    }
}
