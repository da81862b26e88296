package org.ripewood.sessions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.hibernate.SessionFactory;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

@QuarkusTest
@TestProfile(SchoolProfile.class)
class SessionsTest {

    private static final LocalDate DAY = School.TODAY.plusDays(10);

    @Inject School school;
    @Inject Sessions sessions;
    @Inject SessionFactory statistics;

    School.Group group;
    Actor instructor;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        instructor = group.instructor();
    }

    @Test
    void aSessionIsKeptAsItWasSet() {
        var session = sessions.set(instructor, at(10, 13, "roots-and-root-flare"));
        assertThat(sessions.get(group.student(), session.id())).isEqualTo(session);
        assertThat(sessions.ofCourse(group.student(), group.course().id(), DAY))
                .containsExactly(session);
        assertThat(sessions.ofCourse(group.student(), group.course().id(), DAY.plusDays(1)))
                .isEmpty();
    }

    @Test
    void allFaultsAreToldAtOnce() {
        var wrong =
                new NewSession(
                        group.course().id(),
                        LocalDate.of(1812, 1, 1),
                        LocalTime.of(13, 0),
                        LocalTime.of(10, 0),
                        "roots-and-root-flair",
                        "Bench room",
                        List.of(group.student().personId()));
        var problem = refusalOf(() -> sessions.set(instructor, wrong));
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults())
                .extracting(Fault::field)
                .containsExactly("endsAt", "heldOn", "lesson", "instructorIds", "instructorIds");
        assertThat(problem.faults().get(2).message())
                .isEqualTo(
                        "There is no lesson “roots-and-root-flair”. Maybe"
                                + " “roots-and-root-flare”.");
    }

    @Test
    void anInstructorIsNeverInTwoPlaces() {
        var first = sessions.set(instructor, at(10, 13, null));
        var problem = refusalOf(() -> sessions.set(instructor, at(12, 15, null)));
        assertThat(problem.status()).isEqualTo(409);
        assertThat(problem.detail())
                .contains("Ines Instructor")
                .contains("session " + first.id())
                .contains("from 10:00 to 13:00");
        assertThat(sessions.set(instructor, at(13, 15, null)).id()).isPositive();
    }

    @Test
    void aTreeIsEnrolledOnceAndTheVersionCountsOn() {
        var tree = school.tree(instructor, group.student(), "acer_palmatum");
        var session = sessions.set(instructor, at(10, 13, null));
        var enrolment = new NewEnrolment(group.student().personId(), tree.id(), "3");
        var enrolled = sessions.enrol(instructor, session.id(), enrolment);
        assertThat(enrolled.version()).isGreaterThan(session.version());
        assertThat(enrolled.enrolments()).hasSize(1);
        var again = refusalOf(() -> sessions.enrol(instructor, session.id(), enrolment));
        assertThat(again.status()).isEqualTo(409);

        var enrolmentId = enrolled.enrolments().get(0).id();
        var after = sessions.withdraw(instructor, session.id(), enrolmentId);
        assertThat(after.enrolments()).isEmpty();
        assertThat(after.version()).isGreaterThan(enrolled.version());
        assertThat(sessions.get(instructor, session.id())).isEqualTo(after);
        var gone = refusalOf(() -> sessions.withdraw(instructor, session.id(), enrolmentId));
        assertThat(gone.status()).isEqualTo(404);
    }

    @Test
    void aTreeMayComeAgainAfterItWasWithdrawn() {
        var tree = school.tree(instructor, group.student(), "acer_palmatum");
        var session = sessions.set(instructor, at(10, 13, null));
        var enrolment = new NewEnrolment(group.student().personId(), tree.id(), "3");
        for (int time = 0; time < 3; time++) {
            var enrolled = sessions.enrol(instructor, session.id(), enrolment).enrolments();
            assertThat(enrolled).hasSize(1);
            assertThat(attendance().withdrawn()).isFalse();
            assertThat(attendance().treeIds()).containsExactly(tree.id());
            sessions.withdraw(instructor, session.id(), enrolled.get(0).id());
            assertThat(attendance().withdrawn()).isTrue();
            assertThat(attendance().treeIds()).isEmpty();
        }
    }

    private Attendance attendance() {
        return sessions.ofPerson(group.student(), DAY).get(0);
    }

    @Test
    void aSessionCalledOffStaysWithItsReasonAndFreesItsInstructor() {
        var session = sessions.set(instructor, at(10, 13, null));
        var off =
                sessions.cancel(
                        instructor, session.id(), session.version(), because("Storm is forecast."));
        assertThat(off.held()).isFalse();
        assertThat(off.cancelled().reason()).isEqualTo("Storm is forecast.");
        assertThat(off.cancelled().byId()).isEqualTo(instructor.personId());
        assertThat(off.version()).isGreaterThan(session.version());
        assertThat(off.changedAt()).isAfterOrEqualTo(session.changedAt());
        assertThat(sessions.ofCourse(group.student(), group.course().id(), DAY))
                .extracting(Session::cancelled)
                .containsExactly(off.cancelled());

        // said again it counts once, said otherwise it is refused
        assertThat(
                        sessions.cancel(
                                instructor,
                                session.id(),
                                session.version(),
                                because(" Storm is forecast. ")))
                .isEqualTo(off);
        var other =
                refusalOf(
                        () ->
                                sessions.cancel(
                                        instructor,
                                        session.id(),
                                        session.version(),
                                        because("I am away.")));
        assertThat(other.status()).isEqualTo(409);
        assertThat(other.detail()).contains("Storm is forecast.");

        var tree = school.tree(instructor, group.student(), "acer_palmatum");
        var enrolment = new NewEnrolment(group.student().personId(), tree.id(), "3");
        assertThat(refusalOf(() -> sessions.enrol(instructor, session.id(), enrolment)).detail())
                .contains("is cancelled");
        assertThat(sessions.set(instructor, at(11, 12, null)).held()).isTrue();
    }

    @Test
    void onlyStaffCallASessionOff() {
        var session = sessions.set(instructor, at(10, 13, null));
        var why = because("Storm is forecast.");
        assertThat(
                        refusalOf(
                                        () ->
                                                sessions.cancel(
                                                        group.student(),
                                                        session.id(),
                                                        session.version(),
                                                        why))
                                .status())
                .isEqualTo(403);
        var stranger = school.newGroup().instructor();
        assertThat(
                        refusalOf(
                                        () ->
                                                sessions.cancel(
                                                        stranger,
                                                        session.id(),
                                                        session.version(),
                                                        why))
                                .status())
                .isEqualTo(404);
        assertThat(sessions.get(instructor, session.id()).held()).isTrue();
    }

    @Test
    void aPersonsClassDatesAreThoseTheyTeachAndThoseOfCoursesTheyAttend() {
        var session = sessions.set(instructor, at(10, 13, null));
        var guest = school.newGroup();
        var tree = school.tree(instructor, group.student(), "acer_palmatum");
        sessions.enrol(
                instructor,
                session.id(),
                new NewEnrolment(group.student().personId(), tree.id(), "3"));

        var taught = sessions.ofPerson(instructor, DAY);
        assertThat(taught).hasSize(1);
        assertThat(taught.get(0).teaches()).isTrue();
        assertThat(taught.get(0).trees()).isEqualTo(1);
        assertThat(taught.get(0).course()).isEqualTo(group.course().name());
        // who else comes is no part of it
        assertThat(taught.get(0).session().enrolments()).isEmpty();

        var other = school.person("Sven Student", Role.STUDENT);
        school.join(group, other, Role.STUDENT);
        var attended = sessions.ofPerson(other, DAY).get(0);
        assertThat(attended.teaches()).isFalse();
        assertThat(attended.treeIds()).isEmpty();
        assertThat(attended.trees()).isZero();
        assertThat(attended.withdrawn()).isFalse();

        assertThat(sessions.ofPerson(guest.student(), DAY)).isEmpty();
        assertThat(sessions.ofPerson(guest.instructor(), DAY)).isEmpty();
        assertThat(sessions.ofPerson(other, DAY.plusDays(1))).isEmpty();
    }

    @Test
    void aGuestWhoHelpsHasTheDateToo() {
        var guest = school.newGroup().instructor();
        var withGuest =
                new NewSession(
                        group.course().id(),
                        DAY,
                        LocalTime.of(15, 0),
                        LocalTime.of(17, 0),
                        null,
                        "Bench room",
                        List.of(instructor.personId(), guest.personId()));
        sessions.set(instructor, withGuest);
        assertThat(sessions.ofPerson(guest, DAY)).extracting(Attendance::teaches).contains(true);
    }

    @Test
    void thirtyClassDatesTakeAsManyQueriesAsThree() {
        IntStream.range(0, 3).forEach(this::classDate);
        var few = queries(3);
        IntStream.range(3, 30).forEach(this::classDate);
        assertThat(queries(30)).isEqualTo(few);
    }

    private void classDate(int number) {
        var on = DAY.plusDays(number);
        var session =
                sessions.set(
                        instructor,
                        new NewSession(
                                group.course().id(),
                                on,
                                LocalTime.of(10, 0),
                                LocalTime.of(12, 0),
                                null,
                                "Bench room",
                                List.of(instructor.personId())));
        var tree = school.tree(instructor, group.student(), "acer_palmatum");
        sessions.enrol(
                instructor,
                session.id(),
                new NewEnrolment(group.student().personId(), tree.id(), "3"));
    }

    private long queries(int dates) {
        var counted = statistics.getStatistics();
        counted.clear();
        var found = sessions.ofPerson(group.student(), DAY);
        long queries = counted.getPrepareStatementCount();
        assertThat(found).hasSize(dates);
        return queries;
    }

    private static NewCancellation because(String reason) {
        return new NewCancellation(reason);
    }

    @Test
    void aStudentComesOnlyWithATreeTheyKeep() {
        var others = school.newGroup();
        var theirs = school.tree(others.instructor(), others.student(), "acer_palmatum");
        var session = sessions.set(instructor, at(10, 13, null));
        var foreignTree = new NewEnrolment(group.student().personId(), theirs.id(), "3");
        assertThat(refusalOf(() -> sessions.enrol(instructor, session.id(), foreignTree)).faults())
                .extracting(Fault::field)
                .containsExactly("treeId");
        var stranger = new NewEnrolment(others.student().personId(), theirs.id(), "3");
        assertThat(refusalOf(() -> sessions.enrol(instructor, session.id(), stranger)).faults())
                .extracting(Fault::field)
                .containsExactly("personId");
    }

    @Test
    void aStudentSeesOnlyOwnEnrolments() {
        var session = sessions.set(instructor, at(10, 13, null));
        var other = school.person("Sven Student", Role.STUDENT);
        school.join(group, other, Role.STUDENT);
        for (var student : List.of(group.student(), other)) {
            var tree = school.tree(instructor, student, "acer_palmatum");
            sessions.enrol(
                    instructor, session.id(), new NewEnrolment(student.personId(), tree.id(), "1"));
        }
        assertThat(sessions.get(instructor, session.id()).enrolments()).hasSize(2);
        assertThat(sessions.get(other, session.id()).enrolments())
                .extracting(Session.Enrolment::personId)
                .containsExactly(other.personId());
        assertThat(sessions.ofCourse(other, group.course().id(), DAY).get(0).enrolments())
                .extracting(Session.Enrolment::personId)
                .containsExactly(other.personId());
    }

    @Test
    void onlyStaffSetSessions() {
        assertThat(refusalOf(() -> sessions.set(group.student(), at(10, 13, null))).status())
                .isEqualTo(403);
        var stranger = school.newGroup().instructor();
        assertThat(refusalOf(() -> sessions.set(stranger, at(10, 13, null))).status())
                .isEqualTo(404);
        var registrar = new Actor(0, Set.of(Role.REGISTRAR));
        var session = sessions.set(registrar, at(10, 13, null));
        assertThat(refusalOf(() -> sessions.get(stranger, session.id())).status()).isEqualTo(404);
    }

    private NewSession at(int fromHour, int toHour, @Nullable String lesson) {
        return new NewSession(
                group.course().id(),
                DAY,
                LocalTime.of(fromHour, 0),
                LocalTime.of(toHour, 0),
                lesson,
                "Bench room",
                List.of(instructor.personId()));
    }

    private static Problem refusalOf(ThrowingCallable call) {
        return catchThrowableOfType(Refused.class, call).problem();
    }
}
