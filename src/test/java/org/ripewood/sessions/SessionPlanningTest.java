package org.ripewood.sessions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.Statements;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.Tree;

/** Sessions set, copied, moved and filled as a teacher plans them. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class SessionPlanningTest {

    private static final LocalDate DAY = School.TODAY.plusDays(10);

    @Inject @PersistenceUnitExtension Statements statements;
    @Inject School school;
    @Inject Sessions sessions;
    @Inject SessionPlanning planning;

    School.Group group;
    Actor instructor;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        instructor = group.instructor();
    }

    @Test
    void aSeriesIsSetWholeOrNotAtAll() {
        var days = List.of(DAY.plusDays(7), DAY, DAY.plusDays(14));
        var set = planning.setAll(instructor, group.course().id(), like(null, days));
        assertThat(set)
                .extracting(Session::heldOn)
                .containsExactly(DAY, DAY.plusDays(7), DAY.plusDays(14));
        assertThat(planning.toCopy(instructor, group.course().id(), null).id())
                .isEqualTo(set.get(2).id());

        var again = List.of(DAY.plusDays(21), DAY.plusDays(7));
        var clashes = planning.clashes(instructor, group.course().id(), like(null, again));
        assertThat(clashes.get(0)).isNull();
        assertThat(clashes.get(1)).contains("already teaches session " + set.get(1).id());
        var problem =
                refusalOf(
                        () -> planning.setAll(instructor, group.course().id(), like(null, again)));
        assertThat(problem.status()).isEqualTo(409);
        assertThat(problem.faults()).extracting(Fault::field).containsExactly("days[1]");
        assertThat(sessions.ofCourse(instructor, group.course().id(), DAY)).hasSize(3);
    }

    @Test
    void aDayThatCannotBeIsToldAtItsPlace() {
        var days = List.of(DAY, LocalDate.of(1812, 1, 1));
        var problem =
                refusalOf(() -> planning.setAll(instructor, group.course().id(), like(null, days)));
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults()).extracting(Fault::field).containsExactly("days[1]");
        var twice =
                refusalOf(
                        () ->
                                planning.setAll(
                                        instructor,
                                        group.course().id(),
                                        like(null, List.of(DAY, DAY))));
        assertThat(twice.faults()).extracting(Fault::field).containsExactly("days[1]");
    }

    @Test
    void theWholeCourseIsEnrolledAtOnceAndSentAgainChangesNothing() {
        var trees = threeTrees();
        var session = set(null);
        var enrolled = enrolAll(session);
        assertThat(enrolled.enrolments())
                .extracting(Session.Enrolment::bench)
                .containsExactly("1", "2", "3");
        assertThat(enrolled.enrolments())
                .extracting(Session.Enrolment::treeId)
                .containsExactlyInAnyOrderElementsOf(trees.stream().map(Tree::id).toList());
        assertThat(enrolAll(session)).as("not even its version").isEqualTo(enrolled);

        // a bench that is free is taken again
        var second = enrolled.enrolments().get(1);
        sessions.withdraw(instructor, session.id(), second.id());
        assertThat(enrolAll(session).enrolments())
                .extracting(Session.Enrolment::bench)
                .containsExactly("1", "2", "3");
    }

    @Test
    void aTreeOfNoStudentOfTheCourseIsNamedAndNobodyIsEnrolled() {
        var own = threeTrees().get(0);
        var other = school.newGroup();
        var strange = school.tree(other.instructor(), other.student(), "acer_palmatum");
        var session = set(null);
        var problem =
                refusalOf(
                        () ->
                                sessions.enrolMany(
                                        instructor,
                                        session.id(),
                                        new NewEnrolments(List.of(own.id(), strange.id()))));
        assertThat(problem.faults()).extracting(Fault::field).containsExactly("treeIds[1]");
        assertThat(sessions.get(instructor, session.id()).enrolments()).isEmpty();
    }

    @Test
    void whoFindsNoPlaceWaitsAndMovesUp() {
        threeTrees();
        var session = set(2);
        var full = enrolAll(session);
        assertThat(full.enrolments()).hasSize(2);
        assertThat(full.waiting()).hasSize(1);
        var waits = full.waiting().get(0);
        // who waits does not ask twice
        assertThat(
                        refusalOf(
                                        () ->
                                                sessions.enrol(
                                                        instructor,
                                                        session.id(),
                                                        new NewEnrolment(
                                                                waits.personId(),
                                                                waits.treeId(),
                                                                "9")))
                                .status())
                .isEqualTo(409);
        var after = sessions.withdraw(instructor, session.id(), full.enrolments().get(0).id());
        assertThat(after.waiting()).isEmpty();
        assertThat(after.enrolments())
                .filteredOn(one -> one.treeId() == waits.treeId())
                .extracting(Session.Enrolment::bench)
                .containsExactly("1");
    }

    @Test
    void morePlacesLetTheWaitingIn() {
        threeTrees();
        var session = enrolAll(set(1));
        assertThat(session.waiting()).hasSize(2);
        var wider = move(session, DAY, 10, "Bench room", 3);
        assertThat(wider.enrolments()).hasSize(3);
        assertThat(wider.moved()).as("neither day, time nor place changed").isNull();
        var problem = refusalOf(() -> move(wider, DAY, 10, "Bench room", 2));
        assertThat(problem.faults()).extracting(Fault::field).containsExactly("places");
    }

    @Test
    void aWaitEndsAndIsNotThereAnyMore() {
        threeTrees();
        var session = enrolAll(set(2));
        var wait = session.waiting().get(0).id();
        assertThat(sessions.endWait(instructor, session.id(), wait).waiting()).isEmpty();
        assertThat(refusalOf(() -> sessions.endWait(instructor, session.id(), wait)).status())
                .isEqualTo(404);
    }

    @Test
    void aMovedSessionKeepsWhoComesAndTellsWhatItWas() {
        threeTrees();
        var session = enrolAll(set(null));
        var moved = move(session, DAY.plusDays(2), 14, "Glasshouse", null);
        assertThat(moved.enrolments()).isEqualTo(session.enrolments());
        assertThat(moved.heldOn()).isEqualTo(DAY.plusDays(2));
        assertThat(moved.version()).isGreaterThan(session.version());
        assertThat(moved.moved().heldOn()).isEqualTo(DAY);
        assertThat(moved.moved().place()).isEqualTo("Bench room");
        assertThat(moved.moved().because()).isEqualTo("The room is let.");
        assertThat(sessions.get(group.student(), session.id()).moved()).isEqualTo(moved.moved());
        assertThat(refusalOf(() -> move(session, DAY, 10, "Bench room", null)).status())
                .isEqualTo(412);
        // it may be moved where it overlaps nothing but itself
        assertThat(move(moved, DAY.plusDays(2), 15, "Glasshouse", null).startsAt())
                .isEqualTo(LocalTime.of(15, 0));
    }

    @Test
    void whatHasBegunStaysAndNothingIsMovedIntoThePast() {
        var ahead = set(null);
        assertThat(refusalOf(() -> move(ahead, School.TODAY.minusDays(1), 10, "x", null)).faults())
                .extracting(Fault::field)
                .containsExactly("heldOn");
        var past =
                planning.setAll(
                                instructor,
                                group.course().id(),
                                like(null, List.of(School.TODAY.minusDays(3))))
                        .get(0);
        assertThat(refusalOf(() -> move(past, DAY.plusDays(1), 10, "x", null)).status())
                .isEqualTo(409);
    }

    @Test
    void aCopyBringsTheTreesAtTheirBenches() {
        var trees = threeTrees();
        var first = set(null);
        sessions.enrol(
                instructor,
                first.id(),
                new NewEnrolment(group.student().personId(), trees.get(0).id(), "A7"));
        var copies =
                planning.setAll(
                        instructor,
                        group.course().id(),
                        like(first.id(), List.of(DAY.plusDays(1), DAY.plusDays(2))));
        for (var copy : copies) {
            assertThat(sessions.get(instructor, copy.id()).enrolments())
                    .extracting(Session.Enrolment::bench)
                    .containsExactly("A7");
        }
        var elsewhere = school.newGroup();
        var problem =
                refusalOf(
                        () ->
                                planning.setAll(
                                        elsewhere.instructor(),
                                        elsewhere.course().id(),
                                        like(first.id(), List.of(DAY))));
        assertThat(problem.faults()).extracting(Fault::field).containsExactly("like");
    }

    @Test
    void asManyQuestionsAreAskedForManyTreesAsForOne() {
        var one = set(null);
        school.tree(instructor, group.student(), "acer_palmatum");
        int few = asked(() -> enrolAll(one));
        IntStream.range(0, 12)
                .forEach(i -> school.tree(instructor, group.student(), "acer_palmatum"));
        assertThat(asked(() -> enrolAll(one))).isEqualTo(few);
    }

    /** Questions only: each enrolment is a row to be written. */
    private int asked(Runnable work) {
        return (int)
                statements.of(work).stream()
                        .filter(sql -> sql.startsWith("select"))
                        // numbers for the rows to be written come a block at a time
                        .filter(sql -> !sql.contains("next value for") && !sql.contains("nextval"))
                        .count();
    }

    private List<Tree> threeTrees() {
        var trees = new ArrayList<Tree>();
        for (int i = 0; i < 3; i++) {
            trees.add(school.tree(instructor, group.student(), "acer_palmatum"));
        }
        return trees;
    }

    private Session enrolAll(Session session) {
        return sessions.enrolMany(instructor, session.id(), new NewEnrolments(null));
    }

    private Session set(@Nullable Integer places) {
        return sessions.set(
                instructor,
                new NewSession(
                        group.course().id(),
                        DAY,
                        LocalTime.of(10, 0),
                        LocalTime.of(13, 0),
                        null,
                        "Bench room",
                        List.of(instructor.personId()),
                        places));
    }

    private NewSessions like(@Nullable Long like, List<LocalDate> days) {
        return new NewSessions(
                days,
                LocalTime.of(10, 0),
                LocalTime.of(13, 0),
                null,
                "Bench room",
                List.of(instructor.personId()),
                null,
                like);
    }

    private Session move(
            Session session, LocalDate day, int from, String place, @Nullable Integer places) {
        return planning.move(
                instructor,
                session.id(),
                session.version(),
                new NewMove(
                        day,
                        LocalTime.of(from, 0),
                        LocalTime.of(from + 3, 0),
                        place,
                        places,
                        "The room is let."));
    }

    private static Problem refusalOf(ThrowingCallable call) {
        return catchThrowableOfType(Refused.class, call).problem();
    }
}
