package org.ripewood.core.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class FeedTest {

    private static final double GRAMS_OF_OUNCE = 28.349523125;
    private static final double LITRES_OF_100_GALLONS = 378.5411784;

    /**
     * Grams a litre, from the rule g/l = ppm / (10 · %N). Published: 200 ppm at 10 % takes 2 g/l
     * (ehow.com/how_6857166); 1 g/l of a 20-20-20 gives 200 ppm (hotcoffee.org/Growinfo).
     */
    @ParameterizedTest
    @CsvSource({
        "200, 10, 2.000",
        "200, 20, 1.000",
        "100, 20, 0.500",
        "125, 30, 0.417",
        "50, 15, 0.333"
    })
    void gramsALitre(double mgN, double percentN, double grams) {
        var feed = feed(LiquidFeed.of(mgN, 1, new Product(percentN, 0, 0)));
        assertThat(feed.gramsPerLitre()).isCloseTo(grams, within(0.0005));
    }

    /** Published: calcium nitrate at 15 % N, 250 ppm, 22 oz for 100 gal (Texas A&M University). */
    @Test
    void ouncesForAHundredGallons() {
        var feed = feed(LiquidFeed.of(250, LITRES_OF_100_GALLONS, new Product(15, 0, 0)));
        assertThat(feed.grams() / GRAMS_OF_OUNCE).isCloseTo(22, within(0.3));
    }

    /** Published: P = P₂O₅ · 0.44, K = K₂O · 0.83, so 1 g/l of a 20-20-20 has 88 and 166 mg/l. */
    @Test
    void phosphorusAndPotassiumComeAlong() {
        var feed = feed(LiquidFeed.of(200, 5, new Product(20, 20, 20)));
        assertThat(feed.grams()).isCloseTo(5, within(1e-9));
        assertThat(feed.mgPPerLitre()).isCloseTo(88.0, within(1.0));
        assertThat(feed.mgKPerLitre()).isCloseTo(166.0, within(0.5));
    }

    /**
     * Published by Swanson, University of Minnesota (nurserymag.com): 6 months of a 19 % product
     * take 10.42 lb a cubic yard, 9 months 15.63 lb. He takes 0.33 for a third, hence 1.1 %. A
     * cubic yard is 764.55 l, a pound 453.59 g.
     */
    @ParameterizedTest
    @CsvSource({"6, 10.42", "9, 15.63"})
    void slowFeedForACubicYard(double months, double pounds) {
        var dose = SlowFeed.of(764.554858, months, new Product(19, 6, 12)).find().orElseThrow();
        assertThat(dose.grams() / 453.59237).isCloseTo(pounds, within(0.011 * pounds));
    }

    /** Worked by hand from the same: 0.198 g N · 5 l · 6 months / 0.19 is 31.2 g. */
    @Test
    void slowFeedForAContainer() {
        var dose = SlowFeed.of(5, 6, new Product(19, 0, 0)).find().orElseThrow();
        assertThat(dose.grams()).isCloseTo(31.2, within(0.05));
        assertThat(dose.gramsN()).isCloseTo(5.93, within(0.005));
    }

    @Test
    void everyDoseSaysThatTheLabelDecides() {
        assertThat(LiquidFeed.of(100, 10, new Product(20, 0, 0)).remarks())
                .containsExactlyElementsOf(Feeding.CAUTIONS);
        assertThat(SlowFeed.of(5, 6, new Product(19, 0, 0)).remarks())
                .first()
                .asString()
                .contains("label decides");
        assertThat(LiquidFeed.of(251, 10, new Product(20, 0, 0)).remarks())
                .hasSize(3)
                .first()
                .asString()
                .startsWith("251 mg/l of nitrogen is strong");
    }

    @Test
    void whatCannotBeDosedIsRefusedWithEveryReason() {
        assertThat(LiquidFeed.of(0, 10, new Product(0, 20, 0)).refusals())
                .extracting(Refusal::words)
                .containsExactly(
                        "expected more than 0 and up to 2000 mg/l, found 0",
                        "expected a product with nitrogen, more than 0 %, found 0. Maybe read its"
                                + " label again.");
        assertThat(SlowFeed.of(5, 19, new Product(19, 0, 0)).refusals())
                .extracting(Refusal::field)
                .containsExactly("months");
        assertThat(LiquidFeed.of(Double.NaN, 1, new Product(20, 0, 0)))
                .isInstanceOf(Reckoned.Refused.class);
        assertThatIllegalArgumentException().isThrownBy(() -> new Product(60, 30, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> new Product(-1, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Product(Double.NaN, 0, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LiquidFeed.of(100, 0, new Product(20, 0, 0)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlowFeed.of(Double.NaN, 6, new Product(20, 0, 0)));
    }

    @Test
    void twiceTheWaterTakesTwiceTheFeed() {
        long seed = 4_190;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            double mgN = dice.nextDouble(1, 900);
            double litres = dice.nextDouble(0.5, 300);
            var product = new Product(dice.nextDouble(0.5, 40), 10, 10);
            double once = feed(LiquidFeed.of(mgN, litres, product)).grams();
            var where = "seed %d, case %d".formatted(seed, i);
            assertThat(feed(LiquidFeed.of(mgN, 2 * litres, product)).grams())
                    .as(where)
                    .isCloseTo(2 * once, within(1e-9 * once));
            assertThat(feed(LiquidFeed.of(2 * mgN, litres, product)).grams())
                    .as(where)
                    .isCloseTo(2 * once, within(1e-9 * once));
            assertThat(once * product.percentN() / 100 * 1000 / litres)
                    .as(where + ": the nitrogen in it is what was asked for")
                    .isCloseTo(mgN, within(1e-9 * mgN));
        }
    }

    private static LiquidFeed feed(Reckoned<LiquidFeed> reckoned) {
        return reckoned.find().orElseThrow();
    }
}
