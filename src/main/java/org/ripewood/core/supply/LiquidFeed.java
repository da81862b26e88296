package org.ripewood.core.supply;

import java.util.ArrayList;
import java.util.List;

/**
 * Feed dissolved in water.
 *
 * @param grams of product for all the water
 * @param gramsPerLitre of product
 * @param mgPPerLitre phosphorus it brings along
 * @param mgKPerLitre potassium it brings along
 */
public record LiquidFeed(
        double grams, double gramsPerLitre, double mgPPerLitre, double mgKPerLitre) {

    /** Above this roots may be burnt (common practice, no source). */
    public static final double STRONG_MG_N = 250;

    /** Above this it is a slip of the pen. */
    public static final double MOST_MG_N = 2000;

    /**
     * How much product makes water of a strength.
     *
     * <p>Formula: grams a litre are {@code mg/l N / (10 · %N)}. Edge cases: a product without
     * nitrogen and a strength outside 0 to {@link #MOST_MG_N} are refused; above {@link
     * #STRONG_MG_N} there is a remark. Source: Texas A&amp;M University, greenhouse calculations.
     *
     * @throws IllegalArgumentException unless the water is above 0 litres and finite
     */
    public static Reckoned<LiquidFeed> of(double mgNPerLitre, double waterLitres, Product product) {
        if (!(waterLitres > 0 && waterLitres < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("water is above 0 litres, found " + waterLitres);
        }
        var refusals = new ArrayList<Refusal>();
        if (!(mgNPerLitre > 0 && mgNPerLitre <= MOST_MG_N)) {
            refusals.add(
                    Refusal.of(
                            "mgNPerLitre",
                            "more than 0 and up to %s mg/l".formatted(Plain.number(MOST_MG_N)),
                            mgNPerLitre));
        }
        if (product.percentN() == 0) {
            refusals.add(Feeding.noNitrogen());
        }
        if (!refusals.isEmpty()) {
            return new Reckoned.Refused<>(refusals);
        }
        double gramsPerLitre = mgNPerLitre / (10 * product.percentN());
        return new Reckoned.Found<>(
                new LiquidFeed(
                        gramsPerLitre * waterLitres,
                        gramsPerLitre,
                        10 * gramsPerLitre * product.percentP(),
                        10 * gramsPerLitre * product.percentK()),
                remarks(mgNPerLitre));
    }

    private static List<String> remarks(double mgNPerLitre) {
        var remarks = new ArrayList<String>();
        if (mgNPerLitre > STRONG_MG_N) {
            remarks.add(
                    "%s mg/l of nitrogen is strong, and roots may be burnt. Maybe half of it, twice as often."
                            .formatted(Plain.number(mgNPerLitre)));
        }
        remarks.addAll(Feeding.CAUTIONS);
        return remarks;
    }
}
