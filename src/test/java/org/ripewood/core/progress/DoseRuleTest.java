package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.season.Habit;

/** Shares are common practice, no source. */
@Tag("fast")
class DoseRuleTest {

    private static final DoseRule CUT =
            new DoseRule(
                    DoseRule.Kind.FOLIAGE,
                    0.3,
                    0.33,
                    List.of(
                            new DoseRule.Limit(Set.of(), Set.of("conifer"), 0.33, 75),
                            new DoseRule.Limit(Set.of(), Set.of("conifer"), 0.25, 0),
                            new DoseRule.Limit(Set.of("elm"), Set.of(), 0.6, 75)),
                    false);

    @ParameterizedTest
    @CsvSource({
        "maple, 90, 0.33",
        "maple, NaN, 0.33",
        "elm, 75, 0.6",
        "elm, 74, 0.33",
        "elm, NaN, 0.33",
        "pine, 80, 0.33",
        "pine, 70, 0.25",
        "pine, NaN, 0.25"
    })
    void theFirstLimitThatFitsTheTreeCounts(String species, double vigour, double limit) {
        var groups = species.equals("pine") ? Set.of("conifer") : Set.<String>of();
        var traits = new Traits(species, Habit.DECIDUOUS, groups, 0.3);
        var own = CUT.forTree(traits, vigour);
        assertThat(own.limitShare()).isEqualTo(limit);
        assertThat(own.typicalShare()).isEqualTo(Math.min(0.3, limit));
    }

    @Test
    void rootsAreLimitedByTheSpeciesToo() {
        var repot = new DoseRule(DoseRule.Kind.ROOT, 0.3, 0.5);
        assertThat(repot.forTree(Bench.PINE, 90).limitShare()).isEqualTo(0.25);
        assertThat(repot.forTree(Bench.PINE, 90).typicalShare()).isEqualTo(0.25);
    }

    @Test
    void whatIsNoShareIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DoseRule.Limit(Set.of(), Set.of("conifer"), 1.1, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DoseRule.Limit(Set.of(), Set.of("conifer"), 0.3, 101));
    }
}
