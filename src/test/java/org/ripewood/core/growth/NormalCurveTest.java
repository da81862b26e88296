package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class NormalCurveTest {

    /** Against Apache Commons Statistics 1.3. */
    @Test
    void itAgreesWithAReferenceLibrary() {
        var reference = NormalDistribution.of(0, 1);
        for (double z = -40; z <= 40; z += 0.0137) {
            double expected = reference.cumulativeProbability(z);
            assertThat(NormalCurve.below(z))
                    .as("z %s", z)
                    .isCloseTo(expected, within(1e-14 + 1e-6 * Math.min(expected, 1e-9)));
        }
    }

    @Test
    void itNeverFalls() {
        double before = 0;
        for (double z = -38; z <= 38; z += 0.001) {
            assertThat(NormalCurve.below(z)).as("z %s", z).isGreaterThanOrEqualTo(before);
            before = NormalCurve.below(z);
        }
    }
}
