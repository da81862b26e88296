package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.PlaceYear;

/**
 * What a season asks of the usual weather of a place, for one species.
 *
 * @param shelterBelowCelsius usual nights from which on the species is sheltered; null when nobody
 *     has said, and then work that goes by it is never open
 */
record SeasonWeather(SeasonRule.Weather asked, @Nullable Double shelterBelowCelsius) {

    /** Why the usual weather of a day has the work closed, in a sentence; null when it does not. */
    @Nullable String closedBecause(LocalDate day, PlaceYear place) {
        if (asked.growingDaysLeft() > 0) {
            int left = place.growingDaysLeft(day);
            if (left < asked.growingDaysLeft()) {
                return tooLate(left, asked.growingDaysLeft());
            }
        }
        return switch (asked.notWhileFrozen()) {
            case WOOD ->
                    place.woodFrozen(day)
                            ? "Days are usually below freezing here now, and frozen wood breaks."
                            : cold(day, place);
            case BALL ->
                    place.ballFrozen(day)
                            ? "Root balls are usually frozen here now, and frozen roots tear."
                            : cold(day, place);
            case NOTHING -> cold(day, place);
        };
    }

    static String tooLate(int left, int needed) {
        return left == 0
                ? "Frost is to be reckoned with here now; it needs %d days of growth before that."
                        .formatted(needed)
                : "About %d days of growth are left here before frost; it needs %d."
                        .formatted(left, needed);
    }

    static String tooHot(double celsius) {
        return String.format(
                Locale.ROOT,
                "Days here are usually above %.0f °C now, and cut roots bring no water for such heat.",
                celsius);
    }

    private @Nullable String cold(LocalDate day, PlaceYear place) {
        if (!asked.nearDangerousCold()) {
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
