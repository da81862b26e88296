package org.ripewood.sessions;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * When and where a session is held from now on, all of it, whether it changes or not.
 *
 * @param places how many trees there is room for; null for as many as want to come
 * @param because why it is moved; those who were to come read it
 */
public record NewMove(
        @NotNull LocalDate heldOn,
        @NotNull LocalTime startsAt,
        @NotNull LocalTime endsAt,
        @NotBlank @Size(max = 120) String place,
        @Nullable @Min(1) @Max(500) Integer places,
        @Nullable @Size(max = 500) String because) {}
