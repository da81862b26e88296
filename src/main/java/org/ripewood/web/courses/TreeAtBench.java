package org.ripewood.web.courses;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** A tree that comes to a session, as the form sends it; its keeper comes with it. */
record TreeAtBench(@NotNull Long treeId, @NotBlank @Size(max = 20) String bench) {}
