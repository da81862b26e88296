package org.ripewood.standing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class StageWordsTest {

    /** Source of the codes: Meier 2001, BBCH Monograph, 2nd edition, general scale. */
    @ParameterizedTest
    @CsvSource({
        "0, winter rest (growth stage 00)",
        "9, green tips (growth stage 09)",
        "11, first leaves (growth stage 11)",
        "38, shoots at half length (growth stage 38)",
        "65, flowering (growth stage 65)",
        "94, leaf fall begins (growth stage 94)",
        "99, winter rest (growth stage 99)"
    })
    void aStageIsToldAsItIsSeenAtTheTree(int stage, String told) {
        assertThat(StageWords.of(stage)).isEqualTo(told);
    }

    @Test
    void aSeasonRunsFromOneSightToAnother() {
        assertThat(StageWords.of(97, 3))
                .isEqualTo("leaves down to buds swollen (growth stage 97 to 03)");
        assertThat(StageWords.of(31, 33)).isEqualTo("shoots growing (growth stage 31 to 33)");
    }
}
