package org.ripewood.platform.problems;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The days a record may speak of: databases and calendars know them all in the same way. */
public final class RecordDays {

    public static final LocalDate FIRST = LocalDate.of(1900, 1, 1);
    public static final LocalDate LAST = LocalDate.of(2199, 12, 31);

    private RecordDays() {}

    /** What is wrong with a day. */
    public static Optional<String> faultOf(LocalDate day) {
        return holds(day)
                ? Optional.empty()
                : Optional.of("expected a day from %s to %s, found %s".formatted(FIRST, LAST, day));
    }

    /**
     * The day, when a record may speak of it.
     *
     * @throws Refused 400 otherwise
     */
    public static @Nullable LocalDate asked(String field, @Nullable LocalDate day) {
        if (day != null) {
            faultOf(day)
                    .ifPresent(
                            fault -> {
                                throw Refused.invalid(field, fault);
                            });
        }
        return day;
    }

    public static boolean holds(LocalDate day) {
        return !day.isBefore(FIRST) && !day.isAfter(LAST);
    }
}
