package org.ripewood.api.courses;

import jakarta.validation.constraints.NotNull;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Role;

/**
 * A person to join a course, as student or instructor.
 *
 * @param since null for today
 */
record NewMember(@NotNull Long personId, @NotNull Role as, @Nullable LocalDate since) {}
