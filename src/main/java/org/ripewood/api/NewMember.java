package org.ripewood.api;

import jakarta.validation.constraints.NotNull;
import org.ripewood.platform.Role;

/** A person to join a course, as student or instructor. */
record NewMember(@NotNull Long personId, @NotNull Role as) {}
