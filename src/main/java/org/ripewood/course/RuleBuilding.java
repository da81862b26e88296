package org.ripewood.course;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.ripewood.core.progress.Condition;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.Criterion.Ages;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.SeasonRule;
import org.ripewood.core.progress.StageRule;
import org.ripewood.core.progress.Strength;
import org.ripewood.core.route.Durations;
import org.ripewood.core.route.Seasons;
import org.ripewood.core.route.SlowChange;
import org.ripewood.core.route.Spread;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.WeatherRule;
import org.ripewood.core.season.WorkClock;

/** Makes conditions, criteria, seasons and durations of what files say. */
final class RuleBuilding {

    private RuleBuilding() {}

    static Condition condition(Part condition) {
        if (condition.has("all")) {
            return new Condition.All(conditions(condition.each("all")));
        }
        if (condition.has("any")) {
            return new Condition.Any(conditions(condition.each("any")));
        }
        if (condition.has("not")) {
            return new Condition.Not(condition(condition.at("not")));
        }
        return new Condition.Test(fact(condition), requirement(condition));
    }

    private static List<Condition> conditions(List<Part> parts) {
        return parts.stream().map(RuleBuilding::condition).toList();
    }

    static Criterion criterion(Part criterion, Map<Fact, FactText> facts) {
        var text = facts.get(fact(criterion));
        var fresh = criterion.at("fresh");
        return new Criterion(
                fact(criterion),
                requirement(criterion),
                fresh.isThere() ? (Integer) fresh.value().intValue() : null,
                "must".equals(criterion.text("strength")) ? Strength.MUST : Strength.SHOULD,
                criterion.has("onTheDay") && criterion.at("onTheDay").value().booleanValue(),
                "instructor".equals(criterion.text("eye")),
                criterion.each("overrides").stream().map(RuleBuilding::variant).toList(),
                criterion.requireText("why"),
                text == null ? Ages.DAYS : text.ages());
    }

    /** A stage with what a tree must have to leave it. */
    static StageRule stage(Part stage, Map<Fact, FactText> facts) {
        return new StageRule(
                stage.requireText("code"),
                stage.requireInt("order"),
                stage.each("readyWhen").stream()
                        .map(
                                one ->
                                        new StageRule.Asked(
                                                criterion(one, facts),
                                                one.has("when") ? condition(one.at("when")) : null))
                        .toList());
    }

    private static Criterion.Variant variant(Part override) {
        return new Criterion.Variant(
                Set.copyOf(override.texts("species")),
                Set.copyOf(override.texts("groups")),
                requirement(override));
    }

    private static Requirement requirement(Part test) {
        if (test.has("atLeast")) {
            return new Requirement.AtLeast(test.number("atLeast"));
        }
        if (test.has("atMost")) {
            return new Requirement.AtMost(test.number("atMost"));
        }
        if (test.has("oneOf")) {
            return new Requirement.OneOf(Set.copyOf(test.texts("oneOf")));
        }
        return new Requirement.Is(Objects.requireNonNull(FactCheck.value(test.at("is"))));
    }

    static SeasonRule season(Part season) {
        return new SeasonRule(
                season.each("windows").stream()
                        .map(
                                line ->
                                        new SeasonRule.Window(
                                                Set.copyOf(line.texts("species")),
                                                Set.copyOf(line.texts("groups")),
                                                stages(line)))
                        .toList(),
                season.each("avoid").stream()
                        .map(
                                line ->
                                        new SeasonRule.Avoid(
                                                Set.copyOf(line.texts("species")),
                                                Set.copyOf(line.texts("groups")),
                                                stages(line),
                                                line.requireText("why")))
                        .toList(),
                WorkClock.find(String.valueOf(season.text("clock"))).orElse(null),
                weather(season),
                season.requireText("why"));
    }

    private static WeatherRule weather(Part season) {
        var frozen = season.text("notWhileFrozen");
        return new WeatherRule(
                season.has("growingDaysLeft") ? season.requireInt("growingDaysLeft") : 0,
                frozen == null
                        ? WeatherRule.Frozen.NOTHING
                        : WeatherRule.Frozen.valueOf(frozen.toUpperCase(Locale.ROOT)),
                season.has("nearDangerousCold"));
    }

    private static List<StageRange> stages(Part line) {
        return line.texts("stages").stream().map(StageRange::parse).toList();
    }

    private static Fact fact(Part test) {
        return Fact.find(test.requireText("fact")).orElseThrow();
    }

    /** How long things take on a route. */
    static Durations durations(Part file) {
        return new Durations(
                file.each("changes").stream().map(RuleBuilding::change).toList(),
                spread(file.at("spread")));
    }

    private static SlowChange change(Part entry) {
        return new SlowChange(
                fact(entry),
                Set.copyOf(entry.texts("after")),
                Set.copyOf(entry.texts("species")),
                Set.copyOf(entry.texts("groups")),
                entry.has("each") ? entry.number("each") : 0,
                seasons(entry.at("seasons")));
    }

    private static Seasons seasons(Part seasons) {
        return new Seasons(seasons.number("low"), seasons.number("usual"), seasons.number("high"));
    }

    private static Spread spread(Part spread) {
        return new Spread(
                spread.number("seasonDays"),
                spread.number("recovery"),
                spread.number("missed"),
                spread.number("lateDays"));
    }
}
