package org.ripewood.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.condition.TreeStates;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Work;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Courses;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.BranchRole;
import org.ripewood.records.Branches;
import org.ripewood.records.NewBranch;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Observations;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.SignOffs;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Steps;
import org.ripewood.trees.School;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;

/** A tree with a past: what was done before anybody gave it as a step. */
@Tag("one-database")
@QuarkusTest
class EarlierWorksTest {

    @Inject Courses courses;
    @Inject PersonRegistration register;
    @Inject Trees trees;
    @Inject TreeSites treeSites;
    @Inject EarlierWorks works;
    @Inject Standings standings;
    @Inject Steps steps;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject SignOffs signOffs;
    @Inject Observations observations;
    @Inject Branches branches;
    @Inject TreeStates treeStates;
    @Inject CourseContent content;
    @Inject Today today;

    private School school;
    private Tree tree;
    private LocalDate day;

    @BeforeEach
    void open() {
        day = today.date();
        school = new School(register, courses, trees, treeSites, day);
        tree = school.tree();
    }

    private static NewEarlierWork work(
            String technique,
            LocalDate on,
            @Nullable Double foliage,
            @Nullable Double roots,
            boolean counts) {
        return new NewEarlierWork(technique, on, foliage, roots, counts, "at the nursery");
    }

    private double number(Tree of, Fact fact) {
        return treeStates.on(school.teacher, of.id(), day).facts().number(fact);
    }

    private static Refused refusalOf(ThrowingCallable call) {
        return catchThrowableOfType(Refused.class, call);
    }

    @Test
    void itLoadsTheTreeAndStartsItsClocks() {
        double before = number(tree, Fact.RECOVERY_LOAD);
        var on = day.minusDays(40);
        var told =
                works.enter(
                        school.keeper, tree.id(), work("half_bare_root", on, null, 30.0, false));
        var rule = content.inForce().technique("half_bare_root").rule();
        assertThat(told.signedOff()).isFalse();
        assertThat(told.work().byId()).isEqualTo(school.keeper.personId());
        assertThat(told.work().work())
                .isEqualTo(
                        new Work("half_bare_root", on, rule.stress(), rule.recoveryDays(), 0, 0.3));
        assertThat(number(tree, Fact.RECOVERY_LOAD)).isGreaterThan(before);
        assertThat(number(tree, Fact.DAYS_SINCE_ROOT_WORK)).isEqualTo(40);
    }

    @Test
    void itCountsAsTheSameWorkSignedOffDoes() {
        var signed = infested("Signed off");
        var step =
                assigner.assign(
                        school.teacher,
                        signed.id(),
                        new NewAssignment("pest_control", null, null, null, null));
        var reported =
                reports.report(
                        school.keeper,
                        step.id(),
                        step.version(),
                        new NewReport(
                                day,
                                "Washed off; 3 scales left.",
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null));
        signOffs.signOff(school.teacher, reported.id(), reported.version(), null);
        var entered = infested("Entered");
        works.enter(school.teacher, entered.id(), work("pest_control", day, null, null, false));
        var one = works.of(school.teacher, signed.id()).get(0);
        var other = works.of(school.teacher, entered.id()).get(0);
        assertThat(one.signedOff()).isTrue();
        assertThat(other.signedOff()).isFalse();
        assertThat(other.work().work()).isEqualTo(one.work().work());
        assertThat(other.work().clock()).isEqualTo(one.work().clock());
        for (var fact : new Fact[] {Fact.RECOVERY_LOAD, Fact.DAYS_SINCE_HEAVY_WORK}) {
            assertThat(number(entered, fact)).isCloseTo(number(signed, fact), within(1e-9));
        }
        assertThat(standings.look(school.teacher, signed.id(), day).worksTold())
                .extracting(WorkTold::signedOff)
                .containsExactly(true);
    }

    private Tree infested(String label) {
        var infested = school.tree(label);
        see(infested, "pest_level", "3");
        see(infested, "soil_moist", "yes");
        see(infested, "vigour_index", "80");
        return infested;
    }

    private void see(Tree of, String fact, String value) {
        observations.observe(
                school.teacher,
                of.id(),
                new NewObservation(fact, value, day, null, null, null, null, null));
    }

    @Test
    void aShareNobodyStatedIsWhatIsUsual() {
        var told =
                works.enter(
                        school.teacher,
                        tree.id(),
                        work("half_bare_root", day.minusDays(9), null, null, false));
        var dose = content.inForce().technique("half_bare_root").rule().dose();
        assertThat(dose).isNotNull();
        assertThat(told.work().work().rootShare()).isEqualTo(dose.typicalShare());
        assertThat(told.work().work().foliageShare()).isZero();
    }

    @Test
    void itMayLieBeforeTheTreeCameAndNeitherAheadNorBefore1900() {
        var came = tree.cameOn();
        works.enter(
                school.teacher,
                tree.id(),
                work("trunk_chop", came.minusYears(3), 70.0, null, false));
        for (var on : new LocalDate[] {day.plusDays(1), LocalDate.of(1899, 12, 31)}) {
            var refused =
                    refusalOf(
                            () ->
                                    works.enter(
                                            school.teacher,
                                            tree.id(),
                                            work("trunk_chop", on, null, null, false)));
            assertThat(refused.problem().status()).isEqualTo(400);
            assertThat(refused.problem().faults()).extracting("field").containsExactly("doneOn");
        }
        assertThat(works.of(school.teacher, tree.id())).hasSize(1);
    }

    @Test
    void theSameWorkOfADayIsEnteredOnce() {
        var once = work("trunk_chop", day.minusYears(3), 70.0, null, false);
        works.enter(school.teacher, tree.id(), once);
        var refused = refusalOf(() -> works.enter(school.teacher, tree.id(), once));
        assertThat(refused.problem().status()).isEqualTo(409);
        assertThat(refused.problem().detail()).contains("on record already");
    }

    @Test
    void anUnknownTechniqueIsGuessedAt() {
        var refused =
                refusalOf(
                        () ->
                                works.enter(
                                        school.teacher,
                                        tree.id(),
                                        work("trunk_chopp", day, null, null, false)));
        assertThat(refused.problem().faults().get(0).message()).contains("Maybe “trunk_chop”");
    }

    @Test
    void onlyAnInstructorSaysThatItCountsAsDone() {
        var counts = work("root_check", day.minusDays(300), null, null, true);
        assertThat(
                        refusalOf(() -> works.enter(school.keeper, tree.id(), counts))
                                .problem()
                                .status())
                .isEqualTo(403);
        assertThat(works.of(school.teacher, tree.id())).isEmpty();
        works.enter(school.teacher, tree.id(), counts);
        assertThat(steps.briefs(school.teacher, tree.id()))
                .singleElement()
                .satisfies(
                        step -> {
                            assertThat(step.state()).isEqualTo(StepState.FOUND_DONE);
                            assertThat(step.doneOn()).isEqualTo(day.minusDays(300));
                        });
        assertThat(works.of(school.teacher, tree.id()))
                .extracting(WorkTold::signedOff)
                .containsExactly(false);
    }

    @Test
    void whoDoesNotReachTheTreeIsToldOfNone() {
        assertThat(
                        refusalOf(
                                        () ->
                                                works.enter(
                                                        school.otherTeacher,
                                                        tree.id(),
                                                        work("feed_up", day, null, null, false)))
                                .problem()
                                .status())
                .isEqualTo(404);
    }

    @Test
    void aBranchCountsFromTheDayItIsSaidToBelongToTheDesign() {
        var since = day.minusDays(500);
        branches.add(
                school.teacher,
                tree.id(),
                new NewBranch("first left", BranchRole.PRIMARY, 90.0, 270.0, since));
        assertThat(primaryOn(since)).isEqualTo(1);
        assertThat(primaryOn(since.minusDays(1))).isZero();
        var refused =
                refusalOf(
                        () ->
                                branches.add(
                                        school.teacher,
                                        tree.id(),
                                        new NewBranch(
                                                "ahead",
                                                BranchRole.PRIMARY,
                                                null,
                                                null,
                                                day.plusDays(2))));
        assertThat(refused.problem().faults()).extracting("field").containsExactly("enteredOn");
    }

    private double primaryOn(LocalDate on) {
        return treeStates.on(school.teacher, tree.id(), on).facts().number(Fact.PRIMARY_BRANCHES);
    }
}
