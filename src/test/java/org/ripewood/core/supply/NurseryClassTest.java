package org.ripewood.core.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.core.supply.NurseryClass.Place;

/**
 * Cubic inches of ANSI Z60.1 are from memory; litres are worked by hand at 16.387064 cm³ to the
 * cubic inch. Substrate trials fill class #1 with 2.8 l (HortScience 59(10):1477).
 */
@Tag("fast")
class NurseryClassTest {

    @ParameterizedTest
    @CsvSource({
        "SP4, 0.84, 1.03",
        "SP5, 1.52, 2.23",
        "NO_1, 2.49, 4.11",
        "NO_2, 5.24, 7.77",
        "NO_3, 10.29, 12.16",
        "NO_5, 12.86, 20.35",
        "NO_7, 21.91, 29.33",
        "NO_10, 34.09, 43.36",
        "NO_15, 45.36, 60.57",
        "NO_20, 74.07, 84.43",
        "NO_25, 94.64, 112.43"
    })
    void eachClassHoldsARangeOfLitres(NurseryClass of, double low, double high) {
        assertThat(of.litres().low()).isCloseTo(low, within(0.005));
        assertThat(of.litres().high()).isCloseTo(high, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({
        "0.5,    smaller than class SP4",
        "2.8,    class #1",
        "2.0,    class SP5",
        "4.5,    between the classes #1 and #2",
        "12.5,   between the classes #3 and #5",
        "18.93,  class #5",
        "90,     between the classes #20 and #25",
        "112.4,  class #25",
        "113,    larger than class #25"
    })
    void aVolumeHasItsPlace(double litres, String words) {
        assertThat(NurseryClass.of(litres).words()).isEqualTo(words);
    }

    /** A US gallon is 3.785 l, and five of them 18.9 l; class #3 starts below three gallons. */
    @Test
    void aClassIsNoNumberOfGallons() {
        assertThat(NurseryClass.of(3 * 3.785)).isEqualTo(new Place.In(NurseryClass.NO_3));
        assertThat(NurseryClass.of(2 * 3.785)).isEqualTo(new Place.In(NurseryClass.NO_2));
        assertThat(NurseryClass.of(7 * 3.785)).isEqualTo(new Place.In(NurseryClass.NO_7));
        assertThat(NurseryClass.of(25 * 3.785)).as("94.6 l").isInstanceOf(Place.Between.class);
    }

    @Test
    void everyVolumeHasOnePlaceAndLargerOnesNeverAnEarlierOne() {
        long seed = 771;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < 1000; i++) {
            double litres = dice.nextDouble(0.1, 130);
            double more = litres + dice.nextDouble(0, 30);
            assertThat(rank(NurseryClass.of(more)))
                    .as("seed %d, case %d: %s and %s", seed, i, litres, more)
                    .isGreaterThanOrEqualTo(rank(NurseryClass.of(litres)));
        }
        for (var one : NurseryClass.values()) {
            assertThat(NurseryClass.of(one.litres().low())).isEqualTo(new Place.In(one));
            assertThat(NurseryClass.of(one.litres().high())).isEqualTo(new Place.In(one));
        }
    }

    private static double rank(Place place) {
        if (place instanceof Place.In in) {
            return List.of(NurseryClass.values()).indexOf(in.of());
        }
        if (place instanceof Place.Between between) {
            return List.of(NurseryClass.values()).indexOf(between.below()) + 0.5;
        }
        return place instanceof Place.Below ? -1 : NurseryClass.values().length;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void noVolumeHasNoPlace(double litres) {
        assertThatIllegalArgumentException().isThrownBy(() -> NurseryClass.of(litres));
    }
}
