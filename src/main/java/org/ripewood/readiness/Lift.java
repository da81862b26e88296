package org.ripewood.readiness;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Outlook;

/**
 * When a technique is expected, or a reason goes by itself, as exactly as it is known and in as few
 * words.
 *
 * @param words such as {@code "April 2027"} or {@code "about April 2027"}
 * @param on the likely day; null when that cannot be said
 */
record Lift(String words, @Nullable LocalDate on) {

    static final Lift NO_DATE = new Lift("No date yet", null);

    /** Within this span a month would say less than the day does. */
    private static final int SURE_DAYS = 21;

    /** So far ahead a day is worth telling; further it is the month. */
    private static final int SOON_DAYS = 60;

    /** From this span on a month says more than is known. */
    private static final int VAGUE_DAYS = 400;

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH =
            DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);

    /** An outlook in words, as of a day. */
    static Lift of(Outlook outlook, LocalDate on) {
        return outlook instanceof Outlook.Expected expected ? of(expected, on) : NO_DATE;
    }

    /** The same where it is not the only thing to wait for. */
    static Lift notBefore(Outlook outlook, LocalDate on) {
        if (!(outlook instanceof Outlook.Expected expected)) {
            return NO_DATE;
        }
        var likely = expected.likely();
        boolean soon = ChronoUnit.DAYS.between(on, likely) <= SOON_DAYS;
        return new Lift("not before " + (soon ? DAY : MONTH).format(likely), likely);
    }

    private static Lift of(Outlook.Expected expected, LocalDate on) {
        var likely = expected.likely();
        if (expected.likelySince() != null) {
            return new Lift("Likely by now: measure", likely);
        }
        var latest = expected.latest();
        if (latest == null) {
            return new Lift("%d or later".formatted(likely.getYear()), likely);
        }
        long span = ChronoUnit.DAYS.between(expected.earliest(), latest);
        if (span > VAGUE_DAYS) {
            return new Lift("about %d".formatted(likely.getYear()), likely);
        }
        if (span > SURE_DAYS) {
            return new Lift("about " + MONTH.format(likely), likely);
        }
        return ChronoUnit.DAYS.between(on, likely) <= SOON_DAYS
                ? new Lift(DAY.format(likely), likely)
                : new Lift(MONTH.format(likely), likely);
    }
}
