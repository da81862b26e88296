package org.ripewood.sessions;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A class date. */
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
        List<Enrolment> enrolments) {

    /** Who comes, with which tree, at which bench. */
    public record Enrolment(long id, long personId, long treeId, String bench) {}
}
