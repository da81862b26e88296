package org.ripewood.core.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Outlook;

/**
 * How a trunk, root or branch thickens with growth-time, and when it reaches a diameter.
 *
 * <p>A straight line whose slope starts from the belief about the tree, as long as there are
 * readings of fewer than five days or the line leaves over no more than measuring explains; then
 * the best by AICc of the logistic, the Chapman–Richards curve and its form that slows from the
 * start. Limits: a chop, a move to a smaller container or a sacrifice branch taken off change the
 * pace; readings from before say little then and are better left out.
 */
public final class Thickening {

    /** What a calliper is off by on a round trunk, mm (common practice, no source). */
    public static final double MEASURING_SD_MM = 0.5;

    /**
     * What a tree in a training container gains in radius in a year (common practice, no source).
     */
    public static final Increment IN_TRAINING = new Increment(1.5, 1.0);

    /** What the thickening of a trunk is told by. */
    public enum Form {
        NOTHING_READ,
        STRAIGHT,
        CURVED
    }

    /** A diameter on a day. */
    public record Reading(LocalDate on, double diameterMm) {
        public Reading {
            if (!(diameterMm >= 0 && diameterMm < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "a diameter is not negative, found " + diameterMm);
            }
        }
    }

    /** What the diameter is likely to be on a day, mm; low and high hold in eight cases of ten. */
    public record Band(LocalDate on, double lowMm, double middleMm, double highMm) {}

    private final List<Reading> readings;
    private final Increment prior;
    private final GrowthDays days;
    private final double year;
    private final @Nullable ThickeningCourse course;

    private Thickening(List<Reading> readings, Increment prior, GrowthDays days) {
        this.readings = readings.stream().sorted(Comparator.comparing(Reading::on)).toList();
        this.prior = prior;
        this.days = days;
        this.year = days.meanPerYear();
        this.course = readings.isEmpty() || !(year > 0) ? null : learn();
    }

    /**
     * Learns from readings.
     *
     * @param readings in any order, several on one day allowed, none as well
     * @param prior what a year is believed to add before anything is read, such as {@link
     *     #IN_TRAINING}
     */
    public static Thickening of(List<Reading> readings, Increment prior, GrowthDays days) {
        return new Thickening(readings, prior, days);
    }

    private ThickeningCourse learn() {
        var x = readings.stream().mapToDouble(reading -> years(reading.on())).toArray();
        var y = readings.stream().mapToDouble(Reading::diameterMm).toArray();
        int told = (int) readings.stream().map(Reading::on).distinct().count();
        return ThickeningCourse.of(x, y, told, prior);
    }

    private double years(LocalDate on) {
        return Math.max(0, days.between(readings.get(0).on(), on) / year);
    }

    public Form form() {
        if (course == null) {
            return Form.NOTHING_READ;
        }
        return course.curve().isPresent() ? Form.CURVED : Form.STRAIGHT;
    }

    /**
     * What the radius gains in a mean year from the last reading on.
     *
     * <p>Edge cases: the belief itself when nothing was read or nothing grows here; never below 0.
     */
    public Increment increment() {
        return course == null ? prior : course.increment();
    }

    /**
     * When the diameter will be at least this.
     *
     * <p>Formula: the growth-time at which the straight line's posterior, or the curve with its
     * error by the delta method and Student's t, exceeds it with probability 0.1, 0.5 and 0.9; to
     * days by the place's growth-time. Beyond the last reading a season may differ by {@link
     * ClosurePriors#SEASON_SPREAD}.
     *
     * <p>Edge cases: already when the latest reading found it so; unsaid when nothing was read,
     * nothing grows, or the likely day lies more than {@link Outlook#REACH_YEARS} years ahead.
     *
     * @throws IllegalArgumentException below 0, or NaN
     */
    public Outlook whenAtLeast(double diameterMm, LocalDate today) {
        if (!(diameterMm >= 0)) {
            throw new IllegalArgumentException("a diameter is not negative, found " + diameterMm);
        }
        if (readings.isEmpty()) {
            return new Outlook.Unsaid("No diameter has been read yet: measure it");
        }
        if (readings.get(readings.size() - 1).diameterMm() >= diameterMm) {
            return new Outlook.Already();
        }
        if (course == null) {
            return new Outlook.Unsaid(
                    "Nothing grows at this place by its temperatures: check them");
        }
        return new Reached(readings.get(0).on(), today, days)
                .outlook(
                        year * course.reaching(diameterMm, Reached.EARLY),
                        year * course.reaching(diameterMm, Reached.LIKELY),
                        year * course.reaching(diameterMm, Reached.LATE),
                        "A diameter of %.0f mm".formatted(diameterMm));
    }

    /** What the diameter is likely to be on each day from the first reading on, for pictures. */
    public List<Band> band(List<LocalDate> on) {
        if (course == null) {
            return List.of();
        }
        var band = new ArrayList<Band>();
        for (var day : on) {
            if (!day.isBefore(readings.get(0).on())) {
                double x = years(day);
                band.add(
                        new Band(
                                day,
                                Math.max(0, course.diameterAt(x, Reached.EARLY)),
                                Math.max(0, course.diameterAt(x, Reached.LIKELY)),
                                Math.max(0, course.diameterAt(x, Reached.LATE))));
            }
        }
        return List.copyOf(band);
    }
}
