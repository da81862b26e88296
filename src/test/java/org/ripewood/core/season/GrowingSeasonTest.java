package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class GrowingSeasonTest {

    @ParameterizedTest
    @CsvSource({
        "2024-01-01, 50, 2024-01-01",
        "2024-12-31, 50, 2024-01-01",
        "2024-02-29, 0, 2024-01-01",
        "2024-06-30, -35, 2023-07-01",
        "2024-07-01, -35, 2024-07-01",
        "2025-01-15, -35, 2024-07-01"
    })
    void itRunsFromMidwinterToMidwinter(LocalDate day, double latitude, LocalDate firstDay) {
        var season = GrowingSeason.of(day, latitude);
        assertThat(season.firstDay()).isEqualTo(firstDay);
        assertThat(season.holds(day)).isTrue();
        assertThat(season.holds(firstDay.plusYears(1))).isFalse();
        assertThat(season.holds(firstDay.minusDays(1))).isFalse();
    }
}
