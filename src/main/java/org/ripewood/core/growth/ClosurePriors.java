package org.ripewood.core.growth;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowthDays;

/** What to believe of a wound's closing before it is read, and what closed wounds teach. */
public final class ClosurePriors {

    /** A reading of an opening is off by this, mm (common practice, no source). */
    public static final double MEASURING_SD_MM = Closure.ERROR_MM;

    /**
     * Share of a mean year's growth-time before lips move, in the mean: one to four months of a
     * year of growth (common practice, no source).
     */
    public static final double LAG_SHARE = 0.22;

    /**
     * A lip advances faster than the stem thickens: at least 1 (Neely 1988, J. Arboric.
     * 14(10):250-254); the number is common practice, no source.
     */
    public static final double LIP_PER_RADIUS = 1.5;

    /** A tree nobody has judged is believed to be well, but not for sure. */
    private static final double UNSEEN_SPREAD = 1.25;

    private static final double LEAST_WARMTH = 0.6;
    private static final double MOST_WARMTH = 1.6;

    /** Vigour below which a rate is not scaled down further, so that it stays above 0. */
    private static final double LEAST_VIGOUR = 5;

    private ClosurePriors() {}

    /**
     * The belief about one wound.
     *
     * <p>Formula: the kind's mean rate times {@code vigour / 75}, and, where the trunk's own
     * increment r is known, its mean with {@code 1.5 r} weighted by precision, the spread of both
     * being the kind's. The spread does not scale with vigour: it says how little is known, and so
     * a stronger tree is never believed to close later. Taking the mean of both reproduces that
     * slow trees close more per millimetre of increment (Neely 1988, J. Arboric. 14(6):148-152). mm
     * a year turn into mm per growth-time by the place's mean year, after the kind's rate is scaled
     * by {@code √(mean year / reference year)}, held between 0.6 and 1.6: a warmer place is never
     * slower, and twice the warmth does not close twice as fast (common practice, no source).
     *
     * <p>Edge cases: vigour unknown, taken as 75 with a quarter more spread; vigour below 5 counts
     * as 5. Errors: IllegalArgumentException for a vigour outside 0 to 100, and for a place where
     * nothing grows. Limits: published work gives directions and spread (R² 0.06 to 0.52 for beech,
     * Hein 2008, Forest Ecol. Manage.), no coefficients for trees in containers. Source: form
     * {@code years = (W/2) / (k r)} after Hein and Spiecker 2007, Can. J. For. Res. 37(8).
     *
     * @param vigour index 0 to 100, or null when unknown
     * @param trunk the trunk's own increment, or null when unknown
     */
    public static ClosurePrior prior(
            ClosingBelief belief,
            @Nullable Double vigour,
            @Nullable Increment trunk,
            GrowthDays days) {
        var kind = belief.rate();
        double year = days.meanPerYear();
        if (!(year > 0)) {
            throw new IllegalArgumentException("nothing grows here, found a mean year of " + year);
        }
        double sd = kind.sdMm() * (vigour == null ? UNSEEN_SPREAD : 1);
        double pace = kind.meanMm() * warmthShare(days);
        double rate = pace * vigourShare(vigour);
        if (trunk != null) {
            double own = LIP_PER_RADIUS * trunk.radialMm();
            double ownSd = Math.hypot(kind.sdMm(), LIP_PER_RADIUS * trunk.sdMm());
            double share = sd * sd / (sd * sd + ownSd * ownSd);
            rate += share * (own - rate);
            sd *= Math.sqrt(1 - share);
        }
        return new ClosurePrior(
                rate / year,
                sd / year,
                LAG_SHARE * year,
                MEASURING_SD_MM,
                belief.years(),
                pace / year,
                year);
    }

    private static double vigourShare(@Nullable Double vigour) {
        if (vigour == null) {
            return 1;
        }
        if (!(vigour >= 0 && vigour <= 100)) {
            throw new IllegalArgumentException(
                    "a vigour index lies between 0 and 100, found " + vigour);
        }
        return Math.max(LEAST_VIGOUR, vigour) / CallusPace.AT_VIGOUR;
    }

    private static double warmthShare(GrowthDays days) {
        double reference = days.referencePerYear();
        return reference > 0
                ? Math.max(
                        LEAST_WARMTH,
                        Math.min(MOST_WARMTH, Math.sqrt(days.meanPerYear() / reference)))
                : MOST_WARMTH;
    }

    /**
     * The rate at which a wound closed, as it would have been at vigour 75: what {@link
     * RateBelief#learn} takes.
     *
     * <p>Formula: half the least-squares slope of the widths above 0 against growth-time since the
     * lips moved, times the mean year over the share that its warmth has, times {@code 75 /
     * vigour}. Where only the first width is above 0, half of it over the growth-time halfway
     * between the two looks it closed between.
     *
     * <p>Shapes and units: mm a year, one lip. Edge cases: empty when it is not closed, was 0 from
     * the start, has opened again on the way, or no growth-time went by; never below 0. Errors:
     * IllegalArgumentException for a vigour outside 0 to 100. Source: common practice, no source.
     */
    public static OptionalDouble rateOf(Closure closure, double vigour, GrowthDays days) {
        double share = vigourShare(vigour);
        var looks = closure.looks();
        if (!closure.closed() || closure.sinceReopened().size() < looks.size()) {
            return OptionalDouble.empty();
        }
        double slope = slope(looks, days);
        if (!(slope >= 0 && Double.isFinite(slope))) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(slope / 2 * days.meanPerYear() / (share * warmthShare(days)));
    }

    private static double slope(List<Closure.Look> looks, GrowthDays days) {
        var open = looks.stream().filter(look -> look.openMm() > 0).toList();
        if (open.isEmpty()) {
            return Double.NaN;
        }
        var cut = looks.get(0).on();
        if (open.size() == 1) {
            var shut = looks.get(1).on();
            return open.get(0).openMm() / ((moved(cut, cut, days) + moved(cut, shut, days)) / 2);
        }
        double meanX = open.stream().mapToDouble(look -> moved(cut, look.on(), days)).sum();
        meanX /= open.size();
        double sxx = 0;
        double sxw = 0;
        for (var look : open) {
            double x = moved(cut, look.on(), days) - meanX;
            sxx += x * x;
            sxw -= x * look.openMm();
        }
        return sxw / sxx;
    }

    private static double moved(LocalDate cut, LocalDate on, GrowthDays days) {
        return Math.max(0, days.between(cut, on) - LAG_SHARE * days.meanPerYear());
    }
}
