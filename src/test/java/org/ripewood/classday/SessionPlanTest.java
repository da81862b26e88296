package org.ripewood.classday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.standing.RefusalAssert.refusalOf;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Elm;
import org.ripewood.standing.NewAssignment;
import org.ripewood.trees.Tree;

/** What a class day needs on paper. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class SessionPlanTest {

    private static final LocalDate DAY = School.TODAY.plusDays(8);

    @Inject School school;
    @Inject Assigner assigner;
    @Inject ClassDays days;
    @Inject Sessions sessions;

    School.Group group;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
    }

    @Test
    void theStepTheStudentHasComesBeforeWhatCouldBeAssigned() {
        var tree = Elm.readyForWiring(school, group, assigner);
        var step = assigner.assign(group.instructor(), tree.id(), Elm.wire());
        var row = plan(session(DAY, null, tree)).rows().get(0);
        assertThat(row.stepId()).isEqualTo(step.id());
        assertThat(row.technique().code()).isEqualTo(Elm.WIRING);
        assertThat(row.bench()).isEqualTo("1");
        assertThat(row.species()).isEqualTo("Chinese elm");
        assertThat(row.why()).isEqualTo("Assigned on 20 February 2026.");
    }

    @Test
    void todaysLessonIsPreferredAmongWhatIsReady() {
        var tree = Elm.readyForWiring(school, group, assigner);
        var plan = plan(session(DAY, "wiring-branches", tree));
        assertThat(plan.lesson().code()).isEqualTo("wiring-branches");
        var row = plan.rows().get(0);
        assertThat(row.technique().code()).isEqualTo(Elm.WIRING);
        assertThat(row.stepId()).isNull();
        assertThat(row.why()).startsWith("Today's lesson teaches it. Ready on the day.");
    }

    @Test
    void aHoldForHealthOutranksTheAssignment() {
        var tree = Elm.readyForWiring(school, group, assigner);
        assigner.assign(group.instructor(), tree.id(), Elm.wire());
        school.see(group.instructor(), tree, "pest_level", "3", School.TODAY);
        var row = plan(session(DAY, "wiring-branches", tree)).rows().get(0);
        assertThat(row.stepId()).isNull();
        assertThat(row.technique()).isNotNull();
        assertThat(row.technique().code()).isEqualTo("pest_control");
        assertThat(row.others()).extracting(other -> other.technique()).doesNotContain(Elm.WIRING);
    }

    @Test
    void aTreeNobodyHasLookedAtHasItsRootsLookedAtAndIsMeasured() {
        var tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        var row = plan(session(DAY, null, tree)).rows().get(0);
        assertThat(row.technique()).isNotNull();
        assertThat(row.technique().code()).isEqualTo("root_check");
        assertThat(row.why()).isNotBlank();
    }

    @Test
    void aStepOutOfItsSeasonIsNotPlanned() {
        var tree = Elm.readyForWiring(school, group, assigner);
        assigner.assign(group.instructor(), tree.id(), Elm.wire());
        var inLeaf = LocalDate.of(2026, 4, 20);
        var row = plan(session(inLeaf, null, tree)).rows().get(0);
        assertThat(row.stepId()).isNull();
    }

    @Test
    void aStepWhoseSeasonWasWaivedIsPlanned() {
        var tree = Elm.readyForLayeringButForSeason(school, group, assigner);
        var step =
                assigner.assign(
                        group.instructor(),
                        tree.id(),
                        new NewAssignment(
                                "air_layer", null, null, null, Map.of("season", "Under glass.")));
        assertThat(plan(session(DAY, null, tree)).rows().get(0).stepId()).isEqualTo(step.id());
    }

    @Test
    void aStepThatBeginsLaterIsNotPlannedYet() {
        var tree = Elm.readyForWiring(school, group, assigner);
        assigner.assign(
                group.instructor(),
                tree.id(),
                new NewAssignment(Elm.WIRING, DAY.plusDays(1), null, null, null));
        assertThat(plan(session(DAY, null, tree)).rows().get(0).stepId()).isNull();
        assertThat(plan(session(DAY.plusDays(1), null, tree)).rows().get(0).stepId()).isNotNull();
    }

    @Test
    void toolsMinutesAndCautionsAddUp() {
        var first = Elm.readyForWiring(school, group, assigner);
        var second = Elm.readyForWiring(school, group, assigner);
        for (var tree : List.of(first, second)) {
            assigner.assign(group.instructor(), tree.id(), Elm.wire());
        }
        var plan = plan(session(DAY, null, first, second));
        assertThat(plan.tools()).contains(new SessionPlan.Need("wire cutters", 2, null));
        assertThat(plan.studentMinutes()).isEqualTo(2 * 90);
        assertThat(plan.instructorMinutes()).isEqualTo(2 * 20);
        var signals = plan.cautions().stream().map(SessionPlan.Caution::signal).toList();
        assertThat(signals)
                .isSortedAccordingTo(
                        (one, other) ->
                                Integer.compare(
                                        List.of("DANGER", "WARNING", "CAUTION").indexOf(one),
                                        List.of("DANGER", "WARNING", "CAUTION").indexOf(other)));
        assertThat(plan.cautions().get(0).trees()).containsExactly(first.label(), second.label());
    }

    @Test
    void speciesThatHarmAreTold() {
        var yew = school.tree(group.instructor(), group.student(), "taxus_cuspidata");
        assertThat(plan(session(DAY, null, yew)).cautions())
                .anySatisfy(caution -> assertThat(caution.trees()).contains(yew.label()));
    }

    @Test
    void thePlanIsNotForStudents() {
        var tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        var session = session(DAY, null, tree);
        assertThat(refusalOf(() -> days.plan(group.student(), session.id())).status())
                .isEqualTo(403);
        var stranger = school.newGroup();
        assertThat(refusalOf(() -> days.plan(stranger.instructor(), session.id())).status())
                .isEqualTo(404);
    }

    private SessionPlan plan(Session session) {
        return days.plan(group.instructor(), session.id());
    }

    private Session session(LocalDate day, @Nullable String lesson, Tree... trees) {
        var session =
                sessions.set(
                        group.instructor(),
                        new NewSession(
                                group.course().id(),
                                day,
                                LocalTime.of(10, 0),
                                LocalTime.of(15, 0),
                                lesson,
                                "Bench room",
                                List.of(group.instructor().personId())));
        int bench = 0;
        for (var tree : trees) {
            session =
                    sessions.enrol(
                            group.instructor(),
                            session.id(),
                            new NewEnrolment(
                                    group.student().personId(),
                                    tree.id(),
                                    String.valueOf(++bench)));
        }
        return session;
    }
}
