package org.ripewood.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.standing.RefusalAssert.refusalOf;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.season.Outlook;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.Actor;
import org.ripewood.routes.RouteMaker;
import org.ripewood.routes.RouteView;
import org.ripewood.trees.Tree;

/** The years ahead of an elm, as people read them. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class RouteTest {

    @Inject School school;
    @Inject Standings standings;
    @Inject Assigner assigner;
    @Inject RouteMaker routeMaker;
    @Inject CourseContent content;

    School.Group group;
    Actor instructor;
    Actor student;
    Tree tree;

    @BeforeEach
    void plantAnElm() {
        group = school.newGroup();
        instructor = group.instructor();
        student = group.student();
        tree = Elm.readyForWiring(school, group, assigner);
        // what earlier stages ask for; else their work would come first
        Map.of(
                        "firm_in_container", "yes",
                        "substrate_drains", "yes",
                        "matted_roots", "no",
                        "root_fill_share", "0.5",
                        "height_mm", "240",
                        "dieback_percent", "0")
                .forEach((fact, value) -> school.see(instructor, tree, fact, value));
    }

    @Test
    void theSameDayGivesTheSameRoute() {
        assertThat(route("refine")).isEqualTo(route("refine"));
    }

    @Test
    void nothingIsDoneBeforeToday() {
        var route = route("show");
        assertThat(route.steps()).isNotEmpty();
        assertThat(route.steps())
                .allSatisfy(
                        step -> {
                            if (step.when().outlook() instanceof Outlook.Expected expected) {
                                assertThat(expected.earliest()).isAfterOrEqualTo(School.TODAY);
                            }
                        });
    }

    /** What may go on today may go on in all draws unless heavier work takes its season. */
    @Test
    void whatTheRouteBeginsWithIsReadyOrTakenForGranted() {
        var ready =
                standings.of(student, tree.id(), School.TODAY).with(Verdict.READY).stream()
                        .map(TechniqueStanding::technique)
                        .toList();
        assertThat(ready).contains(Elm.WIRING);
        var now = route("structure").steps().stream().filter(RouteTest::mayBeginNow).toList();
        assertThat(now).extracting(RouteView.Step::technique).contains(Elm.WIRING);
        assertThat(now)
                .filteredOn(step -> !step.assumed())
                .extracting(RouteView.Step::technique)
                .isSubsetOf(ready);
    }

    /** In one case of ten a step that nothing holds up is done within days. */
    private static boolean mayBeginNow(RouteView.Step step) {
        var earliest = step.when().earliest();
        return earliest != null && !earliest.isAfter(School.TODAY.plusDays(14));
    }

    @Test
    void aWoundThatHasToCloseIsWaitedFor() {
        assertThat(step(route("structure"), Elm.WIRING)).matches(RouteTest::mayBeginNow);
        school.wound(instructor, tree, "first branch", 24);
        var wiring = step(route("structure"), Elm.WIRING);
        assertThat(wiring.when().earliest()).isAfter(School.TODAY);
        assertThat(wiring.waitsFor()).isEqualTo("Largest open wound");
        assertThat(wiring.season()).isIn(names(wiring));
        assertThat(wiring.when().sentence()).startsWith("Expected ");
    }

    @Test
    void whatIsPutOffSaysWhy() {
        for (var step : route("show").steps()) {
            var likely = step.when().likely();
            if (likely != null && likely.isAfter(School.TODAY)) {
                assertThat(step.waitsFor()).as(step.technique()).isNotBlank();
            }
        }
    }

    private static List<String> names(RouteView.Step step) {
        return step.seasons().stream().map(RouteView.Season::name).toList();
    }

    @Test
    void seasonsShareOutAllDrawsThatAreDoneInThem() {
        for (var step : route("show").steps()) {
            double all = step.seasons().stream().mapToDouble(RouteView.Season::share).sum();
            assertThat(all).as(step.technique()).isBetween(0.0, 1 + 1e-9);
            assertThat(step.critical()).isBetween(0.0, 1.0);
        }
    }

    @Test
    void aFurtherGoalIsNotReachedSooner() {
        Outlook.Expected before = null;
        for (var stage : content.inForce().stages()) {
            var reached = route(stage.code()).reached().outlook();
            if (!(reached instanceof Outlook.Expected expected)) {
                continue;
            }
            if (before != null) {
                assertThat(expected.likely()).as(stage.code()).isAfterOrEqualTo(before.likely());
            }
            before = expected;
        }
        assertThat(before).isNotNull();
    }

    @Test
    void whatIsNotKnownIsToldAndNotHidden() {
        var route = route("show");
        assertThat(route.assumed()).isNotEmpty();
        assertThat(route.assumed())
                .allSatisfy(
                        assumed -> {
                            assertThat(assumed.what()).isNotBlank();
                            assertThat(assumed.because()).endsWith(".");
                            assertThat(assumed.titles()).isNotEmpty().doesNotHaveDuplicates();
                        });
        assertThat(route.steps()).anyMatch(RouteView.Step::assumed);
    }

    @Test
    void allWordsAreThere() {
        var route = route("show");
        assertThat(route.chain()).isNotEmpty();
        assertThat(route.chain())
                .allSatisfy(link -> assertThat(link.title()).isNotEqualTo(link.technique()));
        assertThat(route.waitings()).isNotEmpty();
        assertThat(route.waitings())
                .allSatisfy(
                        waiting -> assertThat(waiting.sentence()).matches("\\S.* of the time\\."));
        assertThat(route.stages().stream().mapToInt(stage -> stage.steps().size()).sum())
                .isEqualTo(route.steps().size());
        assertThat(route.stages()).extracting(RouteView.Stage::title).doesNotHaveDuplicates();
        assertThat(route.contentRevision()).isEqualTo(content.inForce().revision());
    }

    @Test
    void aReachedGoalIsSaidPlainly() {
        for (var technique : content.inForce().techniques().values()) {
            var applies =
                    standings.of(instructor, tree.id(), School.TODAY).techniques().stream()
                            .filter(standing -> standing.technique().equals(technique.code()))
                            .anyMatch(standing -> !SETTLED.contains(standing.verdict()));
            if (technique.stage().equals("establish") && applies) {
                assigner.noteFoundDone(instructor, tree.id(), technique.code(), School.TODAY, null);
            }
        }
        var route = route("establish");
        assertThat(route.reached().already()).isTrue();
        assertThat(route.reached().sentence())
                .isEqualTo("Nothing is left to do up to “Establish”; the tree has reached it.");
        assertThat(route.steps()).isEmpty();
    }

    private static final Set<Verdict> SETTLED = Set.of(Verdict.DONE, Verdict.NOT_NEEDED);

    @Test
    void withoutAGoalTheStageAfterTheTreesOwnIsTaken() {
        assertThat(routeMaker.make(student, tree.id(), null, School.TODAY).goal())
                .isEqualTo("refine");
    }

    @ParameterizedTest
    @CsvSource({
        "refin, There is no stage “refin”. Maybe “refine”.",
        "'', 'There is no stage “”. Stages are: establish, develop, structure, refine, show.'",
        "bonsai, 'There is no stage “bonsai”. Stages are: establish, develop, structure, refine, show.'"
    })
    void anUnknownStageIsRefusedWithAGuess(String goal, String message) {
        var problem = refusalOf(() -> route(goal));
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults())
                .singleElement()
                .satisfies(
                        fault -> {
                            assertThat(fault.field()).isEqualTo("goal");
                            assertThat(fault.message()).isEqualTo(message);
                        });
    }

    @Test
    void aTreeOutOfReachHasNoRoute() {
        var stranger = school.newGroup();
        for (var actor : List.of(stranger.student(), stranger.instructor())) {
            assertThat(
                            refusalOf(() -> routeMaker.make(actor, tree.id(), null, School.TODAY))
                                    .status())
                    .isEqualTo(404);
        }
    }

    @Test
    void aDayOutOfRangeIsRefused() {
        var late = School.TODAY.plusYears(11);
        assertThat(refusalOf(() -> routeMaker.make(student, tree.id(), null, late)).status())
                .isEqualTo(400);
    }

    private RouteView route(String goal) {
        return routeMaker.make(student, tree.id(), goal, School.TODAY);
    }

    private static RouteView.Step step(RouteView route, String technique) {
        return route.steps().stream()
                .filter(step -> step.technique().equals(technique))
                .findFirst()
                .orElseThrow();
    }
}
