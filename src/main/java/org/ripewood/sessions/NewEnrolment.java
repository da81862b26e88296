package org.ripewood.sessions;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** A student who comes with a tree. */
public record NewEnrolment(
        @NotNull Long personId, @NotNull Long treeId, @NotBlank @Size(max = 20) String bench) {}
