package org.ripewood.firstlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.MonthDay;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.course.JudgementCase;

/**
 * How to look goes by the tree. Which kinds show rings of bud scars: common practice, no source.
 */
@Tag("fast")
class HowToLookTest {

    private static String how(LookQuestion question, String species, String container) {
        return HowToLook.of(
                question,
                LookTree.on(
                        species,
                        LookTree.climate("inland-45n"),
                        MonthDay.of(6, 15),
                        Map.of(),
                        new JudgementCase.Stay(container, 700)));
    }

    @Test
    void inOpenGroundThereIsNoContainerToHold() {
        assertThat(how(LookQuestion.FIRM, "acer_palmatum", "ground")).doesNotContain("container");
        assertThat(how(LookQuestion.WATER, "acer_palmatum", "ground")).doesNotContain("container");
        assertThat(how(LookQuestion.ROOTS, "acer_palmatum", "ground"))
                .doesNotContain("rim", "ball");
        assertThat(how(LookQuestion.FIRM, "acer_palmatum", "training")).contains("container");
    }

    @ParameterizedTest
    @CsvSource({
        "acer_palmatum, true",
        "pinus_mugo, true",
        "ficus_retusa, false",
        "juniperus_chinensis, false"
    })
    void onlyKindsWithScaledBudsHaveARing(String species, boolean ring) {
        assertThat(how(LookQuestion.SHOOTS, species, "training").contains("ring of bud scars"))
                .isEqualTo(ring);
    }
}
