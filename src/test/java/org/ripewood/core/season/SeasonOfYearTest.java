package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seasons by the calendar's months on both hemispheres and between the tropics. */
@Tag("fast")
class SeasonOfYearTest {

    @ParameterizedTest
    @CsvSource({
        "2028-12-01, 52, winter 2028/29",
        "2029-02-28, 52, winter 2028/29",
        "2029-03-01, 52, spring 2029",
        "2029-05-31, 52, spring 2029",
        "2029-06-01, 52, summer 2029",
        "2029-11-30, 52, autumn 2029",
        "2099-12-31, 52, winter 2099/00",
        "2029-09-01, -34, spring 2029",
        "2028-12-01, -34, summer 2028/29",
        "2029-02-28, -34, summer 2028/29",
        "2029-03-01, -34, autumn 2029",
        "2029-08-31, -34, winter 2029",
        "2029-01-01, 1, first quarter of 2029",
        "2029-03-31, -5, first quarter of 2029",
        "2029-04-01, 0, second quarter of 2029",
        "2029-12-31, 23, fourth quarter of 2029",
        "2029-12-31, 23.5, winter 2029/30",
    })
    void everyDayHasItsSeason(LocalDate day, double latitude, String name) {
        assertThat(SeasonOfYear.of(day, latitude).name()).isEqualTo(name);
    }

    @Test
    void aSeasonHoldsItsFirstDayAndTheDaysAreInOrder() {
        for (double latitude : new double[] {-60, -10, 0, 20, 50}) {
            var before = SeasonOfYear.of(LocalDate.of(2027, 1, 1), latitude);
            for (int d = 1; d < 800; d++) {
                var day = LocalDate.of(2027, 1, 1).plusDays(d);
                var season = SeasonOfYear.of(day, latitude);
                assertThat(season.firstDay()).isBeforeOrEqualTo(day);
                assertThat(season.firstDay().plusMonths(3)).isAfter(day);
                assertThat(season.firstDay()).isAfterOrEqualTo(before.firstDay());
                before = season;
            }
        }
    }

    @Test
    void whatIsExpectedIsToldInSeasons() {
        var years =
                new Outlook.Expected(
                        LocalDate.of(2028, 10, 3),
                        LocalDate.of(2029, 4, 1),
                        LocalDate.of(2030, 7, 1));
        assertThat(SeasonOfYear.told(years, 52))
                .isEqualTo("about spring 2029, between autumn 2028 and summer 2030");
        assertThat(SeasonOfYear.toldWithCare(years, 52))
                .isEqualTo("not before autumn 2028, more likely about spring 2029");
        var open = new Outlook.Expected(years.earliest(), years.likely(), null);
        assertThat(SeasonOfYear.told(open, 1))
                .isEqualTo(
                        "about the second quarter of 2029; not before the fourth quarter of 2028,"
                                + " and how late cannot be said");
        var one = Outlook.Expected.on(LocalDate.of(2029, 4, 1));
        assertThat(SeasonOfYear.told(one, 52)).isEqualTo("in spring 2029");
        assertThat(SeasonOfYear.toldWithCare(one, 52)).isEqualTo("not before spring 2029");
    }
}
