package org.ripewood.core.progress;

import static org.ripewood.core.progress.Bench.DAY;
import static org.ripewood.core.progress.Bench.atLeast;
import static org.ripewood.core.progress.Bench.atMost;
import static org.ripewood.core.progress.Bench.criterion;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;
import org.ripewood.core.progress.Bench.RuleOf;
import org.ripewood.core.progress.Bench.TreeOf;
import org.ripewood.core.season.StageRange;

/** One case a line: what the rule asks, what the tree has, what comes out. */
final class VerdictCases {

    private VerdictCases() {}

    static Stream<Arguments> all() {
        return Stream.of(
                row("all met", wiring(), strong(), Verdict.READY),
                row("a wound open", wiring(), wounded(), Verdict.HELD),
                row("nobody looked", wiring(), new TreeOf(), Verdict.MEASURE),
                row("one fails, one is unknown", wiring(), onlyWound(), Verdict.HELD),
                row("stale evidence", fresh(30), seen(31), Verdict.MEASURE),
                row("evidence of the last fresh day", fresh(30), seen(30), Verdict.READY),
                row("moist soil nobody has tried", onTheDay(), strong(), Verdict.READY),
                row("moist soil tried long ago", onTheDay(), moist(true, 9), Verdict.READY),
                row("dry soil tried long ago", onTheDay(), moist(false, 9), Verdict.READY),
                row("dry soil today", onTheDay(), moist(false, 1), Verdict.HELD),
                row("evidence from later", fresh(30), seen(-1), Verdict.MEASURE),
                row("a student's eye for an instructor's", eye(), student(80), Verdict.MEASURE),
                row("a student's eye can fail it", eye(), student(10), Verdict.HELD),
                row("window closed", inSeason("91-00"), strong(), Verdict.SEASON),
                row("window over winter open", inSeason("91-03"), strong(), Verdict.READY),
                row("held counts before season", inSeason("91-00"), wounded(), Verdict.HELD),
                row("a stage to avoid", avoiding("00-02"), strong(), Verdict.SEASON),
                row("flowers nobody looked at", avoiding("60-69"), strong(), Verdict.MEASURE),
                row("in flower", avoiding("60-69"), flowering(65), Verdict.SEASON),
                row("flowers over", avoiding("60-65"), flowering(69), Verdict.READY),
                row("skill not shown", skilled(), withSkills(Set.of()), Verdict.LESSON),
                row("skill shown", skilled(), withSkills(Set.of("wires")), Verdict.READY),
                row("keeper is no student", skilled(), strong(), Verdict.READY),
                row(
                        "skill before season",
                        skilledOffSeason(),
                        withSkills(Set.of()),
                        Verdict.LESSON),
                row("not for the species", forGroup("conifer"), strong(), Verdict.NOT_NEEDED),
                row("for the species", forGroup("maple"), strong(), Verdict.READY),
                row("not needed", whenBulging(), bulge(false), Verdict.NOT_NEEDED),
                row("needed", whenBulging(), bulge(true), Verdict.READY),
                row("need unknown", whenBulging(), strong(), Verdict.MEASURE),
                row("done once", wiring(), done(400), Verdict.DONE),
                row("done, not due again", repeated(300), done(299), Verdict.DONE),
                row("due again", repeated(300), done(300), Verdict.READY),
                row("strong enough for the load", loaded(8, 0), strong(), Verdict.READY),
                row("load left from last work", loaded(4, 0), worked(6, 20), Verdict.HELD),
                row("load gone", loaded(4, 0), worked(6, 90), Verdict.READY),
                row("load without vigour", bareLoad(), new TreeOf(), Verdict.MEASURE),
                row("quiet not over", loaded(4, 120), worked(6, 119), Verdict.HELD),
                row("quiet over", loaded(4, 120), worked(6, 120), Verdict.READY),
                row("a second heavy work", loaded(6, 0), worked(7, 40), Verdict.HELD),
                row("dose left", dosed(), taken(0.05), Verdict.READY),
                row("dose used up", dosed(), taken(0.10), Verdict.HELD));
    }

    private static Arguments row(String name, RuleOf rule, TreeOf tree, Verdict verdict) {
        return Arguments.of(name, rule, tree, verdict);
    }

    private static RuleOf onTheDay() {
        return wiring(
                rule ->
                        rule.criteria =
                                List.of(
                                        new Criterion(
                                                Fact.SOIL_MOIST,
                                                new Requirement.Is(Value.of(true)),
                                                2,
                                                Strength.MUST,
                                                true,
                                                false,
                                                List.of(),
                                                "why")));
    }

    private static TreeOf moist(boolean moist, int daysAgo) {
        return strong().saw(
                        Fact.SOIL_MOIST,
                        Value.of(moist),
                        DAY.minusDays(daysAgo),
                        Source.INSTRUCTOR);
    }

    static RuleOf wiring() {
        return wiring(rule -> {});
    }

    static RuleOf wiring(Consumer<RuleOf> change) {
        var rule = new RuleOf("wiring");
        rule.criteria = List.of(atLeast(Fact.VIGOUR_INDEX, 62), atMost(Fact.LARGEST_OPENING_MM, 8));
        change.accept(rule);
        return rule;
    }

    static TreeOf strong() {
        return new TreeOf().saw(Fact.VIGOUR_INDEX, 80).saw(Fact.LARGEST_OPENING_MM, 0);
    }

    static TreeOf wounded() {
        return new TreeOf().saw(Fact.VIGOUR_INDEX, 80).saw(Fact.LARGEST_OPENING_MM, 24);
    }

    private static TreeOf onlyWound() {
        return new TreeOf().saw(Fact.LARGEST_OPENING_MM, 24);
    }

    private static RuleOf fresh(int days) {
        var rule = new RuleOf("any");
        var strength = new Requirement.AtLeast(62);
        rule.criteria = List.of(criterion(Fact.VIGOUR_INDEX, strength, days, false));
        return rule;
    }

    private static RuleOf eye() {
        var rule = new RuleOf("any");
        var strength = new Requirement.AtLeast(62);
        rule.criteria = List.of(criterion(Fact.VIGOUR_INDEX, strength, null, true));
        return rule;
    }

    private static TreeOf seen(int daysAgo) {
        var day = DAY.minusDays(daysAgo);
        return new TreeOf().saw(Fact.VIGOUR_INDEX, Value.of(80), day, Source.INSTRUCTOR);
    }

    private static TreeOf student(double vigour) {
        return new TreeOf().saw(Fact.VIGOUR_INDEX, Value.of(vigour), DAY, Source.STUDENT);
    }

    static RuleOf inSeason(String stages) {
        return wiring(rule -> rule.season = Bench.season(stages));
    }

    private static RuleOf avoiding(String stages) {
        var ranges = List.of(StageRange.parse(stages));
        var avoid = new SeasonRule.Avoid(Set.of(), Set.of(), ranges, "why");
        return wiring(rule -> rule.season = new SeasonRule(List.of(), List.of(avoid), ""));
    }

    private static TreeOf flowering(int stage) {
        return strong().saw(Fact.FLOWER_STAGE, stage);
    }

    private static RuleOf skilled() {
        return wiring(rule -> rule.skillLesson = "wires");
    }

    private static RuleOf skilledOffSeason() {
        var rule = skilled();
        rule.season = Bench.season("91-00");
        return rule;
    }

    private static TreeOf withSkills(Set<String> skills) {
        var tree = strong();
        tree.skills = skills;
        return tree;
    }

    private static RuleOf forGroup(String group) {
        return wiring(rule -> rule.groups = Set.of(group));
    }

    private static RuleOf whenBulging() {
        var bulging = new Condition.Test(Fact.REVERSE_TAPER, new Requirement.Is(Value.of(true)));
        return wiring(rule -> rule.neededWhen = bulging);
    }

    private static TreeOf bulge(boolean there) {
        return strong().saw(Fact.REVERSE_TAPER, Value.of(there));
    }

    private static TreeOf done(int daysAgo) {
        var tree = strong();
        tree.signedOff.put("wiring", DAY.minusDays(daysAgo));
        return tree;
    }

    private static RuleOf repeated(int afterDays) {
        return wiring(rule -> rule.repeatAfterDays = afterDays);
    }

    private static RuleOf loaded(double stress, int quiet) {
        return wiring(
                rule -> {
                    rule.stress = stress;
                    rule.quietDaysBefore = quiet;
                });
    }

    private static RuleOf bareLoad() {
        var rule = new RuleOf("any");
        rule.stress = 3;
        return rule;
    }

    private static TreeOf worked(double stress, int daysAgo) {
        var tree = strong();
        tree.works.add(new Work("chop", DAY.minusDays(daysAgo), stress, 90, 0, 0));
        return tree;
    }

    private static RuleOf dosed() {
        return wiring(rule -> rule.dose = new DoseRule(DoseRule.Kind.FOLIAGE, 0.2, 0.25));
    }

    private static TreeOf taken(double share) {
        var tree = strong();
        tree.works.add(new Work("prune", DAY.minusDays(20), 1, 10, share, 0));
        return tree;
    }
}
