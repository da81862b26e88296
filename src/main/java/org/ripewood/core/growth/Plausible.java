package org.ripewood.core.growth;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.Doubt.Oddity;
import org.ripewood.core.growth.TaperProfile.Reading;

/**
 * Whether a value just measured fits what was measured before. An odd value is a question to the
 * one who measured, never a refusal: trees do odd things, and hands slip.
 *
 * <p>Each method answers the first doubt that applies, the one that would explain the others.
 * Lengths are in millimetres. All bounds: common practice, no source. Limits: only what was
 * measured before the day is looked at, so an entry made afterwards for an earlier day is not held
 * against later ones.
 */
public final class Plausible {

    /** A trunk that thickens by more than this share of itself within a year is asked about. */
    public static final double JUMP_SHARE = 0.30;

    /** And only when it is more than this, since seedlings double without anybody's slip. */
    public static final double JUMP_MM = 5;

    /** A shoot longer than this in one season is asked about. */
    public static final double LONGEST_SHOOT_MM = 3000;

    /** One-sided 95 % of a difference of two readings, as in {@link Closure}. */
    private static final double ERRORS = 1.645;

    /** How near to ten or a hundred times counts as about that. */
    private static final double ABOUT = 1.25;

    /** Below this a tenth of it is nothing odd: a wound of 3 mm may be one of 0.3 mm next. */
    private static final double SLIP_LEAST_MM = 5;

    private static final long YEAR_DAYS = 366;
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private Plausible() {}

    /**
     * The open width of a wound.
     *
     * <p>Formula: a {@link Oddity#SLIP} against the last width; {@link Oddity#WIDER} when it is
     * wider than the last width by more than both readings may be off by together, 1.16 mm, or than
     * the first width where the last one was not so already.
     *
     * @param first the width when it was made
     * @param last the width read last; null when it was never read since
     */
    public static Optional<Doubt> wound(double openMm, Earlier first, @Nullable Earlier last) {
        var before = last == null ? first : last;
        var slip = slip(openMm, "open", before);
        if (slip.isPresent()) {
            return slip;
        }
        double bound = ERRORS * Math.hypot(Closure.ERROR_MM, Closure.ERROR_MM);
        if (openMm - before.mm() > bound) {
            return Optional.of(wider(openMm, before));
        }
        boolean newlyPastFirst = openMm - first.mm() > bound && before.mm() - first.mm() <= bound;
        return newlyPastFirst ? Optional.of(wider(openMm, first)) : Optional.empty();
    }

    /**
     * A trunk's diameter at a marked height.
     *
     * <p>Formula, the first that applies: {@link Oddity#ABOVE} the tree's height; {@link
     * Oddity#SLIP} against the last diameter there or, where there is none, against the two nearest
     * marks; {@link Oddity#FELL}, {@link Oddity#JUMPED}, see {@link #girth}; {@link Oddity#BULGE}
     * when it exceeds the next mark below and the next above by more than the errors, and neither
     * was it so before nor has the mark stayed as it was.
     *
     * @param last the diameter read last at this mark; null for a new mark
     */
    public static Optional<Doubt> trunk(
            Reading now, LocalDate on, @Nullable Earlier last, TrunkAround around) {
        var where = "at %s mm up".formatted(plain(now.heightMm()));
        return above(now, around.height())
                .or(() -> last == null ? slipAmong(now, where, around) : Optional.empty())
                .or(() -> girth(now.diameterMm(), where, on, last))
                .or(() -> bulge(now, where, last, around));
    }

    /**
     * A diameter of the trunk read at the same place each time.
     *
     * <p>Formula, the first that applies: {@link Oddity#SLIP}; {@link Oddity#FELL} by more than
     * {@code 1.645 √(e₁² + e₂²)} with the errors of {@link TaperProfile#errorMm}; {@link
     * Oddity#JUMPED} by more than {@link #JUMP_SHARE} and {@link #JUMP_MM} within a year. Edge
     * cases: nothing before, no doubt.
     */
    public static Optional<Doubt> girth(
            double mm, String where, LocalDate on, @Nullable Earlier last) {
        if (last == null) {
            return Optional.empty();
        }
        var slip = slip(mm, where, last);
        if (slip.isPresent()) {
            return slip;
        }
        double more = mm - last.mm();
        if (-more > errors(mm, last.mm())) {
            return doubt(
                    Oddity.FELL,
                    ("%s mm %s is less than the %s, and a trunk does not grow thinner. Maybe it was"
                                    + " read above the mark.")
                            .formatted(plain(mm), where, of(last)));
        }
        boolean withinAYear = ChronoUnit.DAYS.between(last.on(), on) <= YEAR_DAYS;
        if (withinAYear && more > JUMP_MM && more > JUMP_SHARE * last.mm()) {
            return doubt(
                    Oddity.JUMPED,
                    ("%s mm %s is %s mm more than the %s, more than trunks thicken in a year. Maybe"
                                    + " it was read over a node or below the mark.")
                            .formatted(plain(mm), where, plain(more), of(last)));
        }
        return Optional.empty();
    }

    /** A season's shoot: longer than {@link #LONGEST_SHOOT_MM}, or a slip. */
    public static Optional<Doubt> shoot(double mm, @Nullable Earlier last) {
        if (mm > LONGEST_SHOOT_MM) {
            return doubt(
                    Oddity.LONG,
                    "%s mm is more than shoots grow in a season; %s. Maybe %s mm."
                            .formatted(
                                    plain(mm),
                                    last == null
                                            ? "none was measured before"
                                            : "before it was the " + of(last),
                                    plain(mm / 10)));
        }
        return length(mm, last);
    }

    /** Any other length: only a slip is odd about it, for trees are cut back and pinched. */
    public static Optional<Doubt> length(double mm, @Nullable Earlier last) {
        return last == null ? Optional.empty() : slip(mm, "", last);
    }

    /**
     * A judgement of a tree's strength: {@link Oddity#STRONGER} when it is more than what was seen
     * of the tree allows, see {@link VigourCap}.
     *
     * @param index 0 to 100
     * @param seen what was seen of it up to a year before the day of the judgement
     */
    public static Optional<Doubt> strength(double index, Collection<AgedVigour.Seen> seen) {
        return VigourCap.of(seen)
                .filter(cap -> index > cap.most())
                .flatMap(
                        cap ->
                                doubt(
                                        Oddity.STRONGER,
                                        ("A vigour of %s is more than was seen of the tree allows: by"
                                                        + " %s, of %s, it is %s at most, and counts as"
                                                        + " that. Maybe look at that again first.")
                                                .formatted(
                                                        plain(index),
                                                        cap.by().words(),
                                                        DAY.format(cap.on()),
                                                        plain(cap.most()))));
    }

    /**
     * Foliage that is missing, of a tree that bears leaves in summer only: {@link Oddity#LEAFLESS}
     * when any is told while its leaves are down.
     *
     * @param bare whether its leaves are down in their season
     */
    public static Optional<Doubt> foliage(double lossPercent, boolean bare) {
        return bare && lossPercent > 0
                ? doubt(
                        Oddity.LEAFLESS,
                        ("%s %% missing, of a tree whose leaves are down in their season. Leaves that"
                                        + " fall in autumn are not missing. Maybe scratch the bark and"
                                        + " record dead twigs.")
                                .formatted(plain(lossPercent)))
                : Optional.empty();
    }

    private static Optional<Doubt> above(Reading now, @Nullable Earlier height) {
        if (height == null || !(now.heightMm() > height.mm())) {
            return Optional.empty();
        }
        return doubt(
                Oddity.ABOVE,
                "A diameter at %s mm up, where the tree was %s mm high on %s. Maybe %s."
                        .formatted(
                                plain(now.heightMm()),
                                plain(height.mm()),
                                DAY.format(height.on()),
                                now.heightMm() / 10 < height.mm()
                                                && now.heightMm() > 1.5 * height.mm()
                                        ? "at %s mm up".formatted(plain(now.heightMm() / 10))
                                        : "it has grown; measure its height as well"));
    }

    private static Optional<Doubt> slip(double mm, String where, Earlier last) {
        return slip(mm, where, last.mm(), of(last));
    }

    /** Of two marks nearest both have to say so, lest one slip throw doubt on its neighbours. */
    private static Optional<Doubt> slipAmong(Reading now, String where, TrunkAround around) {
        var doubts =
                around.nearest(now.heightMm()).stream()
                        .map(near -> slip(now.diameterMm(), where, near.diameterMm(), at(near)))
                        .toList();
        return doubts.isEmpty() || doubts.contains(Optional.<Doubt>empty())
                ? Optional.empty()
                : doubts.get(0);
    }

    private static Optional<Doubt> slip(double mm, String where, double was, String before) {
        if (!(mm > 0 && was > 0) || Math.abs(mm - was) <= SLIP_LEAST_MM) {
            return Optional.empty();
        }
        for (int times : List.of(10, 100)) {
            if (about(mm / was, times)) {
                return slipped(mm, where, words(times) + " times", before, mm / times);
            }
            if (about(was / mm, times)) {
                return slipped(
                        mm,
                        where,
                        times == 10 ? "a tenth of" : "a hundredth of",
                        before,
                        mm * times);
            }
        }
        return Optional.empty();
    }

    private static Optional<Doubt> slipped(
            double mm, String where, String share, String before, double meant) {
        return doubt(
                Oddity.SLIP,
                "%s mm%s is about %s the %s. Maybe %s mm."
                        .formatted(
                                plain(mm),
                                where.isEmpty() ? "" : " " + where,
                                share,
                                before,
                                plain(meant)));
    }

    private static Optional<Doubt> bulge(
            Reading now, String where, @Nullable Earlier last, TrunkAround around) {
        double mm = now.diameterMm();
        boolean stayed = last != null && mm - last.mm() <= errors(mm, last.mm());
        if (stayed || !thicker(now, around.others())) {
            return Optional.empty();
        }
        if (last != null && thicker(new Reading(now.heightMm(), last.mm()), around.before())) {
            return Optional.empty();
        }
        return doubt(
                Oddity.BULGE,
                ("%s mm %s is thicker than the %s and the %s; %s. Maybe it was read over a node or"
                                + " the lip of a wound.")
                        .formatted(
                                plain(mm),
                                where,
                                TrunkAround.below(around.others(), now.heightMm())
                                        .map(Plausible::at)
                                        .orElse(""),
                                TrunkAround.above(around.others(), now.heightMm())
                                        .map(Plausible::at)
                                        .orElse(""),
                                last == null
                                        ? "nobody measured there before"
                                        : "before it was the " + of(last)));
    }

    private static boolean thicker(Reading mark, List<Reading> others) {
        return TrunkAround.below(others, mark.heightMm()).filter(o -> exceeds(mark, o)).isPresent()
                && TrunkAround.above(others, mark.heightMm())
                        .filter(o -> exceeds(mark, o))
                        .isPresent();
    }

    private static boolean exceeds(Reading one, Reading other) {
        return one.diameterMm() - other.diameterMm() > errors(one.diameterMm(), other.diameterMm());
    }

    private static Doubt wider(double openMm, Earlier before) {
        return new Doubt(
                Oddity.WIDER,
                "%s mm open is wider than the %s. Maybe it was read along the grain."
                        .formatted(plain(openMm), of(before)));
    }

    private static double errors(double oneMm, double otherMm) {
        return ERRORS * Math.hypot(TaperProfile.errorMm(oneMm), TaperProfile.errorMm(otherMm));
    }

    private static boolean about(double ratio, int times) {
        return ratio >= times / ABOUT && ratio <= times * ABOUT;
    }

    private static String words(int times) {
        return times == 10 ? "ten" : "a hundred";
    }

    private static Optional<Doubt> doubt(Oddity oddity, String words) {
        return Optional.of(new Doubt(oddity, words));
    }

    private static String of(Earlier earlier) {
        return "%s mm of %s".formatted(plain(earlier.mm()), DAY.format(earlier.on()));
    }

    private static String at(Reading mark) {
        return "%s mm at %s mm up".formatted(plain(mark.diameterMm()), plain(mark.heightMm()));
    }

    /** As people write it: no more than two decimals. */
    private static String plain(double mm) {
        return BigDecimal.valueOf(mm)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
