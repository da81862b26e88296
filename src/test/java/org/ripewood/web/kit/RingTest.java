package org.ripewood.web.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class RingTest {

    @ParameterizedTest
    @CsvSource({
        "YES, 0.3, 100, true",
        "NO, 0, 0, true",
        "NO, 0.5, 50, true",
        "NO, 0.999, 94, true",
        "NO, 1, 94, true",
        "NO, -3, 0, true",
        "UNKNOWN, 0, 0, false",
        "UNKNOWN, 1, 94, false"
    })
    void onlyAMetCriterionClosesTheRing(
            String truth, double howFar, int percent, boolean measured) {
        var ring = Ring.of(truth, howFar);
        assertThat(ring.percent()).isEqualTo(percent);
        assertThat(ring.measured()).isEqualTo(measured);
        assertThat(ring.closed()).isEqualTo(truth.equals("YES"));
    }

    /** In SVG an arc begins at three o'clock and runs clockwise, so 90 degrees is the bottom. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.37, 0.5, 0.94})
    void theArcLiesAroundTheBottomSoThatTheGapIsAtTheTop(double howFar) {
        var ring = Ring.of("NO", howFar);
        var middle = Double.parseDouble(ring.turn()) + ring.percent() * 3.6 / 2;
        assertThat(middle).isEqualTo(90, within(0.1));
    }

    @Test
    void aRingIsAlsoSaidInWords() {
        assertThat(Ring.of("NO", 0.25).words()).isEqualTo("not met, 25 % of the way");
        assertThat(Ring.of("UNKNOWN", 0).words()).isEqualTo("not known");
    }
}
