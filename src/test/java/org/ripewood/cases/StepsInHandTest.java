package org.ripewood.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.StepState;

/** What waits for a step that somebody has in hand is told so, on every tree of the cases. */
@Tag("fast")
class StepsInHandTest {

    private static final CaseRun RUN = new CaseRun(ShippedContent.CONTENT, CaseRun.UP_TO);

    /** A ready step of a tree, and what another technique that waits for it says of it. */
    private record Seen(String technique, String told) {}

    @Test
    void aStepThatIsReadyIsCalledReadyByWhatWaitsForIt() {
        var told = seen(null);
        assertThat(told).hasSizeGreaterThan(10);
        assertThat(told).allSatisfy(one -> assertThat(one.told()).endsWith("; it is ready."));
    }

    @Test
    void aReportedStepWaitsForItsSignOff() {
        var told = seen(StepState.REPORTED);
        assertThat(told).hasSizeGreaterThan(10);
        assertThat(told)
                .allSatisfy(
                        one ->
                                assertThat(one.told())
                                        .endsWith(
                                                "; it is reported and waits for an instructor's"
                                                        + " sign-off."));
    }

    @Test
    void anAssignedStepAndOneSentBackAreToldAsThat() {
        assertThat(seen(StepState.ASSIGNED))
                .isNotEmpty()
                .allSatisfy(one -> assertThat(one.told()).endsWith("; it is assigned."));
        assertThat(seen(StepState.SENT_BACK))
                .isNotEmpty()
                .allSatisfy(one -> assertThat(one.told()).contains("it was sent back"));
    }

    /** A list gives each reason one line, and says how many lines there are. */
    @Test
    void eachReasonIsToldOnceAndTheyAreCountedRight() {
        int undated = 0;
        for (var tree : trees()) {
            for (var standing : tree.standings()) {
                var told = tree.tell(standing);
                var against = told.against();
                assertThat(against.stream().map(ReasonView::told))
                        .as("%s of %s", told.title(), tree.tree().label())
                        .doesNotHaveDuplicates();
                for (var reason : against) {
                    var turn =
                            reason.key().startsWith("after.") || reason.key().startsWith("needs.");
                    assertThat(reason.told()).contains(turn ? reason.title() : reason.sentence());
                    assertThat(turn && reason.outlookApart() != null).isFalse();
                }
                var opening = told.opening();
                if (opening != null && opening.likely() == null && !against.isEmpty()) {
                    undated++;
                    assertThat(told.openingBriefly())
                            .matches(
                                    against.size() == 1
                                            ? "No date yet, for 1 reason\\."
                                            : "No date yet, for %d reasons\\."
                                                    .formatted(against.size()));
                }
            }
        }
        assertThat(undated).isGreaterThan(100);
    }

    private static List<TreeOnDay> trees() {
        return ShippedContent.CONTENT.cases().stream().map(RUN::tree).toList();
    }

    /**
     * @param given where the ready step is; null when nobody was given it
     */
    private static List<Seen> seen(StepState given) {
        var seen = new ArrayList<Seen>();
        for (var tree : trees()) {
            for (var ready : tree.free()) {
                var code = ready.technique();
                var with = given == null ? tree : with(tree, step(tree, code, given));
                with.standings().stream()
                        .filter(Predicate.not(with::isCare))
                        .map(with::tell)
                        .flatMap(told -> told.against().stream())
                        .filter(reason -> reason.key().equals("after." + code))
                        .filter(reason -> reason.outlook() != null)
                        .forEach(reason -> seen.add(new Seen(code, reason.told())));
            }
        }
        return seen;
    }

    private static TreeOnDay with(TreeOnDay tree, StepBrief step) {
        return new TreeOnDay(
                tree.content(),
                tree.state(),
                tree.subject(),
                tree.openings(),
                Map.of(step.technique(), step));
    }

    private static StepBrief step(TreeOnDay tree, String code, StepState state) {
        return new StepBrief(
                1,
                0,
                tree.tree().id(),
                code,
                state,
                1,
                tree.on(),
                null,
                null,
                null,
                null,
                state == StepState.REPORTED ? tree.on() : null,
                state == StepState.REPORTED ? Instant.EPOCH : null);
    }
}
