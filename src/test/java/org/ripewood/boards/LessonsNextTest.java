package org.ripewood.boards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.standing.RefusalAssert.refusalOf;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.Role;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Elm;
import org.ripewood.standing.Standings;

/** Which lesson frees most steps, for a student and for a course. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class LessonsNextTest {

    @Inject Assigner assigner;
    @Inject School school;
    @Inject Standings standings;
    @Inject LessonFinder lessonFinder;
    @Inject CourseContent content;

    @Test
    void theLessonThatAloneKeepsStepsBackComesFirst() {
        var group = school.newGroup();
        var tree = Elm.readyButForSkill(school, group.instructor(), group.student(), assigner);
        var keptBack = standings.of(group.student(), tree.id(), School.TODAY).with(Verdict.LESSON);
        assertThat(keptBack).isNotEmpty();
        var next = next(group);
        assertThat(next.stream().mapToInt(LessonNeed::steps).sum()).isEqualTo(keptBack.size());
        assertThat(next)
                .filteredOn(need -> need.lesson().equals("wiring-branches"))
                .singleElement()
                .satisfies(
                        need -> {
                            assertThat(need.steps()).isPositive();
                            assertThat(need.trees()).isEqualTo(1);
                            assertThat(need.students()).isEqualTo(1);
                            assertThat(need.minutes()).isPositive();
                        });
        assertThat(next).extracting(need -> -need.steps()).isSorted();
        var places = List.copyOf(content.inForce().lessons().keySet());
        var equals = next.stream().filter(need -> need.steps() == 0).toList();
        assertThat(equals).hasSizeGreaterThan(1);
        assertThat(equals).extracting(need -> places.indexOf(need.lesson())).isSorted();
    }

    @Test
    void whatIsShownIsNoLongerNeeded() {
        var group = school.newGroup();
        Elm.readyForWiring(school, group, assigner);
        assertThat(next(group)).extracting(LessonNeed::lesson).doesNotContain("wiring-branches");
    }

    @Test
    void aCourseCountsItsStudentsTrees() {
        var group = school.newGroup();
        var other = school.person("Sven Student", Role.STUDENT);
        school.join(group, other, Role.STUDENT);
        Elm.readyButForSkill(school, group.instructor(), group.student(), assigner);
        Elm.readyButForSkill(school, group.instructor(), group.student(), assigner);
        Elm.readyButForSkill(school, group.instructor(), other, assigner);
        var needs = lessonFinder.ofCourse(group.instructor(), group.course().id(), School.TODAY);
        assertThat(needs)
                .filteredOn(need -> need.lesson().equals("wiring-branches"))
                .singleElement()
                .satisfies(
                        need -> {
                            assertThat(need.trees()).isEqualTo(3);
                            assertThat(need.students()).isEqualTo(2);
                        });
    }

    @Test
    void strangersAreToldNothing() {
        var group = school.newGroup();
        var stranger = school.newGroup();
        var student = group.student().personId();
        assertThat(
                        refusalOf(
                                        () ->
                                                lessonFinder.ofPerson(
                                                        stranger.student(), student, School.TODAY))
                                .status())
                .isEqualTo(404);
        assertThat(
                        refusalOf(
                                        () ->
                                                lessonFinder.ofCourse(
                                                        group.student(),
                                                        group.course().id(),
                                                        School.TODAY))
                                .status())
                .isEqualTo(403);
    }

    private List<LessonNeed> next(School.Group group) {
        return lessonFinder.ofPerson(group.student(), group.student().personId(), School.TODAY);
    }
}
