package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class ProportionTest {

    /** Height-to-diameter ratio of the foresters: a stem of 20 m and 30 cm has 66.7. */
    @Test
    void aStemOfTwentyMetresAndThirtyCentimetresHasSixtySix() {
        assertThat(Proportion.of(20_000, 300)).isCloseTo(66.7, within(0.05));
    }

    @Test
    void againstNothingNothingCanBeSaid() {
        assertThat(Proportion.of(10, 0)).isNaN();
        assertThat(Proportion.of(10, Double.NaN)).isNaN();
    }

    @Test
    void aNegativeLengthIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Proportion.of(-1, 10));
        assertThatIllegalArgumentException().isThrownBy(() -> Proportion.of(Double.NaN, 10));
    }
}
