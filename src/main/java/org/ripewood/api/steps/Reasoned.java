package org.ripewood.api.steps;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/** A note that has to say why. */
record Reasoned(@NotBlank @Size(max = 2000) String note) {}
