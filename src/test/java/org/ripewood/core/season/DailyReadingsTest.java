package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class DailyReadingsTest {

    private static final NormalYear NORMALS =
            NormalYear.of(Places.OCEANIC_MINIMA, Places.OCEANIC_MAXIMA);

    private static final LocalDate DAY = LocalDate.of(2020, 5, 1);

    @Test
    void daysThatWereReadAreAnsweredAsRead() {
        var readings = DailyReadings.over(NORMALS, List.of(new DayReading(DAY, 3, 17)));
        assertThat(readings.minCelsius(DAY)).isEqualTo(3);
        assertThat(readings.maxCelsius(DAY)).isEqualTo(17);
        assertThat(readings.scatterCelsius(DAY)).isZero();
    }

    @Test
    void gapsAndTheFutureAreAnsweredByTheNormalYear() {
        var readings =
                DailyReadings.over(
                        NORMALS,
                        List.of(new DayReading(DAY.plusDays(2), 4, 5), new DayReading(DAY, 3, 17)));
        for (var day : List.of(DAY.minusDays(1), DAY.plusDays(1), DAY.plusYears(20))) {
            assertThat(readings.read(day)).isFalse();
            assertThat(readings.minCelsius(day)).isEqualTo(NORMALS.minCelsius(day));
            assertThat(readings.maxCelsius(day)).isEqualTo(NORMALS.maxCelsius(day));
            assertThat(readings.scatterCelsius(day)).isEqualTo(NORMALS.scatterCelsius(day));
        }
    }

    @Test
    void noReadingsAtAllAreTheNormalYear() {
        var readings = DailyReadings.over(NORMALS, List.of());
        assertThat(readings.maxCelsius(LocalDate.EPOCH))
                .isEqualTo(NORMALS.maxCelsius(LocalDate.EPOCH));
    }

    @Test
    void orderDoesNotMatter() {
        var shuffled = new ArrayList<>(Places.readings());
        Collections.shuffle(shuffled, new Random(5));
        var one = DailyReadings.alone(Places.readings());
        var other = DailyReadings.alone(shuffled);
        for (var day = LocalDate.of(2011, 1, 1); day.getYear() < 2017; day = day.plusDays(1)) {
            assertThat(other.minCelsius(day)).isCloseTo(one.minCelsius(day), within(1e-9));
        }
    }

    /** Means published beside the data set's checks, two decimals. */
    @Test
    void aNormalYearIsMadeOfTheReadingsOwnMonths() {
        var normal = ReadingsNormal.of(Places.readings());
        for (var month : Month.values()) {
            double low = 0;
            double high = 0;
            int days = month.length(false);
            for (int day = 1; day <= days; day++) {
                low += normal.minCelsius(LocalDate.of(2023, month, day)) / days;
                high += normal.maxCelsius(LocalDate.of(2023, month, day)) / days;
            }
            int index = month.getValue() - 1;
            assertThat(low).isCloseTo(Places.OCEANIC_MINIMA.get(index), within(0.0051));
            assertThat(high).isCloseTo(Places.OCEANIC_MAXIMA.get(index), within(0.0051));
        }
    }

    /**
     * Mean yearly totals of the days themselves, single sine: 2809.0 above 5 °C, 1453.4 above 10
     * °C; the scatter is the readings' own and no longer a guess: tolerance 1.5 %.
     */
    @ParameterizedTest
    @CsvSource({"5, 2809.0", "10, 1453.4"})
    void theNormalYearOfReadingsKeepsTheirDegreeDays(double base, double total) {
        var first = LocalDate.of(2025, 1, 1);
        var time =
                ThermalTime.of(
                        DailyReadings.alone(Places.readings()),
                        first,
                        LocalDate.of(2025, 12, 31),
                        base,
                        DegreeDays.NO_UPPER,
                        day -> true);
        assertThat(time.between(first, first.plusYears(1))).isCloseTo(total, within(0.015 * total));
    }

    @Test
    void aYearWithAHoleInItMakesNoNormalYear() {
        var readings = Places.readings().subList(0, 366);
        assertThat(ReadingsNormal.enough(readings)).isTrue();
        var withoutMarch =
                Places.readings().stream()
                        .filter(reading -> reading.day().getMonth() != Month.MARCH)
                        .toList();
        assertThat(ReadingsNormal.enough(withoutMarch)).isFalse();
        assertThatThrownBy(() -> DailyReadings.alone(withoutMarch))
                .hasMessageContaining("0 in the poorest month");
        assertThat(ReadingsNormal.enough(readings.subList(0, 329))).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"-90.1, 0", "5, 4.9", "0, 60.1", "NaN, 3", "3, NaN"})
    void aReadingThatCannotBeIsRefused(double minimum, double maximum) {
        assertThatThrownBy(() -> new DayReading(DAY, minimum, maximum))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2020-05-01");
    }

    @Test
    void aDayReadTwiceOrAnOddCenturyIsRefused() {
        var reading = new DayReading(DAY, 1, 2);
        assertThatThrownBy(() -> DailyReadings.over(NORMALS, List.of(reading, reading)))
                .hasMessageContaining("2020-05-01 was read twice");
        var odd = new DayReading(LocalDate.of(202, 5, 1), 1, 2);
        assertThatThrownBy(() -> DailyReadings.over(NORMALS, List.of(reading, odd)))
                .hasMessageContaining("0202-05-01");
    }
}
