package org.ripewood.core.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Outlook;

/**
 * When one wound will have closed, from its looks, the belief about its kind and the growth-time of
 * its place.
 *
 * <p>Looks from before it was last found wider are left out: the cut starts anew there. What is not
 * forecast, and why: deadwood by design, a wound that opened again at the last look, one that
 * stalled over a growing season, and a place where nothing grows.
 */
public final class ClosureForecast {

    /** What a forecast rests on. */
    public enum Basis {
        /** The belief about the kind of tree and the width of the cut, nothing else. */
        PRIOR_ONLY,
        /** Readings after the cut as well. */
        READINGS
    }

    /**
     * What the opening is likely to be on a day, mm.
     *
     * @param lowMm not exceeded in one case of ten
     * @param middleMm in every second
     * @param highMm in nine of ten
     */
    public record Band(LocalDate on, double lowMm, double middleMm, double highMm) {}

    private final Closure closure;
    private final GrowthDays days;
    private final List<Closure.Look> looks;
    private final @Nullable ClosureModel model;
    private final @Nullable String unsaid;

    private ClosureForecast(
            Closure closure,
            GrowthDays days,
            @Nullable ClosureModel model,
            @Nullable String unsaid) {
        this.closure = closure;
        this.days = days;
        this.looks = closure.sinceReopened();
        this.model = model;
        this.unsaid = unsaid;
    }

    /**
     * Forecasts a wound that has to close.
     *
     * @param kind what is believed of its kind of tree, the school's closed wounds regarded
     * @param vigour index 0 to 100, or null when unknown
     * @param trunk the trunk's own increment, or null when unknown
     * @throws IllegalArgumentException for a vigour outside 0 to 100
     */
    public static ClosureForecast of(
            Closure closure,
            ClosingBelief kind,
            @Nullable Double vigour,
            @Nullable Increment trunk,
            GrowthDays days) {
        var hindrance = hindrance(closure, kind, days);
        if (hindrance != null) {
            return new ClosureForecast(closure, days, null, hindrance);
        }
        var prior = ClosurePriors.prior(kind, vigour, trunk, days);
        return new ClosureForecast(closure, days, learn(closure, prior, days), null);
    }

    /** The same in a place of whose years nothing is known. */
    public static ClosureForecast of(
            Closure closure,
            RateBelief kind,
            @Nullable Double vigour,
            @Nullable Increment trunk,
            GrowthDays days) {
        return of(closure, ClosingBelief.of(kind), vigour, trunk, days);
    }

    /** A wound kept as deadwood, of which no closing is forecast. */
    public static ClosureForecast deadwood(Closure closure, GrowthDays days) {
        return new ClosureForecast(
                closure, days, null, "The wound is kept as deadwood and is not meant to close");
    }

    private static ClosureModel learn(Closure closure, ClosurePrior prior, GrowthDays days) {
        var looks = closure.sinceReopened();
        boolean fromTheCut = looks.size() == closure.looks().size();
        return ClosureModel.of(readings(looks, days), fromTheCut ? prior : prior.withoutLag());
    }

    /** Looks by the growth-time since the first of them, one that was read twice told twice. */
    static List<ClosureReading> readings(List<Closure.Look> looks, GrowthDays days) {
        var from = looks.get(0).on();
        var readings = new ArrayList<ClosureReading>();
        for (var look : looks) {
            double x = Math.max(0, days.between(from, look.on()));
            readings.addAll(
                    Collections.nCopies(look.times(), new ClosureReading(x, look.openMm())));
        }
        return readings;
    }

    private static @Nullable String hindrance(
            Closure closure, ClosingBelief kind, GrowthDays days) {
        if (!(days.meanPerYear() > 0)) {
            return "Nothing grows at this place by its temperatures: check them";
        }
        double nowMm = closure.latest().openMm();
        if (closure.reopened()) {
            return "The wound opened again, from %.1f to %.1f mm: find out why and read it again"
                    .formatted(closure.narrowestBeforeMm(), nowMm);
        }
        if (closure.stalled(kind, days)) {
            return "The wound seems not to have narrowed over a growing season and stands at %.1f mm: see to"
                            .formatted(nowMm)
                    + " its edge and the tree's strength and read it again";
        }
        return null;
    }

    /** Readings after the cut that count. */
    public int readings() {
        return looks.size() - 1;
    }

    public Basis basis() {
        return readings() == 0 ? Basis.PRIOR_ONLY : Basis.READINGS;
    }

    /**
     * When the opening will be at most this wide.
     *
     * <p>Edge cases: already when the latest look found it so; where the likely day lies behind
     * today and nobody has looked since, it says since when it is likely so, see {@link
     * Outlook.Expected#likelySince}; unsaid with the reason where nothing can be forecast or the
     * likely day lies more than {@link Outlook#REACH_YEARS} years ahead.
     *
     * @param openMm 0 or more
     * @throws IllegalArgumentException below 0, or NaN
     */
    public Outlook whenAtMost(double openMm, LocalDate today) {
        if (!(openMm >= 0)) {
            throw new IllegalArgumentException("a width is not negative, found " + openMm);
        }
        if (closure.latest().openMm() <= openMm) {
            return new Outlook.Already();
        }
        if (model == null || unsaid != null) {
            return new Outlook.Unsaid(String.valueOf(unsaid));
        }
        return new Reached(looks.get(0).on(), closure.latest().on(), today, days)
                .outlook(
                        model.quantile(Reached.EARLY, openMm),
                        model.quantile(Reached.LIKELY, openMm),
                        model.quantile(Reached.LATE, openMm),
                        "An opening of at most %.1f mm".formatted(openMm));
    }

    /** Why nothing is forecast; empty when something is. */
    public Optional<String> unsaid() {
        return Optional.ofNullable(unsaid);
    }

    /**
     * What the opening is likely to be on each of some days, for pictures.
     *
     * <p>Edge cases: empty when nothing is forecast; days before the cut (or before it opened
     * again) are left out.
     */
    public List<Band> band(List<LocalDate> on) {
        if (model == null) {
            return List.of();
        }
        var cut = looks.get(0).on();
        var band = new ArrayList<Band>();
        for (var day : on) {
            if (!day.isBefore(cut)) {
                double x = Math.max(0, days.between(cut, day));
                band.add(
                        new Band(
                                day,
                                model.openMmAt(x, Reached.EARLY),
                                model.openMmAt(x, Reached.LIKELY),
                                model.openMmAt(x, Reached.LATE)));
            }
        }
        return List.copyOf(band);
    }
}
