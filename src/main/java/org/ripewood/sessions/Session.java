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
 * @param places how many trees there is room for; null for as many as want to come
 * @param waiting who would come if there were a place, longest first; told where who comes is
 * @param moved what it was before it was moved last; null when it never was
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
        @Nullable Cancellation cancelled,
        @Nullable Integer places,
        List<Waiting> waiting,
        @Nullable Moved moved) {

    /** Who comes, with which tree, at which bench. */
    public record Enrolment(long id, long personId, long treeId, String bench) {}

    /** That a class date is called off, why, by whom and when. */
    public record Cancellation(String reason, long byId, Instant at) {}

    /** Who would come with which tree if there were a place, and since when. */
    public record Waiting(long id, long personId, long treeId, Instant since) {}

    /** When and where it was to be before, and why, by whom and when it was moved. */
    public record Moved(
            LocalDate heldOn,
            LocalTime startsAt,
            LocalTime endsAt,
            String place,
            @Nullable String because,
            long byId,
            Instant at) {}

    /** Whether it is to be held, or was. */
    public boolean held() {
        return cancelled == null;
    }
}
