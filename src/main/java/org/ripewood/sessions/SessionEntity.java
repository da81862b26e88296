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

    /** How many trees there is room for; null for as many as want to come. */
    @Nullable Integer places;

    /** What it was before it was moved, oldest first. */
    @ElementCollection
    @CollectionTable(name = "session_move", joinColumns = @JoinColumn(name = "session_id"))
    @OrderColumn(name = "position")
    @BatchSize(size = 100)
    List<SessionMove> moves = new ArrayList<>();

    static SessionEntity of(NewSession set, Instant at) {
        var session = new SessionEntity();
        session.courseId = set.courseId();
        session.heldOn = set.heldOn();
        session.startsAt = set.startsAt();
        session.endsAt = set.endsAt();
        session.lesson = set.lesson();
        session.place = set.place();
        session.places = set.places();
        session.instructorIds = new ArrayList<>(set.instructorIds());
        session.changedAt = at;
        return session;
    }

    Session told(List<Session.Enrolment> enrolments) {
        return told(enrolments, List.of());
    }

    Session told(List<Session.Enrolment> enrolments, List<Session.Waiting> waiting) {
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
                cancelled(),
                places,
                List.copyOf(waiting),
                moves.isEmpty() ? null : moves.get(moves.size() - 1).told());
    }

    /** Whether one more tree may come when so many do. */
    boolean hasPlaceFor(int coming) {
        return places == null || coming < places;
    }

    /** Whether it is to be held and has not begun at that time of that day. */
    boolean ahead(LocalDate on, LocalTime at) {
        var begun = heldOn.equals(on) && !startsAt.isAfter(at);
        return cancelledAt == null && !heldOn.isBefore(on) && !begun;
    }

    /** Writes down what it is before it becomes something else. */
    void rememberMove(long byId, Instant at, @Nullable String because) {
        var move = new SessionMove();
        move.heldOn = heldOn;
        move.startsAt = startsAt;
        move.endsAt = endsAt;
        move.place = place;
        move.because = because;
        move.movedAt = at;
        move.movedById = byId;
        moves.add(move);
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
