package org.ripewood.core.growth;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.ripewood.core.season.GrowthDays;

/**
 * How a wound has closed so far.
 *
 * @param looks every width measured, the first width on the day the cut was made among them; any
 *     order in, oldest first out; of two on one day the last one handed over counts
 */
public record Closure(List<Look> looks) {

    /** From this width on a wound counts as open (common practice, no source). */
    public static final double OPEN_FROM_MM = 5;

    /** What a calliper may be off by across an opening. */
    public static final double ERROR_MM = 0.5;

    /** A growing season, in which a wound has to narrow (common practice, no source). */
    public static final int SEASON_DAYS = 180;

    /**
     * Share of a mean year's growth-time that counts as a whole growing season; a cool year brings
     * less than the mean (common practice, no source).
     */
    public static final double SEASON_SHARE = 0.9;

    /** One-sided 95 % of a difference of two readings, each off by {@link #ERROR_MM}. */
    private static final double WIDER_MM = 1.645 * Math.sqrt(2) * ERROR_MM;

    /** An open width on a day. */
    public record Look(LocalDate on, double openMm) {
        public Look {
            if (!(openMm >= 0 && openMm < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a width is not negative, found " + openMm);
            }
        }
    }

    /**
     * @throws IllegalArgumentException without any look
     */
    public Closure {
        if (looks.isEmpty()) {
            throw new IllegalArgumentException("a wound has at least its first width");
        }
        looks = looks.stream().sorted(Comparator.comparing(Look::on)).toList();
    }

    /** The closure of a wound made on a day at a width and read later. */
    public static Closure of(LocalDate madeOn, double firstWidthMm, List<Look> later) {
        var looks = new ArrayList<Look>();
        looks.add(new Look(madeOn, firstWidthMm));
        looks.addAll(later);
        return new Closure(looks);
    }

    /** The look that counts now: the latest. */
    public Look latest() {
        return looks.get(looks.size() - 1);
    }

    /** Whether the wound is open by {@link #OPEN_FROM_MM} or more. */
    public boolean open() {
        return latest().openMm() >= OPEN_FROM_MM;
    }

    /** Whether nothing of it is open any more. */
    public boolean closed() {
        return latest().openMm() == 0;
    }

    /**
     * How far it has closed, in percent of the first width.
     *
     * <p>Formula: {@code 100 (1 − open / first)}, held between 0 and 100. Edge cases: 0 when it is
     * wider than at first; 100 when the first width was 0. Limits: the widest place alone is looked
     * at, as width decides how long closing takes (Neely 1979, J. Arboric. 5(6):135-140).
     */
    public double percent() {
        double first = looks.get(0).openMm();
        if (first == 0) {
            return latest().openMm() == 0 ? 100 : 0;
        }
        return Math.max(0, Math.min(100, 100 * (1 - latest().openMm() / first)));
    }

    /**
     * Whether it has stopped closing or opened again, by plain days; for places whose temperatures
     * nobody has given.
     *
     * <p>Formula: it is {@link #open}, and the latest width is not smaller than the one last seen
     * at least {@link #SEASON_DAYS} before it by more than {@link #ERROR_MM}.
     *
     * <p>Edge cases: no look that long before, not stalled, since nobody can tell yet. Limits:
     * counts plain days, so a look before and one after winter may call a resting wound stalled.
     * Source: common practice, no source.
     */
    public boolean stalled() {
        var now = latest();
        return stalled(before -> ChronoUnit.DAYS.between(before.on(), now.on()) >= SEASON_DAYS);
    }

    /**
     * Whether it has stopped closing or opened again, by growth-time: winter's rest is no stalling.
     *
     * <p>Formula: as {@link #stalled()}, but against the look last taken at least {@link
     * #SEASON_SHARE} of a mean year's growth-time before the latest. Edge cases: {@link
     * GrowthDays#plain()} counts as {@link #stalled()}; where nothing grows nothing stalls. Source:
     * common practice, no source.
     */
    public boolean stalled(GrowthDays days) {
        if (days == GrowthDays.plain()) {
            return stalled();
        }
        double season = SEASON_SHARE * days.meanPerYear();
        var now = latest();
        return season > 0 && stalled(before -> days.between(before.on(), now.on()) >= season);
    }

    private boolean stalled(Predicate<Look> aSeasonBefore) {
        if (!open()) {
            return false;
        }
        for (int i = looks.size() - 2; i >= 0; i--) {
            if (aSeasonBefore.test(looks.get(i))) {
                return looks.get(i).openMm() - latest().openMm() <= ERROR_MM;
            }
        }
        return false;
    }

    /**
     * Whether the latest look found it wider than the look before, by more than both may be off by.
     */
    public boolean reopened() {
        return looks.size() > 1 && wider(looks.size() - 1);
    }

    /**
     * The looks since it was last found wider than before, the wider one among them; all looks when
     * it never was. What closed before it opened again says little of how it closes now.
     */
    public List<Look> sinceReopened() {
        for (int i = looks.size() - 1; i > 0; i--) {
            if (wider(i)) {
                return looks.subList(i, looks.size());
            }
        }
        return looks;
    }

    private boolean wider(int look) {
        return looks.get(look).openMm() - looks.get(look - 1).openMm() > WIDER_MM;
    }
}
