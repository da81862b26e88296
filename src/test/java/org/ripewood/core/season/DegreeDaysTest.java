package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class DegreeDaysTest {

    /** Published to two decimals: single-sine tests of the R package TrenchR, °C, 12 to 33. */
    @ParameterizedTest
    @CsvSource({"7, 14, 0.47", "7, 10, 0", "13, 14, 1.5", "13, 40, 12.94", "7, 40, 10.94"})
    void oneDayComesOutAsPublished(double min, double max, double published) {
        assertThat(DegreeDays.singleSine(min, max, 12, 33)).isCloseTo(published, within(0.005));
    }

    /** Ojai, January 2016, °C, 12 to 33, as the UC IPM degree-day service published them. */
    @ParameterizedTest
    @CsvSource({"7.8, 19.4, 2.72", "4.4, 22.2, 3.51", "3.3, 18.9, 2.05", "10.0, 21.7, 4.21"})
    void daysOfAStationComeOutAsPublished(double min, double max, double published) {
        assertThat(DegreeDays.singleSine(min, max, 12, 33)).isCloseTo(published, within(0.006));
    }

    /**
     * Esparto.A, 2020, °F, 50 to 70, horizontal cutoff, as the UC IPM degree-day service published
     * them; rounding alone differs.
     */
    @ParameterizedTest
    @CsvSource({
        "38, 55, 1.19",
        "36, 67, 5.71",
        "41, 50, 0",
        "54, 67, 10.5",
        "52, 73, 12.01",
        "44, 76, 10.00",
        "40, 74, 8.79",
        "71, 103, 20"
    })
    void bothThresholdsComeOutAsPublished(double min, double max, double published) {
        assertThat(DegreeDays.singleSine(min, max, 50, 70)).isCloseTo(published, within(0.0051));
    }

    /** A horizontal cutoff cannot give more than the span of the thresholds. */
    @Test
    void aDayAboveTheUpperThresholdGivesTheSpan() {
        assertThat(DegreeDays.singleSine(35, 40, 12, 33)).isEqualTo(21);
    }

    /** 64 − 53 = 11 for a mean of 64 °F: UC IPM, citrus thrips page. */
    @Test
    void theSimpleAverageIsTheMiddleAboveTheBase() {
        assertThat(DegreeDays.simpleAverage(54, 74, 53)).isEqualTo(11);
        assertThat(DegreeDays.simpleAverage(26, 55, 50)).isZero();
    }

    @Test
    void withoutThresholdsInTheWaySineAndAverageAgree() {
        assertThat(DegreeDays.singleSine(10, 22, 5, DegreeDays.NO_UPPER))
                .isEqualTo(DegreeDays.simpleAverage(10, 22, 5));
    }

    @Test
    void aWarmerDayNeverGivesLess() {
        for (long seed = 0; seed < 5_000; seed++) {
            var random = new Random(seed);
            double min = -20 + 50 * random.nextDouble();
            double max = min + 20 * random.nextDouble();
            double warmer = 3 * random.nextDouble();
            double cool = DegreeDays.singleSine(min, max, 5, 30);
            double warm = DegreeDays.singleSine(min + warmer, max + warmer, 5, 30);
            assertThat(warm).as("seed %d", seed).isGreaterThanOrEqualTo(cool - 1e-12);
            assertThat(warm).as("seed %d", seed).isBetween(-1e-12, 25 + 1e-12);
        }
    }

    @ParameterizedTest
    @CsvSource({"10, 9, 5, 30", "NaN, 9, 5, 30", "1, NaN, 5, 30", "1, 2, 5, 5", "1, 2, NaN, 30"})
    void aDayThatCannotBeIsRefused(double min, double max, double lower, double upper) {
        assertThatThrownBy(() -> DegreeDays.singleSine(min, max, lower, upper))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
