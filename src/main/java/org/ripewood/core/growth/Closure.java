package org.ripewood.core.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.ripewood.core.season.GrowthDays;

/**
 * How a wound has closed so far.
 *
 * @param looks every width measured, the first width on the day the cut was made among them; any
 *     order in, oldest first out; those of one day are one, their mean, off by less
 */
public record Closure(List<Look> looks) {

    /** From this width on a wound counts as open (common practice, no source). */
    public static final double OPEN_FROM_MM = 5;

    /** What a calliper may be off by across an opening. */
    public static final double ERROR_MM = 0.5;

    /**
     * Share of a mean year's growth-time that counts as a whole growing season; a cool year brings
     * less than the mean (common practice, no source).
     */
    public static final double SEASON_SHARE = 0.8;

    /** Readings of one day further apart are no errors of reading (common practice, no source). */
    private static final double SAME_WIDTH_MM = 2;

    /** One-sided 99.9 % of a normal curve. */
    private static final double CERTAIN_ERRORS = 3.09;

    private static final double TOLD_FROM = 0.2;

    /**
     * An open width on a day.
     *
     * @param times how many readings it is the mean of
     */
    public record Look(LocalDate on, double openMm, int times) {
        public Look {
            if (!(openMm >= 0 && openMm < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a width is not negative, found " + openMm);
            }
            if (times < 1) {
                throw new IllegalArgumentException("a look is one reading or more, found " + times);
            }
        }

        /** One reading. */
        public Look(LocalDate on, double openMm) {
            this(on, openMm, 1);
        }

        /** What it may be off by. */
        double errorMm() {
            return ERROR_MM / Math.sqrt(times);
        }

        /** One of both; where they cannot be of the same width, the later entry corrects. */
        private Look and(Look other) {
            if (Math.abs(openMm - other.openMm) > SAME_WIDTH_MM) {
                return other;
            }
            int both = times + other.times;
            return new Look(on, (times * openMm + other.times * other.openMm) / both, both);
        }
    }

    /**
     * @throws IllegalArgumentException without any look
     */
    public Closure {
        if (looks.isEmpty()) {
            throw new IllegalArgumentException("a wound has at least its first width");
        }
        looks = oneADay(looks);
    }

    private static List<Look> oneADay(List<Look> looks) {
        var inOrder = new ArrayList<>(looks);
        inOrder.sort(Comparator.comparing(Look::on));
        var days = new ArrayList<Look>();
        for (var look : inOrder) {
            int last = days.size() - 1;
            if (last >= 0 && days.get(last).on().equals(look.on())) {
                days.set(last, days.get(last).and(look));
            } else {
                days.add(look);
            }
        }
        return List.copyOf(days);
    }

    /**
     * The closure of a wound made on a day at a width and read later. A reading of the very day it
     * was made stands for the width it was entered with.
     */
    public static Closure of(LocalDate madeOn, double firstWidthMm, List<Look> later) {
        var looks = new ArrayList<Look>();
        if (later.stream().noneMatch(look -> look.on().equals(madeOn))) {
            looks.add(new Look(madeOn, firstWidthMm));
        }
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
     * Whether it has stood still over a growing season: likelier than not by all looks at it, and
     * {@link #open}.
     *
     * <p>Edge cases: no look lies {@link #SEASON_SHARE} of a mean year's growth-time before the
     * latest, not stalled, since nobody can tell yet; winter's rest is no stalling; where nothing
     * grows nothing stalls. Limits: one that closes by less in a season than readings are off by is
     * told late; see {@link Standstill}.
     *
     * @param belief what is believed of its kind
     */
    public boolean stalled(ClosingBelief belief, GrowthDays days) {
        return open() && Standstill.probability(this, belief, days) > TOLD_FROM;
    }

    /** Whether the latest look found it wider than it was, for all but certain. */
    public boolean reopened() {
        return looks.size() > 1 && sinceReopened().size() == 1;
    }

    /** How narrow it was before it was last found wider; the latest width when it never was. */
    public double narrowestBeforeMm() {
        int from = looks.size() - sinceReopened().size();
        if (from == 0) {
            return latest().openMm();
        }
        return narrowest(looks.subList(wider(from).orElse(0), from)).openMm();
    }

    /**
     * The looks since it was last found wider than before, the wider one among them; all looks when
     * it never was. What closed before it opened again says little of how it closes now.
     *
     * <p>Formula: wider than the narrowest look since it opened before, by more than {@value
     * #CERTAIN_ERRORS} standard deviations of their difference: one wound in a thousand that stands
     * still is found so by error.
     */
    public List<Look> sinceReopened() {
        return looks.subList(wider(looks.size()).orElse(0), looks.size());
    }

    /** Where it was last found wider before a look; empty when it never was. */
    private OptionalInt wider(int before) {
        var found = OptionalInt.empty();
        var narrowest = looks.get(0);
        for (int i = 1; i < before; i++) {
            var look = looks.get(i);
            double error = Math.hypot(look.errorMm(), narrowest.errorMm());
            if (look.openMm() - narrowest.openMm() > CERTAIN_ERRORS * error) {
                found = OptionalInt.of(i);
                narrowest = look;
            } else if (look.openMm() <= narrowest.openMm()) {
                narrowest = look;
            }
        }
        return found;
    }

    private static Look narrowest(List<Look> some) {
        return some.stream().min(Comparator.comparingDouble(Look::openMm)).orElseThrow();
    }
}
