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
 * A class date to be set.
 *
 * @param places how many trees there is room for; null for as many as want to come
 */
public record NewSession(
        @NotNull Long courseId,
        @NotNull LocalDate heldOn,
        @NotNull LocalTime startsAt,
        @NotNull LocalTime endsAt,
        @Nullable @Size(max = 60) String lesson,
        @NotBlank @Size(max = 120) String place,
        @NotEmpty @Size(max = 20) List<@NotNull Long> instructorIds,
        @Nullable @Min(1) @Max(500) Integer places) {

    /** One with room for as many trees as want to come. */
    public NewSession(
            Long courseId,
            LocalDate heldOn,
            LocalTime startsAt,
            LocalTime endsAt,
            @Nullable String lesson,
            String place,
            List<Long> instructorIds) {
        this(courseId, heldOn, startsAt, endsAt, lesson, place, instructorIds, null);
    }
}
