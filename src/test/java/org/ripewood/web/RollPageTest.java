package org.ripewood.web;

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
import org.ripewood.sessions.NewRoll;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Presence;
import org.ripewood.sessions.Rolls;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;

/** Who came is marked in one form, told to the student, and never written over unseen. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class RollPageTest {

    @Inject School school;
    @Inject People people;
    @Inject Sessions sessions;
    @Inject Rolls rolls;

    private School.Group group;
    private Session session;
    private long student;
    private String page;

    @BeforeEach
    void aClassOfYesterday() {
        group = school.newGroup();
        var instructor = group.instructor();
        student = group.student().personId();
        var tree = school.tree(instructor, group.student(), "acer_palmatum");
        var set =
                sessions.set(
                        instructor,
                        new NewSession(
                                group.course().id(),
                                School.TODAY.minusDays(1),
                                LocalTime.of(9, 0),
                                LocalTime.of(12, 0),
                                null,
                                "Bench room",
                                List.of(instructor.personId())));
        session = sessions.enrol(instructor, set.id(), new NewEnrolment(student, tree.id(), "1"));
        page = "/sessions/" + session.id();
    }

    @Test
    void aMarkIsShownOnTheSessionOnTheStudentsPagesAndOnThePlan() {
        var teacher = Visitor.of(people, group.instructor());
        var answer = teacher.send(page, page + "/attendance", marks("LATE", session.version()));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(teacher.get(page).asString())
                .contains("Came late, marked by Ines Instructor")
                .containsPattern("value=\"LATE\" checked");
        assertThat(teacher.get(page + "/plan").asString()).contains("came late.");
        assertThat(teacher.get("/students/" + student + "/skills").asString())
                .contains("Came late");
        var visitor = Visitor.of(people, group.student());
        assertThat(visitor.get("/home").asString()).contains("Came late");
        assertThat(visitor.get(page).asString())
                .contains("Came late.")
                .doesNotContain("<form class=\"fill");
    }

    @Test
    void whoMarksWhatSomeoneChangedIsToldAndNothingTypedIsLost() {
        var teacher = Visitor.of(people, group.instructor());
        var said = new NewRoll(List.of(new NewRoll.Said(student, Presence.CAME)));
        rolls.mark(group.instructor(), session.id(), session.version(), said);
        var answer = teacher.send(page, page + "/attendance", marks("AWAY", session.version()));
        assertThat(answer.statusCode()).isEqualTo(412);
        assertThat(answer.asString())
                .contains("Someone changed this", "Came, marked by Ines Instructor")
                .containsPattern("value=\"AWAY\" checked");
        assertThat(rolls.of(group.instructor(), session.id()).lines().get(0).mark().presence())
                .isEqualTo(Presence.CAME);
    }

    @Test
    void anEmptyOrMadeUpFormIsRefused() {
        var teacher = Visitor.of(people, group.instructor());
        var version = session.version();
        for (Map<String, Object> form :
                List.of(
                        Map.<String, Object>of("version", version),
                        Map.<String, Object>of("version", version, "mark.x", "CAME"),
                        Map.<String, Object>of("version", version, "mark." + student, "PERHAPS"),
                        Map.<String, Object>of("version", version, "mark.999999999", "CAME"))) {
            assertThat(teacher.send(page, page + "/attendance", form).statusCode())
                    .as(form.toString())
                    .isEqualTo(400);
        }
    }

    private Map<String, Object> marks(String presence, long version) {
        return Map.of("mark." + student, presence, "version", version);
    }
}
