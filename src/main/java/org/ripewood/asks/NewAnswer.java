package org.ripewood.asks;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/** An answer in words. */
public record NewAnswer(@NotBlank @Size(max = 2000) String words) {}
