package org.ripewood.web.school;

import jakarta.validation.constraints.NotNull;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A person who leaves a course, as the form sends it.
 *
 * @param on null for today
 */
record Leaving(@NotNull Long courseId, @NotNull Long personId, @Nullable LocalDate on) {}
