package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class StageRangeTest {

    @ParameterizedTest
    @CsvSource({
        "01-07, 1, true",
        "01-07, 7, true",
        "01-07, 0, false",
        "01-07, 8, false",
        "91-03, 91, true",
        "91-03, 99, true",
        "91-03, 0, true",
        "91-03, 3, true",
        "91-03, 4, false",
        "91-03, 90, false",
        "00-00, 0, true",
        "00-00, 1, false"
    })
    void aRangeHoldsItsEndsAndMayRunOverWinter(String range, int stage, boolean holds) {
        assertThat(StageRange.parse(range).holds(stage)).isEqualTo(holds);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1-7", "01 - 07", "01-7", "aa-07", "01-07-09", "101-07"})
    void anythingElseIsRefused(String text) {
        assertThatThrownBy(() -> StageRange.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("91-03");
    }

    /**
     * Principal stages 5 to 8 are inflorescence to ripening: Meier 2001, BBCH Monograph, 2nd ed.
     */
    @ParameterizedTest
    @CsvSource({"51-59, true", "60-69, true", "81-89, true", "01-07, false", "31-39, false"})
    void flowersAndFruitAreATrackOfTheirOwn(String range, boolean flowers) {
        assertThat(StageRange.parse(range).onFlowerTrack()).isEqualTo(flowers);
    }

    @Test
    void itIsWrittenAsItIsRead() {
        assertThat(StageRange.parse("91-03")).hasToString("91-03");
    }
}
