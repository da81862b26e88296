package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.NavigableMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class SeasonModelTest {

    private static final LocalDate FIRST = LocalDate.of(2023, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2026, 12, 31);

    private static SeasonModel of(Climate climate, Habit habit) {
        return SeasonModel.of(climate, habit, FIRST, LAST);
    }

    /** First day from a day on at which each stage is told, over one year. */
    private static NavigableMap<Integer, LocalDate> beginnings(StageClock clock, LocalDate from) {
        var first = new TreeMap<Integer, LocalDate>();
        for (var day = from; day.isBefore(from.plusYears(1)); day = day.plusDays(1)) {
            first.putIfAbsent(clock.stageOn(day), day);
        }
        return first;
    }

    /** The half-month table is common practice, no source; tolerance three weeks. */
    @ParameterizedTest
    @EnumSource(Habit.class)
    void aCoolTemperateYearKeepsToTheTypicalYear(Habit habit) {
        for (var climate : new Climate[] {Places.oceanic(), Places.inland()}) {
            var typical = beginnings(TypicalYear.of(habit, 50), FIRST);
            var found = beginnings(of(climate, habit), FIRST);
            assertThat(found.keySet()).isEqualTo(typical.keySet());
            typical.forEach(
                    (stage, day) ->
                            assertThat(ChronoUnit.DAYS.between(day, found.get(stage)))
                                    .as("stage %d at %s°", stage, climate.latitudeDegrees())
                                    .isBetween(-21L, 21L));
        }
    }

    /** The years' own weather moves bud break: by 40 days at 250 degree-days (see the data). */
    @Test
    void aWarmSpringIsTold() {
        var climate = new Climate(47.6, DailyReadings.alone(Places.readings()));
        var model =
                SeasonModel.of(
                        climate,
                        Habit.DECIDUOUS,
                        LocalDate.of(2012, 1, 1),
                        LocalDate.of(2015, 12, 31));
        var late = beginnings(model, LocalDate.of(2012, 1, 1)).get(10);
        var early = beginnings(model, LocalDate.of(2015, 1, 1)).get(10);
        assertThat(late.getDayOfYear() - early.getDayOfYear()).isBetween(30, 50);
    }

    @ParameterizedTest
    @EnumSource(Habit.class)
    void theSouthMirrorsTheNorth(Habit habit) {
        var north = beginnings(of(Places.inland(), habit), LocalDate.of(2024, 1, 1));
        var south = beginnings(of(Places.inland(-50, 0, 6), habit), LocalDate.of(2024, 7, 1));
        assertThat(south.keySet()).isEqualTo(north.keySet());
        north.forEach(
                (stage, day) ->
                        assertThat(ChronoUnit.DAYS.between(day, south.get(stage)) - 182)
                                .as("stage %d; months and half-years differ by days", stage)
                                .isBetween(-7L, 7L));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void stagesOnlyGoForwardBetweenMidwinters(long seed) {
        var random = new SplittableRandom(seed);
        double latitude = -70 + 140 * random.nextDouble();
        var climate = Places.inland(latitude, -12 + 20 * random.nextDouble(), latitude < 0 ? 6 : 0);
        for (var habit : Habit.values()) {
            var model = of(climate, habit);
            for (var day = FIRST; day.isBefore(LAST); day = day.plusDays(1)) {
                if (GrowingSeason.of(day, latitude).holds(day.plusDays(1))) {
                    assertThat(model.stageOn(day.plusDays(1)))
                            .as("seed %d, %s on %s", seed, habit, day)
                            .isGreaterThanOrEqualTo(model.stageOn(day));
                }
            }
        }
    }

    /** Warmer by the same all year: buds open no later, leaves fall no earlier. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void aWarmerPlaceOpensNoLaterAndRestsNoEarlier(long seed) {
        var random = new SplittableRandom(seed);
        double latitude = 25 + 40 * random.nextDouble();
        double base = -6 + 12 * random.nextDouble();
        double warmer = base + 5 * random.nextDouble();
        for (var habit : Habit.values()) {
            var cool = of(Places.inland(latitude, base, 0), habit);
            var warm = of(Places.inland(latitude, warmer, 0), habit);
            for (var day = FIRST; day.isBefore(LAST); day = day.plusDays(1)) {
                if (day.getDayOfYear() < 172 && cool.stageOn(day) <= 19) {
                    assertThat(warm.stageOn(day))
                            .as("seed %d, %s on %s", seed, habit, day)
                            .isGreaterThanOrEqualTo(cool.stageOn(day));
                } else if (warm.stageOn(day) >= 92) {
                    assertThat(cool.stageOn(day))
                            .as("seed %d, %s on %s", seed, habit, day)
                            .isGreaterThanOrEqualTo(warm.stageOn(day));
                }
            }
        }
    }

    /** The same temperatures on either side of the tropic are the same place to a tree. */
    @ParameterizedTest
    @CsvSource({"23.40, 23.55, 0", "-23.40, -23.55, 6"})
    void theTropicItselfChangesNothing(double inside, double outside, int monthsLater) {
        for (var habit : Habit.values()) {
            for (double warmer : new double[] {2, 10, 16, 25}) {
                var there =
                        beginnings(of(Places.inland(inside, warmer, monthsLater), habit), FIRST);
                var here =
                        beginnings(of(Places.inland(outside, warmer, monthsLater), habit), FIRST);
                assertThat(there.keySet()).isEqualTo(here.keySet());
                there.forEach(
                        (stage, day) ->
                                assertThat(Math.abs(ChronoUnit.DAYS.between(day, here.get(stage))))
                                        .as("%s, warmer by %s, stage %d", habit, warmer, stage)
                                        .isLessThanOrEqualTo(2));
            }
        }
    }

    /**
     * Means of a type of climate; that a larch moves in May there is common practice, no source.
     */
    @Test
    void budsDoNotSwellInFrozenGround() {
        var model = of(Places.subArctic(), Habit.DECIDUOUS_CONIFER);
        var stages = beginnings(model, LocalDate.of(2024, 1, 1));
        assertThat(stages.get(1)).isBetween(LocalDate.of(2024, 4, 25), LocalDate.of(2024, 5, 8));
        assertThat(stages.get(7)).isBetween(LocalDate.of(2024, 5, 8), LocalDate.of(2024, 5, 25));
    }

    /** Where winter is mild its coolest weeks come after midwinter, and buds wait for them. */
    @Test
    void budsWaitForTheColdestTimeToBeOver() {
        var january = List.of(14.2, 14.4, 16.5, 20., 23.5, 26., 26.5, 26.5, 25.5, 23., 19., 15.5);
        var warmer = List.of(18.5, 18.9, 21., 25., 28.5, 30.5, 31.5, 31.3, 30.3, 27.5, 24., 20.);
        var model = of(new Climate(22.3, NormalYear.of(january, warmer)), Habit.DECIDUOUS);
        var stages = beginnings(model, LocalDate.of(2024, 1, 1));
        assertThat(stages.get(1)).isBetween(LocalDate.of(2024, 1, 12), LocalDate.of(2024, 2, 10));
        assertThat(ChronoUnit.DAYS.between(stages.get(1), stages.get(7)))
                .isGreaterThanOrEqualTo(10);
    }

    /** About 18 °C by the mean; the fig's own minimum is the winter shelter's business. */
    @Test
    void tropicalKindsGrowAsLongAsItIsWarm() {
        var model = of(Places.subtropicalSouth(), Habit.TROPICAL);
        for (var day = FIRST; day.isBefore(LAST); day = day.plusDays(1)) {
            int month = day.getMonthValue();
            if (month >= 10 || month <= 4) {
                assertThat(model.stageOn(day)).as("%s", day).isBetween(19, 39);
            }
        }
        assertThat(model.stageOn(LocalDate.of(2024, 7, 15))).isNotIn(19, 31, 33, 35, 37, 39);
    }

    /** In a heated house a fig makes no shoots while days are short; at the equator none are. */
    @ParameterizedTest
    @CsvSource({
        "47.4, 2024-12-05, 91",
        "47.4, 2024-06-05, 35",
        "-47.4, 2024-06-05, 91",
        "47.4, 2024-02-10, 91",
        "47.4, 2024-03-05, 35",
        "1, 2024-12-05, 35",
        "30, 2024-12-21, 35"
    })
    void tropicalKindsPauseInShortDays(double latitude, LocalDate day, int stage) {
        var model = of(Places.steady(latitude, 17, 23), Habit.TROPICAL);
        assertThat(model.stageOn(day)).isEqualTo(stage);
        assertThat(model.from(35, day).stageOn(day.plusDays(5))).as("shoots seen").isEqualTo(35);
    }

    @ParameterizedTest
    @CsvSource({"5, 20, 30", "-23, 5, 15", "30, 15.5, 25", "50, 15, 21"})
    void whereNothingRestsEverythingGrows(double latitude, double minimum, double maximum) {
        var model = of(Places.steady(latitude, minimum, maximum), Habit.DECIDUOUS);
        assertThat(beginnings(model, FIRST)).containsOnlyKeys(35);
    }

    @ParameterizedTest
    @ValueSource(doubles = {90, -90, 70, -70})
    void atThePolesBudsStayShut(double latitude) {
        var model = of(Places.steady(latitude, -30, -10), Habit.EVERGREEN_CONIFER);
        assertThat(beginnings(model, FIRST).headMap(92)).containsOnlyKeys(0);
    }

    @Test
    void aHotYearWithoutAutumnRestsAtMidwinter() {
        var minima = List.of(14., 15., 17., 19., 21., 22., 22., 22., 21., 19., 17., 15.);
        var maxima = List.of(27., 28., 30., 32., 34., 35., 35., 35., 34., 32., 30., 28.);
        var model = of(new Climate(28, NormalYear.of(minima, maxima)), Habit.DECIDUOUS);
        assertThat(model.stageOn(LocalDate.of(2024, 12, 31))).isEqualTo(91);
        assertThat(model.stageOn(LocalDate.of(2025, 1, 1))).isZero();
    }

    @Test
    void daysOutsideTheSpanAreThoseOfTheNearestYear() {
        var model = of(Places.inland(), Habit.DECIDUOUS);
        assertThat(model.stageOn(LocalDate.of(1950, 6, 10)))
                .isEqualTo(model.stageOn(LocalDate.of(2023, 6, 10)));
        assertThat(model.stageOn(LocalDate.of(2080, 2, 29)))
                .isEqualTo(model.stageOn(LocalDate.of(2026, 2, 28)));
    }

    @Test
    void whatWasSeenStandsAndTheModelMovesOnFromIt() {
        var model = of(Places.inland(), Habit.DECIDUOUS);
        var usual = beginnings(model, FIRST).get(10);
        var seenOn = usual.minusDays(20);
        var clock = model.from(10, seenOn);
        assertThat(clock.stageOn(seenOn.minusDays(1)))
                .isEqualTo(model.stageOn(seenOn.minusDays(1)));
        assertThat(clock.stageOn(seenOn)).isEqualTo(10);
        assertThat(clock.stageOn(seenOn.plusDays(10))).isEqualTo(10);
        assertThat(clock.stageOn(usual.plusDays(10)))
                .isGreaterThan(model.stageOn(usual.plusDays(10)));
        assertThat(clock.stageOn(seenOn.plusDays(121)))
                .isEqualTo(model.stageOn(seenOn.plusDays(121)));
    }

    /** A tree behind is told behind, and one as the model has it is not moved. */
    @Test
    void aLateTreeStaysLateAndAUsualOneUsual() {
        var model = of(Places.inland(), Habit.DECIDUOUS);
        var day = beginnings(model, FIRST).get(15);
        var later = day.plusDays(25);
        assertThat(beginnings(model.from(7, day), FIRST).get(31))
                .isAfter(beginnings(model, FIRST).get(31).plusDays(3));
        assertThat(model.from(15, day).stageOn(later)).isEqualTo(model.stageOn(later));
        assertThat(model.from(65, day).stageOn(later)).isEqualTo(model.stageOn(later));
    }

    @Test
    void anEarlyAutumnIsFollowedAndEndsWithTheYear() {
        var model = of(Places.inland(), Habit.DECIDUOUS);
        var usual = beginnings(model, FIRST).get(93);
        var clock = model.from(93, usual.minusDays(25));
        assertThat(clock.stageOn(usual)).isGreaterThan(93);
        var bare = model.from(99, LocalDate.of(2023, 11, 20));
        assertThat(bare.stageOn(LocalDate.of(2023, 12, 31))).isEqualTo(99);
        assertThat(bare.stageOn(LocalDate.of(2024, 1, 15))).isZero();
    }

    @Test
    void restIsRestOnBothSidesOfMidwinter() {
        var model = of(Places.inland(), Habit.DECIDUOUS);
        var inDecember = model.from(0, LocalDate.of(2023, 12, 1));
        assertThat(inDecember.stageOn(LocalDate.of(2023, 12, 20))).isEqualTo(99);
        var inFebruary = model.from(97, LocalDate.of(2024, 2, 1));
        assertThat(inFebruary.stageOn(LocalDate.of(2024, 5, 1))).isBetween(1, 39);
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void afterALookStagesGoForwardUntilItIsSpent(long seed) {
        var random = new SplittableRandom(seed);
        var habits = List.of(Habit.values());
        for (int i = 0; i < 200; i++) {
            var habit = habits.get(random.nextInt(habits.size()));
            var model = of(Places.inland(), habit);
            int seen = random.nextInt(40);
            var on = LocalDate.of(2024, 1, 1).plusDays(random.nextInt(150));
            var clock = model.from(seen, on);
            for (int age = 0; age < 120; age++) {
                assertThat(clock.stageOn(on.plusDays(age + 1L)))
                        .as("seed %d, %s, %02d seen on %s, %d days on", seed, habit, seen, on, age)
                        .isGreaterThanOrEqualTo(clock.stageOn(on.plusDays(age)));
            }
        }
    }

    @Test
    void badInputIsRefused() {
        var model = of(Places.inland(), Habit.DECIDUOUS);
        assertThatThrownBy(() -> model.from(100, FIRST)).hasMessageContaining("100");
        assertThatThrownBy(
                        () ->
                                SeasonModel.of(
                                        Places.inland(), Habit.DECIDUOUS, LAST, LAST.minusDays(1)))
                .hasMessageContaining("2026-12-31");
        assertThatThrownBy(() -> new Climate(Double.NaN, Places.inland().temperatures()))
                .hasMessageContaining("NaN");
    }
}
