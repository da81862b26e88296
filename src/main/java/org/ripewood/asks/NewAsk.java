package org.ripewood.asks;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/**
 * Something asked at a technique.
 *
 * @param words needed for a question; null for who asks for a step without a word more
 */
public record NewAsk(
        @NotBlank @Size(max = 60) String technique,
        @NotNull AskKind kind,
        @Nullable @Size(max = 1000) String words) {}
