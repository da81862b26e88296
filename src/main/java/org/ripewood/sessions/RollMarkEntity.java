package org.ripewood.sessions;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Whether somebody came to a class, as it was said once. */
@Entity
@Table(name = "roll_mark")
class RollMarkEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "roll_mark_seq")
    @SequenceGenerator(name = "roll_mark_seq", sequenceName = "roll_mark_seq", allocationSize = 50)
    @Nullable Long id;

    long sessionId;
    long personId;

    @Enumerated(EnumType.STRING)
    Presence presence;

    long byId;
    Instant markedAt;

    /** When another mark took its place. */
    @Nullable Instant replacedAt;

    /** Session and person while in force, null afterwards; unique in the database. */
    @Nullable String markedFor;

    static RollMarkEntity of(long sessionId, long personId, Presence presence) {
        var mark = new RollMarkEntity();
        mark.sessionId = sessionId;
        mark.personId = personId;
        mark.presence = presence;
        mark.markedFor = sessionId + "/" + personId;
        return mark;
    }

    Roll.Mark told() {
        return new Roll.Mark(presence, byId, markedAt);
    }
}
