package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class DefoliationClassTest {

    /** Bounds of Eurostat, Glossary: Degree of defoliation (classes of ICP Forests). */
    @ParameterizedTest
    @CsvSource({
        "0, 0", "10, 0", "10.1, 1", "25, 1", "25.1, 2", "60, 2", "60.1, 3", "99.9, 3", "100, 4"
    })
    void classesMeetAtThePublishedBounds(double lossPercent, int code) {
        assertThat(DefoliationClass.ofLoss(lossPercent).code()).isEqualTo(code);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 100.1, Double.NaN})
    void whatIsNoShareIsRefused(double lossPercent) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DefoliationClass.ofLoss(lossPercent))
                .withMessageContaining(String.valueOf(lossPercent));
    }
}
