package org.ripewood.core.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.supply.Mix.Part;

/** Bark, chips and peat: Int. J. Agronomy 2012, 978528, table 1. */
@Tag("fast")
class MixTest {

    private static final Substrate BARK = known("pine bark", 0.18, 0.48, 0.31, 50.0);
    private static final Substrate PEAT = known("peat", 0.11, 0.87, 0.11, 70.0);

    /** Bulk density plus container capacity, from the same table. */
    @ParameterizedTest
    @CsvSource({"0.18, 0.48, 0.66", "0.22, 0.57, 0.79", "0.19, 0.42, 0.61", "0.11, 0.87, 0.98"})
    void aDrainedLitreWeighsDensityPlusCapacity(double density, double capacity, double kg) {
        var batch = Mix.of(known("one", density, capacity, 0.1, null)).fill(1, 0);
        assertThat(exact(batch.drainedKg())).isCloseTo(kg, within(0.005));
    }

    /** Basaltic tephra, Luque-Escalona 1982, Acta Hort 126:51-56: 0.84 dry, 18.6 % water. */
    @Test
    void lavaIsHeavy() {
        var batch = Mix.of(known("lava", 0.84, 0.186, 0.446, null)).fill(10, 0);
        assertThat(exact(batch.drainedKg())).isCloseTo(10.3, within(0.05));
    }

    /** Worked by hand: 12 · 0.55 = 6.60 dry, 12 · 0.38 = 4.56 of water. */
    @Test
    void twelveLitresWeighElevenKilogramsWet() {
        var batch = Mix.of(known("mix", 0.55, 0.38, 0.25, null)).fill(12, 0);
        assertThat(exact(batch.dryKg())).isCloseTo(6.60, within(1e-9));
        assertThat(exact(batch.drainedKg())).isCloseTo(11.16, within(1e-9));
        assertThat(exact(new PottedTree(batch.drainedKg(), 4.0, 3.0).wetKg()))
                .isCloseTo(18.16, within(1e-9));
    }

    /** Worked by hand: 9 l settle from 10, and 9 · 1.15 = 10.35 are ordered. */
    @Test
    void aMixIsSharedOutByPartsAndInWholeBags() {
        var mix = new Mix(List.of(new Part(BARK, 3), new Part(PEAT, 1)));
        var batch = mix.fill(9, 0.1);
        assertThat(batch.looseLitres()).isCloseTo(10, within(1e-9));
        assertThat(batch.orderLitres()).isCloseTo(10.35, within(1e-9));
        assertThat(batch.lines())
                .extracting(line -> line.substrate().name(), Batch.Line::bagsToOpen)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("pine bark", 1),
                        org.assertj.core.groups.Tuple.tuple("peat", 1));
        assertThat(batch.lines().get(0).litres()).isCloseTo(7.5, within(1e-9));
        assertThat(batch.lines().get(1).orderLitres()).isCloseTo(2.5875, within(1e-9));
        assertThat(exact(batch.dryKg()))
                .as("7.5 · 0.18 + 2.5 · 0.11")
                .isCloseTo(1.625, within(1e-9));
        assertThat(exact(batch.drainedKg()))
                .as("1.625 + 9 · (0.75 · 0.48 + 0.25 · 0.87)")
                .isCloseTo(6.8225, within(1e-9));
    }

    @Test
    void aFullBagIsOneBag() {
        var three = new Substrate("sand", null, null, null, 0.7);
        assertThat(Mix.of(three).fill(2.1, 0).lines().get(0).bagsToOpen())
                .as("2.1 / 0.7 is 3.0000000000000004 in binary")
                .isEqualTo(3);
        assertThat(Mix.of(three).fill(2.11, 0).lines().get(0).bagsToOpen()).isEqualTo(4);
        assertThat(Mix.of(three).fill(0, 0).lines().get(0).bagsToBuy()).isZero();
        assertThat(Mix.of(known("loose", 1, 0.1, 0.1, null)).fill(5, 0).lines().get(0).bagsToBuy())
                .isNull();
    }

    /** Published air space and capacity, mixed by parts; worked by hand. */
    @Test
    void airAndCapacityAreMeansByParts() {
        var mix = new Mix(List.of(new Part(BARK, 3), new Part(PEAT, 1)));
        assertThat(exact(mix.airShare())).isCloseTo(0.26, within(1e-9));
        assertThat(exact(mix.capacityShare())).isCloseTo(0.5775, within(1e-9));
    }

    @Test
    void whatNobodyWeighedIsUnknownAndNeverNothing() {
        var clay = new Substrate("fired clay", null, null, new Span(0.2, 0.3), 14.0);
        var mix = new Mix(List.of(new Part(BARK, 1), new Part(clay, 1)));
        var batch = mix.fill(10, 0.1);
        assertThat(batch.dryKg())
                .isEqualTo(
                        new Estimate.Unknown(List.of("the dry weight of a litre of fired clay")));
        assertThat(batch.drainedKg())
                .isEqualTo(
                        new Estimate.Unknown(
                                List.of(
                                        "the dry weight of a litre of fired clay",
                                        "the container capacity of fired clay")));
        assertThat(mix.airShare()).isEqualTo(new Estimate.Known(new Span(0.255, 0.305)));
        assertThat(new PottedTree(batch.dryKg(), 2.0, null).wetKg())
                .isEqualTo(
                        new Estimate.Unknown(
                                List.of(
                                        "the dry weight of a litre of fired clay",
                                        "the weight of the tree")));
        assertThat(new PottedTree(new Estimate.Known(Span.exactly(3)), null, 1.0).wetKg())
                .isEqualTo(new Estimate.Unknown(List.of("the weight of the container")));
    }

    @Test
    void aRangeStaysARange() {
        var clay = new Substrate("fired clay", new Span(0.5, 0.7), new Span(0.3, 0.4), null, null);
        var batch = Mix.of(clay).fill(10, 0);
        assertThat(((Estimate.Known) batch.drainedKg()).span()).isEqualTo(new Span(8, 11));
        assertThat(((Estimate.Known) batch.dryKg()).span().words()).isEqualTo("5 to 7");
    }

    @Test
    void impossibleMixesAreNotMade() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Mix(List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Part(BARK, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Part(BARK, Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Mix(List.of(new Part(BARK, 1), new Part(BARK, 2))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> known("too full", 0.5, 0.6, 0.5, null));
        assertThatIllegalArgumentException().isThrownBy(() -> known("bag", 0.5, 0.4, 0.1, 0.0));
        assertThatIllegalArgumentException().isThrownBy(() -> Mix.of(BARK).fill(-1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Mix.of(BARK).fill(1, 0.6));
        assertThatIllegalArgumentException().isThrownBy(() -> Mix.of(BARK).fill(1, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new Span(2, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Span(Double.NaN, 1));
    }

    @Test
    void partsMakeUpTheWholeAndMoreToFillTakesMore() {
        long seed = 7_202;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            var parts = new ArrayList<Part>();
            for (int p = 0; p < dice.nextInt(1, 6); p++) {
                double density = dice.nextDouble(0.05, 1.5);
                double capacity = dice.nextDouble(0, 0.9);
                double air = dice.nextDouble(0, 1 - capacity);
                parts.add(
                        new Part(
                                known("s" + p, density, capacity, air, dice.nextDouble(1, 70)),
                                dice.nextDouble(0.1, 9)));
            }
            var mix = new Mix(parts);
            double fill = dice.nextDouble(0, 80);
            double settling = dice.nextDouble(0, 0.5);
            var batch = mix.fill(fill, settling);
            var where = "seed %d, case %d".formatted(seed, i);
            assertThat(batch.lines().stream().mapToDouble(Batch.Line::litres).sum())
                    .as(where)
                    .isCloseTo(batch.looseLitres(), within(1e-9));
            assertThat(batch.orderLitres()).as(where).isGreaterThanOrEqualTo(batch.looseLitres());
            var more = mix.fill(fill + dice.nextDouble(0, 10), settling);
            for (int p = 0; p < parts.size(); p++) {
                var line = batch.lines().get(p);
                assertThat(line.bagsToOpen() * line.substrate().bagLitres())
                        .as(where)
                        .isGreaterThanOrEqualTo(line.litres() - 1e-6)
                        .isLessThan(line.litres() + line.substrate().bagLitres());
                assertThat(line.bagsToBuy()).as(where).isGreaterThanOrEqualTo(line.bagsToOpen());
                assertThat(more.lines().get(p).bagsToOpen())
                        .as(where)
                        .isGreaterThanOrEqualTo(line.bagsToOpen());
            }
            assertThat(exact(batch.drainedKg()))
                    .as(where)
                    .isGreaterThanOrEqualTo(exact(batch.dryKg()))
                    .isLessThanOrEqualTo(exact(more.drainedKg()));
        }
    }

    private static Substrate known(
            String name, double kg, double capacity, double air, @Nullable Double bag) {
        return new Substrate(
                name, Span.exactly(kg), Span.exactly(capacity), Span.exactly(air), bag);
    }

    private static double exact(Estimate estimate) {
        var span = ((Estimate.Known) estimate).span();
        assertThat(span.high()).isCloseTo(span.low(), within(1e-12));
        return span.low();
    }
}
