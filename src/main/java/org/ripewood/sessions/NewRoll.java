package org.ripewood.sessions;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;

/** Who came, said of some or all of a class; the others' marks stay as they are. */
public record NewRoll(@NotEmpty @Size(max = 500) List<@NotNull @Valid Said> marks) {

    /** What is said of one student. */
    public record Said(@NotNull Long personId, @NotNull Presence presence) {}
}
