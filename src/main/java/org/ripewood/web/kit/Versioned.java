package org.ripewood.web.kit;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** An instructor's answer to a step, with the version of the step it was given to. */
public record Versioned(@NotNull Long version, @Nullable @Size(max = 2000) String note) {

    /** The note, where one has to be given; the room says when it is missing. */
    public String words() {
        return note == null ? "" : note;
    }
}
