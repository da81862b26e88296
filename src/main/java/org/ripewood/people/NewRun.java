package org.ripewood.people;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A course to be held again.
 *
 * @param name null for the name it has
 * @param students whether its students attend again; its instructors teach again in any case
 */
public record NewRun(
        @Nullable @Size(max = 120) String name,
        @NotNull LocalDate startsOn,
        @NotNull LocalDate endsOn,
        boolean students) {}
