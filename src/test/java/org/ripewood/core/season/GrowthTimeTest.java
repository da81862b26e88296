package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class GrowthTimeTest {

    private static final LocalDate FIRST = LocalDate.of(2020, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2049, 12, 31);

    private static GrowthTime of(Climate climate, Habit habit) {
        return GrowthTime.of(climate, habit, 5, FIRST, LAST);
    }

    @Test
    void winterAddsNothing() {
        var time = of(Places.inland(), Habit.DECIDUOUS);
        assertThat(time.between(LocalDate.of(2024, 12, 1), LocalDate.of(2025, 2, 1))).isZero();
        assertThat(time.between(LocalDate.of(2024, 6, 1), LocalDate.of(2024, 7, 1))).isPositive();
    }

    /** What growth leaves out is winter's warmth: little, but something. */
    @ParameterizedTest
    @EnumSource(names = "TROPICAL", mode = EnumSource.Mode.EXCLUDE)
    void aYearsGrowthIsMostOfItsWarmth(Habit habit) {
        var climate = Places.inland();
        var all =
                ThermalTime.of(
                        climate.temperatures(), FIRST, LAST, 5, DegreeDays.NO_UPPER, day -> true);
        double year = all.between(FIRST, LAST) / 30;
        assertThat(of(climate, habit).meanPerYear()).isBetween(0.85 * year, 0.995 * year);
    }

    /**
     * Totals above 5 °C of all the days of 2012 to 2015, single sine, worked from the same data by
     * another program (Python 3): 2451.0, 2759.3, 2975.7, 3049.9; tolerance 0.1, their rounding.
     */
    @ParameterizedTest
    @CsvSource({"2012, 2451.0", "2013, 2759.3", "2014, 2975.7", "2015, 3049.9"})
    void tropicalTreesCountEveryDay(int year, double total) {
        var climate = new Climate(47.6, DailyReadings.alone(Places.readings()));
        var first = LocalDate.of(year, 1, 1);
        var time = GrowthTime.of(climate, Habit.TROPICAL, 5, first, first);
        assertThat(time.between(first, first.plusYears(1))).isCloseTo(total, within(0.1));
    }

    /**
     * First day whose running total above 5 °C reaches a mark, same program; growth-time names the
     * morning after.
     */
    @ParameterizedTest
    @CsvSource({
        "250, 2012-04-20",
        "250, 2013-04-05",
        "250, 2014-03-29",
        "250, 2015-03-11",
        "1000, 2012-07-12",
        "1000, 2015-06-10",
        "2000, 2012-09-23",
        "2000, 2015-08-11"
    })
    void openWeatherReachesItsMarksOnTheirDays(double mark, LocalDate day) {
        var climate = new Climate(47.6, DailyReadings.alone(Places.readings()));
        var first = LocalDate.of(2012, 1, 1);
        var last = LocalDate.of(2015, 12, 31);
        var time = GrowthTime.of(climate, Habit.TROPICAL, 5, first, last);
        assertThat(time.dayReaching(day.withDayOfYear(1), mark)).contains(day.plusDays(1));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void theWayBackIsExact(long seed) {
        var random = new SplittableRandom(seed);
        var time = of(Places.inland(), Habit.EVERGREEN_CONIFER);
        for (int i = 0; i < 2_000; i++) {
            var from = FIRST.minusDays(1_000).plusDays(random.nextInt(9_000));
            double amount = 4_000 * random.nextDouble();
            var day = time.dayReaching(from, amount).orElseThrow();
            assertThat(time.between(from, day))
                    .as("seed %d, %s from %s", seed, amount, from)
                    .isGreaterThanOrEqualTo(amount);
            assertThat(time.between(from, day.minusDays(1)))
                    .as("seed %d, %s from %s", seed, amount, from)
                    .isLessThan(amount);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34, 35, 36, 37, 38})
    void aWarmerPlaceIsNeverSlower(long seed) {
        var random = new SplittableRandom(seed);
        double latitude = (25 + 40 * random.nextDouble()) * (random.nextBoolean() ? 1 : -1);
        int months = latitude < 0 ? 6 : 0;
        double base = -6 + 12 * random.nextDouble();
        double warmer = base + 6 * random.nextDouble();
        for (var habit : Habit.values()) {
            var cool = of(Places.inland(latitude, base, months), habit);
            var warm = of(Places.inland(latitude, warmer, months), habit);
            for (int i = 0; i < 300; i++) {
                var from = FIRST.plusDays(random.nextInt(3_000));
                double amount = 5_000 * random.nextDouble();
                assertThat(warm.dayReaching(from, amount).orElseThrow())
                        .as("seed %d, %s, %s from %s", seed, habit, amount, from)
                        .isBeforeOrEqualTo(cool.dayReaching(from, amount).orElse(LocalDate.MAX));
            }
        }
    }

    @Test
    void halfAYearLaterTheSouthGrowsAsTheNorth() {
        var north = of(Places.inland(), Habit.DECIDUOUS);
        var south = of(Places.inland(-50, 0, 6), Habit.DECIDUOUS);
        assertThat(south.meanPerYear())
                .isCloseTo(north.meanPerYear(), within(0.02 * north.meanPerYear()));
        var inNorth = north.dayReaching(LocalDate.of(2024, 1, 1), 1_000).orElseThrow();
        var inSouth = south.dayReaching(LocalDate.of(2024, 7, 1), 1_000).orElseThrow();
        assertThat(inSouth).isBetween(inNorth.plusDays(175), inNorth.plusDays(189));
    }

    @ParameterizedTest
    @ValueSource(doubles = {90, -90, 68})
    void whereNothingGrowsNothingIsReached(double latitude) {
        var time = of(Places.steady(latitude, -30, -10), Habit.EVERGREEN_CONIFER);
        assertThat(time.meanPerYear()).isZero();
        assertThat(time.dayReaching(FIRST, 1)).isEmpty();
        assertThat(time.dayReaching(FIRST.minusYears(5), 1)).isEmpty();
        assertThat(time.dayReaching(FIRST, 0)).contains(FIRST);
    }

    @Test
    void daysOutsideTheSpanGoByAtTheMeanRate() {
        var time = of(Places.inland(), Habit.DECIDUOUS);
        double decade = time.between(LocalDate.of(2005, 1, 1), LocalDate.of(2015, 1, 1));
        assertThat(decade).isCloseTo(10 * time.meanPerYear(), within(time.meanPerYear() / 100));
        assertThat(time.between(LAST.plusDays(1), LAST.plusDays(101))).isPositive();
        assertThat(time.dayReaching(LAST, 1_000)).isEmpty();
        assertThat(time.dayReaching(LAST.plusYears(3), 1)).isEmpty();
    }

    @Test
    void badInputIsRefused() {
        var time = of(Places.inland(), Habit.DECIDUOUS);
        assertThatThrownBy(() -> time.dayReaching(FIRST, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () ->
                                GrowthTime.of(
                                        Places.inland(), Habit.DECIDUOUS, Double.NaN, FIRST, LAST))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
