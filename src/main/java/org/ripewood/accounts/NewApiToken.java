package org.ripewood.accounts;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/**
 * A token to be made.
 *
 * @param days so long it opens the API, today not counted
 */
public record NewApiToken(
        @NotBlank @Size(max = 60) String name,
        @NotNull ApiToken.Scope scope,
        @NotNull @Min(1) @Max(MOST_DAYS) Integer days) {

    /** A year, after which somebody should ask whether it is still needed (our own choice). */
    static final int MOST_DAYS = 365;
}
