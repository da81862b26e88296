package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days are those of common practice, no source; the climates are types and no one place. */
@Tag("fast")
class PlaceYearTest {

    private static final LocalDate FIRST = LocalDate.of(2023, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2026, 12, 31);

    private static PlaceYear of(Climate climate) {
        return TypicalWeather.of(climate, FIRST, LAST);
    }

    private static LocalDate day(int month, int dayOfMonth) {
        return LocalDate.of(2025, month, dayOfMonth);
    }

    @Test
    void elevenWeeksAreLeftInEarlyAugustWhereFrostComesInOctober() {
        var place = of(Places.continental());
        assertThat(place.growingDaysLeft(day(8, 6))).isBetween(60, 80);
        assertThat(place.growingDaysLeft(day(6, 20))).isBetween(105, 125);
        assertThat(place.growingDaysLeft(day(11, 1))).isZero();
    }

    /** A frost in April ends nothing: summer is ahead. */
    @Test
    void inSpringTheWholeSummerIsLeft() {
        var place = of(Places.continental());
        assertThat(place.growingDaysLeft(day(3, 20))).isBetween(150, 190);
        assertThat(place.growingDaysLeft(day(1, 20))).isEqualTo(place.growingDaysLeft(day(3, 20)));
    }

    @Test
    void whereNoFrostComesTimeDoesNotRunOut() {
        for (var place :
                new PlaceYear[] {
                    of(Places.mediterranean()),
                    of(Places.subtropicalSouth()),
                    of(Places.tropicalHighland()),
                    of(Places.steady(47, 15, 21))
                }) {
            assertThat(place.growingDaysLeft(day(12, 1))).isEqualTo(PlaceYear.NO_FROST);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "47, 15, 21, true",
        "1.3, 24, 31, true",
        "1.3, 3, 12, false",
        "60, 2, 8, false",
        "-35, 14.9, 24, true"
    })
    void noWinterComesByTheTemperatures(
            double latitude, double minimum, double maximum, boolean without) {
        var place = of(Places.steady(latitude, minimum, maximum));
        assertThat(place.withoutWinter()).isEqualTo(without);
    }

    @Test
    void aHighlandWithoutFrostHasNoWinterAndAMildCoastHasOne() {
        assertThat(of(Places.tropicalHighland()).withoutWinter()).isTrue();
        assertThat(of(Places.subtropicalSouth()).withoutWinter()).isFalse();
        assertThat(of(Places.mediterranean()).withoutWinter()).isFalse();
    }

    @Test
    void theCoolestWeeksAreTwelve() {
        var place = of(Places.tropicalHighland());
        assertThat(place.coolestWeeks(day(7, 10))).isTrue();
        assertThat(place.coolestWeeks(day(2, 10))).isFalse();
        long days =
                day(1, 1).datesUntil(day(12, 31).plusDays(1)).filter(place::coolestWeeks).count();
        assertThat(days).isBetween(84L, 85L);
    }

    /** No day is cooler than another: then midwinter is taken, half a year apart. */
    @Test
    void anEvenYearIsCoolestAtMidwinter() {
        assertThat(of(Places.steady(5, 22, 30)).coolestWeeks(day(12, 21))).isTrue();
        assertThat(of(Places.steady(-5, 22, 30)).coolestWeeks(day(6, 21))).isTrue();
        assertThat(of(Places.steady(-5, 22, 30)).coolestWeeks(day(12, 21))).isFalse();
    }

    @Test
    void woodFreezesAfterTheBall() {
        var arctic = of(Places.subArctic());
        assertThat(arctic.woodFrozen(day(1, 15))).isTrue();
        assertThat(arctic.ballFrozen(day(4, 1))).isTrue();
        assertThat(arctic.woodFrozen(day(4, 1))).isFalse();
        assertThat(arctic.ballFrozen(day(5, 5))).isFalse();
        var continental = of(Places.continental());
        assertThat(continental.woodFrozen(day(1, 15))).isFalse();
        assertThat(continental.ballFrozen(day(2, 27))).isFalse();
    }

    @Test
    void nightsAreNearTheColdAFortnightAround() {
        var place = of(Places.continental());
        assertThat(place.nightsBelow(3, day(11, 20))).isTrue();
        assertThat(place.nightsBelow(3, day(9, 15))).isFalse();
        assertThat(place.nightsBelow(3, day(4, 10))).isTrue();
        assertThat(place.nightsBelow(3, day(5, 15))).isFalse();
        assertThat(of(Places.steady(47, 15, 21)).nightsBelow(10, day(12, 5))).isFalse();
    }

    @Test
    void theSouthMirrorsTheNorth() {
        var north = of(Places.continental());
        var south = of(Places.continentalSouth());
        for (var day = day(1, 1); day.getYear() == 2025; day = day.plusDays(1)) {
            var later = day.plusDays(184);
            assertThat(south.minCelsius(later) - north.minCelsius(day)).isBetween(-1.0, 1.0);
            if (day.getMonthValue() == 1) {
                continue; // the coolest day, at which the next summer begins to count
            }
            assertThat(south.growingDaysLeft(later))
                    .as("%s", day)
                    .isBetween(north.growingDaysLeft(day) - 6, north.growingDaysLeft(day) + 6);
        }
    }

    @Test
    void whereNothingIsKnownTheLatitudeTells() {
        assertThat(TypicalYear.of(Habit.DECIDUOUS, 5).place().withoutWinter()).isTrue();
        var north = TypicalYear.of(Habit.DECIDUOUS, 50).place();
        var south = TypicalYear.of(Habit.DECIDUOUS, -50).place();
        assertThat(north.withoutWinter()).isFalse();
        assertThat(north.growingDaysLeft(day(8, 1))).isBetween(70, 110);
        assertThat(south.growingDaysLeft(day(2, 1))).isBetween(70, 110);
    }

    /** The leap day is a day like its neighbours. */
    @Test
    void theLeapDayLiesBetweenItsNeighbours() {
        var place = of(Places.continental());
        double eve = place.minCelsius(LocalDate.of(2024, 2, 28));
        double next = place.minCelsius(LocalDate.of(2024, 3, 1));
        assertThat(place.minCelsius(LocalDate.of(2024, 2, 29))).isBetween(eve, next);
        assertThat(place.minCelsius(LocalDate.of(2023, 3, 1))).isEqualTo(next);
    }
}
