package org.ripewood.core.season;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;

/**
 * A cool-temperate year: what is told of growth "a year" in books of that climate holds for it.
 *
 * <p>Monthly means as of a mild, open place at 50° north; common practice, no source.
 */
final class ReferenceYear {

    private static final LocalDate FIRST = LocalDate.of(2023, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2023, 12, 31);

    private static final Climate CLIMATE = climate(50, 0);
    private static final PlaceYear NORTH = TypicalWeather.of(CLIMATE, FIRST, LAST);
    private static final PlaceYear SOUTH = TypicalWeather.of(climate(-50, 6), FIRST, LAST);

    /** Between the tropics, where nothing is known of a place: warm and even all the year. */
    private static final PlaceYear TROPICS_NORTH = tropics(10);

    private static final PlaceYear TROPICS_SOUTH = tropics(-10);

    private ReferenceYear() {}

    private static Climate climate(double latitude, int monthsLater) {
        var minima = Arrays.asList(1., 1., 3., 5., 8., 11., 13., 13., 10., 7., 4., 2.);
        var maxima = Arrays.asList(6., 8., 11., 14., 18., 21., 24., 24., 20., 15., 9., 6.);
        Collections.rotate(minima, monthsLater);
        Collections.rotate(maxima, monthsLater);
        return new Climate(latitude, NormalYear.of(minima, maxima));
    }

    private static PlaceYear tropics(double latitude) {
        var even = NormalYear.of(Collections.nCopies(12, 22.), Collections.nCopies(12, 30.));
        return TypicalWeather.of(new Climate(latitude, even), FIRST, LAST);
    }

    /** What is taken of a place of which nothing but its latitude is known. */
    static PlaceYear place(double latitudeDegrees) {
        if (Math.abs(latitudeDegrees) < TypicalYear.TROPIC_DEGREES) {
            return latitudeDegrees < 0 ? TROPICS_SOUTH : TROPICS_NORTH;
        }
        return latitudeDegrees < 0 ? SOUTH : NORTH;
    }

    /** Growth-time of that year for a kind of tree; 0 for one it is too cool for. */
    static double growth(Habit habit, double baseCelsius) {
        var season = SeasonModel.of(CLIMATE, habit, FIRST, LAST);
        return GrowthTime.counted(season, habit, baseCelsius).between(FIRST, LAST.plusDays(1));
    }
}
