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
 * <p>Its gain a year starts from the belief about the tree and strays with the seasons. Nobody
 * knows beforehand whether a tree goes on at its pace or slows down, nor towards which end: paces
 * that stay, that slow down from the start or later on, and that become faster are weighed by the
 * readings, see {@link SteadyRate}, and all are kept. The band therefore widens with the way beyond
 * the readings, and a diameter the tree may never reach is told so.
 *
 * <p>Limits: a chop, a move to a smaller container or a sacrifice branch taken off change the pace;
 * readings from before say little then and are better left out.
 */
public final class Thickening {

    /** What a calliper is off by on a round trunk, mm (common practice, no source). */
    public static final double MEASURING_SD_MM = 0.5;

    /**
     * What a tree in a training container gains in radius in a year (common practice, no source).
     */
    public static final Increment IN_TRAINING = new Increment(1.5, 1.0);

    /** A belief is never surer than this, mm of radius a year. */
    private static final double LEAST_PRIOR_SD_MM = 0.05;

    /** How widely a trunk's first pace lies about its gain so far, as a share. */
    private static final double PACE_SPREAD = 1.5;

    /** Over less time errors of reading hide what a trunk gains in a year. */
    private static final double LEAST_YEARS = 0.8;

    private static final double LEAST_GAIN_MM = 1;
    private static final double MOST_GAIN_MM = 20;

    /** From so sure on it is said that growth does not go on at one pace. */
    private static final double SURE = 0.9;

    /**
     * Paces that may be, a year as 1: by which share of itself the gain falls each year, and of one
     * that falls later on (common practice, no source).
     */
    private static final List<SteadyRate.Case> PACES =
            List.of(
                    new SteadyRate.Case(Pace.STEADY, 0.24),
                    new SteadyRate.Case(Pace.slowing(0.025), 0.12),
                    new SteadyRate.Case(Pace.slowing(0.05), 0.14),
                    new SteadyRate.Case(Pace.slowing(0.1), 0.12),
                    new SteadyRate.Case(Pace.slowing(0.2), 0.06),
                    new SteadyRate.Case(Pace.slowing(0.4), 0.03),
                    new SteadyRate.Case(Pace.bending(0.04), 0.07),
                    new SteadyRate.Case(Pace.bending(0.08), 0.10),
                    new SteadyRate.Case(Pace.bending(0.16), 0.07),
                    new SteadyRate.Case(Pace.slowing(-0.05), 0.05));

    /** What the thickening of a trunk is told by. */
    public enum Form {
        NOTHING_READ,
        /** It may go on at one pace. */
        STRAIGHT,
        /** It slows down or becomes faster, for nearly sure. */
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

    /** Those of one day by diameter, so that the order they come in does not matter. */
    private static final Comparator<Reading> IN_ORDER =
            Comparator.comparing(Reading::on).thenComparingDouble(Reading::diameterMm);

    private final List<Reading> readings;
    private final Increment prior;
    private final GrowthDays days;
    private final double year;

    /** Diameters below 0, since what is learnt falls; null when nothing was read or grows. */
    private final @Nullable SteadyRate course;

    private Thickening(List<Reading> readings, Increment prior, GrowthDays days) {
        this.readings = readings.stream().sorted(IN_ORDER).toList();
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

    private SteadyRate learn() {
        return new SteadyRate(
                Readings.of(
                        readings.stream().mapToDouble(reading -> years(reading.on())).toArray(),
                        readings.stream().mapToDouble(reading -> -reading.diameterMm()).toArray(),
                        MEASURING_SD_MM),
                new SeasonShare.Believed(
                        2 * prior.radialMm(), 2 * Math.max(LEAST_PRIOR_SD_MM, prior.sdMm())),
                new SteadyRate.Seasons(
                        YearSpread.OF_TRUNKS, gainSoFar(), PACE_SPREAD * gainSoFar(), 1),
                PACES);
    }

    /** Diameter gained a year between the first reading and the last, within what trees do, mm. */
    private double gainSoFar() {
        var last = readings.get(readings.size() - 1);
        double years = years(last.on());
        if (years < LEAST_YEARS) {
            return 2 * IN_TRAINING.radialMm();
        }
        double gain = (last.diameterMm() - readings.get(0).diameterMm()) / years;
        return Math.max(LEAST_GAIN_MM, Math.min(MOST_GAIN_MM, gain));
    }

    private double years(LocalDate on) {
        return Math.max(0, days.between(readings.get(0).on(), on) / year);
    }

    public Form form() {
        if (course == null) {
            return Form.NOTHING_READ;
        }
        return course.unsteady() > SURE ? Form.CURVED : Form.STRAIGHT;
    }

    /**
     * What the radius gains in a mean year from the last reading on.
     *
     * <p>Edge cases: the belief itself when nothing was read or nothing grows here; never below 0.
     */
    public Increment increment() {
        return course == null ? prior : new Increment(course.rate() / 2, course.rateSd() / 2);
    }

    /**
     * When the diameter will be at least this.
     *
     * <p>Formula: the growth-time at which the diameter exceeds it with probability 0.1, 0.5 and
     * 0.9, all paces regarded; to days by the place's growth-time. Seasons differ by {@link
     * YearSpread#OF_TRUNKS}.
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
        return new Reached(
                        readings.get(0).on(), readings.get(readings.size() - 1).on(), today, days)
                .outlook(
                        year * course.reaching(-diameterMm, Reached.EARLY),
                        year * course.reaching(-diameterMm, Reached.LIKELY),
                        year * course.reaching(-diameterMm, Reached.LATE),
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
                                Math.max(0, -course.widthAt(x, Reached.LATE)),
                                Math.max(0, -course.widthAt(x, Reached.LIKELY)),
                                Math.max(0, -course.widthAt(x, Reached.EARLY))));
            }
        }
        return List.copyOf(band);
    }
}
