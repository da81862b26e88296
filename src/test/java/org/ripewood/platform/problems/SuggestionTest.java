package org.ripewood.platform.problems;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class SuggestionTest {

    private static final List<String> KNOWN =
            List.of("wire_removal", "wiring_primary", "wiring_secondary", "jin");

    @Test
    void aSlipOfTheFingerFindsTheCode() {
        assertThat(Suggestion.nearest(KNOWN, "wire_remval")).isEqualTo("wire_removal");
        assertThat(Suggestion.nearest(KNOWN, " Wiring_Primary ")).isEqualTo("wiring_primary");
        assertThat(Suggestion.nearest(KNOWN, "jim")).isEqualTo("jin");
    }

    @Test
    void aStrangerFindsNothing() {
        assertThat(Suggestion.nearest(KNOWN, "watering")).isNull();
        assertThat(Suggestion.nearest(List.of(), "jin")).isNull();
        assertThat(Suggestion.maybe(KNOWN, "watering")).isEmpty();
    }

    @Test
    void theGuessIsReadyToBeAppended() {
        assertThat("There is no technique “jim”." + Suggestion.maybe(KNOWN, "jim"))
                .isEqualTo("There is no technique “jim”. Maybe “jin”.");
    }
}
