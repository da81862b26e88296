package org.ripewood.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.NewCourse;
import org.ripewood.people.NewPerson;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

@QuarkusTest
class PeopleTest {

    private static final AtomicInteger NEXT = new AtomicInteger();
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));

    @Inject People people;
    @Inject Courses schoolCourses;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject PersonRegistration register;
    @Inject PasswordChange passwordChange;

    private Person teacher;
    private Person otherTeacher;
    private Person student;
    private Person otherStudent;
    private Course course;
    private Course otherCourse;

    @BeforeEach
    void twoCoursesWithATeacherAndAStudentEach() {
        teacher = enter("Vera Holm", Role.INSTRUCTOR);
        otherTeacher = enter("Anselm Reet", Role.INSTRUCTOR);
        student = enter("Tilda Moor", Role.STUDENT);
        otherStudent = enter("Bero Wend", Role.STUDENT);
        course = open("Spring bench");
        otherCourse = open("Autumn bench");
        schoolCourses.join(OFFICE, course.id(), teacher.id(), Role.INSTRUCTOR);
        schoolCourses.join(OFFICE, course.id(), student.id(), Role.STUDENT);
        schoolCourses.join(OFFICE, otherCourse.id(), otherTeacher.id(), Role.INSTRUCTOR);
        schoolCourses.join(OFFICE, otherCourse.id(), otherStudent.id(), Role.STUDENT);
    }

    @Test
    void reachGoesByRoleAndCourse() {
        assertReach(student, Map.of(student, true, otherStudent, false, teacher, false));
        assertReach(
                teacher,
                Map.of(teacher, true, student, true, otherStudent, false, otherTeacher, false));
        assertReach(otherTeacher, Map.of(otherStudent, true, student, false));
        for (var anybody : List.of(teacher, otherTeacher, student, otherStudent)) {
            assertThat(people.reaches(OFFICE, anybody.id())).isTrue();
        }
    }

    private void assertReach(Person who, Map<Person, Boolean> whom) {
        whom.forEach(
                (person, expected) ->
                        assertThat(people.reaches(actor(who), person.id()))
                                .as("%s reaches %s", who.name(), person.name())
                                .isEqualTo(expected));
    }

    @Test
    void whoAttendsACourseReachesNobodyElseInIt() {
        var fellow = enter("Ivo Brand", Role.STUDENT);
        schoolCourses.join(OFFICE, course.id(), fellow.id(), Role.STUDENT);

        assertThat(people.reaches(actor(student), fellow.id())).isFalse();
    }

    @Test
    void teachingNeedsTheRoleAndNotOnlyTheCourse() {
        var noLongerTeaching = new Actor(teacher.id(), Set.of(Role.STUDENT));

        assertThat(people.reaches(noLongerTeaching, student.id())).isFalse();
        assertThat(people.reachable(noLongerTeaching)).containsExactly(teacher.id());
    }

    @Test
    void whoIsWithinReachIsListedTheSameWay() {
        assertThat(people.reachable(actor(student))).containsExactly(student.id());
        assertThat(people.reachable(actor(teacher)))
                .containsExactlyInAnyOrder(teacher.id(), student.id());
        assertThat(people.reachable(OFFICE)).isNull();
    }

    @Test
    void aCourseOutOfReachIsNotFound() {
        assertThat(schoolCourses.list(actor(student))).containsExactly(course);
        assertThat(schoolCourses.list(actor(teacher))).containsExactly(course);
        assertThat(schoolCourses.list(OFFICE)).contains(course, otherCourse);
        assertThat(schoolCourses.get(actor(student), course.id())).isEqualTo(course);

        var hidden = status(() -> schoolCourses.get(actor(student), otherCourse.id()));
        var absent = status(() -> schoolCourses.get(actor(student), 999_999_999L));
        assertThat(hidden).isEqualTo(404).isEqualTo(absent);
    }

    @Test
    void membersAreListedByNameAndRole() {
        var early = enter("Ada Lunt", Role.STUDENT);
        schoolCourses.join(OFFICE, course.id(), early.id(), Role.STUDENT);

        assertThat(peopleUnchecked.members(course.id(), Role.STUDENT))
                .extracting(Person::name)
                .containsExactly("Ada Lunt", "Tilda Moor");
        assertThat(peopleUnchecked.members(course.id(), Role.INSTRUCTOR)).containsExactly(teacher);
    }

    @Test
    void joiningTwiceIsNothingNewAndTwoRolesAreRefused() {
        schoolCourses.join(OFFICE, course.id(), student.id(), Role.STUDENT);
        assertThat(peopleUnchecked.members(course.id(), Role.STUDENT)).hasSize(1);

        var both = enter("Rune Aske", Role.STUDENT, Role.INSTRUCTOR);
        schoolCourses.join(OFFICE, course.id(), both.id(), Role.STUDENT);
        assertThat(
                        status(
                                () ->
                                        schoolCourses.join(
                                                OFFICE, course.id(), both.id(), Role.INSTRUCTOR)))
                .isEqualTo(409);
    }

    @Test
    void nobodyJoinsAsWhatTheyAreNot() {
        assertThat(
                        status(
                                () ->
                                        schoolCourses.join(
                                                OFFICE,
                                                course.id(),
                                                student.id(),
                                                Role.INSTRUCTOR)))
                .isEqualTo(409);
        assertThat(
                        status(
                                () ->
                                        schoolCourses.join(
                                                OFFICE, course.id(), student.id(), Role.REGISTRAR)))
                .isEqualTo(400);
        assertThat(status(() -> schoolCourses.join(OFFICE, course.id(), -5, Role.STUDENT)))
                .isEqualTo(404);
        assertThat(status(() -> schoolCourses.join(OFFICE, -5, student.id(), Role.STUDENT)))
                .isEqualTo(404);
    }

    @Test
    void onlyTheRegistrarChangesThePeople() {
        for (var other : List.of(actor(student), actor(teacher))) {
            assertThat(status(() -> register.enter(other, person("x", "x", Role.STUDENT))))
                    .isEqualTo(403);
            assertThat(status(() -> schoolCourses.open(other, newCourse("x")))).isEqualTo(403);
            assertThat(status(() -> schoolCourses.join(other, course.id(), 1, Role.STUDENT)))
                    .isEqualTo(403);
            assertThat(status(() -> people.everybody(other, new PageRequest(0, 10), "")))
                    .isEqualTo(403);
            assertThat(status(() -> register.setActive(other, student.id(), 0, false)))
                    .isEqualTo(403);
        }
    }

    @Test
    void aLoginIsGivenOnce() {
        var taken = person("Somebody Else", student.login(), Role.STUDENT);

        var refused = catchThrowableOfType(Refused.class, () -> register.enter(OFFICE, taken));

        assertThat(refused.problem().faults()).extracting(Fault::field).containsExactly("login");
    }

    @Test
    void aPersonIsFoundByLoginHoweverTyped() {
        assertThat(
                        peopleUnchecked.findByLogin(
                                " " + student.login().toUpperCase(java.util.Locale.ROOT)))
                .contains(student);
        assertThat(peopleUnchecked.findByLogin("nobody-at-all")).isEmpty();
    }

    @Test
    void namesOfUnknownIdsAreAbsent() {
        assertThat(people.names(List.of(student.id(), -7L)))
                .isEqualTo(Map.of(student.id(), "Tilda Moor"));
        assertThat(people.names(List.of())).isEmpty();
    }

    @Test
    void everybodyIsListedInPages() {
        var page = people.everybody(OFFICE, new PageRequest(0, 2), " ");

        assertThat(page.items()).hasSize(2);
        assertThat(page.total()).isGreaterThanOrEqualTo(4);
        assertThat(page.hasNext()).isTrue();
    }

    @Test
    void aPersonIsFoundByAPartOfTheirName() {
        var all = new PageRequest(0, 100);

        assertThat(people.everybody(OFFICE, all, " da MOO").items())
                .contains(student)
                .allSatisfy(found -> assertThat(found.name()).isEqualTo(student.name()));
        assertThat(people.everybody(OFFICE, all, student.login()).items()).containsExactly(student);
        assertThat(people.everybody(OFFICE, new PageRequest(0, 1), "tilda").total())
                .isEqualTo(people.everybody(OFFICE, all, "tilda").items().size());
        // marks of the database's own are marks like any other
        assertThat(people.everybody(OFFICE, all, "%").items()).isEmpty();
        assertThat(people.everybody(OFFICE, all, "tild_").items()).isEmpty();
        assertThat(people.everybody(OFFICE, all, "!").items()).isEmpty();
    }

    @Test
    void whoBelongsToEveryCourseIsToldAtOnceAsOneByOne() {
        var atOnce = schoolCourses.memberships(OFFICE, List.of(course.id(), otherCourse.id()));

        for (var one : List.of(course, otherCourse)) {
            assertThat(atOnce.get(one.id())).isEqualTo(schoolCourses.memberships(OFFICE, one.id()));
        }
        assertThat(status(() -> schoolCourses.memberships(actor(teacher), List.of(course.id()))))
                .isEqualTo(403);
    }

    @Test
    void aCourseEndsAfterItStarts() {
        var refused =
                catchThrowableOfType(
                        Refused.class,
                        () ->
                                schoolCourses.open(
                                        OFFICE,
                                        new NewCourse(
                                                "Turned",
                                                LocalDate.of(1899, 12, 31),
                                                LocalDate.of(1899, 12, 30))));

        assertThat(refused.problem().faults())
                .extracting(Fault::field)
                .containsExactly("startsOn", "endsOn");
        assertThat(
                        status(
                                () ->
                                        schoolCourses.open(
                                                OFFICE,
                                                new NewCourse(
                                                        "For ever",
                                                        LocalDate.of(2024, 1, 1),
                                                        LocalDate.MAX))))
                .isEqualTo(400);
    }

    @Test
    void shuttingOutChecksTheVersionAndSparesOneself() {
        var shut = register.setActive(OFFICE, student.id(), student.version(), false);
        assertThat(shut.active()).isFalse();
        assertThat(shut.version()).isGreaterThan(student.version());
        assertThat(status(() -> register.setActive(OFFICE, student.id(), student.version(), true)))
                .isEqualTo(412);

        var registrar = enter("Office Two", Role.REGISTRAR);
        assertThat(
                        status(
                                () ->
                                        register.setActive(
                                                actor(registrar),
                                                registrar.id(),
                                                registrar.version(),
                                                false)))
                .isEqualTo(409);
    }

    @Test
    void aPasswordIsChangedByWhoKnowsTheOldOne() {
        var me = actor(student);
        assertThat(status(() -> passwordChange.change(me, null, "wrong one", "twelve letters")))
                .isEqualTo(400);
        assertThat(status(() -> passwordChange.change(me, null, "quite a long password", "short")))
                .isEqualTo(400);

        passwordChange.change(me, null, "quite a long password", "twelve letters");

        assertThat(
                        status(
                                () ->
                                        passwordChange.change(
                                                me,
                                                null,
                                                "quite a long password",
                                                "twelve letters")))
                .isEqualTo(400);
    }

    private static int status(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        var refused = catchThrowableOfType(Refused.class, call);
        assertThat(refused).as("it is refused").isNotNull();
        return refused.problem().status();
    }

    private static Actor actor(Person person) {
        return new Actor(person.id(), person.roles());
    }

    private Person enter(String name, Role... roles) {
        return register.enter(OFFICE, person(name, "p" + NEXT.incrementAndGet() + ".reach", roles));
    }

    private static NewPerson person(String name, String login, Role... roles) {
        return new NewPerson(name, login, "quite a long password", Set.of(roles));
    }

    private Course open(String name) {
        return schoolCourses.open(OFFICE, newCourse(name));
    }

    private static NewCourse newCourse(String name) {
        return new NewCourse(name, LocalDate.of(2024, 3, 1), LocalDate.of(2024, 11, 30));
    }
}
