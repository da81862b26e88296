package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.PlaceYear;
import org.ripewood.core.season.StageClock;
import org.ripewood.core.season.StageRange;

/** Makes small rules and trees for tests, each differing from a plain one in what it says. */
final class Bench {

    static final LocalDate DAY = LocalDate.of(2024, 2, 20);
    static final Traits MAPLE =
            new Traits("maple", Habit.DECIDUOUS, Set.of("deciduous", "maple"), 0.33);
    static final Traits PINE = new Traits("pine", Habit.EVERGREEN_CONIFER, Set.of("conifer"), 0.25);
    static final SeasonRule ANY_TIME = new SeasonRule(List.of(), List.of(), "");

    private Bench() {}

    static Criterion atLeast(Fact fact, double bound) {
        return criterion(fact, new Requirement.AtLeast(bound), null, false);
    }

    static Criterion atMost(Fact fact, double bound) {
        return criterion(fact, new Requirement.AtMost(bound), null, false);
    }

    static Criterion criterion(
            Fact fact, Requirement requirement, @Nullable Integer freshDays, boolean eye) {
        return new Criterion(
                fact, requirement, freshDays, Strength.SHOULD, false, eye, List.of(), "why");
    }

    static SeasonRule season(String... stages) {
        var ranges = Stream.of(stages).map(StageRange::parse).toList();
        var window = new SeasonRule.Window(Set.of(), Set.of(), ranges);
        return new SeasonRule(List.of(window), List.of(), "");
    }

    /** A technique that asks for nothing until told otherwise. */
    static final class RuleOf {
        final String code;
        int stageOrder = 1;
        Set<String> groups = Set.of();
        TechniqueRule.Purpose purpose = TechniqueRule.Purpose.OTHER;
        @Nullable Condition neededWhen;
        @Nullable Integer repeatAfterDays;
        List<String> after = List.of();
        List<Criterion> criteria = List.of();
        SeasonRule season = ANY_TIME;
        double stress;
        int quietDaysBefore;
        @Nullable DoseRule dose;
        @Nullable String skillLesson;

        RuleOf(String code) {
            this.code = code;
        }

        TechniqueRule make() {
            return new TechniqueRule(
                    code,
                    stageOrder,
                    purpose,
                    Set.of(),
                    groups,
                    neededWhen,
                    repeatAfterDays,
                    after,
                    criteria,
                    season,
                    stress,
                    90,
                    quietDaysBefore,
                    dose,
                    skillLesson);
        }
    }

    /** A tree nobody knows anything of until told otherwise. */
    static final class TreeOf {
        Traits traits = MAPLE;
        final List<Evidence> evidence = new ArrayList<>();
        final List<Work> works = new ArrayList<>();
        final Map<String, LocalDate> signedOff = new HashMap<>();
        @Nullable Set<String> skills;
        StageClock stages = day -> 1;
        double latitude = 50;
        Recovery recovery = Recovery.PLAIN;
        Forecasts forecasts = Forecasts.NONE;
        GrowingDays growing = GrowingDays.EVERY_DAY;

        TreeOf saw(Fact fact, double amount) {
            return saw(fact, Value.of(amount));
        }

        TreeOf saw(Fact fact, Value value) {
            return saw(fact, value, DAY.minusDays(5), Source.INSTRUCTOR);
        }

        TreeOf saw(Fact fact, Value value, LocalDate on, Source source) {
            evidence.add(new Evidence(fact, value, on, source, "somebody", evidence.size() + 1));
            return this;
        }

        Subject make() {
            return new Subject(
                    traits,
                    Facts.of(evidence),
                    new WorkLedger(works, latitude, recovery),
                    signedOff,
                    skills,
                    stages,
                    PlaceYear.ANY,
                    forecasts,
                    growing);
        }
    }

    static Standing judge(TreeOf tree, RuleOf rule, RuleOf... others) {
        return rulebook(rule, others).standing(tree.make(), rule.code, DAY);
    }

    static Opening opening(TreeOf tree, RuleOf rule, RuleOf... others) {
        return rulebook(rule, others).openings(tree.make(), DAY).of(rule.code).orElseThrow();
    }

    static Rulebook rulebook(RuleOf rule, RuleOf... others) {
        var rules = new ArrayList<TechniqueRule>();
        rules.add(rule.make());
        for (var other : others) {
            rules.add(other.make());
        }
        return Rulebook.compile(rules, List.of(MAPLE, PINE));
    }
}
