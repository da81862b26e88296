package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class GrowthDaysTest {

    private static final LocalDate FEB = LocalDate.of(2024, 2, 28);

    private final GrowthDays plain = GrowthDays.plain();

    @Test
    void plainDaysAreTheCalendars() {
        // By hand: 2024 has a 29 February.
        assertThat(plain.between(FEB, LocalDate.of(2024, 3, 1))).isEqualTo(2);
        assertThat(plain.between(LocalDate.of(2024, 3, 1), FEB)).isEqualTo(-2);
        assertThat(plain.meanPerYear()).isEqualTo(365.25);
    }

    @Test
    void nothingToWaitForIsReachedAtOnce() {
        assertThat(plain.dayReaching(FEB, 0)).contains(FEB);
        assertThat(plain.dayReaching(FEB, -3)).contains(FEB);
    }

    @Test
    void theDayReachedIsTheFirst() {
        long seed = 20240228;
        var random = new SplittableRandom(seed);
        for (int i = 0; i < 1_000; i++) {
            double amount = random.nextDouble() * 4_000;
            var day = plain.dayReaching(FEB, amount).orElseThrow();
            assertThat(plain.between(FEB, day)).as("seed %d", seed).isGreaterThanOrEqualTo(amount);
            assertThat(plain.between(FEB, day.minusDays(1))).as("seed %d", seed).isLessThan(amount);
        }
    }

    @Test
    void whatLiesBeyondReachIsEmptyAndNoNumberIsRefused() {
        assertThat(plain.dayReaching(FEB, Double.POSITIVE_INFINITY)).isEmpty();
        assertThatThrownBy(() -> plain.dayReaching(FEB, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
