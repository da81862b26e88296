package org.ripewood.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/** A password chosen by a link, as the form sends it. */
record ChosenPassword(@NotBlank @Size(min = 12, max = 72) String newPassword) {}
