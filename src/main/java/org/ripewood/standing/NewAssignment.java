package org.ripewood.standing;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A step to be assigned.
 *
 * @param waivers key of a reason against it to why it is let pass; needed for every reason against
 */
public record NewAssignment(
        @NotBlank @Size(max = 60) String technique,
        @Nullable LocalDate from,
        @Nullable LocalDate until,
        @Nullable @Size(max = 2000) String note,
        @Nullable @Size(max = 30)
                Map<@NotBlank @Size(max = 120) String, @Size(max = 1000) String> waivers) {}
