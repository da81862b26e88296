package org.ripewood.core.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;

/**
 * A site's temperatures from daily readings; what was not read is answered by a normal year.
 *
 * <p>Days may be missing anywhere, and the days to come always are. The normal year is the site's
 * own where it has monthly normals, and else is made of the readings ({@link ReadingsNormal}).
 * Readings have no scatter, days of the normal year have the normal year's.
 */
public final class DailyReadings implements DayTemperatures {

    /** More than any station's record; it bounds the memory one odd date can ask for. */
    static final int MAX_YEARS = 400;

    private final LocalDate first;
    private final double[] minima;
    private final double[] maxima;
    private final NormalYear normals;

    private DailyReadings(LocalDate first, double[] minima, double[] maxima, NormalYear normals) {
        this.first = first;
        this.minima = minima;
        this.maxima = maxima;
        this.normals = normals;
    }

    /**
     * Readings in front of a site's own monthly normals.
     *
     * @param readings in any order, at most one a day, spanning at most 400 years; may be empty
     * @throws IllegalArgumentException when a day stands twice or the span is too long
     */
    public static DailyReadings over(NormalYear normals, Collection<DayReading> readings) {
        if (readings.isEmpty()) {
            return new DailyReadings(LocalDate.EPOCH, new double[0], new double[0], normals);
        }
        var inOrder = readings.stream().sorted(Comparator.comparing(DayReading::day)).toList();
        var first = inOrder.get(0).day();
        var last = inOrder.get(inOrder.size() - 1).day();
        long days = ChronoUnit.DAYS.between(first, last) + 1;
        if (days > MAX_YEARS * 366L) {
            throw new IllegalArgumentException(
                    "readings over at most %d years are needed, found %s to %s"
                            .formatted(MAX_YEARS, first, last));
        }
        var minima = new double[(int) days];
        var maxima = new double[(int) days];
        Arrays.fill(minima, Double.NaN);
        for (var reading : inOrder) {
            int index = (int) ChronoUnit.DAYS.between(first, reading.day());
            if (!Double.isNaN(minima[index])) {
                throw new IllegalArgumentException(reading.day() + " was read twice");
            }
            minima[index] = reading.minCelsius();
            maxima[index] = reading.maxCelsius();
        }
        return new DailyReadings(first, minima, maxima, normals);
    }

    /**
     * Readings of at least a year, in front of the normal year they make themselves.
     *
     * @param readings as for {@link #over}, and enough for {@link ReadingsNormal#of}
     * @throws IllegalArgumentException as there
     */
    public static DailyReadings alone(Collection<DayReading> readings) {
        return over(ReadingsNormal.of(readings), readings);
    }

    /** Whether the day was read. */
    public boolean read(LocalDate day) {
        return index(day) >= 0;
    }

    @Override
    public double minCelsius(LocalDate day) {
        int index = index(day);
        return index >= 0 ? minima[index] : normals.minCelsius(day);
    }

    @Override
    public double maxCelsius(LocalDate day) {
        int index = index(day);
        return index >= 0 ? maxima[index] : normals.maxCelsius(day);
    }

    @Override
    public double scatterCelsius(LocalDate day) {
        return read(day) ? 0 : normals.scatterCelsius(day);
    }

    /** −1 for a day that was not read. */
    private int index(LocalDate day) {
        long index = ChronoUnit.DAYS.between(first, day);
        return index >= 0 && index < minima.length && !Double.isNaN(minima[(int) index])
                ? (int) index
                : -1;
    }
}
