package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.Courses;
import org.ripewood.people.NewCourse;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Role;

/** A registrar ends memberships and holds a course again; what is over stands apart. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class CourseRunPagesTest {

    @Inject School school;
    @Inject People people;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject Courses schoolCourses;

    @Test
    void whoLeftIsToldWithTheirDays() {
        var group = school.newGroup();
        var office = Visitor.of(people, school.person("Rena Registrar", Role.REGISTRAR));
        var form =
                Map.of(
                        "courseId",
                        group.course().id(),
                        "personId",
                        group.student().personId(),
                        "on",
                        School.TODAY.plusDays(3).toString());
        var refused = office.send("/people", "/people/members/end", form);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.asString()).contains("value=\"2026-02-23\"", "found 23 February 2026");
        var today = Map.of("courseId", group.course().id(), "personId", form.get("personId"));
        assertThat(office.send("/people", "/people/members/end", today).statusCode())
                .isEqualTo(303);
        var name = peopleUnchecked.get(group.student().personId()).name();
        assertThat(office.get("/people").asString())
                .contains(name + ", 20 February 2026 to 20 February 2026");
    }

    @Test
    void aCourseThatIsOverStandsApartAndIsHeldAgain() {
        var registrar = school.person("Rena Registrar", Role.REGISTRAR);
        var student = school.person("Stan Student", Role.STUDENT);
        var over =
                schoolCourses.open(
                        registrar,
                        new NewCourse(
                                "Winter bench " + registrar.personId(),
                                School.TODAY.minusDays(90),
                                School.TODAY.minusDays(1)));
        schoolCourses.join(registrar, over.id(), student.personId(), Role.STUDENT);
        var home = Visitor.of(people, student).get("/home").asString();
        assertThat(home.substring(home.indexOf("Past courses"))).contains(over.name());
        assertThat(home.substring(0, home.indexOf("Past courses"))).doesNotContain(over.name());

        var office = Visitor.of(people, registrar);
        var action = "/people/courses/" + over.id() + "/runs";
        var wrong = office.send("/people", action, Map.of("startsOn", "2026-13-01"));
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.asString()).contains("value=\"2026-13-01\"");
        var form = Map.of("startsOn", "2026-03-01", "endsOn", "2026-06-01", "students", "true");
        assertThat(office.send("/people", action, form).statusCode()).isEqualTo(303);
        assertThat(schoolCourses.list(student))
                .filteredOn(course -> course.name().equals(over.name()))
                .hasSize(2)
                .first()
                .satisfies(course -> assertThat(course.startsOn()).hasToString("2026-03-01"));
    }
}
