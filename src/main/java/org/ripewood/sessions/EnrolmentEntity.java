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

/** Who comes to a session with which tree. */
@Entity
@Table(name = "enrolment")
class EnrolmentEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "enrolment_seq")
    @SequenceGenerator(name = "enrolment_seq", sequenceName = "enrolment_seq", allocationSize = 50)
    @Nullable Long id;

    long sessionId;
    long personId;
    long treeId;
    String bench;
    @Nullable Instant withdrawnAt;

    /** The tree while it comes, null afterwards, so that it comes once. */
    @Nullable Long comingTreeId;

    static EnrolmentEntity coming(long sessionId, long personId, long treeId, String bench) {
        var enrolment = new EnrolmentEntity();
        enrolment.sessionId = sessionId;
        enrolment.personId = personId;
        enrolment.treeId = treeId;
        enrolment.comingTreeId = treeId;
        enrolment.bench = bench;
        return enrolment;
    }

    void withdraw(Instant at) {
        withdrawnAt = at;
        comingTreeId = null;
    }

    Session.Enrolment told() {
        return new Session.Enrolment(requireNonNull(id), personId, treeId, bench);
    }
}
