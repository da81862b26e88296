package org.ripewood.readiness;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;

/** Which technique of a group of work is told of a tree. */
@Tag("fast")
class LeadingTechniqueTest {

    private static final LocalDate ON = LocalDate.of(2026, 11, 30);

    /** In the order of work: a, b, c. */
    private final LeadingTechnique leading = new LeadingTechnique(Comparator.naturalOrder());

    @Test
    void theNextOneThatIsNeededAndNotDoneLeads() {
        assertThat(
                        told(
                                Set.of(),
                                standing("a", Verdict.DONE),
                                standing("c", Verdict.READY),
                                standing("b", Verdict.HELD)))
                .isEqualTo("b");
    }

    @Test
    void whatTheTreeDoesNotNeedIsPassedOver() {
        assertThat(told(Set.of(), standing("a", Verdict.NOT_NEEDED), standing("b", Verdict.SEASON)))
                .isEqualTo("b");
    }

    @Test
    void aLookWhetherItIsNeededLeadsOnlyAlone() {
        var look = standing("a", Verdict.MEASURE, new Reason.OfNeed(Truth.UNKNOWN, List.of()));
        assertThat(told(Set.of(), look, standing("b", Verdict.HELD))).isEqualTo("b");
        assertThat(told(Set.of(), look, standing("b", Verdict.DONE))).isEqualTo("a");
    }

    /** Somebody knows it is needed, and only its criteria are not seen yet. */
    @Test
    void whatIsNeededAndToBeMeasuredKeepsItsPlace() {
        assertThat(told(Set.of(), standing("a", Verdict.MEASURE), standing("b", Verdict.HELD)))
                .isEqualTo("a");
    }

    /** Even if it were needed it would be held, so it is a hold and no look. */
    @Test
    void whatIsHeldLeadsThoughNobodyKnowsWhetherItIsNeeded() {
        var held =
                standing(
                        "a",
                        Verdict.HELD,
                        new Reason.OfNeed(Truth.UNKNOWN, List.of(Fact.WIRE_ON)),
                        new Reason.OfHeavy(1));
        assertThat(told(Set.of(), held, standing("b", Verdict.READY))).isEqualTo("a");
    }

    @Test
    void aStepInHandLeadsWhateverItsPlaceOrVerdict() {
        assertThat(told(Set.of("b"), standing("a", Verdict.READY), standing("b", Verdict.DONE)))
                .isEqualTo("b");
    }

    @Test
    void nothingLeadsWhenAllIsDoneOrNotNeeded() {
        assertThat(
                        leading.of(
                                List.of(
                                        standing("a", Verdict.DONE),
                                        standing("b", Verdict.NOT_NEEDED)),
                                Set.of("x")))
                .isEmpty();
    }

    private String told(Set<String> inHand, Standing... standings) {
        return leading.of(List.of(standings), inHand).orElseThrow().technique();
    }

    private static Standing standing(String technique, Verdict verdict, Reason... reasons) {
        return new Standing(technique, ON, verdict, List.of(reasons));
    }
}
