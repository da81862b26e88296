package org.ripewood.core.growth;

import java.time.LocalDate;
import java.util.ArrayList;
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
            RateBelief kind,
            @Nullable Double vigour,
            @Nullable Increment trunk,
            GrowthDays days) {
        var hindrance = hindrance(closure, days);
        if (hindrance != null) {
            return new ClosureForecast(closure, days, null, hindrance);
        }
        var prior = ClosurePriors.prior(kind, vigour, trunk, days);
        return new ClosureForecast(closure, days, learn(closure, prior, days), null);
    }

    /** A wound kept as deadwood, of which no closing is forecast. */
    public static ClosureForecast deadwood(Closure closure, GrowthDays days) {
        return new ClosureForecast(
                closure, days, null, "The wound is kept as deadwood and is not meant to close");
    }

    private static ClosureModel learn(Closure closure, ClosurePrior prior, GrowthDays days) {
        var looks = closure.sinceReopened();
        var cut = looks.get(0).on();
        var readings = new ArrayList<ClosureReading>();
        for (var look : looks) {
            readings.add(
                    new ClosureReading(Math.max(0, days.between(cut, look.on())), look.openMm()));
        }
        boolean fromTheCut = looks.size() == closure.looks().size();
        return ClosureModel.of(readings, fromTheCut ? prior : prior.withoutLag());
    }

    private static @Nullable String hindrance(Closure closure, GrowthDays days) {
        if (!(days.meanPerYear() > 0)) {
            return "Nothing grows at this place by its temperatures: check them";
        }
        double nowMm = closure.latest().openMm();
        if (closure.reopened()) {
            double beforeMm = closure.looks().get(closure.looks().size() - 2).openMm();
            return "The wound opened again, from %.1f to %.1f mm: find out why and read it again"
                    .formatted(beforeMm, nowMm);
        }
        if (closure.stalled(days)) {
            return "The wound has not narrowed over a growing season and stands at %.1f mm: see to"
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
     * <p>Edge cases: already when the latest look found it so; a day that lies behind today is told
     * as today, since nobody has looked since; unsaid with the reason where nothing can be forecast
     * or the likely day lies more than {@link Outlook#REACH_YEARS} years ahead.
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
        return new Reached(looks.get(0).on(), today, days)
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
