package org.ripewood.sessions;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** That somebody came to a class, or did not, as it was marked. */
public record ClassAttended(
        long sessionId,
        long courseId,
        LocalDate heldOn,
        @Nullable String lesson,
        Presence presence) {}
