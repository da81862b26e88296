package org.ripewood.standing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ripewood.core.season.Habit;

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
        assertThat(StageWords.of(Habit.DECIDUOUS).stage(stage)).isEqualTo(told);
    }

    @Test
    void aSeasonRunsFromOneSightToAnother() {
        var words = StageWords.of(Habit.DECIDUOUS_CONIFER);
        assertThat(words.range(97, 3))
                .isEqualTo("leaves down to buds swollen (growth stage 97 to 03)");
        assertThat(words.range(31, 33)).isEqualTo("shoots growing (growth stage 31 to 33)");
    }

    /** They drop old needles and leaves in autumn (common practice, no source), and not all. */
    @ParameterizedTest
    @EnumSource(names = {"EVERGREEN_CONIFER", "EVERGREEN_BROADLEAF", "TROPICAL"})
    void noEvergreenIsSaidToStandBare(Habit habit) {
        var words = StageWords.of(habit);
        assertThat(words.stage(93)).isEqualTo("old foliage falling (growth stage 93)");
        assertThat(words.range(97, 3))
                .isEqualTo("winter rest to buds swollen (growth stage 97 to 03)");
        for (int stage = 0; stage <= 99; stage++) {
            assertThat(words.stage(stage)).doesNotContain("leaves down", "leaf fall", "colouring");
        }
    }
}
