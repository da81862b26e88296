package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;
import org.ripewood.platform.Role;
import org.ripewood.sessions.NewEnrolments;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.trees.Tree;

/** Sessions planned on their pages, and what the page after a form says. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class SessionPlanningPagesTest {

    private static final LocalDate DAY = School.TODAY.plusDays(10);

    @Inject School school;
    @Inject People people;
    @Inject Sessions sessions;

    private School.Group group;
    private Visitor teacher;
    private Tree tree;
    private String course;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        teacher = Visitor.of(people, group.instructor());
        tree = school.tree(group.instructor(), group.student(), "acer_palmatum");
        course = "/courses/" + group.course().id();
    }

    @Test
    void aSeriesShowsItsDaysBeforeItIsSet() {
        var page = course + "/series";
        var form = series("WEEKS", "2", "3");
        form.put("show", "true");
        var shown = teacher.send(page, page, form);
        assertThat(shown.statusCode()).isEqualTo(200);
        assertThat(shown.asString())
                .contains("value=\"" + DAY + "\" checked")
                .contains("value=\"" + DAY.plusDays(14) + "\" checked")
                .contains("value=\"" + DAY.plusDays(28) + "\" checked")
                .contains("Set these sessions");
        assertThat(ahead()).isEmpty();

        form.remove("show");
        assertThat(teacher.send(page, page, form).asString())
                .as("days are looked at before a series is set")
                .contains("Set these sessions");
        assertThat(ahead()).isEmpty();
        form.put("days", List.of(DAY.toString(), DAY.plusDays(28).toString()));
        var set = teacher.send(page, page, form);
        assertThat(set.statusCode()).isEqualTo(303);
        assertThat(set.header("Location")).endsWith(course + "/sessions");
        assertThat(ahead()).extracting(Session::heldOn).containsExactly(DAY, DAY.plusDays(28));
        assertThat(teacher.get(course).asString()).contains("2 sessions are set, from");
    }

    @Test
    void aDayOnWhichTheInstructorTeachesElsewhereIsToldAndNotChosen() {
        var taken = set(null, DAY.plusDays(7));
        var page = course + "/series";
        var form = series("WEEKS", "1", "2");
        form.put("show", "true");
        assertThat(teacher.send(page, page, form).asString())
                .contains("already teaches session " + taken.id())
                .contains("value=\"" + DAY + "\" checked")
                .doesNotContain("value=\"" + DAY.plusDays(7) + "\" checked");
    }

    @Test
    void aFaultyRuleComesBackFilledIn() {
        var page = course + "/series";
        for (var wrong : List.of("0", "61", "many", "99999999999")) {
            var form = series("WEEKS", "1", wrong);
            form.put("show", "true");
            var answer = teacher.send(page, page, form);
            assertThat(answer.statusCode()).as(wrong).isEqualTo(400);
            assertThat(answer.asString()).contains("Bench room", "How many sessions");
        }
        var once = series("", "1", "8");
        assertThat(teacher.send(page, page, once).asString())
                .contains("Choose weeks or months to repeat the session.");
        var form = series("", "1", "1");
        form.put("days", List.of("2026-99-99"));
        assertThat(teacher.send(page, page, form).statusCode()).isEqualTo(400);
    }

    @Test
    void theCopyBeginsWithWhatTheLastSessionWas() {
        var session = set(4, DAY);
        sessions.enrolMany(group.instructor(), session.id(), new NewEnrolments(null));
        assertThat(teacher.get(course + "/series").asString())
                .contains("value=\"" + DAY.plusDays(7) + "\"")
                .contains("value=\"Bench room\"")
                .contains("Enrol the 1 trees of");
        var strange = school.newGroup();
        var other = Visitor.of(people, strange.instructor());
        var at = "/courses/" + strange.course().id() + "/series?like=" + session.id();
        assertThat(other.get(at).asString()).doesNotContain("Bench room", "Enrol the");
        assertThat(other.get(course + "/series").statusCode()).isEqualTo(404);
    }

    @Test
    void theWholeCourseIsEnrolledByOneForm() {
        var bare = school.person("Bo Bare", Role.STUDENT);
        school.join(group, bare, Role.STUDENT);
        var session = set(null, DAY);
        var page = "/sessions/" + session.id();
        assertThat(teacher.get(page).asString())
                .contains("name=\"treeIds\" value=\"" + tree.id() + "\" checked")
                .contains("Without a tree: Bo Bare");
        var none = teacher.send(page, page + "/enrolments/many", Map.of());
        assertThat(none.statusCode()).isEqualTo(400);
        assertThat(none.asString()).contains("Choose at least one tree.");
        var sent = teacher.send(page, page + "/enrolments/many", Map.of("treeIds", tree.id()));
        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(teacher.get(page).asString()).contains("1 tree comes.", "Bench 1");
        assertThat(teacher.get(page).asString()).as("said once").doesNotContain("1 tree comes.");
    }

    @Test
    void aMoveIsToldToWhoComes() {
        var session = set(null, DAY);
        sessions.enrolMany(group.instructor(), session.id(), new NewEnrolments(null));
        var page = "/sessions/" + session.id();
        var version = sessions.get(group.instructor(), session.id()).version();
        var form = moved(version);
        assertThat(teacher.send(page, page + "/move", form).statusCode()).isEqualTo(303);
        assertThat(teacher.get(page).asString()).contains("The session is held on", "Glasshouse");
        var pupil = Visitor.of(people, group.student());
        assertThat(pupil.get(page).asString()).contains("Moved.", "Bench room", "Frost.");
        assertThat(pupil.get("/home").asString()).contains("Moved</b> from", "Frost.");
        var stale = teacher.send(page, page + "/move", form);
        assertThat(stale.statusCode()).isEqualTo(412);
        assertThat(stale.asString()).contains("Someone changed this", "Glasshouse");
    }

    @Test
    void allOthersAreMarkedAsHereByOneButton() {
        var late = school.person("Lou Late", Role.STUDENT);
        school.join(group, late, Role.STUDENT);
        school.tree(group.instructor(), late, "acer_palmatum");
        var session = set(null, School.TODAY.minusDays(1));
        sessions.enrolMany(group.instructor(), session.id(), new NewEnrolments(null));
        var page = "/sessions/" + session.id();
        var version = sessions.get(group.instructor(), session.id()).version();
        var form = new HashMap<String, Object>();
        form.put("version", version);
        form.put("mark." + late.personId(), "LATE");
        form.put("others", "CAME");
        assertThat(teacher.send(page, page + "/attendance", form).statusCode()).isEqualTo(303);
        assertThat(teacher.get(page).asString())
                .contains("Attendance is saved: 1 here, 1 late, 0 away.")
                .containsPattern("id=\"mark-" + late.personId() + "-LATE\"[^>]* checked")
                .containsPattern(
                        "id=\"mark-" + group.student().personId() + "-CAME\"[^>]* checked");
    }

    /** Nobody reads it in another's browser, and the cookie says nothing. */
    @Test
    void whatWasSaidIsForWhoeverSentTheForm() {
        var session = set(null, DAY);
        var page = "/sessions/" + session.id();
        var sent = teacher.send(page, page + "/enrolments/many", Map.of("treeIds", tree.id()));
        var key = sent.cookie("ripewood-said");
        assertThat(key).hasSize(43);
        assertThat(sent.getDetailedCookie("ripewood-said").isHttpOnly()).isTrue();
        var other = Visitor.of(people, school.newGroup().instructor());
        other.give("ripewood-said", key);
        assertThat(other.get("/home").asString()).doesNotContain("1 tree comes.");
        assertThat(teacher.get("/home").asString()).contains("role=\"status\">1 tree comes.");
    }

    private Map<String, Object> moved(long version) {
        return new HashMap<>(
                Map.of(
                        "version",
                        version,
                        "heldOn",
                        DAY.plusDays(1).toString(),
                        "startsAt",
                        "14:00",
                        "endsAt",
                        "16:00",
                        "place",
                        "Glasshouse",
                        "because",
                        "Frost."));
    }

    private Map<String, Object> series(String unit, String every, String times) {
        return new HashMap<>(
                Map.of(
                        "heldOn",
                        DAY.toString(),
                        "unit",
                        unit,
                        "every",
                        every,
                        "times",
                        times,
                        "startsAt",
                        "10:00",
                        "endsAt",
                        "13:00",
                        "place",
                        "Bench room",
                        "instructorIds",
                        group.instructor().personId()));
    }

    private List<Session> ahead() {
        return sessions.ofCourse(group.instructor(), group.course().id(), School.TODAY);
    }

    private Session set(Integer places, LocalDate day) {
        return sessions.set(
                group.instructor(),
                new NewSession(
                        group.course().id(),
                        day,
                        LocalTime.of(10, 0),
                        LocalTime.of(13, 0),
                        null,
                        "Bench room",
                        List.of(group.instructor().personId()),
                        places));
    }
}
