package org.ripewood.classday;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;

/** A break for all on a class day. */
@Entity
@Table(name = "day_break")
class DayBreakEntity {

    /** Its place in the day. */
    @Embeddable
    record Place(
            @Column(name = "session_id") long sessionId, @Column(name = "position") int position)
            implements Serializable {}

    @EmbeddedId Place place;

    int fromMinute;
    int toMinute;
}
