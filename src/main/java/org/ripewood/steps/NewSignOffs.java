package org.ripewood.steps;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reported steps of a course that are signed off together, with one note to all. */
public record NewSignOffs(
        @NotEmpty @Size(max = 100) List<@NotNull @Valid OfStep> steps,
        @Nullable @Size(max = 2000) String note) {

    /** A step, with the version of it that was looked at. */
    public record OfStep(@NotNull Long stepId, @NotNull Long version) {}
}
