package org.ripewood.trees;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Objects;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.assess.Assessments;
import org.ripewood.assess.NewSkillJudgement;
import org.ripewood.boards.BoardAsked;
import org.ripewood.boards.BoardMaker;
import org.ripewood.people.Courses;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Today;
import org.ripewood.platform.TodayAt;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.BranchRole;
import org.ripewood.records.Branches;
import org.ripewood.records.Containers;
import org.ripewood.records.NewBranch;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewWound;
import org.ripewood.records.Observations;
import org.ripewood.records.Wounds;
import org.ripewood.sites.NewSite;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.Step;

/** A server in one zone, and trees in another where it is a day later, or a day earlier. */
@Tag("one-database")
@QuarkusTest
class DayAtTheTreeTest {

    private static final LocalDate DAY_29 = LocalDate.of(2026, 11, 29);
    private static final LocalDate DAY_30 = LocalDate.of(2026, 11, 30);
    private static final LocalDate DAY_1 = LocalDate.of(2026, 12, 1);

    /** 21:50 on the 29th; in Auckland it is 21:50 on the 30th. */
    private static final String PAGO_PAGO = "2026-11-29T21:50-11:00";

    /** The same moment by a clock in Auckland. */
    private static final String AUCKLAND = "2026-11-30T21:50+13:00";

    @Inject Courses courses;
    @Inject PersonRegistration register;
    @Inject Trees trees;
    @Inject TreeSites treeSites;
    @Inject TreeDays treeDays;
    @Inject Observations observations;
    @Inject Wounds wounds;
    @Inject Containers containers;
    @Inject Branches branches;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject Assessments assessments;
    @Inject BoardMaker boards;

    private School school;

    private long treeAt(String moment, String zone) {
        QuarkusMock.installMockForType(TodayAt.moment(moment), Today.class);
        school = new School(register, courses, trees, treeSites, DAY_29);
        var site =
                treeSites.enter(
                        school.teacher,
                        new NewSite("Far yard", 37.0, 10.0, zone, false, null, null));
        var tree =
                trees.enter(
                        school.teacher,
                        new NewTree(
                                "Elm",
                                "acer_palmatum",
                                school.keeper.personId(),
                                site.id(),
                                DAY_29.minusYears(2),
                                null,
                                null));
        return tree.id();
    }

    private void see(long tree, String fact, String value, LocalDate on) {
        observations.observe(
                school.teacher,
                tree,
                new NewObservation(fact, value, on, null, null, null, null, null));
    }

    private static void refuses(LocalDate last, ThrowingCallable call) {
        assertThatThrownBy(call)
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused ->
                                assertThat(refused.problem().toString()).contains(last.toString()));
    }

    @Test
    void whereItIsLaterTheTreesOwnDayIsTheLast() {
        var tree = treeAt(PAGO_PAGO, "Pacific/Auckland");
        assertThat(treeDays.at(tree)).isEqualTo(DAY_30);
        see(tree, "pest_level", "3", DAY_30);
        refuses(DAY_30, () -> see(tree, "pest_level", "3", DAY_1));
        see(tree, "soil_moist", "yes", DAY_30);
        see(tree, "vigour_index", "80", DAY_30);
        containers.moveTo(school.teacher, tree, new NewContainer("training", null, null, DAY_30));
        refuses(
                DAY_30,
                () ->
                        containers.moveTo(
                                school.teacher,
                                tree,
                                new NewContainer("training", null, null, DAY_1)));
        wounds.add(school.teacher, tree, new NewWound("left", DAY_30, 9.0, 9.0, null, null, false));
        refuses(
                DAY_30,
                () ->
                        wounds.add(
                                school.teacher,
                                tree,
                                new NewWound("left", DAY_1, 9.0, 9.0, null, null, false)));
        worksIn(tree, DAY_30, DAY_30);
    }

    @Test
    void whereItIsEarlierTheServersDayIsTheLastAndTheTreesIsToday() {
        var tree = treeAt(AUCKLAND, "Pacific/Pago_Pago");
        assertThat(treeDays.at(tree)).isEqualTo(DAY_29);
        see(tree, "pest_level", "3", DAY_29);
        see(tree, "soil_moist", "yes", DAY_29);
        see(tree, "vigour_index", "80", DAY_29);
        see(tree, "height_mm", "400", DAY_30);
        refuses(DAY_30, () -> see(tree, "pest_level", "3", DAY_1));
        worksIn(tree, DAY_29, DAY_30);
    }

    /** A step from its assignment to its report, with what else is dated by today. */
    private void worksIn(long tree, LocalDate today, LocalDate last) {
        var branch =
                branches.add(
                        school.teacher,
                        tree,
                        new NewBranch("first", BranchRole.PRIMARY, 90.0, 10.0));
        assertThat(branches.takeOff(school.teacher, tree, branch.id(), today).removedOn())
                .isEqualTo(today);
        var board =
                boards.make(
                        school.teacher,
                        school.courseId,
                        treeDays.ofCourse(school.courseId),
                        BoardAsked.of(null),
                        new PageRequest(0, 20));
        assertThat(board.on()).isEqualTo(today);
        var step =
                assigner.assign(
                        school.teacher,
                        tree,
                        new NewAssignment("pest_control", null, null, null, null));
        assertThat(step.assignedOn()).isEqualTo(today);
        refuses(last, () -> report(step.id(), step.version(), last.plusDays(1)));
        var reported = report(step.id(), step.version(), today);
        assertThat(Objects.requireNonNull(reported.report()).doneOn()).isEqualTo(today);
        assessments.judge(
                school.teacher,
                school.keeper.personId(),
                new NewSkillJudgement("wiring-branches", true, last, null));
        refuses(
                last,
                () ->
                        assessments.judge(
                                school.teacher,
                                school.keeper.personId(),
                                new NewSkillJudgement(
                                        "wiring-branches", true, last.plusDays(1), null)));
        assertThat(
                        assigner.noteFoundDone(school.teacher, tree, "root_check", last, null)
                                .technique())
                .isEqualTo("root_check");
        refuses(
                last,
                () ->
                        assigner.noteFoundDone(
                                school.teacher, tree, "front_marking", last.plusDays(1), null));
        var site = trees.get(school.teacher, tree).siteId();
        var line = "date,tmin,tmax\n%s,1,9\n";
        assertThat(treeSites.importReadings(school.teacher, site, line.formatted(last)).kept())
                .isEqualTo(1);
        refuses(
                last,
                () ->
                        treeSites.importReadings(
                                school.teacher, site, line.formatted(last.plusDays(1))));
    }

    private Step report(long step, long version, LocalDate on) {
        return reports.report(
                school.keeper,
                step,
                version,
                new NewReport(
                        on, "Washed off; 3 left.", null, null, null, null, null, null, null, null));
    }
}
