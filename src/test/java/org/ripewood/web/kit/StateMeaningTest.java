package org.ripewood.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.boards.Board.Headline;
import org.ripewood.core.progress.Verdict;
import org.ripewood.steps.StepState;

/** The legend has every word that lists show of techniques and of steps under way, once. */
@Tag("fast")
class StateMeaningTest {

    @Test
    void everyStateIsExplainedOnceInOneSentence() {
        var all = StateMeaning.All.all();
        assertThat(all).extracting(one -> one.mark().word()).doesNotHaveDuplicates();
        assertThat(all).extracting(StateMeaning::mark).contains(Mark.of(StepState.REPORTED));
        for (var verdict : Verdict.values()) {
            assertThat(all).extracting(StateMeaning::mark).contains(Mark.of(verdict));
        }
        assertThat(all)
                .extracting(StateMeaning::meaning)
                .doesNotHaveDuplicates()
                .allSatisfy(one -> assertThat(one).matches("[A-Z][^.]+\\."));
    }

    @Test
    void whatLeadsATreeIsCalledAsItsTechniqueIs() {
        for (var headline : Headline.values()) {
            if (headline != Headline.SIGN_OFF && headline != Headline.UNDER_WAY) {
                assertThat(Mark.of(headline)).isEqualTo(Mark.of(Verdict.valueOf(headline.name())));
            }
        }
    }
}
