package org.ripewood.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    /** The bare wood shrinks with every step, and something of it is seen until all is closed. */
    @Test
    void theLipClosesOverTheWood() {
        double before = Double.MAX_VALUE;
        for (int percent = 0; percent < 100; percent++) {
            var edges = CallusLip.of(percent).lip().split("Z", 2);
            double bare = width(edges[1]);
            assertThat(bare)
                    .as("%d %% closed", percent)
                    .isLessThanOrEqualTo(before)
                    .isGreaterThan(2);
            assertThat(width(edges[0])).isGreaterThan(bare + 1);
            before = bare;
        }
        assertThat(CallusLip.of(0).grain()).contains("V");
        assertThat(CallusLip.of(100).lip()).endsWith("Z").containsOnlyOnce("M");
    }

    private static double width(String edge) {
        var across =
                Pattern.compile("([0-9.]+) [0-9.]+")
                        .matcher(edge)
                        .results()
                        .mapToDouble(found -> Double.parseDouble(found.group(1)))
                        .summaryStatistics();
        assertThat(across.getMin()).isBetween(0.0, 24.0);
        assertThat(across.getMax()).isBetween(0.0, 24.0);
        return across.getMax() - across.getMin();
    }

    @Test
    void aRingIsAlsoSaidInWords() {
        assertThat(Ring.of("NO", 0.25).words()).isEqualTo("not met, 25 % of the way");
        assertThat(Ring.of("UNKNOWN", 0).words()).isEqualTo("not known");
    }
}
