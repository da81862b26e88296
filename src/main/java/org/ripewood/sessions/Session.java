package org.ripewood.sessions;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A class date.
 *
 * @param changedAt when it was set, or who comes or whether it is held changed last
 * @param cancelled that it is not held; null while it is
 */
public record Session(
        long id,
        long version,
        long courseId,
        LocalDate heldOn,
        LocalTime startsAt,
        LocalTime endsAt,
        @Nullable String lesson,
        String place,
        List<Long> instructorIds,
        List<Enrolment> enrolments,
        Instant changedAt,
        @Nullable Cancellation cancelled) {

    /** Who comes, with which tree, at which bench. */
    public record Enrolment(long id, long personId, long treeId, String bench) {}

    /** That a class date is called off, why, by whom and when. */
    public record Cancellation(String reason, long byId, Instant at) {}

    /** Whether it is to be held, or was. */
    public boolean held() {
        return cancelled == null;
    }
}
