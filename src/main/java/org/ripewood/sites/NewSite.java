package org.ripewood.sites;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A site to be entered. Monthly means are both given, twelve each, or both left out.
 *
 * @param schoolGround whether everybody here may know where it lies and enter trees there; no
 *     unless said
 */
public record NewSite(
        @NotBlank @Size(max = 120) String name,
        @NotNull @DecimalMin("-90") @DecimalMax("90") Double latitude,
        @NotNull @DecimalMin("-180") @DecimalMax("180") Double longitude,
        @NotBlank @Size(max = 60) String zone,
        @Nullable Boolean schoolGround,
        @Nullable @Size(min = 12, max = 12)
                List<@NotNull @DecimalMin("-90") @DecimalMax("60") Double> meanMinimaCelsius,
        @Nullable @Size(min = 12, max = 12)
                List<@NotNull @DecimalMin("-90") @DecimalMax("60") Double> meanMaximaCelsius) {

    boolean isSchoolGround() {
        return Boolean.TRUE.equals(schoolGround);
    }
}
