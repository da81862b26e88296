package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.ripewood.core.progress.Bench.DAY;
import static org.ripewood.core.progress.Bench.atLeast;
import static org.ripewood.core.progress.Bench.atMost;
import static org.ripewood.core.progress.Bench.criterion;
import static org.ripewood.core.progress.Bench.opening;
import static org.ripewood.core.progress.Bench.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.progress.Bench.RuleOf;
import org.ripewood.core.progress.Bench.TreeOf;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.TypicalYear;

/** Days are reckoned by hand from 20 February 2024; the rules are common practice, no source. */
@Tag("fast")
class OpeningsTest {

    private static final LocalDate SOON = LocalDate.of(2024, 6, 1);
    private static final LocalDate LATER = LocalDate.of(2025, 9, 1);
    private static final LocalDate LAST = LocalDate.of(2027, 2, 1);

    private static RuleOf rule() {
        return new RuleOf("any");
    }

    private static TreeOf tree() {
        var tree = new TreeOf().saw(Fact.VIGOUR_INDEX, 75);
        tree.stages = TypicalYear.of(Habit.DECIDUOUS, 50);
        return tree;
    }

    private static TreeOf worked(double stress, int daysAgo, int recoveryDays, double foliage) {
        var tree = tree();
        tree.works.add(
                new Work("earlier", DAY.minusDays(daysAgo), stress, recoveryDays, foliage, 0));
        return tree;
    }

    private static void assertOpensOn(Opening opening, LocalDate day) {
        assertThat(opening.outlook()).isEqualTo(Outlook.Expected.on(day));
    }

    private static String unsaid(Opening opening) {
        assertThat(opening.outlook()).isInstanceOf(Outlook.Unsaid.class);
        return ((Outlook.Unsaid) opening.outlook()).because();
    }

    @Test
    void whatCanBeDoneNowWaitsForNothing() {
        var opening = opening(tree(), rule());
        assertThat(opening.outlook()).isEqualTo(new Outlook.Already());
        assertThat(opening.waits()).isEmpty();
        assertThat(opening.longest()).isEmpty();
    }

    @Test
    void whatIsDoneOrNotNeededHasNoOpening() {
        var done = tree();
        done.signedOff.put("any", DAY.minusDays(400));
        var book = Bench.rulebook(rule());
        assertThat(book.openings(done.make(), DAY).of("any")).isEmpty();
        var unneeded = rule();
        unneeded.groups = Set.of("conifer");
        assertThat(Bench.rulebook(unneeded).openings(tree().make(), DAY).all()).isEmpty();
    }

    @Test
    void anUnknownTechniqueIsRefused() {
        var openings = Bench.rulebook(rule()).openings(tree().make(), DAY);
        assertThatThrownBy(() -> openings.of("other"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("other");
    }

    @Test
    void quietIsOverOnItsDay() {
        var rule = rule();
        rule.quietDaysBefore = 120;
        assertOpensOn(opening(worked(6, 100, 0, 0), rule), DAY.plusDays(20));
    }

    @Test
    void theNextHeavyWorkIsForTheNextGrowingSeason() {
        var rule = rule();
        rule.stress = 6;
        assertOpensOn(opening(worked(6, 10, 0, 0), rule), LocalDate.of(2025, 1, 1));
        var south = worked(6, 10, 0, 0);
        south.latitude = -35;
        assertOpensOn(opening(south, rule), LocalDate.of(2024, 7, 1));
    }

    @Test
    void aDoseIsFreeAgainInTheNextGrowingSeason() {
        var rule = rule();
        rule.dose = new DoseRule(DoseRule.Kind.FOLIAGE, 0.2, 0.3);
        assertOpensOn(opening(worked(2, 10, 0, 0.2), rule), LocalDate.of(2025, 1, 1));
    }

    @Test
    void aLoadHasToComeDownFarEnough() {
        var rule = rule();
        rule.stress = 5.9;
        var tree = worked(5.9, 30, 90, 0);
        // 5.9 (1 - d / 90) <= 2.1 from d = 57.97 days after the work
        assertOpensOn(opening(tree, rule), DAY.plusDays(28));
    }

    @Test
    void aLoadDoesNotComeDownInWinter() {
        var rule = rule();
        rule.stress = 5.9;
        var tree = worked(5.9, 30, 90, 0);
        tree.recovery = new Recovery(SummerGrowth.NORTH, 1);
        // 0.644 of 90 / 365.25 of 183 growing days, 29.04 of them, from 1 April
        assertOpensOn(opening(tree, rule), LocalDate.of(2024, 5, 1));
        tree.recovery = new Recovery(SummerGrowth.POLE, 1);
        assertThat(unsaid(opening(tree, rule))).contains("does not recover");
    }

    @Test
    void aTreeTooWeakForTheWorkWaitsForItsVigour() {
        var rule = rule();
        rule.stress = 5.6;
        var tree = new TreeOf().saw(Fact.VIGOUR_INDEX, 50);
        assertThat(unsaid(opening(tree, rule))).contains("vigour index");
        // 50 + (5.6 - 5) / 0.12 = 55
        tree.forecasts =
                (fact, required, from) ->
                        fact == Fact.VIGOUR_INDEX
                                        && required instanceof Requirement.AtLeast least
                                        && Math.abs(least.bound() - 55) < 1e-9
                                ? Outlook.Expected.on(LATER)
                                : new Outlook.Unsaid("asked for something else");
        assertOpensOn(opening(tree, rule), LATER);
    }

    @Test
    void noTreeBearsMoreThanAnyMay() {
        var rule = rule();
        rule.stress = 9;
        assertThat(unsaid(opening(tree(), rule))).contains("No tree").contains("9");
    }

    @Test
    void aLoadWithoutVigourIsMeasuredFirst() {
        var rule = rule();
        rule.stress = 2;
        assertThat(unsaid(opening(new TreeOf(), rule))).contains("Vigour index");
    }

    @Test
    void aForecastIsMovedToTheNextOpenSeason() {
        var rule = rule();
        rule.criteria = List.of(atMost(Fact.LARGEST_OPENING_MM, 4));
        rule.season = season("01-03");
        var tree = tree().saw(Fact.LARGEST_OPENING_MM, 20);
        tree.forecasts = (fact, required, from) -> new Outlook.Expected(SOON, LATER, LAST);
        // the typical year has stage 01 from 16 February on
        assertThat(opening(tree, rule).outlook())
                .isEqualTo(
                        new Outlook.Expected(
                                LocalDate.of(2025, 2, 16),
                                LocalDate.of(2026, 2, 16),
                                LocalDate.of(2027, 2, 16)));
        assertThat(opening(tree, rule).waits().get(0).outlook())
                .isEqualTo(new Outlook.Expected(SOON, LATER, LAST));
    }

    @Test
    void theLatestOfAllWaitsCountsDayByDay() {
        var rule = rule();
        rule.criteria =
                List.of(atMost(Fact.LARGEST_OPENING_MM, 4), atLeast(Fact.TRUNK_BASE_SHARE, 1));
        var tree = tree().saw(Fact.LARGEST_OPENING_MM, 20).saw(Fact.TRUNK_BASE_SHARE, 0.5);
        tree.forecasts =
                (fact, required, from) ->
                        fact == Fact.LARGEST_OPENING_MM
                                ? new Outlook.Expected(SOON, SOON.plusDays(9), null)
                                : new Outlook.Expected(SOON.minusDays(90), LATER, LAST);
        var opening = opening(tree, rule);
        assertThat(opening.outlook()).isEqualTo(new Outlook.Expected(SOON, LATER, null));
        assertThat(opening.longest().orElseThrow().reason().key())
                .isEqualTo("trunk_base_share.AtLeast");
    }

    @Test
    void aDayThatIsPastOrAlreadyCountsAsToday() {
        var rule = rule();
        rule.criteria = List.of(atMost(Fact.LARGEST_OPENING_MM, 4));
        var tree = tree().saw(Fact.LARGEST_OPENING_MM, 20);
        tree.forecasts = (fact, required, from) -> Outlook.Expected.on(DAY.minusDays(9));
        assertOpensOn(opening(tree, rule), DAY);
        tree.forecasts = (fact, required, from) -> new Outlook.Already();
        assertOpensOn(opening(tree, rule), DAY);
    }

    @Test
    void whatLiesBeyondReachIsNotSaid() {
        var rule = rule();
        rule.criteria = List.of(atMost(Fact.LARGEST_OPENING_MM, 4));
        var tree = tree().saw(Fact.LARGEST_OPENING_MM, 20);
        tree.forecasts = (fact, required, from) -> Outlook.Expected.on(LocalDate.of(9999, 1, 1));
        assertThat(unsaid(opening(tree, rule))).contains("30 years");
        tree.forecasts =
                (fact, required, from) ->
                        new Outlook.Expected(SOON, LATER, LocalDate.of(9999, 1, 1));
        assertThat(opening(tree, rule).outlook())
                .isEqualTo(new Outlook.Expected(SOON, LATER, null));
    }

    @Test
    void evidenceThatIsMissingOldOrProvisionalIsAskedFor() {
        var rule = rule();
        rule.criteria = List.of(atLeast(Fact.ROOT_SPREAD_DEG, 200));
        var tree = tree();
        tree.forecasts = (fact, required, from) -> Outlook.Expected.on(SOON);
        assertThat(unsaid(opening(tree, rule)))
                .isEqualTo("Not known yet: root spread deg; look or measure.");
        var bound = new Requirement.AtLeast(200);
        rule.criteria = List.of(criterion(Fact.ROOT_SPREAD_DEG, bound, 30, true));
        tree.saw(Fact.ROOT_SPREAD_DEG, Value.of(300), DAY.minusDays(31), Source.STUDENT);
        assertThat(unsaid(opening(tree, rule)))
                .isEqualTo(
                        "The last look at root spread deg, on 2024-01-20, is too long ago;"
                                + " look again.");
        tree.saw(Fact.ROOT_SPREAD_DEG, Value.of(300), DAY, Source.STUDENT);
        assertThat(unsaid(opening(tree, rule)))
                .isEqualTo("An instructor has to look at root spread deg first.");
    }

    @Test
    void everythingThatCannotBeSaidIsToldOnce() {
        var rule = rule();
        rule.criteria = List.of(atLeast(Fact.ROOT_SPREAD_DEG, 200), atLeast(Fact.INTERIOR_BUDS, 1));
        rule.skillLesson = "raking_roots";
        var tree = tree();
        tree.skills = Set.of();
        assertThat(unsaid(opening(tree, rule)))
                .isEqualTo(
                        "Not known yet: root spread deg; look or measure."
                                + " Not known yet: interior buds; look or measure."
                                + " The skill of raking roots has to be shown first.");
    }

    @Test
    void aPredecessorIsToldWithItsOwnOpening() {
        var first = new RuleOf("first_cut");
        first.quietDaysBefore = 120;
        var second = rule();
        second.after = List.of("first_cut");
        var tree = worked(6, 100, 0, 0);
        var opening = opening(tree, second, first);
        assertThat(unsaid(opening))
                .isEqualTo(
                        "First cut has to be signed off first; it could be done from 2024-03-11.");
        var before = opening.waits().get(0).before();
        assertThat(before).isNotNull();
        assertOpensOn(before, DAY.plusDays(20));
        first.quietDaysBefore = 0;
        assertThat(unsaid(opening(tree, second, first))).endsWith("it can be done now.");
        first.criteria = List.of(atLeast(Fact.INTERIOR_BUDS, 1));
        assertThat(unsaid(opening(tree, second, first))).endsWith("it has to wait itself.");
    }

    @Test
    void aNeedNobodyKnowsIsLookedAt() {
        var rule = rule();
        rule.neededWhen =
                new Condition.Test(Fact.REVERSE_TAPER, new Requirement.Is(Value.of(true)));
        assertThat(unsaid(opening(tree(), rule))).contains("reverse taper");
    }

    @Test
    void theSeasonAloneOpensWhereTheStandingSays() {
        var rule = rule();
        rule.season = season("91-92");
        assertOpensOn(opening(tree(), rule), LocalDate.of(2024, 8, 16));
        var never = tree();
        never.stages = day -> 35;
        assertThat(unsaid(opening(never, rule))).contains("thirteen months");
    }

    @Test
    void aSeasonNobodyCanTellIsNotKnownToBeClosed() {
        var rule = rule();
        rule.season = season("91-92");
        assertThat(Bench.judge(tree(), rule).outOfSeason()).isTrue();
        rule.season = season("01-03");
        assertThat(Bench.judge(tree(), rule).outOfSeason()).isFalse();
        rule.season = season("60-65");
        assertThat(Bench.judge(tree(), rule).outOfSeason()).isFalse();
    }

    @Test
    void aTreeThatNeverRecoversIsToldSoWhenItIsTooWeakAsWell() {
        var rule = rule();
        rule.stress = 5.6;
        var tree = worked(4, 10, 90, 0).saw(Fact.VIGOUR_INDEX, 50);
        tree.forecasts = (fact, required, from) -> Outlook.Expected.on(DAY.plusDays(7));
        // strong enough in 7 days, rested in 80
        assertOpensOn(opening(tree, rule), DAY.plusDays(80));
        tree.recovery = new Recovery(SummerGrowth.POLE, 1);
        assertThat(unsaid(opening(tree, rule))).contains("does not recover");
    }

    @Test
    void flowersAreLookedAtNotForecast() {
        var rule = rule();
        rule.season = season("60-65");
        assertThat(unsaid(opening(tree(), rule))).contains("flower");
        var over = tree().saw(Fact.FLOWER_STAGE, 69);
        assertThat(unsaid(opening(over, rule))).contains("flower");
        var closed =
                new SeasonRule(
                        List.of(),
                        List.of(
                                new SeasonRule.Avoid(
                                        Set.of(),
                                        Set.of(),
                                        List.of(new StageRange(60, 65)),
                                        "in flower")),
                        "");
        rule.season = closed;
        assertThat(unsaid(opening(tree().saw(Fact.FLOWER_STAGE, 63), rule)))
                .contains("look at them again");
    }

    @ParameterizedTest
    @CsvSource({
        "DAYS_SINCE_ROOT_WORK, 300, 365, 2024-04-20",
        "WIRE_DAYS, 200.5, 240, 2024-03-26",
        "DAYS_SINCE_ROOT_WORK, 300, 1e300, "
    })
    void clocksRunByThemselves(Fact fact, double shown, double bound, LocalDate day) {
        var rule = rule();
        rule.criteria = List.of(atLeast(fact, bound));
        var tree = tree().saw(fact, shown);
        // seen on 15 February
        if (day == null) {
            assertThat(unsaid(opening(tree, rule))).contains("30 years");
        } else {
            assertOpensOn(opening(tree, rule), day);
        }
    }

    @Test
    void aClockThatHasRunTooLongDoesNotRunBack() {
        var rule = rule();
        rule.criteria = List.of(atMost(Fact.DAYS_SINCE_FEEDING, 45));
        var tree = tree().saw(Fact.DAYS_SINCE_FEEDING, 46);
        assertThat(unsaid(opening(tree, rule))).contains("done again");
    }

    @ParameterizedTest
    @CsvSource({
        "FOLIAGE_REMOVED_SHARE, 0.3, 0.15, 2025-01-01",
        "HEAVY_WORKS_THIS_SEASON, 1, 0, 2025-01-01",
        // 6 (1 - d / 90) <= 1 from d = 75 days after work 30 days ago
        "RECOVERY_LOAD, 4, 1, 2024-04-05"
    })
    void ledgersAreAskedThemselves(Fact fact, double shown, double bound, LocalDate day) {
        var rule = rule();
        rule.criteria = List.of(atMost(fact, bound));
        assertOpensOn(opening(worked(6, 30, 90, 0.3).saw(fact, shown), rule), day);
    }
}
