package org.ripewood.people;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;

/** A course to be opened. */
public record NewCourse(
        @NotBlank @Size(max = 120) String name,
        @NotNull LocalDate startsOn,
        @NotNull LocalDate endsOn) {}
