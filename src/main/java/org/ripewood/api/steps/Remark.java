package org.ripewood.api.steps;

import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** A note that may be left out. */
record Remark(@Nullable @Size(max = 2000) String note) {}
