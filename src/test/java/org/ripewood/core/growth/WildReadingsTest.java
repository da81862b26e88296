package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.core.growth.Thickening.Reading;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Outlook;

/** Slips of the hand get on record; whatever was read, the forecast stays a number. */
@Tag("fast")
class WildReadingsTest {

    private static final LocalDate FIRST = LocalDate.of(2015, 3, 1);
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);
    private static final int TREES = 100;

    /** What wounds of the kind are believed to do: lag, rate and its spread from memory. */
    private static final ClosurePrior PRIOR =
            new ClosurePrior(3, 1, 0.1, 0.5, YearSpread.UNKNOWN, 3, 1);

    /** Years of good readings, then a point slipped by one place. */
    @Test
    void aValueTenTimesTooSmallIsForecast() {
        requireNumbers(
                List.of(
                        new Reading(LocalDate.of(2023, 4, 10), 90),
                        new Reading(LocalDate.of(2024, 3, 25), 93),
                        new Reading(LocalDate.of(2025, 4, 9), 96),
                        new Reading(LocalDate.of(2026, 5, 4), 98),
                        new Reading(LocalDate.of(2026, 11, 14), 98),
                        new Reading(LocalDate.of(2026, 11, 25), 9.8)));
    }

    @Test
    void aTrunkThatFellByAlmostTwoMetresIsForecast() {
        requireNumbers(
                IntStream.range(0, 40)
                        .mapToObj(i -> new Reading(FIRST.plusDays(90L * i), 1900 - 48.0 * i))
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void diametersOfEveryKindAreForecast(long seed) {
        var dice = new SplittableRandom(seed);
        for (int tree = 0; tree < TREES; tree++) {
            var readings = new ArrayList<Reading>();
            var on = FIRST;
            double mm = dice.nextDouble(5, 100);
            for (int i = dice.nextInt(1, 12); i > 0; i--) {
                on = on.plusDays(new int[] {0, 1, 30, 200, 365, 900}[dice.nextInt(6)]);
                mm += dice.nextDouble(-2, 5);
                readings.add(new Reading(on, wild(dice, mm)));
            }
            requireNumbers(readings);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void openingsOfEveryKindAreForecast(long seed) {
        var dice = new SplittableRandom(seed);
        for (int wound = 0; wound < TREES; wound++) {
            var readings = new ArrayList<ClosureReading>();
            double x = 0;
            for (int i = dice.nextInt(1, 12); i > 0; i--) {
                readings.add(new ClosureReading(x, wild(dice, 30 - 3 * x)));
                x += new double[] {0, 1e-7, 0.1, 1, 3}[dice.nextInt(5)];
            }
            var model = ClosureModel.of(readings, PRIOR);
            for (double probability : new double[] {0.1, 0.5, 0.9}) {
                assertThat(model.openMmAt(x + 2, probability)).as("%s", readings).isFinite();
                assertThat(model.quantile(probability, 0.5)).as("%s", readings).isNotNaN();
            }
            assertThat(model.probabilityBy(x + 2, 0.5)).as("%s", readings).isBetween(0.0, 1.0);
        }
    }

    private static double wild(SplittableRandom dice, double value) {
        double sound = Math.max(0, value);
        return switch (dice.nextInt(8)) {
            case 0 -> sound / 10;
            case 1 -> Math.min(2000, sound * 10);
            case 2 -> 0;
            case 3 -> 1900;
            case 4 -> 0.01;
            default -> sound;
        };
    }

    private static void requireNumbers(List<Reading> readings) {
        for (var prior : List.of(Thickening.IN_TRAINING, new Increment(0, 0.01))) {
            var thickening = Thickening.of(readings, prior, GrowthDays.plain());
            assertThat(thickening.increment().radialMm()).as("%s", readings).isFinite();
            assertThat(thickening.increment().sdMm()).as("%s", readings).isFinite();
            for (double mm : new double[] {0, 50, 120, 3000}) {
                assertThat(thickening.whenAtLeast(mm, TODAY)).isInstanceOf(Outlook.class);
            }
            for (var band : thickening.band(List.of(FIRST, TODAY, TODAY.plusYears(10)))) {
                assertThat(new double[] {band.lowMm(), band.middleMm(), band.highMm()})
                        .as("%s", readings)
                        .doesNotContain(
                                Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
            }
        }
    }
}
