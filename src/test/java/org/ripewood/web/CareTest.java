package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.aftercare.CareTask;
import org.ripewood.boards.ChecklistMaker;
import org.ripewood.core.progress.Work;
import org.ripewood.core.season.CareState;
import org.ripewood.people.People;
import org.ripewood.records.WorksDone;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Elm;
import org.ripewood.steps.Reports;
import org.ripewood.trees.Tree;

/** Care after work where its keeper looks for it. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class CareTest {

    @Inject School school;
    @Inject People people;
    @Inject WorksDone worksDone;
    @Inject Aftercare aftercare;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject ChecklistMaker checklistMaker;

    private School.Group group;
    private Tree tree;
    private Visitor pupil;
    private String at;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        tree = school.tree(group.instructor(), group.student(), "acer_palmatum");
        pupil = Visitor.of(people, group.student());
        at = "/trees/" + tree.id();
        worksDone.record(
                group.instructor(),
                tree.id(),
                new Work("wiring_primary", School.TODAY.minusDays(60), 0, 0, 0, 0),
                null,
                null);
    }

    @Test
    void careStandsFirstOnTheChecklistAndItsPaper() {
        for (var path : java.util.List.of(at + "/checklist", at + "/checklist/print")) {
            var html = pupil.get(path).asString();
            assertThat(html.indexOf("Look at every turn for marks"))
                    .as(path)
                    .isPositive()
                    .isLessThan(html.indexOf("Do now"));
        }
        assertThat(pupil.get(at).asString()).contains("Look at every turn for marks");
    }

    @Test
    void whatIsDueThisWeekStandsOnTheHomePage() {
        var html = pupil.get("/home").asString();
        assertThat(html)
                .contains("Care due this week")
                .contains("Look at every turn for marks")
                .contains("Was due until 8 February 2026");
        assertThat(Visitor.of(people, group.instructor()).get("/home").asString())
                .doesNotContain("Care due this week");
    }

    /** Care begins on the day of the work: it is counted before anybody has signed the work off. */
    @Test
    void careOfReportedWorkIsDueAndCountedOnEveryPage() {
        var elm = Elm.readyForWiring(school, group, assigner);
        var step = assigner.assign(group.instructor(), elm.id(), Elm.wire());
        reports.report(group.student(), step.id(), step.version(), Elm.wired());
        var due = checklistMaker.make(group.student(), elm.id(), School.TODAY).care();
        assertThat(due).isNotEmpty();
        var own = "/trees/" + elm.id();
        for (var path : java.util.List.of(own + "/checklist", own + "/aftercare", own)) {
            assertThat(pupil.get(path).asString())
                    .as(path)
                    .contains("<span class=\"count\">%d</span>".formatted(due.size()))
                    .contains("not signed off yet")
                    .contains(due.get(0).task());
        }
        var home = pupil.get("/home").asString();
        var week = home.substring(home.indexOf("id=\"week\""), home.indexOf("id=\"trees\""));
        due.forEach(one -> assertThat(week).contains(one.task()));
        assertThat(week)
                .contains("not signed off yet", elm.label())
                .as("the maple's two beside them: a late look, and no root work")
                .contains("<span class=\"count\">%d</span>".formatted(due.size() + 2));
        assertThat(home)
                .contains("<strong>Reported:</strong>", "Waits for sign-off")
                .doesNotContain("Care now:");
    }

    @Test
    void aTaskIsTickedWithOneButtonAndTakenBack() {
        var task = due();
        var answer = pupil.send(at + "/checklist", path(task, "done"), Map.of());
        assertThat(answer.header("Location")).endsWith(at + "/checklist#aftercare");
        assertThat(state(task)).isEqualTo(CareState.DONE);
        assertThat(pupil.get(at + "/aftercare").asString())
                .contains("Done on 20 February 2026, says Stan Student");
        pupil.send(at + "/aftercare", path(task, "taken-back"), Map.of());
        assertThat(state(task)).isEqualTo(CareState.LATE);
    }

    @Test
    void whatIsStillToComeHasNoQuickButton() {
        pupil.send(at + "/aftercare", path(due(), "done"), Map.of());
        var html = pupil.get(at + "/aftercare").asString();
        var ahead = html.substring(html.indexOf("id=\"ahead\""), html.indexOf("id=\"past\""));
        assertThat(ahead)
                .contains("Look at every turn for marks")
                .contains("Done already, or not needed")
                .doesNotContain("Done today");
    }

    @Test
    void aRefusedDayComesBackWithWhatWasTyped() {
        var task = due();
        var answer =
                pupil.send(
                        at + "/aftercare",
                        path(task, "not-needed"),
                        Map.of("on", "2026-02-21", "note", "wire was never on"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString())
                .contains("value=\"2026-02-21\"")
                .contains("wire was never on")
                .contains("Expected a day from 22 December 2025 to today, 20 February 2026");
        assertThat(state(task)).isEqualTo(CareState.LATE);
    }

    @Test
    void aReaderWhoMayNotSpeakSeesNoButtons() {
        var office =
                Visitor.of(people, school.person("Rika", org.ripewood.platform.Role.REGISTRAR));
        assertThat(office.get(at + "/aftercare").asString())
                .contains("Look at every turn")
                .doesNotContain("/done");
    }

    private CareTask due() {
        return aftercare.of(group.student(), tree.id(), School.TODAY).tasks().get(0);
    }

    private CareState state(CareTask task) {
        return aftercare.of(group.student(), tree.id(), School.TODAY).tasks().stream()
                .filter(found -> found.id().equals(task.id()))
                .findFirst()
                .orElseThrow()
                .state();
    }

    private String path(CareTask task, String what) {
        return at + "/aftercare/" + task.id() + "/" + what;
    }
}
