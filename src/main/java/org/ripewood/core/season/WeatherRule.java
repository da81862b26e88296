package org.ripewood.core.season;

import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What a season asks of the usual weather of a place.
 *
 * @param growingDaysLeft days of growth that must be left before frost; 0 for none
 * @param nearDangerousCold open only while nights come near the cold the species is sheltered from
 */
public record WeatherRule(int growingDaysLeft, Frozen notWhileFrozen, boolean nearDangerousCold) {

    /** What of a tree must not be frozen while the work is done. */
    public enum Frozen {
        NOTHING,
        WOOD,
        BALL
    }

    /** Any weather will do. */
    public static final WeatherRule ANY = new WeatherRule(0, Frozen.NOTHING, false);

    /**
     * Why the usual weather of a day has the work closed, in a sentence; null when it does not.
     *
     * @param shelterBelowCelsius usual nights from which on the species is sheltered; null when
     *     nobody has said, and then work that goes by it is never open
     */
    public @Nullable String closedBecause(
            LocalDate day, PlaceYear place, @Nullable Double shelterBelowCelsius) {
        if (growingDaysLeft > 0) {
            int left = place.growingDaysLeft(day);
            if (left < growingDaysLeft) {
                return tooLate(left, growingDaysLeft);
            }
        }
        return switch (notWhileFrozen) {
            case WOOD ->
                    place.woodFrozen(day)
                            ? "Days are usually below freezing here now, and frozen wood breaks."
                            : cold(day, place, shelterBelowCelsius);
            case BALL ->
                    place.ballFrozen(day)
                            ? "Root balls are usually frozen here now, and frozen roots tear."
                            : cold(day, place, shelterBelowCelsius);
            case NOTHING -> cold(day, place, shelterBelowCelsius);
        };
    }

    /** Whether the usual weather of a day has the work closed, {@link #closedBecause} says why. */
    public boolean closes(LocalDate day, PlaceYear place, @Nullable Double shelterBelowCelsius) {
        return place.growingDaysLeft(day) < growingDaysLeft
                || (notWhileFrozen == Frozen.WOOD && place.woodFrozen(day))
                || (notWhileFrozen == Frozen.BALL && place.ballFrozen(day))
                || (nearDangerousCold
                        && (shelterBelowCelsius == null
                                || !place.nightsBelow(shelterBelowCelsius, day)));
    }

    /** In words: so few days of growth are left, and so many are needed. */
    public static String tooLate(int left, int needed) {
        return left == 0
                ? "Frost is to be reckoned with here now; it needs %d days of growth before that."
                        .formatted(needed)
                : "About %d days of growth are left here before frost; it needs %d."
                        .formatted(left, needed);
    }

    /** In words: days are usually hotter than this. */
    public static String tooHot(double celsius) {
        return String.format(
                Locale.ROOT,
                "Days here are usually above %.0f °C now, and cut roots bring no water for such heat.",
                celsius);
    }

    private @Nullable String cold(
            LocalDate day, PlaceYear place, @Nullable Double shelterBelowCelsius) {
        if (!nearDangerousCold) {
            return null;
        }
        if (shelterBelowCelsius == null) {
            return "Nobody has said at which cold this species is sheltered.";
        }
        return place.nightsBelow(shelterBelowCelsius, day)
                ? null
                : String.format(
                        Locale.ROOT,
                        "Nights here are not usually below %.0f °C now, from which on this species"
                                + " is sheltered.",
                        shelterBelowCelsius);
    }
}
