package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.ripewood.core.progress.Bench.DAY;
import static org.ripewood.core.progress.Bench.judge;
import static org.ripewood.core.progress.VerdictCases.strong;
import static org.ripewood.core.progress.VerdictCases.wiring;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.core.progress.Bench.RuleOf;
import org.ripewood.core.progress.Bench.TreeOf;

@Tag("fast")
class RulebookTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.ripewood.core.progress.VerdictCases#all")
    void verdictsFollowTheRules(String name, RuleOf rule, TreeOf tree, Verdict verdict) {
        var standing = judge(tree, rule);
        assertThat(standing.verdict()).as(name).isEqualTo(verdict);
        assertThat(standing.reasons()).isNotEmpty();
        if (verdict == Verdict.READY) {
            assertThat(standing.against()).isEmpty();
        }
    }

    @Test
    void everyVerdictHasItsCase() {
        var seen = EnumSet.noneOf(Verdict.class);
        VerdictCases.all().forEach(row -> seen.add((Verdict) row.get()[3]));
        assertThat(seen).containsExactlyInAnyOrder(Verdict.values());
    }

    @Test
    void everyKindOfReasonHasItsCase() {
        var kinds = new HashSet<Class<?>>();
        VerdictCases.all()
                .map(row -> judge((TreeOf) row.get()[2], (RuleOf) row.get()[1]))
                .forEach(standing -> standing.reasons().forEach(it -> kinds.add(it.getClass())));
        judge(strong(), afterRepotting(), new RuleOf("repotting"))
                .reasons()
                .forEach(it -> kinds.add(it.getClass()));
        // its cases stand in MaterialFirstTest
        kinds.add(Reason.OfDevelopment.class);
        assertThat(kinds).containsExactlyInAnyOrder(Reason.class.getPermittedSubclasses());
    }

    private static final RuleOf DEMANDING =
            wiring(
                    rule -> {
                        rule.stress = 7;
                        rule.quietDaysBefore = 200;
                        rule.dose = new DoseRule(DoseRule.Kind.FOLIAGE, 0.2, 0.25);
                        rule.skillLesson = "wires";
                        rule.season = Bench.season("91-00");
                    });

    @Test
    void aVerdictCarriesAllItsReasonsNotJustTheFirst() {
        var tree = new TreeOf().saw(Fact.VIGOUR_INDEX, 30).saw(Fact.LARGEST_OPENING_MM, 24);
        tree.skills = Set.of();
        tree.works.add(new Work("chop", DAY.minusDays(20), 8, 90, 0.2, 0));
        var standing = judge(tree, DEMANDING);
        assertThat(standing.verdict()).isEqualTo(Verdict.HELD);
        assertThat(standing.against())
                .extracting(Reason::key)
                .containsExactly(
                        "vigour_index.AtLeast",
                        "largest_opening_mm.AtMost",
                        "load",
                        "heavy",
                        "quiet",
                        "dose",
                        "skill",
                        "season");
    }

    @Test
    void whatTheTreesHealthAsksForCannotBeWaived() {
        Map<String, Strength> expected =
                Map.of(
                        "load", Strength.MUST,
                        "heavy", Strength.MUST,
                        "quiet", Strength.MUST,
                        "dose", Strength.MUST,
                        "skill", Strength.SHOULD,
                        "season", Strength.SHOULD,
                        "vigour_index.AtLeast", Strength.SHOULD,
                        "largest_opening_mm.AtMost", Strength.SHOULD);
        var tree = strong();
        tree.skills = Set.of();
        assertThat(judge(tree, DEMANDING).reasons())
                .hasSameSizeAs(expected.keySet())
                .allSatisfy(it -> assertThat(it.strength()).isEqualTo(expected.get(it.key())));
    }

    static Stream<Arguments> predecessors() {
        var done = strong();
        done.signedOff.put("repotting", DAY.minusDays(900));
        var matted = strong().saw(Fact.MATTED_ROOTS, Value.of(true));
        var free = strong().saw(Fact.MATTED_ROOTS, Value.of(false));
        return Stream.of(
                Arguments.of("not signed off", strong(), false, Truth.NO),
                Arguments.of("signed off long ago", done, false, Truth.YES),
                Arguments.of("needed and not signed off", matted, true, Truth.NO),
                Arguments.of("not needed by this tree", free, true, Truth.YES),
                Arguments.of("need unknown", strong(), true, Truth.UNKNOWN));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("predecessors")
    void whatComesFirstHasToBeSignedOffOrNotNeeded(
            String name, TreeOf tree, boolean onlyWhenMatted, Truth truth) {
        var repotting = new RuleOf("repotting");
        if (onlyWhenMatted) {
            repotting.neededWhen =
                    new Condition.Test(Fact.MATTED_ROOTS, new Requirement.Is(Value.of(true)));
        }
        var standing = judge(tree, afterRepotting(), repotting);
        assertThat(standing.reasons().get(0))
                .as(name)
                .isEqualTo(new Reason.OfOrder("repotting", truth));
        assertThat(standing.verdict())
                .isEqualTo(
                        switch (truth) {
                            case YES -> Verdict.READY;
                            case NO -> Verdict.HELD;
                            case UNKNOWN -> Verdict.MEASURE;
                        });
    }

    private static RuleOf afterRepotting() {
        return wiring(rule -> rule.after = List.of("repotting"));
    }

    @Test
    void theMostSpecificOverrideCounts() {
        var loose = variant(Set.of(), Set.of("maple"), 10);
        var strict = variant(Set.of("maple"), Set.of(), 90);
        var later = variant(Set.of(), Set.of("deciduous"), 20);
        var others = variant(Set.of("pine"), Set.of("conifer"), 30);
        assertThat(boundFor(List.of())).isEqualTo(62);
        assertThat(boundFor(List.of(loose))).isEqualTo(10);
        assertThat(boundFor(List.of(loose, later))).isEqualTo(20);
        assertThat(boundFor(List.of(strict, loose, later))).isEqualTo(90);
        assertThat(boundFor(List.of(others))).isEqualTo(62);
    }

    private static Criterion.Variant variant(
            Set<String> species, Set<String> groups, double bound) {
        return new Criterion.Variant(species, groups, new Requirement.AtLeast(bound));
    }

    private static double boundFor(List<Criterion.Variant> variants) {
        var criterion =
                new Criterion(
                        Fact.VIGOUR_INDEX,
                        new Requirement.AtLeast(62),
                        null,
                        Strength.MUST,
                        false,
                        false,
                        variants,
                        "why");
        var rule = wiring(it -> it.criteria = List.of(criterion));
        var reason = (Reason.OfCriterion) judge(strong(), rule).reasons().get(0);
        return ((Requirement.AtLeast) reason.required()).bound();
    }

    @Test
    void aClosedWindowSaysWhenItOpens() {
        var tree = strong();
        tree.stages = day -> day.isBefore(DAY.plusDays(40)) ? 1 : 15;
        var against = judge(tree, VerdictCases.inSeason("15-19")).against();
        assertThat(((Reason.OfSeason) against.get(0)).opensOn()).isEqualTo(DAY.plusDays(40));
    }

    @Test
    void aWindowThatNeverOpensSaysSo() {
        var against = judge(strong(), VerdictCases.inSeason("15-19")).against();
        assertThat(((Reason.OfSeason) against.get(0)).opensOn()).isNull();
    }

    @Test
    void theRootDoseIsCappedByTheSpecies() {
        var rule = new RuleOf("repot");
        rule.dose = new DoseRule(DoseRule.Kind.ROOT, 0.3, 0.5);
        var maple = (Reason.OfDose) judge(strong(), rule).reasons().get(0);
        var tree = strong();
        tree.traits = Bench.PINE;
        var pine = (Reason.OfDose) judge(tree, rule).reasons().get(0);
        assertThat(maple.limit()).isEqualTo(0.33);
        assertThat(pine.limit()).isEqualTo(0.25);
        assertThat(pine.planned()).isEqualTo(0.25);
    }

    @Test
    void standingsTellWhatComesFirstFirst() {
        var last = new RuleOf("a");
        last.after = List.of("b");
        var middle = new RuleOf("b");
        middle.after = List.of("c");
        var rules = Stream.of(last, middle, new RuleOf("c")).map(RuleOf::make).toList();
        var book = Rulebook.compile(rules, List.of(Bench.MAPLE));
        assertThat(book.standings(strong().make(), DAY))
                .extracting(Standing::technique)
                .containsExactly("c", "b", "a");
    }

    @Test
    void aCircleIsRefused() {
        var one = new RuleOf("one");
        one.after = List.of("two");
        var two = new RuleOf("two");
        two.after = List.of("one");
        assertThatThrownBy(() -> judge(strong(), one, two)).hasMessageContaining("circle");
    }

    /** Light is a stress of up to 2: common practice, no source. */
    @Test
    void aStudentsOwnViewOfStrengthCountsForLightWorkOnly() {
        for (var stress : new double[] {0, 2, 2.5, 5}) {
            var rule = new RuleOf("brush");
            rule.stress = stress;
            rule.criteria = List.of(Bench.atLeast(Fact.VIGOUR_INDEX, 50));
            var own = new TreeOf();
            own.saw(Fact.VIGOUR_INDEX, Value.of(74), DAY, Source.STUDENT);
            assertThat(Bench.judge(own, rule).verdict())
                    .as("stress %s", stress)
                    .isEqualTo(stress <= 2 ? Verdict.READY : Verdict.MEASURE);
            var judged = new TreeOf();
            judged.saw(Fact.VIGOUR_INDEX, Value.of(74), DAY, Source.INSTRUCTOR);
            assertThat(Bench.judge(judged, rule).verdict()).isEqualTo(Verdict.READY);
            var weak = new TreeOf();
            weak.saw(Fact.VIGOUR_INDEX, Value.of(40), DAY, Source.STUDENT);
            assertThat(Bench.judge(weak, rule).verdict()).isEqualTo(Verdict.HELD);
        }
    }
}
