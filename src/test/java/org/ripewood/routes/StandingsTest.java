package org.ripewood.routes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.standing.RefusalAssert.refusalOf;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.ChecklistMaker;
import org.ripewood.condition.TreeStates;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.records.WorksDone;
import org.ripewood.records.Wounds;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Decisions;
import org.ripewood.standing.Elm;
import org.ripewood.standing.NewAssignment;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.SignOffs;
import org.ripewood.steps.SignOffsWaiting;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Steps;
import org.ripewood.steps.Waiting;

/** The story: wiring held by a wound, lifted, assigned, reported, signed off. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class StandingsTest {

    @Inject School school;
    @Inject Standings standings;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject SignOffs signOffs;
    @Inject ChecklistMaker checklistMaker;
    @Inject Steps steps;
    @Inject SignOffsWaiting signOffsWaiting;
    @Inject Decisions decisions;
    @Inject WorksDone worksDone;
    @Inject TreeStates treeStates;
    @Inject Wounds woundsOfSchool;

    School.Group group;
    Actor instructor;
    Actor student;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        instructor = group.instructor();
        student = group.student();
    }

    @Test
    void anOpenWoundHoldsWiringAndSaysSo() {
        var tree = Elm.readyForWiring(school, group, assigner);
        school.wound(instructor, tree, "first branch", 24);
        var wiring = wiring(tree.id());
        assertThat(wiring.verdict()).isEqualTo(Verdict.HELD);
        assertThat(wiring.against()).hasSize(1);
        var reason = wiring.against().get(0);
        assertThat(reason.sentence())
                .isEqualTo("Largest open wound 24 mm on 22 December 2025; needed: at most 8 mm.");
        assertThat(reason.why()).contains("wound");
        assertThat(reason.howFar()).isEqualTo(8.0 / 24);
        assertThat(reason.waivable()).isTrue();
    }

    @Test
    void theHoldLiftsWhenTheWoundHasClosed() {
        var tree = Elm.readyForWiring(school, group, assigner);
        var wound = school.wound(instructor, tree, "first branch", 24);
        school.readWound(instructor, tree, wound, 4);
        assertThat(wiring(tree.id()).verdict()).isEqualTo(Verdict.READY);
        assertThat(standings.proposals(instructor, tree.id(), School.TODAY))
                .extracting(TechniqueStanding::technique)
                .contains(Elm.WIRING);
    }

    @Test
    void anUnshownSkillIsALessonForStudentsOnly() {
        var ofStudent = Elm.readyButForSkill(school, instructor, student, assigner);
        assertThat(wiring(ofStudent.id()).verdict()).isEqualTo(Verdict.LESSON);
        var own = Elm.readyButForSkill(school, instructor, instructor, assigner);
        assertThat(wiring(instructor, own.id()).verdict()).isEqualTo(Verdict.READY);
    }

    @Test
    void signedOffWorkGoesIntoTheTreesRecord() {
        var tree = Elm.readyForWiring(school, group, assigner);
        var step = assigner.assign(instructor, tree.id(), Elm.wire());
        step = reports.report(student, step.id(), step.version(), Elm.wired());
        step = signOffs.signOff(instructor, step.id(), step.version(), "Even turns.");

        assertThat(step.state()).isEqualTo(StepState.SIGNED_OFF);
        assertThat(step.events())
                .extracting(Step.Event::became)
                .containsExactly(StepState.ASSIGNED, StepState.REPORTED, StepState.SIGNED_OFF);
        var work = worksDone.of(instructor, tree.id()).get(0).work();
        assertThat(work.technique()).isEqualTo(Elm.WIRING);
        assertThat(work.stress()).isEqualTo(4);
        assertThat(work.recoveryDays()).isEqualTo(84);
        var facts = treeStates.on(instructor, tree.id(), School.TODAY).facts();
        assertThat(facts.find(Fact.WIRE_ON).value()).isEqualTo(Value.of(true));
        assertThat(facts.number(Fact.DAYS_SINCE_WIRING)).isZero();
        assertThat(wiring(tree.id()).verdict()).isEqualTo(Verdict.DONE);
        assertThat(checklistMaker.make(student, tree.id(), School.TODAY).care())
                .extracting(Checklist.Care::task)
                .contains("Keep out of full sun and wind.");
    }

    @Test
    void aRefusedSignOffLeavesTheRecordAsItWas() {
        var tree = Elm.readyForWiring(school, group, assigner);
        var step = assigner.assign(instructor, tree.id(), Elm.wire());
        step = reports.report(student, step.id(), step.version(), Elm.wired());
        var id = step.id();
        var stale = step.version() - 1;
        assertThat(refusalOf(() -> signOffs.signOff(instructor, id, stale, null)).status())
                .isEqualTo(412);
        assertThat(worksDone.of(instructor, tree.id())).isEmpty();
        assertThat(steps.get(instructor, id)).isEqualTo(step);
    }

    @Test
    void aReportSentTwiceCountsOnce() {
        var tree = Elm.readyForWiring(school, group, assigner);
        var step = assigner.assign(instructor, tree.id(), Elm.wire());
        var first = reports.report(student, step.id(), step.version(), Elm.wired());
        var second = reports.report(student, step.id(), step.version(), Elm.wired());
        assertThat(second).isEqualTo(first);
        var other = Elm.report("9 branches wired.");
        assertThat(
                        refusalOf(() -> reports.report(student, step.id(), first.version(), other))
                                .status())
                .isEqualTo(409);
    }

    @Test
    void aReportWithoutWhatIsAskedNamesTheField() {
        var tree = Elm.readyForWiring(school, group, assigner);
        var step = assigner.assign(instructor, tree.id(), Elm.wire());
        var vague = Elm.report("All done.");
        var problem = refusalOf(() -> reports.report(student, step.id(), step.version(), vague));
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults()).extracting(fault -> fault.field()).containsExactly("evidence");
    }

    @Test
    void nobodySignsOffTheirOwnTree() {
        var own = Elm.readyButForSkill(school, instructor, instructor, assigner);
        var step = assigner.assign(instructor, own.id(), Elm.wire());
        var reported = reports.report(instructor, step.id(), step.version(), Elm.wired());
        assertThat(
                        refusalOf(
                                        () ->
                                                signOffs.signOff(
                                                        instructor,
                                                        reported.id(),
                                                        reported.version(),
                                                        null))
                                .status())
                .isEqualTo(403);
        assertThat(signOffsWaiting.forInstructor(instructor, new PageRequest(0, 50)).items())
                .extracting(Waiting::stepId)
                .doesNotContain(reported.id());
    }

    @Test
    void whatIsOutOfReachIsNotThere() {
        var tree = Elm.readyForWiring(school, group, assigner);
        var step = assigner.assign(instructor, tree.id(), Elm.wire());
        var stranger = school.newGroup();
        for (var actor : new Actor[] {stranger.student(), stranger.instructor()}) {
            assertThat(refusalOf(() -> standings.of(actor, tree.id(), School.TODAY)).status())
                    .isEqualTo(404);
            assertThat(refusalOf(() -> steps.get(actor, step.id())).detail())
                    .isEqualTo("There is no step %d that you can see.".formatted(step.id()));
            assertThat(refusalOf(() -> decisions.get(actor, step.decisionId())).detail())
                    .isEqualTo(
                            "There is no decision %d that you can see."
                                    .formatted(step.decisionId()));
            assertThat(
                            refusalOf(
                                            () ->
                                                    reports.report(
                                                            actor,
                                                            step.id(),
                                                            step.version(),
                                                            Elm.wired()))
                                    .status())
                    .isEqualTo(404);
        }
    }

    @Test
    void onlyInstructorsAssign() {
        var tree = Elm.readyForWiring(school, group, assigner);
        var registrar = new Actor(0, Set.of(Role.REGISTRAR));
        for (var actor : new Actor[] {student, registrar}) {
            assertThat(refusalOf(() -> assigner.assign(actor, tree.id(), Elm.wire())).status())
                    .isEqualTo(403);
        }
    }

    @Test
    void aSecondOpenStepOfATechniqueIsRefused() {
        var tree = Elm.readyForWiring(school, group, assigner);
        var step = assigner.assign(instructor, tree.id(), Elm.wire());
        var problem = refusalOf(() -> assigner.assign(instructor, tree.id(), Elm.wire()));
        assertThat(problem.status()).isEqualTo(409);
        assertThat(problem.detail()).contains("Step " + step.id());
        signOffs.withdraw(instructor, step.id(), step.version(), "Not this year.");
        assertThat(assigner.assign(instructor, tree.id(), Elm.wire()).state())
                .isEqualTo(StepState.ASSIGNED);
    }

    @Test
    void aDoseBeyondTheLimitIsNotedAndNotRefused() {
        var tree = school.tree(instructor, student, "juniperus_chinensis");
        Map.of(
                        "vigour_index", "80",
                        "pest_level", "0",
                        "front_mark", "tentative",
                        "surplus_branch", "yes",
                        "deadwood_plan", "yes",
                        "live_vein_marked", "yes")
                .forEach((fact, value) -> school.see(instructor, tree, fact, value));
        assigner.noteFoundDone(
                instructor, tree.id(), "front_marking", School.TODAY.minusDays(90), null);
        school.showSkill(instructor, student, "deadwood-by-hand");
        var step =
                assigner.assign(
                        instructor, tree.id(), new NewAssignment("jin", null, null, null, null));
        var report =
                new NewReport(
                        School.TODAY,
                        "One jin of 60 mm.",
                        40.0,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null);
        var reported = reports.report(student, step.id(), step.version(), report);
        assertThat(reported.events().get(1).note())
                .isEqualTo(
                        "Beyond the limit: 40 % of the foliage with this work, 0 % earlier this"
                                + " season; at most 33 % in all.");
        assertThat(reported.report().foliageShare()).isEqualTo(0.4);
        signOffs.signOff(instructor, reported.id(), reported.version(), null);
        assertThat(worksDone.of(instructor, tree.id()).get(0).work().foliageShare()).isEqualTo(0.4);
    }

    @Test
    void aTendedWoundIsReadAgainAndNotDoubled() {
        var tree = school.tree(instructor, student, "ulmus_parvifolia");
        school.wound(instructor, tree, "left of the front", 12, School.TODAY);
        var step =
                assigner.assign(
                        instructor,
                        tree.id(),
                        new NewAssignment("wound_dressing", null, null, null, null));
        var wrong = refusalOf(() -> reports.report(student, step.id(), 0, dressed("lift")));
        assertThat(wrong.faults()).extracting(fault -> fault.field()).contains("woundPlace");
        var reported =
                reports.report(student, step.id(), step.version(), dressed("Left of the front"));
        signOffs.signOff(instructor, reported.id(), reported.version(), null);
        var wounds = woundsOfSchool.of(instructor, tree.id());
        assertThat(wounds).hasSize(1);
        assertThat(wounds.get(0).openMm()).isEqualTo(11.5);
    }

    private static NewReport dressed(String place) {
        return new NewReport(
                School.TODAY, "Dressed.", null, null, place, 11.5, 15.0, null, null, null);
    }

    private TechniqueStanding wiring(long treeId) {
        return wiring(student, treeId);
    }

    private TechniqueStanding wiring(Actor actor, long treeId) {
        return standings.of(actor, treeId, School.TODAY).techniques().stream()
                .filter(standing -> standing.technique().equals(Elm.WIRING))
                .findFirst()
                .orElseThrow();
    }
}
