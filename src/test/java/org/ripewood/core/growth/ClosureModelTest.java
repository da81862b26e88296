package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class ClosureModelTest {

    private static final double Z90 = 1.2815515655446004;

    private static ClosurePrior prior(double rateSdMm, double seasonSpread) {
        return new ClosurePrior(
                0.0018, rateSdMm, 0, 0.5, YearSpread.exactly(seasonSpread), 0.0018, 1_900);
    }

    private static List<ClosureReading> steady(double firstMm, double rateMm, int readings) {
        var list = new ArrayList<ClosureReading>();
        list.add(new ClosureReading(0, firstMm));
        for (int i = 1; i <= readings; i++) {
            double x = 2_000.0 * i / readings;
            list.add(new ClosureReading(x, firstMm - 2 * rateMm * x));
        }
        return list;
    }

    /**
     * The classical limits of inverse regression: Fieller 1954, J. Royal Stat. Soc. B 16:175-185;
     * the roots in x of (a − b x − c)² = z² s² (1/n + (x − x̄)²/Sxx), worked here in closed form
     * with the measuring error s known.
     */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5, 10})
    void withoutBeliefTheLimitsAreFiellers(int readings) {
        var list = steady(30, 0.003, readings);
        var model = ClosureModel.of(list, prior(1e6, 0));
        assertThat(model.quantile(0.1, 6)).isCloseTo(fieller(list, 6, -1), within(0.5));
        assertThat(model.quantile(0.9, 6)).isCloseTo(fieller(list, 6, 1), within(0.5));
        assertThat(model.quantile(0.5, 6)).isCloseTo((30 - 6) / 0.006, within(0.5));
    }

    private static double fieller(List<ClosureReading> readings, double threshold, int side) {
        double n = readings.size();
        double meanX = 0;
        double meanW = 0;
        for (var reading : readings) {
            meanX += reading.growthTime() / n;
            meanW += reading.openMm() / n;
        }
        double sxx = 0;
        double sxw = 0;
        for (var reading : readings) {
            double x = reading.growthTime() - meanX;
            sxx += x * x;
            sxw += x * (reading.openMm() - meanW);
        }
        double b = -sxw / sxx;
        double s = 0.5;
        // in u = x − x̄: (d − b u)² = z² s² (1/n + u²/Sxx) with d = w̄ − c
        double d = meanW - threshold;
        double qa = b * b - Z90 * Z90 * s * s / sxx;
        double qb = -2 * b * d;
        double qc = d * d - Z90 * Z90 * s * s / n;
        double root = Math.sqrt(qb * qb - 4 * qa * qc);
        return meanX + (-qb + side * root) / (2 * qa);
    }

    @Test
    void withoutReadingsThePriorAloneSpeaks() {
        var model = ClosureModel.of(steady(24, 1, 0), prior(0.0009, 0.15));
        assertThat(model.quantile(0.5, 6)).isBetween(4_500.0, 5_700.0);
        assertThat(model.quantile(0.9, 6)).isGreaterThan(2 * model.quantile(0.1, 6));
    }

    @Test
    void withoutReadingsOrBeliefNothingIsSaid() {
        assertThatThrownBy(() -> ClosureModel.of(steady(24, 1, 0), prior(1e300, 0)))
                .hasMessageContaining("says nothing");
    }

    @Test
    void aReadingNearerToClosedNeverMovesTheForecastLater() {
        for (long seed = 0; seed < 300; seed++) {
            var random = new Random(seed);
            var list = steady(20 + 20 * random.nextDouble(), 0.002, 3);
            var last = list.get(3);
            var nearer = new ArrayList<>(list.subList(0, 3));
            nearer.add(new ClosureReading(last.growthTime(), last.openMm() * random.nextDouble()));
            var prior = prior(0.0009, 0.15);
            assertThat(ClosureModel.of(nearer, prior).quantile(0.5, 5))
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(ClosureModel.of(list, prior).quantile(0.5, 5) + 1e-6);
        }
    }

    @Test
    void aHigherRateNeverClosesLater() {
        double before = Double.POSITIVE_INFINITY;
        for (double rate = 0.0006; rate < 0.005; rate += 0.0002) {
            var prior =
                    new ClosurePrior(rate, rate / 2, 300, 0.5, YearSpread.UNKNOWN, 0.0018, 1_900);
            double median = ClosureModel.of(steady(24, 1, 0), prior).quantile(0.5, 5);
            assertThat(median).isLessThanOrEqualTo(before);
            before = median;
        }
    }

    @Test
    void theOrderOfReadingsDoesNotMatter() {
        var list = steady(30, 0.002, 5);
        var turned = new ArrayList<>(list);
        Collections.reverse(turned);
        var prior = prior(0.0009, 0.15);
        assertThat(ClosureModel.of(turned, prior).quantile(0.5, 5))
                .isCloseTo(ClosureModel.of(list, prior).quantile(0.5, 5), within(1e-6));
    }
}
