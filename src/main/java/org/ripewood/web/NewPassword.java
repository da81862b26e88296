package org.ripewood.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/** A change of one's own password, as the form sends it. */
record NewPassword(
        @NotBlank @Size(max = 72) String oldPassword,
        @NotBlank @Size(min = 12, max = 72) String newPassword) {}
