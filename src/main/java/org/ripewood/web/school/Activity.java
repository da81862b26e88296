package org.ripewood.web.school;

import jakarta.validation.constraints.NotNull;

/** Whether a person may sign in, as the form sends it. */
record Activity(@NotNull Long version, @NotNull Boolean active) {}
