package org.ripewood.sessions;

import jakarta.persistence.Embeddable;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/** What a session was before it was moved. */
@Embeddable
class SessionMove {

    LocalDate heldOn;
    LocalTime startsAt;
    LocalTime endsAt;
    String place;
    @Nullable String because;
    Instant movedAt;
    long movedById;

    Session.Moved told() {
        return new Session.Moved(heldOn, startsAt, endsAt, place, because, movedById, movedAt);
    }
}
