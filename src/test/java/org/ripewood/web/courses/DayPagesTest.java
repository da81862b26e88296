package org.ripewood.web.courses;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Elm;
import org.ripewood.trees.Tree;
import org.ripewood.web.Visitor;

/** A class day at the desk. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class DayPagesTest {

    @Inject Assigner assigner;
    @Inject School school;
    @Inject People people;
    @Inject Sessions sessions;

    private Visitor teacher;
    private Tree tree;
    private String day;

    @BeforeEach
    void openTheSchool() {
        var group = school.newGroup();
        teacher = Visitor.of(people, group.instructor());
        tree = Elm.readyForWiring(school, group, assigner);
        var session =
                sessions.set(
                        group.instructor(),
                        new NewSession(
                                group.course().id(),
                                School.TODAY.plusDays(8),
                                LocalTime.of(9, 0),
                                LocalTime.of(16, 0),
                                "wiring-branches",
                                "long table",
                                List.of(group.instructor().personId())));
        sessions.enrol(
                group.instructor(),
                session.id(),
                new NewEnrolment(tree.keeperId(), tree.id(), "A1"));
        day = "/sessions/" + session.id() + "/day";
    }

    @Test
    void aDayLaidOutIsDrawnAndListed() {
        assertThat(teacher.get(day).asString()).contains("has not been laid out yet");
        assertThat(teacher.send(day, day + "/timetable", Map.of()).statusCode()).isEqualTo(303);
        var page = teacher.get(day).asString();
        assertThat(page)
                .contains("class=\"picture\"", "Timetable of 28 February 2026", "09:00 to ")
                .contains("together", "To buy by 28 February 2026", "aluminium wire");
    }

    @Test
    void whatIsDroppedIsOfferedToBeTakenBack() {
        teacher.send(
                day,
                day + "/wishes",
                Map.of("treeId", tree.id(), "technique", Elm.WIRING, "wish", "DROP"));
        assertThat(teacher.get(day).asString())
                .contains("Dropped by an instructor.", "Take that back");
    }

    /** Several late at once, in one form; a time without anybody ticked is asked about. */
    @Test
    void whoIsLateIsTickedAndLaidOutAgain() {
        teacher.send(day, day + "/timetable", Map.of("noLesson", "true"));
        var alone = teacher.send(day, day + "/timetable", Map.of("lateAt", "10:00"));
        assertThat(alone.statusCode()).isEqualTo(400);
        assertThat(alone.asString()).contains("none is ticked");
        var late = Map.<String, Object>of("late", tree.keeperId(), "lateAt", "10:00");
        assertThat(teacher.send(day, day + "/timetable", late).statusCode()).isEqualTo(303);
        assertThat(teacher.get(day).asString())
                .contains("arrives at", "10:00", "No shorter plan exists.")
                .contains("on their own", "together");
    }

    /** What was typed is kept, and what was wrong is said beside it. */
    @Test
    void aTimeThatCannotBeIsSaidAndKept() {
        teacher.send(day, day + "/timetable", Map.of());
        var refused = teacher.send(day, day + "/timetable", Map.of("now", "18:30"));
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.asString()).contains("value=\"18:30\"", "when the class is over");
        var alone = teacher.send(day, day + "/timetable", Map.of("breakFrom", "12:00"));
        assertThat(alone.statusCode()).isEqualTo(400);
        assertThat(alone.asString()).contains("the beginning and the end of the break");
    }
}
