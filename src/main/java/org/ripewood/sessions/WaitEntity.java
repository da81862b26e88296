package org.ripewood.sessions;

import static java.util.Objects.requireNonNull;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Who would come to a session with which tree if there were a place. */
@Entity
@Table(name = "session_wait")
class WaitEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "session_wait_seq")
    @SequenceGenerator(
            name = "session_wait_seq",
            sequenceName = "session_wait_seq",
            allocationSize = 50)
    @Nullable Long id;

    long sessionId;
    long personId;
    long treeId;
    Instant since;
    @Nullable Instant endedAt;

    /** Session and tree while it waits, null afterwards; unique in the database. */
    @Nullable String waitsFor;

    static WaitEntity waiting(long sessionId, long personId, long treeId, Instant since) {
        var wait = new WaitEntity();
        wait.sessionId = sessionId;
        wait.personId = personId;
        wait.treeId = treeId;
        wait.since = since;
        wait.waitsFor = sessionId + "/" + treeId;
        return wait;
    }

    void end(Instant at) {
        endedAt = at;
        waitsFor = null;
    }

    Session.Waiting told() {
        return new Session.Waiting(requireNonNull(id), personId, treeId, since);
    }
}
