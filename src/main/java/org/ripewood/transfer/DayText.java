package org.ripewood.transfer;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Days as they are written: {@code 2027-03-14}, or days from the day of loading such as −380. */
final class DayText {

    /** No school's record reaches further, and no plan; a longer number is a slip. */
    private static final int FURTHEST_DAYS = 36_600;

    private DayText() {}

    /** The day, or null when the text is neither. */
    static @Nullable LocalDate read(String text, LocalDate loadingDay) {
        if (text.matches("[+-]?\\d{1,5}")) {
            int offset = Integer.parseInt(text);
            return Math.abs(offset) > FURTHEST_DAYS ? null : loadingDay.plusDays(offset);
        }
        try {
            return text.matches("\\d{4}-\\d{2}-\\d{2}") ? LocalDate.parse(text) : null;
        } catch (DateTimeException e) {
            return null;
        }
    }
}
