package org.ripewood.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** Who belongs to a course since when, who left it, and a course held again. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class MembershipTest {

    @Inject School school;
    @Inject People people;
    @Inject Courses schoolCourses;
    @Inject PeopleUnchecked peopleUnchecked;

    School.Group group;
    Actor registrar;
    long course;
    long student;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        registrar = school.person("Rena Registrar", Role.REGISTRAR);
        course = group.course().id();
        student = group.student().personId();
    }

    @Test
    void aStudentWhoLeftIsNoLongerReachedAndThatTheyBelongedIsKept() {
        var instructor = group.instructor();
        assertThat(people.reaches(instructor, student)).isTrue();
        schoolCourses.leave(registrar, course, student, School.TODAY);
        assertThat(people.reaches(instructor, student)).isFalse();
        assertThat(people.reachable(instructor)).doesNotContain(student);
        assertThat(peopleUnchecked.members(course, Role.STUDENT)).isEmpty();
        assertThat(schoolCourses.list(group.student())).isEmpty();
        assertThat(people.fellows(instructor)).extracting(Person::id).doesNotContain(student);
        assertThat(statusOf(() -> schoolCourses.get(group.student(), course))).isEqualTo(404);
        assertThat(schoolCourses.memberships(instructor, course))
                .filteredOn(member -> member.personId() == student)
                .singleElement()
                .satisfies(
                        member -> {
                            assertThat(member.since()).isEqualTo(School.TODAY);
                            assertThat(member.leftOn()).isEqualTo(School.TODAY);
                            assertThat(member.name()).startsWith("Stan Student");
                        });
    }

    @Test
    void anInstructorWhoLeftReachesNobodyByWayOfTheCourse() {
        var instructor = group.instructor();
        schoolCourses.leave(registrar, course, instructor.personId(), School.TODAY);
        assertThat(people.reaches(instructor, student)).isFalse();
        assertThat(people.reachable(instructor)).containsExactly(instructor.personId());
        assertThat(schoolCourses.runs(instructor, course)).isFalse();
    }

    @Test
    void whoLeftMayComeAgain() {
        schoolCourses.leave(registrar, course, student, School.TODAY);
        schoolCourses.join(registrar, course, student, Role.STUDENT);
        schoolCourses.join(registrar, course, student, Role.STUDENT);
        assertThat(peopleUnchecked.members(course, Role.STUDENT))
                .extracting(Person::id)
                .containsExactly(student);
        assertThat(schoolCourses.memberships(registrar, course))
                .filteredOn(member -> member.personId() == student)
                .extracting(member -> member.leftOn() == null)
                .containsExactly(false, true);
    }

    @Test
    void aMembershipEndsOnADayOfItsOwn() {
        assertThat(statusOf(() -> leave(group.student().personId(), -1))).isEqualTo(400);
        assertThat(statusOf(() -> leave(group.student().personId(), 1))).isEqualTo(400);
        leave(student, 0);
        assertThat(statusOf(() -> leave(student, 0))).isEqualTo(404);
        var teaches = group.instructor();
        assertThat(statusOf(() -> schoolCourses.leave(teaches, course, student, School.TODAY)))
                .isEqualTo(403);
    }

    private void leave(long person, int daysAhead) {
        schoolCourses.leave(registrar, course, person, School.TODAY.plusDays(daysAhead));
    }

    @Test
    void aCourseHeldAgainHasItsNameAndInstructorsAndStudentsByChoice() {
        var left = school.person("Sven Student", Role.STUDENT);
        school.join(group, left, Role.STUDENT);
        schoolCourses.leave(registrar, course, left.personId(), School.TODAY);
        var first = School.TODAY.plusYears(1);
        var without =
                schoolCourses.runAgain(registrar, course, new NewRun(null, first, first, false));
        var with =
                schoolCourses.runAgain(
                        registrar, course, new NewRun("Next year", first, first.plusDays(9), true));
        assertThat(without.name()).isEqualTo(group.course().name());
        assertThat(peopleUnchecked.members(without.id(), Role.INSTRUCTOR))
                .extracting(Person::id)
                .containsExactly(group.instructor().personId());
        assertThat(peopleUnchecked.members(without.id(), Role.STUDENT)).isEmpty();
        assertThat(with.name()).isEqualTo("Next year");
        assertThat(with.endsOn()).isEqualTo(first.plusDays(9));
        assertThat(peopleUnchecked.members(with.id(), Role.STUDENT))
                .extracting(Person::id)
                .containsExactly(student);
        assertThat(peopleUnchecked.members(course, Role.STUDENT)).hasSize(1);
        assertThat(
                        statusOf(
                                () ->
                                        schoolCourses.runAgain(
                                                registrar,
                                                course,
                                                new NewRun(null, first, first.minusDays(1), true))))
                .isEqualTo(400);
    }

    @Test
    void aCourseIsOverTheDayAfterItsLast() {
        var last = group.course().endsOn();
        assertThat(group.course().over(last)).isFalse();
        assertThat(group.course().over(last.plusDays(1))).isTrue();
        assertThat(Set.copyOf(schoolCourses.list(group.student()))).contains(group.course());
    }

    private static int statusOf(ThrowingCallable call) {
        return catchThrowableOfType(Refused.class, call).problem().status();
    }
}
