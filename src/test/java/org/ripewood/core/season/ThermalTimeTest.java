package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class ThermalTimeTest {

    /**
     * Monthly means of daily maxima and minima in °C over 2012 to 2015 of one station, worked from
     * NOAA NCDC daily summaries (public domain; npm package vega-datasets 3.2.1).
     */
    private static final List<Double> MAXIMA =
            List.of(
                    8.23, 9.86, 12.39, 15.02, 19.30, 22.40, 26.00, 26.11, 21.92, 16.39, 11.02,
                    8.19);

    private static final List<Double> MINIMA =
            List.of(2.70, 4.05, 4.86, 6.36, 9.61, 12.24, 14.20, 14.77, 12.36, 9.35, 4.70, 3.32);

    private static final LocalDate FIRST = LocalDate.of(2023, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2032, 12, 31);

    private static ThermalTime normals(double base) {
        var year = NormalYear.of(MINIMA, MAXIMA);
        return ThermalTime.of(year, FIRST, LAST, base, DegreeDays.NO_UPPER, day -> true);
    }

    @ParameterizedTest
    @ValueSource(ints = {2023, 2024})
    void dailyValuesKeepTheMonthlyMeans(int year) {
        var means = MonthlyMeans.of(MAXIMA);
        for (int month = 1; month <= 12; month++) {
            var first = LocalDate.of(year, month, 1);
            double sum = 0;
            for (int i = 0; i < first.lengthOfMonth(); i++) {
                sum += means.on(year, first.getDayOfYear() + i);
            }
            assertThat(sum / first.lengthOfMonth()).isCloseTo(MAXIMA.get(month - 1), within(1e-9));
        }
    }

    /**
     * The mean yearly total of the same station's own days, single sine: 2809.0 above 5 °C and
     * 1453.4 above 10 °C; tolerance 2 %, since the scatter of days around the means is a guess.
     */
    @ParameterizedTest
    @CsvSource({"5, 2809.0", "10, 1453.4"})
    void meansWithScatterGiveTheDaysOwnTotal(double base, double total) {
        double found = normals(base).between(FIRST, FIRST.plusYears(1));
        assertThat(found).isCloseTo(total, within(0.02 * total));
    }

    @Test
    void theWayBackFromDegreeDaysIsExact() {
        var time = normals(5);
        for (long seed = 0; seed < 2_000; seed++) {
            var random = new Random(seed);
            var from = FIRST.plusDays(random.nextInt(2_000));
            double wanted = 1 + 3_000 * random.nextDouble();
            var day = time.dayReaching(from, wanted).orElseThrow();
            assertThat(time.between(from, day.plusDays(1)))
                    .as("seed %d", seed)
                    .isGreaterThanOrEqualTo(wanted);
            assertThat(time.between(from, day)).as("seed %d", seed).isLessThan(wanted);
        }
    }

    @Test
    void daysThatDoNotCountAddNothing() {
        var year = NormalYear.of(MINIMA, MAXIMA);
        var summer =
                ThermalTime.of(
                        year, FIRST, LAST, 5, DegreeDays.NO_UPPER, day -> day.getMonthValue() == 7);
        assertThat(summer.between(FIRST, LocalDate.of(2023, 7, 1))).isZero();
        assertThat(summer.dayReaching(FIRST, 1).orElseThrow()).isEqualTo(LocalDate.of(2023, 7, 1));
    }

    @Test
    void aSpanThatEndsBeforeSaysSo() {
        assertThat(normals(5).dayReaching(FIRST, 1e6)).isEmpty();
        assertThat(normals(5).dayReaching(FIRST, 0)).contains(FIRST);
    }

    @Test
    void daysOutsideTheSpanAreRefused() {
        assertThatThrownBy(() -> normals(5).between(FIRST.minusDays(1), FIRST))
                .hasMessageContaining("2022-12-31");
        assertThatThrownBy(() -> MonthlyMeans.of(List.of(1.0, 2.0))).hasMessageContaining("twelve");
        assertThatThrownBy(() -> NormalYear.of(MAXIMA, MINIMA)).hasMessageContaining("month 1");
    }

    /** A warmer site is never slower. */
    @Test
    void warmerMonthsNeverTakeLonger() {
        var warm = NormalYear.of(plus(MINIMA, 1.5), plus(MAXIMA, 1.5));
        var warmer = ThermalTime.of(warm, FIRST, LAST, 5, DegreeDays.NO_UPPER, day -> true);
        for (int wanted = 100; wanted < 5_000; wanted += 100) {
            assertThat(warmer.dayReaching(FIRST, wanted).orElseThrow())
                    .isBeforeOrEqualTo(normals(5).dayReaching(FIRST, wanted).orElseThrow());
        }
    }

    private static List<Double> plus(List<Double> values, double more) {
        return values.stream().map(value -> value + more).toList();
    }
}
