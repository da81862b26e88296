package org.ripewood.core.growth;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Predicate;
import org.ripewood.core.season.DayTemperatures;
import org.ripewood.core.season.DegreeDays;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.ThermalTime;

/** A temperate made-up place: 10 °C in the mean, ±9 over the year, growth April to October. */
final class Site implements GrowthDays {

    static final LocalDate FIRST = LocalDate.of(1990, 1, 1);
    static final Site TEMPERATE =
            new Site(10, day -> day.getMonthValue() > 3 && day.getMonthValue() < 11);

    private final ThermalTime time;

    Site(double meanCelsius, Predicate<LocalDate> grows) {
        time =
                ThermalTime.of(
                        wave(meanCelsius),
                        FIRST,
                        LocalDate.of(2059, 12, 31),
                        5,
                        DegreeDays.NO_UPPER,
                        grows);
    }

    private static DayTemperatures wave(double mean) {
        return new DayTemperatures() {
            @Override
            public double minCelsius(LocalDate day) {
                return middle(day) - 5;
            }

            @Override
            public double maxCelsius(LocalDate day) {
                return middle(day) + 5;
            }

            @Override
            public double scatterCelsius(LocalDate day) {
                return 0;
            }

            private double middle(LocalDate day) {
                return mean - 9 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.25);
            }
        };
    }

    @Override
    public double between(LocalDate from, LocalDate to) {
        return time.between(from, to);
    }

    @Override
    public Optional<LocalDate> dayReaching(LocalDate from, double amount) {
        return amount <= 0
                ? Optional.of(from)
                : time.dayReaching(from, amount).map(day -> day.plusDays(1));
    }

    @Override
    public double meanPerYear() {
        return time.between(FIRST, FIRST.plusYears(68)) / 68;
    }
}
