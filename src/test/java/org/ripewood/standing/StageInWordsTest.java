package org.ripewood.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.firstlook.LookTree;
import org.ripewood.steps.Wording;

/** The stage as it stands on a bench card, called as on the tree's page and its passport. */
@Tag("fast")
class StageInWordsTest {

    @Test
    void whatAnInstructorSaidIsToldWithItsDay() {
        var tree = LookTree.maple(Map.of(Fact.TRAINING_STAGE, Value.of("structure")));
        assertThat(tree.stageInWords())
                .isEqualTo("Stage 3: Build the structure, since " + Wording.day(tree.on()));
        assertCalledAsOnThePassport(tree);
    }

    @Test
    void whatTheRulesTellHasNoDay() {
        var tree = LookTree.maple(Map.of());
        assertThat(tree.stageInWords()).isEqualTo("Stage 1: Establish");
        assertCalledAsOnThePassport(tree);
    }

    private static void assertCalledAsOnThePassport(TreeOnDay tree) {
        var told = tree.tellStage();
        assertThat(tree.stageInWords())
                .startsWith("Stage %d: %s".formatted(told.order(), told.title()));
    }
}
