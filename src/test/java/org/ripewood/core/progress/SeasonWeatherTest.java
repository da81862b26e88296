package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Bench.RuleOf;
import org.ripewood.core.season.Climate;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.NormalYear;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.SeasonModel;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.WeatherRule;
import org.ripewood.core.season.WorkClock;
import org.ripewood.core.season.WorkClocks;

/** Climates are types, means rounded and from memory; the rules are common practice, no source. */
@Tag("fast")
class SeasonWeatherTest {

    private static final Climate CONTINENTAL =
            new Climate(
                    47.4,
                    NormalYear.of(
                            List.of(-4., -3., 1., 4., 9., 12., 14., 13., 10., 5., 1., -2.),
                            List.of(3., 5., 10., 15., 19., 23., 25., 24., 20., 14., 8., 4.)));

    private static final Climate SUB_ARCTIC =
            new Climate(
                    65,
                    NormalYear.of(
                            List.of(-15., -14., -10., -4., 2., 8., 11., 9., 4., -2., -8., -13.),
                            List.of(-7., -6., 0., 6., 13., 18., 21., 18., 12., 4., -2., -5.)));

    private static final Climate WARM =
            new Climate(
                    38,
                    NormalYear.of(
                            List.of(6., 6., 8., 10., 14., 18., 21., 21., 18., 14., 10., 7.),
                            List.of(13., 14., 16., 20., 25., 30., 33., 33., 28., 23., 18., 14.)));

    private static final Climate HIGHLAND =
            new Climate(
                    -1.2,
                    NormalYear.of(
                            List.of(12., 13., 14., 14., 13., 12., 11., 11., 12., 13., 13., 13.),
                            List.of(25., 26., 26., 25., 23., 22., 21., 22., 24., 25., 23., 24.)));

    private static final Climate GLASSHOUSE =
            new Climate(
                    47.4,
                    NormalYear.of(
                            List.of(15., 15., 16., 17., 18., 19., 20., 20., 18., 17., 16., 15.),
                            List.of(21., 22., 24., 26., 27., 29., 31., 30., 27., 24., 22., 21.)));

    private static Traits traits(Habit habit, WorkClocks clocks) {
        return new Traits("pine", habit, Set.of("conifer"), 0.25, Recovery.Pace.USUAL, clocks);
    }

    private static Subject tree(Climate climate, Traits traits) {
        var model =
                SeasonModel.of(
                        climate,
                        traits.habit(),
                        LocalDate.of(2023, 1, 1),
                        LocalDate.of(2026, 12, 31));
        return new Subject(
                traits,
                Facts.of(List.of()),
                new WorkLedger(List.of(), climate.latitudeDegrees()),
                Map.of(),
                null,
                model,
                model.place(),
                Forecasts.NONE,
                GrowingDays.EVERY_DAY);
    }

    private static SeasonRule rule(
            @Nullable WorkClock clock, WeatherRule weather, String... stages) {
        var ranges = List.of(stages).stream().map(StageRange::parse).toList();
        var windows =
                ranges.isEmpty()
                        ? List.<SeasonRule.Window>of()
                        : List.of(new SeasonRule.Window(Set.of(), Set.of(), ranges));
        return new SeasonRule(windows, List.of(), clock, weather, "");
    }

    private static Standing judge(Climate climate, Traits traits, SeasonRule season, LocalDate on) {
        var rule = new RuleOf("work");
        rule.season = season;
        return Rulebook.compile(List.of(rule.make()), List.of(traits))
                .standing(tree(climate, traits), "work", on);
    }

    private static Reason.OfSeason season(Standing standing) {
        return standing.reasons().stream()
                .filter(Reason.OfSeason.class::isInstance)
                .map(Reason.OfSeason.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static WeatherRule days(int left) {
        return new WeatherRule(left, WeatherRule.Frozen.NOTHING, false);
    }

    private static WeatherRule frozen(WeatherRule.Frozen what) {
        return new WeatherRule(0, what, false);
    }

    private static final Traits PINE = traits(Habit.EVERGREEN_CONIFER, WorkClocks.NONE);
    private static final LocalDate JUNE = LocalDate.of(2024, 6, 14);

    @Test
    void workThatNeedsASummerStopsInTime() {
        var rule = rule(null, days(100), "31-39");
        assertThat(judge(CONTINENTAL, PINE, rule, JUNE).verdict()).isEqualTo(Verdict.READY);
        var late = judge(CONTINENTAL, PINE, rule, LocalDate.of(2024, 8, 6));
        assertThat(late.verdict()).isEqualTo(Verdict.SEASON);
        assertThat(season(late).closedBecause())
                .matches("About [67]\\d days of growth are left here before frost; it needs 100.");
        // not tomorrow, though the stage is right: next summer
        assertThat(season(late).opensOn())
                .isBetween(LocalDate.of(2025, 5, 20), LocalDate.of(2025, 6, 15));
        assertThat(judge(GLASSHOUSE, PINE, rule, LocalDate.of(2024, 11, 6)).verdict())
                .isEqualTo(Verdict.READY);
    }

    @Test
    void frozenWoodIsNotWired() {
        var rule = rule(null, frozen(WeatherRule.Frozen.WOOD), "91-03");
        var january = LocalDate.of(2024, 1, 15);
        assertThat(judge(CONTINENTAL, PINE, rule, january).verdict()).isEqualTo(Verdict.READY);
        var frozen = judge(SUB_ARCTIC, PINE, rule, january);
        assertThat(frozen.verdict()).isEqualTo(Verdict.SEASON);
        assertThat(season(frozen).closedBecause()).contains("frozen wood breaks");
        assertThat(season(frozen).opensOn())
                .isBetween(LocalDate.of(2024, 3, 1), LocalDate.of(2024, 4, 15));
    }

    @Test
    void aFrozenBallIsNotTakenOutOfItsPot() {
        var rule = rule(null, frozen(WeatherRule.Frozen.BALL));
        assertThat(judge(SUB_ARCTIC, PINE, rule, LocalDate.of(2024, 3, 20)).verdict())
                .isEqualTo(Verdict.SEASON);
        assertThat(judge(SUB_ARCTIC, PINE, rule, LocalDate.of(2024, 5, 5)).verdict())
                .isEqualTo(Verdict.READY);
    }

    @Test
    void shelterGoesByTheColdOfThePlaceAndOfTheSpecies() {
        var rule = rule(null, new WeatherRule(0, WeatherRule.Frozen.NOTHING, true));
        var november = LocalDate.of(2024, 11, 27);
        for (double below : new double[] {0, 3, 5, 10}) {
            var kind = traits(Habit.DECIDUOUS, sheltered(below));
            assertThat(judge(CONTINENTAL, kind, rule, november).verdict())
                    .as("below %s", below)
                    .isEqualTo(Verdict.READY);
            assertThat(judge(GLASSHOUSE, kind, rule, november).verdict()).isEqualTo(Verdict.SEASON);
            assertThat(judge(HIGHLAND, kind, rule, LocalDate.of(2024, 7, 20)).verdict())
                    .isEqualTo(Verdict.SEASON);
        }
        var hardy = traits(Habit.DECIDUOUS, sheltered(-5));
        assertThat(judge(CONTINENTAL, hardy, rule, november).verdict()).isEqualTo(Verdict.SEASON);
        assertThat(judge(SUB_ARCTIC, hardy, rule, november).verdict()).isEqualTo(Verdict.READY);
        var tender = traits(Habit.DECIDUOUS, sheltered(3));
        assertThat(judge(CONTINENTAL, tender, rule, LocalDate.of(2024, 8, 20)).verdict())
                .isEqualTo(Verdict.SEASON);
        assertThat(judge(CONTINENTAL, tender, rule, LocalDate.of(2024, 4, 10)).verdict())
                .as("until the last frosts")
                .isEqualTo(Verdict.READY);
    }

    private static WorkClocks sheltered(double below) {
        return new WorkClocks(Map.of(), List.of(), List.of(), below);
    }

    @Test
    void whereNoWinterComesItsWorkHasTheCoolestWeeks() {
        var repot = rule(null, WeatherRule.ANY, "01-03");
        assertThat(judge(HIGHLAND, PINE, repot, LocalDate.of(2024, 7, 15)).verdict())
                .isEqualTo(Verdict.READY);
        var february = judge(HIGHLAND, PINE, repot, LocalDate.of(2024, 2, 15));
        assertThat(february.verdict()).isEqualTo(Verdict.SEASON);
        assertThat(season(february).opensOn())
                .isBetween(LocalDate.of(2024, 5, 20), LocalDate.of(2024, 6, 20));
        var wire = rule(null, WeatherRule.ANY, "17-05");
        for (int month = 1; month <= 12; month++) {
            assertThat(judge(HIGHLAND, PINE, wire, LocalDate.of(2024, month, 10)).verdict())
                    .isEqualTo(Verdict.READY);
        }
        var defoliate = rule(null, days(90), "19-33");
        assertThat(judge(HIGHLAND, PINE, defoliate, LocalDate.of(2024, 2, 15)).verdict())
                .isEqualTo(Verdict.READY);
    }

    @Test
    void theClockOfTheSpeciesCountsAndAWindowForItGoesBefore() {
        var late = new WorkClocks.Stages(List.of(StageRange.parse("91-92")), 60, 30);
        var clocks =
                new WorkClocks(
                        Map.of(
                                WorkClock.ROOT_WORK,
                                List.of(
                                        WorkClocks.Stages.of(List.of(StageRange.parse("01-03"))),
                                        late)),
                        List.of(),
                        List.of(),
                        null);
        var pine = traits(Habit.EVERGREEN_CONIFER, clocks);
        var rule = rule(WorkClock.ROOT_WORK, WeatherRule.ANY);
        assertThat(rule.openStages(pine)).containsExactlyInAnyOrder(1, 2, 3, 91, 92);
        assertThat(rule(WorkClock.FEEDING, WeatherRule.ANY).openStages(pine)).isEmpty();
        assertThat(rule(WorkClock.ROOT_WORK, WeatherRule.ANY, "01-01").openStages(pine))
                .containsExactly(1);
        var september = LocalDate.of(2024, 9, 10);
        var closed = judge(CONTINENTAL, pine, rule, september);
        assertThat(closed.verdict()).isEqualTo(Verdict.SEASON);
        assertThat(season(closed).closedBecause()).contains("it needs 60");
        assertThat(judge(WARM, pine, rule, LocalDate.of(2024, 9, 1)).verdict())
                .as("too hot yet")
                .isEqualTo(Verdict.SEASON);
        assertThat(judge(WARM, pine, rule, LocalDate.of(2024, 9, 25)).verdict())
                .isEqualTo(Verdict.READY);
    }

    @Test
    void flowersAreAskedForOnlyWhenTheyCanFade() {
        var clocks =
                new WorkClocks(
                        Map.of(
                                WorkClock.SMALL_CUTS,
                                List.of(
                                        WorkClocks.Stages.of(
                                                List.of(
                                                        StageRange.parse("67-71"),
                                                        StageRange.parse("19-33"))))),
                        List.of(),
                        List.of(StageRange.parse("03-10")),
                        null);
        var apricot =
                new Traits("pine", Habit.DECIDUOUS, Set.of(), 0.3, Recovery.Pace.USUAL, clocks);
        var rule = rule(WorkClock.SMALL_CUTS, WeatherRule.ANY);
        var winter = judge(CONTINENTAL, apricot, rule, LocalDate.of(2024, 11, 30));
        assertThat(winter.verdict()).isEqualTo(Verdict.SEASON);
        assertThat(season(winter).opensOn())
                .as("when they usually fade")
                .isBetween(LocalDate.of(2025, 2, 20), LocalDate.of(2025, 4, 1));
        assertThat(judge(CONTINENTAL, apricot, rule, LocalDate.of(2024, 4, 4)).verdict())
                .isEqualTo(Verdict.MEASURE);
    }

    @Test
    void ofAPlaceNobodyKnowsNothingIsHeldBack() {
        var rule = new RuleOf("work");
        rule.season = rule(null, new WeatherRule(300, WeatherRule.Frozen.BALL, false));
        assertThat(Bench.judge(new Bench.TreeOf(), rule).verdict()).isEqualTo(Verdict.READY);
        assertThat(Bench.opening(new Bench.TreeOf(), rule).outlook())
                .isEqualTo(new Outlook.Already());
    }
}
