package org.ripewood.pictures;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.ripewood.core.season.Outlook;

/** How days, forecasts and bearings are said in pictures. */
final class Wording {

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.UK);
    private static final DateTimeFormatter MONTH_YEAR =
            DateTimeFormatter.ofPattern("MMM uuuu", Locale.UK);

    /**
     * Clockwise from the front, seen from above: the left hand of who stands before it is first.
     */
    private static final String[] BEARINGS = {
        "front", "front left", "left", "back left", "back", "back right", "right", "front right"
    };

    private Wording() {}

    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    public static String month(LocalDate day) {
        return MONTH.format(day);
    }

    static String monthOfYear(LocalDate day) {
        return MONTH_YEAR.format(day);
    }

    static String bearing(double degrees) {
        return BEARINGS[(int) (Math.round(degrees / 45) & 7)];
    }

    /** A forecast in one sentence without its end. */
    static String outlook(Outlook outlook) {
        if (outlook instanceof Outlook.Expected expected) {
            return expected(expected);
        }
        return outlook instanceof Outlook.Unsaid unsaid
                ? "cannot be said: " + unsaid.because()
                : "already";
    }

    private static String expected(Outlook.Expected expected) {
        var since = expected.likelySince();
        if (since != null) {
            return "likely since %s, but nobody has looked: measure it".formatted(day(since));
        }
        var latest = expected.latest();
        if (expected.earliest().equals(latest)) {
            return "on " + day(expected.likely());
        }
        return "likely by %s, between %s and %s"
                .formatted(
                        day(expected.likely()),
                        day(expected.earliest()),
                        latest == null
                                ? "more than " + Outlook.REACH_YEARS + " years from now"
                                : day(latest));
    }
}
