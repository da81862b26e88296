package org.ripewood.core.season;

import java.time.LocalDate;
import java.util.List;

/**
 * A cool-temperate year: what is told of growth "a year" in books of that climate holds for it.
 *
 * <p>Monthly means as of a mild, open place at 50° north; common practice, no source.
 */
final class ReferenceYear {

    private static final LocalDate FIRST = LocalDate.of(2023, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2023, 12, 31);

    private static final Climate CLIMATE =
            new Climate(
                    50,
                    NormalYear.of(
                            List.of(1., 1., 3., 5., 8., 11., 13., 13., 10., 7., 4., 2.),
                            List.of(6., 8., 11., 14., 18., 21., 24., 24., 20., 15., 9., 6.)));

    private ReferenceYear() {}

    /** Growth-time of that year for a kind of tree; 0 for one it is too cool for. */
    static double growth(Habit habit, double baseCelsius) {
        var season = SeasonModel.of(CLIMATE, habit, FIRST, LAST);
        return GrowthTime.counted(season, habit, baseCelsius).between(FIRST, LAST.plusDays(1));
    }
}
