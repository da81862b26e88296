package org.ripewood.sessions;

import static java.util.Objects.requireNonNull;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.annotations.BatchSize;
import org.jspecify.annotations.Nullable;

/** A class date; called class_session in the database, where "session" is another thing. */
@Entity
@Table(name = "class_session")
class SessionEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "class_session_seq")
    @SequenceGenerator(
            name = "class_session_seq",
            sequenceName = "class_session_seq",
            allocationSize = 50)
    @Nullable Long id;

    @Version long version;
    long courseId;
    LocalDate heldOn;
    LocalTime startsAt;
    LocalTime endsAt;
    @Nullable String lesson;
    String place;
    Instant changedAt;
    @Nullable Instant cancelledAt;
    @Nullable Long cancelledById;
    @Nullable String cancelledBecause;

    @ElementCollection
    @CollectionTable(
            name = "class_session_instructor",
            joinColumns = @JoinColumn(name = "session_id"))
    @OrderColumn(name = "position")
    @Column(name = "person_id")
    @BatchSize(size = 100)
    List<Long> instructorIds = new ArrayList<>();

    Session told(List<Session.Enrolment> enrolments) {
        return new Session(
                requireNonNull(id),
                version,
                courseId,
                heldOn,
                startsAt,
                endsAt,
                lesson,
                place,
                List.copyOf(instructorIds),
                List.copyOf(enrolments),
                changedAt,
                cancelled());
    }

    Session.@Nullable Cancellation cancelled() {
        return cancelledAt == null || cancelledById == null || cancelledBecause == null
                ? null
                : new Session.Cancellation(cancelledBecause, cancelledById, cancelledAt);
    }

    /**
     * Whether the two are held at one time; one called off is not, and one may begin when the other
     * ends.
     */
    boolean overlaps(NewSession other) {
        return cancelledAt == null
                && heldOn.equals(other.heldOn())
                && startsAt.isBefore(other.endsAt())
                && other.startsAt().isBefore(endsAt);
    }
}
