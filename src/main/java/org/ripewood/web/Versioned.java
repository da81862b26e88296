package org.ripewood.web;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** An instructor's answer to a step, with the version of the step it was given to. */
record Versioned(@NotNull Long version, @Nullable @Size(max = 2000) String note) {

    /** The note, where one has to be given; the room says when it is missing. */
    String words() {
        return note == null ? "" : note;
    }
}
