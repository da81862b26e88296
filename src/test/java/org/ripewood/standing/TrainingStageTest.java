package org.ripewood.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Observations;
import org.ripewood.trees.Tree;

/** The rules tell a tree's stage until an instructor says it. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class TrainingStageTest {

    @Inject School school;
    @Inject Standings standings;
    @Inject Observations observations;
    @Inject Assigner assigner;

    private School.Group group;
    private Tree tree;

    @BeforeEach
    void anElm() {
        group = school.newGroup();
        tree = Elm.readyForWiring(school, group, assigner);
    }

    @Test
    void theRulesTellItAndWhatIsMissing() {
        var stage = stage();
        assertThat(stage.code()).isEqualTo("establish");
        assertThat(stage.confirmedOn()).isNull();
        assertThat(stage.missing())
                .extracting(ReasonView::key)
                .containsExactlyInAnyOrder("firm_in_container.Is", "substrate_drains.Is");
        school.see(group.instructor(), tree, "firm_in_container", "yes");
        school.see(group.instructor(), tree, "substrate_drains", "yes");
        assertThat(stage().code()).isEqualTo("structure");
    }

    @Test
    void anInstructorConfirmsThePassageAndCanSendTheTreeBack() {
        say(group.instructor(), "refine", "Its branches hold; seen from all sides.");
        var stage = stage();
        assertThat(stage.code()).isEqualTo("refine");
        assertThat(stage.confirmedOn()).isEqualTo(School.TODAY);
        assertThat(stage.differs()).isTrue();
        assertThat(stage.byRules()).isEqualTo("establish");
        assertThat(stage.missing())
                .extracting(ReasonView::key)
                .contains("firm_in_container.Is", "branches_hold.Is");
        say(group.instructor(), "develop", "The first branch died.");
        assertThat(stage().code()).isEqualTo("develop");
    }

    @Test
    void itIsSaidWithAReason() {
        assertThatExceptionOfType(Refused.class)
                .isThrownBy(() -> say(group.instructor(), "refine", " "))
                .satisfies(
                        refused ->
                                assertThat(refused.problem().faults())
                                        .extracting(fault -> fault.field())
                                        .containsExactly("note"));
    }

    @Test
    void noStudentSaysIt() {
        assertThatExceptionOfType(Refused.class)
                .isThrownBy(() -> say(group.student(), "show", "It is beautiful."))
                .satisfies(refused -> assertThat(refused.problem().status()).isEqualTo(403));
        assertThat(stage().confirmedOn()).isNull();
    }

    private StageView stage() {
        return standings.of(group.student(), tree.id(), School.TODAY).trainingStage();
    }

    private void say(Actor actor, String stage, @Nullable String why) {
        observations.observe(
                actor,
                tree.id(),
                new NewObservation(
                        "training_stage", stage, School.TODAY, why, null, null, null, null));
    }
}
