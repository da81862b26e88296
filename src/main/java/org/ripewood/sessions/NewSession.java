package org.ripewood.sessions;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A class date to be set. */
public record NewSession(
        @NotNull Long courseId,
        @NotNull LocalDate heldOn,
        @NotNull LocalTime startsAt,
        @NotNull LocalTime endsAt,
        @Nullable @Size(max = 60) String lesson,
        @NotBlank @Size(max = 120) String place,
        @NotEmpty @Size(max = 20) List<@NotNull Long> instructorIds) {}
