package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class WoundEllipseTest {

    /** (a − 2x)(b − 2x)/(ab) for 30 × 40 mm, worked by hand: 24·34/1200 = 0.68 and so on. */
    @ParameterizedTest
    @CsvSource({"0, 1", "3, 0.68", "6, 0.42", "9, 0.22", "12, 0.08", "15, 0", "25, 0"})
    void theLipLeavesLessAndLessOpen(double lipMm, double share) {
        assertThat(new WoundEllipse(30, 40).openShare(lipMm)).isCloseTo(share, within(1e-12));
    }

    /** An ellipse of equal axes is a circle: π r². */
    @Test
    void aRoundWoundHasTheAreaOfACircle() {
        assertThat(new WoundEllipse(20, 20).areaMm2()).isCloseTo(Math.PI * 100, within(1e-9));
    }

    @Test
    void aWoundWithoutWidthIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new WoundEllipse(0, 40));
        assertThatIllegalArgumentException().isThrownBy(() -> new WoundEllipse(30, Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WoundEllipse(30, 40).openShare(-1));
    }
}
