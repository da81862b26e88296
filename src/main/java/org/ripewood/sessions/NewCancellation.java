package org.ripewood.sessions;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/** Why a class date is called off; those who were to come read it. */
public record NewCancellation(@NotBlank @Size(max = 500) String reason) {}
