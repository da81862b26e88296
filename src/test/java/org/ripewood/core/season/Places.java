package org.ripewood.core.season;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Places the season's tests are done at. */
final class Places {

    /** Monthly means over 2012 to 2015 of the station in weather/noaa-daily-2012-2015.csv, °C. */
    static final List<Double> OCEANIC_MAXIMA =
            List.of(
                    8.23, 9.86, 12.39, 15.02, 19.30, 22.40, 26.00, 26.11, 21.92, 16.39, 11.02,
                    8.19);

    static final List<Double> OCEANIC_MINIMA =
            List.of(2.70, 4.05, 4.86, 6.36, 9.61, 12.24, 14.20, 14.77, 12.36, 9.35, 4.70, 3.32);

    /** A made-up lowland, well inland. */
    private static final List<Double> INLAND_MAXIMA =
            List.of(4., 6., 10., 15., 19., 22., 25., 24., 20., 14., 8., 5.);

    private static final List<Double> INLAND_MINIMA =
            List.of(-1., -1., 2., 5., 9., 12., 14., 14., 11., 7., 3., 0.);

    private static final List<Double> CONTINENTAL_MINIMA =
            List.of(-4., -3., 1., 4., 9., 12., 14., 13., 10., 5., 1., -2.);

    private static final List<Double> CONTINENTAL_MAXIMA =
            List.of(3., 5., 10., 15., 19., 23., 25., 24., 20., 14., 8., 4.);

    /** The days' hash is in weather/README.txt. */
    private static final String READINGS = "/weather/noaa-daily-2012-2015.csv";

    private Places() {}

    /** Types of climate, monthly means rounded and from memory; no one place is meant. */
    static Climate subArctic() {
        return new Climate(
                65,
                NormalYear.of(
                        List.of(-15., -14., -10., -4., 2., 8., 11., 9., 4., -2., -8., -13.),
                        List.of(-7., -6., 0., 6., 13., 18., 21., 18., 12., 4., -2., -5.)));
    }

    static Climate subtropicalSouth() {
        return new Climate(
                -27.5,
                NormalYear.of(
                        List.of(21., 21., 20., 17., 13., 11., 10., 10., 13., 16., 18., 20.),
                        List.of(30., 30., 29., 27., 24., 21., 21., 22., 25., 27., 28., 29.)));
    }

    static Climate tropicalHighland() {
        return new Climate(
                -1.2,
                NormalYear.of(
                        List.of(12., 13., 14., 14., 13., 12., 11., 11., 12., 13., 13., 13.),
                        List.of(25., 26., 26., 25., 23., 22., 21., 22., 24., 25., 23., 24.)));
    }

    static Climate continental() {
        return new Climate(47.4, NormalYear.of(CONTINENTAL_MINIMA, CONTINENTAL_MAXIMA));
    }

    /** The same half a year later, south of the equator. */
    static Climate continentalSouth() {
        return new Climate(
                -47.4,
                NormalYear.of(moved(CONTINENTAL_MINIMA, 0, 6), moved(CONTINENTAL_MAXIMA, 0, 6)));
    }

    static Climate mediterranean() {
        return new Climate(
                38,
                NormalYear.of(
                        List.of(6., 6., 8., 10., 14., 18., 21., 21., 18., 14., 10., 7.),
                        List.of(13., 14., 16., 20., 25., 30., 33., 33., 28., 23., 18., 14.)));
    }

    static Climate oceanic() {
        return new Climate(47.6, NormalYear.of(OCEANIC_MINIMA, OCEANIC_MAXIMA));
    }

    static Climate inland() {
        return inland(50, 0, 0);
    }

    /** The inland year at another latitude, warmer all year, begun so many months later. */
    static Climate inland(double latitudeDegrees, double warmer, int monthsLater) {
        return new Climate(
                latitudeDegrees,
                NormalYear.of(
                        moved(INLAND_MINIMA, warmer, monthsLater),
                        moved(INLAND_MAXIMA, warmer, monthsLater)));
    }

    /** The same temperatures every day of the year. */
    static Climate steady(double latitudeDegrees, double minimum, double maximum) {
        return new Climate(
                latitudeDegrees,
                NormalYear.of(Collections.nCopies(12, minimum), Collections.nCopies(12, maximum)));
    }

    private static List<Double> moved(List<Double> means, double warmer, int monthsLater) {
        var moved = new ArrayList<>(means.stream().map(mean -> mean + warmer).toList());
        Collections.rotate(moved, monthsLater);
        return moved;
    }

    static List<DayReading> readings() {
        var stream = Places.class.getResourceAsStream(READINGS);
        try (var reader =
                new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines().skip(1).map(Places::reading).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static DayReading reading(String line) {
        var cells = line.split(",", -1);
        return new DayReading(
                LocalDate.parse(cells[0]),
                Double.parseDouble(cells[3]),
                Double.parseDouble(cells[2]));
    }
}
