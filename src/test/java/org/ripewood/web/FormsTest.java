package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
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
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.records.Branches;
import org.ripewood.records.Observations;
import org.ripewood.records.Wounds;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.standing.Standings;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Tree;

/** Forms: what is good is kept and leads on; what is not comes back as it was typed. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class FormsTest {

    /** Asked of every tree of every species, and of nothing else. */
    private static final String STEP = "grow_on";

    @Inject School school;
    @Inject People people;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject Wounds wounds;
    @Inject Branches branches;
    @Inject Observations observing;
    @Inject Sessions sessions;
    @Inject Standings standings;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject Steps steps;

    private School.Group group;
    private Actor instructor;
    private Tree tree;
    private Visitor teacher;
    private Visitor pupil;
    private String page;
    private String record;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        instructor = group.instructor();
        tree = school.tree(instructor, group.student(), "ulmus_parvifolia");
        teacher = Visitor.of(people, instructor);
        pupil = Visitor.of(people, group.student());
        page = "/trees/" + tree.id();
        record = page + "/record";
    }

    @Test
    void aGoodFormLeadsOnAndIsKept() {
        var answer =
                teacher.send(
                        record,
                        page + "/wounds",
                        Map.of(
                                "place", "first branch, left",
                                "madeOn", "2026-01-10",
                                "firstWidthMm", "24.5",
                                "firstLengthMm", "30",
                                "deadwoodByDesign", "true"));
        leadsTo(answer, record + "#wounds");
        var wound = wounds.of(instructor, tree.id()).get(0);
        assertThat(wound.firstWidthMm()).isEqualTo(24.5);
        assertThat(wound.deadwoodByDesign()).isTrue();
        assertThat(teacher.get(record).asString()).contains("first branch, left");
    }

    @Test
    void aRefusedFormKeepsWhatWasTypedAndSaysWhatWasWrongAtTheField() {
        var answer =
                teacher.send(
                        record,
                        page + "/wounds",
                        Map.of(
                                "place", "behind \"the\" leader",
                                "madeOn", "2026-01-10",
                                "firstWidthMm", "wide",
                                "firstLengthMm", "9000"));
        assertThat(answer.statusCode()).isEqualTo(400);
        var html = answer.asString();
        assertThat(html)
                .contains("value=\"behind &quot;the&quot; leader\"")
                .contains("value=\"wide\"")
                .contains(
                        "<a class=\"tofield\" href=\"#wound-firstWidthMm\">Width when made, mm</a>")
                .contains("aria-invalid=\"true\"")
                .contains("id=\"wound-firstWidthMm-fault\"")
                .contains("aria-describedby=\"wound-firstLengthMm-hint wound-firstLengthMm-fault\"")
                .contains("found 9000");
        assertThat(wounds.of(instructor, tree.id())).isEmpty();
    }

    @Test
    void aMistypedCodeComesBackWithAGuess() {
        var answer =
                teacher.send(
                        record,
                        page + "/observations",
                        Map.of(
                                "fact", "vigour_indx",
                                "value", "70",
                                "observedOn", "2026-02-01",
                                "form", "observation"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString()).contains("Maybe").contains("vigour_index");
    }

    @Test
    void whatPeopleTypeIsShownAsTextAndNeverAsMarkup() {
        var refused =
                teacher.send(
                        record,
                        page + "/branches",
                        Map.of("name", "<script>alert(1)</script>", "role", "PRIMARY"));
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.asString())
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;")
                .doesNotContain("<script>");
        leadsTo(
                teacher.send(
                        record,
                        page + "/branches",
                        Map.of("name", "5 < 6 & \"so\"", "role", "PRIMARY")),
                record + "#branches");
        assertThat(teacher.get(record).asString()).contains("5 &lt; 6 &amp; &quot;so&quot;");
    }

    @Test
    void aSessionIsCalledOffWithAReasonThatEverybodyReads() {
        var session =
                sessions.set(
                        instructor,
                        new NewSession(
                                group.course().id(),
                                School.TODAY.plusDays(3),
                                LocalTime.of(9, 0),
                                LocalTime.of(12, 0),
                                null,
                                "long table",
                                List.of(instructor.personId())));
        var at = "/sessions/" + session.id();
        var blank =
                teacher.send(
                        at,
                        at + "/cancellation",
                        Map.of("version", session.version(), "reason", " "));
        assertThat(blank.statusCode()).isEqualTo(400);
        assertThat(blank.asString()).contains("cancellation-reason-fault");
        assertThat(sessions.get(instructor, session.id()).held()).isTrue();

        leadsTo(
                teacher.send(
                        at,
                        at + "/cancellation",
                        Map.of("version", session.version(), "reason", "Heavy snow.")),
                at);
        assertThat(pupil.get(at).asString())
                .contains("Cancelled:")
                .contains("Heavy snow.")
                .doesNotContain("/enrolments");
        assertThat(pupil.get("/home").asString()).contains("Heavy snow.");
    }

    @Test
    void aFormWithoutItsTokenChangesNothing() {
        teacher.get(record);
        var answer =
                teacher.post(page + "/branches", Map.of("name", "first left", "role", "PRIMARY"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(branches.of(instructor, tree.id())).isEmpty();
    }

    @Test
    void aCorrectionBeginsWithWhatItCorrects() {
        school.see(instructor, tree, "pest_level", "3");
        var seen = observing.list(instructor, tree.id(), new PageRequest(0, 1)).items().get(0);
        var form = page + "/observations?fact=pest_level&corrects=" + seen.id();
        assertThat(teacher.get(form).asString())
                .contains("name=\"supersedes\" value=\"" + seen.id() + "\"")
                .contains("name=\"value\" type=\"text\" value=\"3\"")
                .contains("name=\"observedOn\" type=\"date\" value=\"2026-02-15\"");
        leadsTo(
                teacher.send(
                        form,
                        page + "/observations",
                        Map.of(
                                "fact", "pest_level",
                                "value", "1",
                                "observedOn", "2026-02-15",
                                "supersedes", seen.id())),
                record + "#facts");
        assertThat(teacher.get(page + "/observations").asString()).contains("<s>3</s>");
    }

    @Test
    void aStepGoesFromAssignmentToSignOffThroughForms() {
        school.see(instructor, tree, "pest_level", "0");
        var assigned =
                teacher.send(
                        page + "/techniques/" + STEP,
                        page + "/steps",
                        waived(Map.of("technique", STEP, "note", "let it run")));
        assertThat(assigned.statusCode()).as(assigned.asString()).isEqualTo(303);
        var step = onlyStep();
        var at = "/steps/" + step.id();
        leadsTo(
                pupil.send(
                        at,
                        at + "/report",
                        Map.of(
                                "version", step.version(),
                                "doneOn", School.TODAY.toString(),
                                "evidence", "Fed, turned, left alone; shoots 240 mm.")),
                page + "/checklist");
        leadsTo(
                teacher.send(
                        at,
                        at + "/sign-off",
                        Map.of("version", onlyStep().version(), "note", "good")),
                at);
        assertThat(onlyStep().state()).isEqualTo(StepState.SIGNED_OFF);
        assertThat(pupil.get(at).asString()).contains("Signed off").contains("good");
    }

    @Test
    void anAnswerToAnOlderVersionSaysSoAndKeepsTheWords() {
        var step = reported();
        var at = "/steps/" + step.id();
        var answer =
                teacher.send(
                        at,
                        at + "/send-back",
                        Map.of("version", step.version() - 1, "note", "turn it once more"));
        assertThat(answer.statusCode()).isEqualTo(412);
        assertThat(answer.asString())
                .contains("Someone changed this")
                .contains(">turn it once more</textarea>")
                .contains("name=\"version\" value=\"" + step.version() + "\"");
        assertThat(onlyStep().state()).isEqualTo(StepState.REPORTED);
    }

    @Test
    void aStepIsNotSentBackWithoutAWord() {
        var step = reported();
        var at = "/steps/" + step.id();
        var answer =
                teacher.send(at, at + "/send-back", Map.of("version", step.version(), "note", " "));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString()).contains("id=\"send-back-note-fault\"");
    }

    @Test
    void aSessionIsSetAndFilledThroughForms() {
        var board = "/courses/" + group.course().id();
        var set =
                teacher.send(
                        board + "/sessions",
                        board + "/sessions",
                        Map.of(
                                "heldOn", "2026-03-01",
                                "startsAt", "09:30",
                                "endsAt", "12:00",
                                "place", "long table",
                                "instructorIds", List.of(instructor.personId())));
        assertThat(set.statusCode()).as(set.asString()).isEqualTo(303);
        var session = sessions.ofCourse(instructor, group.course().id(), School.TODAY).get(0);
        var at = "/sessions/" + session.id();
        leadsTo(
                teacher.send(at, at + "/enrolments", Map.of("treeId", tree.id(), "bench", "A1")),
                at + "#coming");
        assertThat(teacher.get(at + "/plan").asString()).contains(tree.label()).contains("A1");
        var coming = sessions.get(instructor, session.id()).enrolments().get(0);
        leadsTo(
                teacher.send(at, at + "/enrolments/" + coming.id() + "/withdraw", Map.of()),
                at + "#coming");
        assertThat(sessions.get(instructor, session.id()).enrolments()).isEmpty();
    }

    @Test
    void aSessionThatEndsBeforeItStartsComesBack() {
        var board = "/courses/" + group.course().id();
        var answer =
                teacher.send(
                        board + "/sessions",
                        board + "/sessions",
                        Map.of(
                                "heldOn", "2026-03-01",
                                "startsAt", "12:00",
                                "endsAt", "09:30",
                                "place", "long table",
                                "instructorIds", List.of(instructor.personId())));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString()).contains("value=\"long table\"").contains("checked");
    }

    @Test
    void aSkillIsJudgedThroughItsForm() {
        var at = "/students/" + group.student().personId() + "/skills";
        leadsTo(
                teacher.send(
                        at,
                        at,
                        Map.of(
                                "lesson", "wiring-branches",
                                "shown", "true",
                                "judgedOn", "2026-02-18")),
                at);
        assertThat(teacher.get(at).asString()).contains("Wiring branches: shown");
    }

    @Test
    void theRegistrarEntersPeopleAndOpensCourses() {
        var office =
                Visitor.of(people, school.person("Rika Registrar", Role.REGISTRAR)).confirmed();
        leadsTo(
                office.send(
                        "/people",
                        "/people",
                        Map.of(
                                "name", "Nils Newcomer",
                                "login", "nils.newcomer",
                                "password", "quite a long password",
                                "roles", List.of("STUDENT", "INSTRUCTOR"))),
                "/people#everybody");
        var person = peopleUnchecked.findByLogin("nils.newcomer").orElseThrow();
        assertThat(person.roles()).containsExactlyInAnyOrder(Role.STUDENT, Role.INSTRUCTOR);
        var answer =
                office.send(
                        "/people",
                        "/people/courses",
                        Map.of(
                                "name", "Backwards",
                                "startsOn", "2026-05-01",
                                "endsOn", "2026-04-01"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString()).contains("value=\"Backwards\"");
        leadsTo(
                office.send(
                        "/people",
                        "/people/members",
                        Map.of(
                                "courseId", group.course().id(),
                                "personId", person.id(),
                                "as", "STUDENT")),
                "/people");
        assertThat(peopleUnchecked.members(group.course().id(), Role.STUDENT)).contains(person);
    }

    private Step reported() {
        school.see(instructor, tree, "pest_level", "0");
        var step =
                assigner.assign(
                        instructor,
                        tree.id(),
                        new NewAssignment(STEP, null, null, null, waivers()));
        return reports.report(
                group.student(),
                step.id(),
                step.version(),
                new NewReport(
                        School.TODAY,
                        "done, shoots 240 mm",
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null));
    }

    /** Whatever may be waived is, so that the test does not hang on the content's criteria. */
    private Map<String, String> waivers() {
        var all = new java.util.HashMap<String, String>();
        standings.of(instructor, tree.id(), School.TODAY).techniques().stream()
                .filter(found -> found.technique().equals(STEP))
                .flatMap(found -> found.against().stream())
                .forEach(reason -> all.put(reason.key(), "seen at the bench"));
        return all;
    }

    private Map<String, String> waived(Map<String, String> fields) {
        var all = new java.util.HashMap<>(fields);
        waivers().forEach((key, why) -> all.put("waivers." + key, why));
        return all;
    }

    private Step onlyStep() {
        return steps.of(instructor, tree.id(), new PageRequest(0, 10)).items().get(0);
    }

    private static void leadsTo(Response answer, String path) {
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(303);
        assertThat(answer.header("Location")).endsWith(path);
    }
}
