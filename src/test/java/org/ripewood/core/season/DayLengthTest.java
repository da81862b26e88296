package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shredzone.commons.suncalc.SunTimes;

@Tag("fast")
class DayLengthTest {

    /**
     * US Naval Observatory: San Francisco's longest and shortest day 14:47 and 9:33, Seattle on 20
     * June 16:00, Philadelphia on 21 June 15:01, Ann Arbor 15:16; tolerance a tenth of an hour.
     */
    @ParameterizedTest
    @CsvSource({
        "37.77, 172, 14.783",
        "37.77, 355, 9.55",
        "47.6, 171, 16.0",
        "39.95, 172, 15.017",
        "42.28, 172, 15.267"
    })
    void itAgreesWithAnObservatory(double latitude, int day, double hours) {
        assertThat(DayLength.hours(latitude, day)).isCloseTo(hours, within(0.1));
    }

    /** Worked from the formula of Forsythe et al. 1995, upper limb on the horizon. */
    @ParameterizedTest
    @CsvSource({
        "0, 1, 12.121",
        "40, 172, 15.016",
        "51.5, 355, 7.826",
        "60, 172, 18.870",
        "66.86, 355, 1.737",
        "-25, 1, 13.664",
        "-35, 172, 9.797"
    })
    void itFollowsTheFormula(double latitude, int day, double hours) {
        assertThat(DayLength.hours(latitude, day)).isCloseTo(hours, within(0.001));
    }

    @Test
    void thePolesHaveDaysOfAllOrNothing() {
        assertThat(DayLength.hours(90, 172)).isEqualTo(24);
        assertThat(DayLength.hours(90, 355)).isZero();
        assertThat(DayLength.hours(-90, 355)).isEqualTo(24);
    }

    /**
     * Rise and set by the library commons-suncalc, which follows Montenbruck and Pfleger; tolerance
     * 0.1 h, since this formula's autumn days come out up to five minutes long.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-55, -35, -23.4, 0, 10, 35, 47.6, 51.5, 60})
    void itAgreesWithAnEphemeris(double latitude) {
        for (var day = LocalDate.of(2024, 1, 1); day.getYear() == 2024; day = day.plusDays(5)) {
            var sun = SunTimes.compute().on(day).timezone("UTC").at(latitude, 0).execute();
            double hours = Duration.between(sun.getRise(), sun.getSet()).toSeconds() / 3600.0;
            assertThat(DayLength.hours(latitude, day.getDayOfYear()))
                    .as("%s at %s", day, latitude)
                    .isCloseTo(hours, within(0.1));
        }
    }

    @ParameterizedTest
    @CsvSource({"90.1, 1", "NaN, 1", "0, 0", "0, 367"})
    void aPlaceOrDayThatCannotBeIsRefused(double latitude, int day) {
        assertThatThrownBy(() -> DayLength.hours(latitude, day))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
