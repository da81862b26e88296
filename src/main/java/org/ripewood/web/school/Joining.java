package org.ripewood.web.school;

import jakarta.validation.constraints.NotNull;
import org.ripewood.platform.Role;

/** A person who joins a course, as the form sends it. */
record Joining(@NotNull Long courseId, @NotNull Long personId, @NotNull Role as) {}
