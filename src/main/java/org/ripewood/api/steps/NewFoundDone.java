package org.ripewood.api.steps;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A technique that was found already done. */
record NewFoundDone(
        @NotBlank @Size(max = 60) String technique,
        @NotNull LocalDate doneOn,
        @Nullable @Size(max = 2000) String note) {}
