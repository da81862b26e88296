package org.ripewood.records;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A move to another container or into the ground. */
public record NewContainer(
        @NotBlank
                @Pattern(
                        regexp = "ground|nursery|training|show",
                        message = "one of ground, nursery, training, show")
                String kind,
        @Nullable @Size(max = 200) String description,
        @Nullable @DecimalMin("0.01") @DecimalMax("5000") Double litres,
        @NotNull LocalDate since) {}
