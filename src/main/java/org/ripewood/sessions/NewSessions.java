package org.ripewood.sessions;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Several sessions of a course that differ in nothing but their days.
 *
 * @param places how many trees there is room for in each; null for as many as want to come
 * @param like a session of the course whose trees come to each of these as well, at the same
 *     benches; null for nobody yet
 */
public record NewSessions(
        @NotEmpty @Size(max = SeriesDates.MOST) List<@NotNull LocalDate> days,
        @NotNull LocalTime startsAt,
        @NotNull LocalTime endsAt,
        @Nullable @Size(max = 60) String lesson,
        @NotBlank @Size(max = 120) String place,
        @NotEmpty @Size(max = 20) List<@NotNull Long> instructorIds,
        @Nullable @Min(1) @Max(500) Integer places,
        @Nullable Long like) {

    NewSession on(long courseId, LocalDate day) {
        return new NewSession(
                courseId, day, startsAt, endsAt, lesson, place, instructorIds, places);
    }
}
