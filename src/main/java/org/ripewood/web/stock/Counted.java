package org.ripewood.web.stock;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;

/** How much of a thing was found when it was entered. */
record Counted(@Nullable @DecimalMin("0") @DecimalMax("1000000") Double amount) {}
