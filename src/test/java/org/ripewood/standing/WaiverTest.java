package org.ripewood.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.standing.RefusalAssert.refusalOf;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.progress.Verdict;
import org.ripewood.platform.PageRequest;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Tree;

/** What may be let pass, with which words, and what never. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class WaiverTest {

    private static final String WOUND = "largest_opening_mm.AtMost";

    @Inject School school;
    @Inject Standings standings;
    @Inject Assigner assigner;
    @Inject Steps steps;

    School.Group group;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
    }

    @Test
    void aMustIsNeverWaived() {
        var tree = elm();
        school.see(group.instructor(), tree, "vigour_index", "30", School.TODAY);
        var problem =
                refusalOf(
                        () ->
                                assign(
                                        tree,
                                        null,
                                        Map.of("vigour_index.AtLeast", "I know this tree.")));
        assertThat(problem.status()).isEqualTo(409);
        assertThat(problem.detail())
                .isEqualTo(
                        "“Wire the primary branches” cannot be assigned; cannot be waived: Vigour"
                                + " 30 on 20 February 2026; needed: at least 62. Strength for this"
                                + " work: with its vigour the tree bears a load of 2.6 at once; at"
                                + " least 4, which this work takes.");
        assertThat(problem.faults())
                .extracting(fault -> fault.field())
                .containsExactly("vigour_index.AtLeast", "load");
        assertThat(stepsOf(tree)).isEmpty();
    }

    @Test
    void anUnknownMustIsNoMoreWaivedThanAFailedOne() {
        var tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        assigner.noteFoundDone(
                group.instructor(), tree.id(), "branch_selection", School.TODAY, null);
        school.see(group.instructor(), tree, "branches_hold", "no");
        var problem = refusalOf(() -> assign(tree, null, Map.of("pest_level.AtMost", "Clean.")));
        assertThat(problem.status()).isEqualTo(409);
        assertThat(problem.detail())
                .contains("Pests and disease is not known yet; needed: at most 1.");
    }

    @Test
    void aShouldNeedsItsReasonInWords() {
        var tree = elm();
        school.wound(group.instructor(), tree, "first branch", 24);
        for (Map<String, String> waivers : List.of(Map.<String, String>of(), Map.of(WOUND, "  "))) {
            var problem = refusalOf(() -> assign(tree, null, waivers));
            assertThat(problem.status()).isEqualTo(400);
            assertThat(problem.faults())
                    .singleElement()
                    .satisfies(
                            fault -> {
                                assertThat(fault.field()).isEqualTo("waivers." + WOUND);
                                assertThat(fault.message()).contains("24 mm");
                            });
        }
        var step =
                assign(tree, null, Map.of(WOUND, "It lies at the back and is drawn as a hollow."));
        assertThat(step.waivers())
                .singleElement()
                .satisfies(
                        waiver -> {
                            assertThat(waiver.reasonKey()).isEqualTo(WOUND);
                            assertThat(waiver.why()).contains("hollow");
                            assertThat(waiver.byId()).isEqualTo(group.instructor().personId());
                        });
        assertThat(steps.get(group.student(), step.id())).isEqualTo(step);
    }

    @Test
    void aWaiverOfNothingIsRefused() {
        var tree = elm();
        var problem = refusalOf(() -> assign(tree, null, Map.of(WOUND, "Just in case.")));
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults().get(0).field()).isEqualTo("waivers." + WOUND);
    }

    @Test
    void aSkillMayBeWaived() {
        var tree = Elm.readyButForSkill(school, group.instructor(), group.student(), assigner);
        assertThat(refusalOf(() -> assign(tree, null, Map.of())).faults())
                .extracting(fault -> fault.field())
                .containsExactly("waivers.skill");
        assertThat(assign(tree, null, Map.of("skill", "Under my eyes at the bench.")).state())
                .isEqualTo(StepState.ASSIGNED);
    }

    @Test
    void aStepThatBeginsInItsSeasonNeedsNoWaiver() {
        var tree = outOfSeason();
        var standing =
                standings.of(group.instructor(), tree.id(), School.TODAY).techniques().stream()
                        .filter(each -> each.technique().equals("air_layer"))
                        .findFirst()
                        .orElseThrow();
        assertThat(standing.verdict()).isEqualTo(Verdict.SEASON);
        var opensOn = standing.opensOn();
        assertThat(opensOn).isAfter(School.TODAY);

        assertThat(refusalOf(() -> layer(tree, null, Map.of())).faults())
                .extracting(fault -> fault.field())
                .containsExactly("waivers.season");
        assertThat(refusalOf(() -> layer(tree, opensOn.minusDays(1), Map.of())).status())
                .isEqualTo(400);
        assertThat(layer(tree, opensOn, Map.of()).from()).isEqualTo(opensOn);
    }

    @Test
    void aClosedSeasonMayBeWaived() {
        var tree = outOfSeason();
        assertThat(layer(tree, null, Map.of("season", "Under glass it is in leaf.")).waivers())
                .hasSize(1);
    }

    @Test
    void whatIsDoneOrNotNeededIsRefused() {
        var tree = elm();
        assertThat(refusalOf(() -> assignCode(tree, "branch_selection")).detail())
                .isEqualTo(
                        "“Choose the branches” is done for this tree. Signed off: done on 20"
                                + " February 2025, once is enough.");
        assertThat(refusalOf(() -> assignCode(tree, "wire_removal")).detail())
                .contains("is not needed for this tree");
        assertThat(refusalOf(() -> assignCode(tree, "candle_cutting")).status()).isEqualTo(409);
    }

    @Test
    void aMistypedTechniqueIsGuessed() {
        var tree = elm();
        var problem = refusalOf(() -> assignCode(tree, "wiring_primry"));
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults().get(0).message())
                .isEqualTo("There is no technique “wiring_primry”. Maybe “wiring_primary”.");
    }

    @Test
    void theWindowOfAStepMustMakeSense() {
        var tree = elm();
        var past = new NewAssignment(Elm.WIRING, null, School.TODAY.minusDays(1), null, null);
        assertThat(refusalOf(() -> assigner.assign(group.instructor(), tree.id(), past)).faults())
                .extracting(fault -> fault.field())
                .containsExactly("until");
        var turned =
                new NewAssignment(
                        Elm.WIRING, School.TODAY.plusDays(9), School.TODAY.plusDays(2), null, null);
        assertThat(refusalOf(() -> assigner.assign(group.instructor(), tree.id(), turned)).faults())
                .extracting(fault -> fault.field())
                .containsExactly("until");
        assertThat(stepsOf(tree)).isEmpty();
    }

    private Tree elm() {
        return Elm.readyForWiring(school, group, assigner);
    }

    private Tree outOfSeason() {
        return Elm.readyForLayeringButForSeason(school, group, assigner);
    }

    private Step assign(Tree tree, @Nullable LocalDate from, Map<String, String> waivers) {
        return assigner.assign(
                group.instructor(),
                tree.id(),
                new NewAssignment(Elm.WIRING, from, null, null, waivers));
    }

    private Step layer(Tree tree, @Nullable LocalDate from, Map<String, String> waivers) {
        return assigner.assign(
                group.instructor(),
                tree.id(),
                new NewAssignment("air_layer", from, null, null, waivers));
    }

    private Step assignCode(Tree tree, String technique) {
        return assigner.assign(
                group.instructor(),
                tree.id(),
                new NewAssignment(technique, null, null, null, null));
    }

    private List<Step> stepsOf(Tree tree) {
        return steps.of(group.instructor(), tree.id(), new PageRequest(0, 50)).items().stream()
                .filter(step -> step.state() != StepState.FOUND_DONE)
                .toList();
    }
}
