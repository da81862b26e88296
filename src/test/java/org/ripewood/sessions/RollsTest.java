package org.ripewood.sessions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/** Who came to a class is marked from its day on, and a mark is replaced, never changed. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class RollsTest {

    @Inject School school;
    @Inject Sessions sessions;
    @Inject Rolls rolls;
    @Inject RollMarks marks;

    School.Group group;
    Actor other;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        other = school.person("Sven Student", Role.STUDENT);
        school.join(group, other, Role.STUDENT);
    }

    @Test
    void everyEnrolledStudentHasALineAndAMarkSaysWhoAndWhen() {
        var session = classOn(School.TODAY.minusDays(2));
        assertThat(rolls.of(group.instructor(), session.id()).begun()).isFalse();
        var roll = mark(session, Presence.CAME, Presence.AWAY);
        assertThat(roll.version()).isGreaterThan(session.version());
        assertThat(roll.lines())
                .extracting(line -> line.mark().presence())
                .containsExactly(Presence.CAME, Presence.AWAY);
        var mark = roll.lines().get(0).mark();
        assertThat(mark.byId()).isEqualTo(group.instructor().personId());
        assertThat(mark.at()).isNotNull();
        assertThat(rolls.of(other, session.id()).lines())
                .singleElement()
                .satisfies(line -> assertThat(line.personId()).isEqualTo(other.personId()));
        assertThat(rolls.ofPerson(other, other.personId()))
                .containsExactly(
                        new ClassAttended(
                                session.id(),
                                group.course().id(),
                                session.heldOn(),
                                null,
                                Presence.AWAY));
    }

    @Test
    void aNewMarkTakesTheOldOnesPlaceWhichIsKept() {
        var session = classOn(School.TODAY);
        mark(session, Presence.AWAY);
        var changed = mark(session, Presence.LATE);
        assertThat(changed.lines().get(0).mark().presence()).isEqualTo(Presence.LATE);
        assertThat(marks.list("sessionId = ?1 order by id", session.id()))
                .extracting(mark -> mark.presence, mark -> mark.markedFor != null)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple(Presence.AWAY, false),
                        org.assertj.core.api.Assertions.tuple(Presence.LATE, true));
        var again = mark(session, Presence.LATE);
        assertThat(again.version()).isEqualTo(changed.version());
        assertThat(marks.count("sessionId", session.id())).isEqualTo(2);
    }

    @Test
    void whoHasNotSeenTheLatestMarksChangesNone() {
        var session = classOn(School.TODAY);
        mark(session, Presence.CAME);
        var stale =
                refusalOf(
                        () ->
                                rolls.mark(
                                        group.instructor(),
                                        session.id(),
                                        session.version(),
                                        roll(Presence.AWAY)));
        assertThat(stale.status()).isEqualTo(412);
        assertThat(rolls.of(group.instructor(), session.id()).lines().get(0).mark().presence())
                .isEqualTo(Presence.CAME);
    }

    @Test
    void beforeItsDayAndOnceCalledOffAClassHasNoRoll() {
        var ahead = classOn(School.TODAY.plusDays(1));
        assertThat(rolls.of(group.instructor(), ahead.id()).open()).isFalse();
        assertThat(refusalOf(() -> mark(ahead, Presence.CAME)).status()).isEqualTo(409);
        var off = classOn(School.TODAY.minusDays(1));
        sessions.cancel(
                group.instructor(),
                off.id(),
                sessions.get(group.instructor(), off.id()).version(),
                new NewCancellation("Storm."));
        assertThat(refusalOf(() -> mark(off, Presence.CAME)).detail()).contains("Storm.");
    }

    @Test
    void onlyWhoIsEnrolledIsMarkedAndOnlyByThoseWhoRunTheCourse() {
        var session = classOn(School.TODAY);
        var version = session.version();
        var stranger = school.newGroup();
        var strange =
                new NewRoll(
                        List.of(new NewRoll.Said(stranger.student().personId(), Presence.CAME)));
        var instructor = group.instructor();
        assertThat(refusalOf(() -> rolls.mark(instructor, session.id(), version, strange)).faults())
                .hasSize(1);
        assertThat(
                        refusalOf(
                                        () ->
                                                rolls.mark(
                                                        group.student(),
                                                        session.id(),
                                                        version,
                                                        roll(Presence.CAME)))
                                .status())
                .isEqualTo(403);
        assertThat(refusalOf(() -> rolls.of(stranger.instructor(), session.id())).status())
                .isEqualTo(404);
    }

    /** Worked by hand: of classes 3 and 1 days ago, the later was missed; today's is marked. */
    @Test
    void whoDidNotComeWasNotSeen() {
        classOn(School.TODAY.minusDays(3));
        var missed = classOn(School.TODAY.minusDays(1));
        var person = group.student().personId();
        assertThat(lastSeen(person)).isEqualTo(School.TODAY.minusDays(1));
        mark(missed, Presence.AWAY);
        assertThat(lastSeen(person)).isEqualTo(School.TODAY.minusDays(3));
        var now = classOn(School.TODAY);
        assertThat(lastSeen(person)).isEqualTo(School.TODAY.minusDays(3));
        mark(now, Presence.LATE);
        assertThat(lastSeen(person)).isEqualTo(School.TODAY);
    }

    private LocalDate lastSeen(long person) {
        return sessions.lastAttended(List.of(person), School.TODAY).get(person);
    }

    private Session classOn(LocalDate day) {
        var instructor = group.instructor();
        var set =
                sessions.set(
                        instructor,
                        new NewSession(
                                group.course().id(),
                                day,
                                LocalTime.of(9, 0),
                                LocalTime.of(12, 0),
                                null,
                                "Bench room",
                                List.of(instructor.personId())));
        var session = set;
        for (var student : List.of(group.student(), other)) {
            var tree = school.tree(instructor, student, "acer_palmatum");
            session =
                    sessions.enrol(
                            instructor,
                            set.id(),
                            new NewEnrolment(student.personId(), tree.id(), "" + tree.id()));
        }
        return session;
    }

    /** Marks the first student, and the second when a second mark is given. */
    private Roll mark(Session session, Presence... presences) {
        var version = rolls.of(group.instructor(), session.id()).version();
        return rolls.mark(group.instructor(), session.id(), version, roll(presences));
    }

    private NewRoll roll(Presence... presences) {
        var students = List.of(group.student(), other).iterator();
        return new NewRoll(
                Arrays.stream(presences)
                        .map(presence -> new NewRoll.Said(students.next().personId(), presence))
                        .toList());
    }

    private static Problem refusalOf(ThrowingCallable call) {
        return catchThrowableOfType(Refused.class, call).problem();
    }
}
