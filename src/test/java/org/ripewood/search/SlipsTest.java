package org.ripewood.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class SlipsTest {

    private static final List<String> KNOWN =
            List.of("callus", "maple", "nebari", "ramification", "juniper", "jin");

    /** Worked out by hand from the definition of the restricted distance. */
    @ParameterizedTest
    @CsvSource({
        "maple, maple, 0",
        "mapel, maple, 1",
        "mple, maple, 1",
        "mapple, maple, 1",
        "maqle, maple, 1",
        "ca, abc, 3",
        "'', jin, 3"
    })
    void stepsAreCounted(String from, String to, int steps) {
        assertThat(Slips.steps(from, to)).isEqualTo(steps);
    }

    @ParameterizedTest
    @CsvSource({
        "mapel, maple",
        "nebrai, nebari",
        "calus, callus",
        "ramifacaton, ramification",
        "junpier, juniper"
    })
    void theNearestWordIsMeant(String typed, String meant) {
        assertThat(Slips.nearest(KNOWN, typed)).isEqualTo(meant);
    }

    @Test
    void whatIsShortOrFarIsNotGuessedAt() {
        assertThat(Slips.nearest(KNOWN, "gin")).isNull();
        assertThat(Slips.nearest(KNOWN, "helicopter")).isNull();
        assertThat(Slips.nearest(KNOWN, "napel")).isNull();
        assertThat(Slips.nearest(List.of(), "maple")).isNull();
    }
}
