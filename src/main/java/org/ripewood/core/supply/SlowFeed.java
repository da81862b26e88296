package org.ripewood.core.supply;

import java.util.ArrayList;

/**
 * Feed that releases itself over months, mixed into the substrate or laid on it.
 *
 * @param grams of product for the container
 * @param gramsN nitrogen in it
 */
public record SlowFeed(double grams, double gramsN) {

    /** A third of a pound of nitrogen for a cubic yard of substrate and month of growth. */
    static final double GRAMS_N_PER_LITRE_AND_MONTH = 453.59237 / 3 / 764.554857984;

    public static final double MOST_MONTHS = 18;

    /**
     * The dose for a container.
     *
     * <p>Formula: a third of a pound of nitrogen a cubic yard and month of growth, 0.198 g a litre.
     * Edge cases: a product without nitrogen, and months outside 0 to {@link #MOST_MONTHS}, are
     * refused. Limits: coats release faster in warmth. Source: Swanson, University of Minnesota, in
     * Nursery Management.
     *
     * @throws IllegalArgumentException unless the container holds more than 0 litres
     */
    public static Reckoned<SlowFeed> of(double containerLitres, double months, Product product) {
        if (!(containerLitres > 0 && containerLitres < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a container holds more than 0 litres, found " + containerLitres);
        }
        var refusals = new ArrayList<Refusal>();
        if (!(months > 0 && months <= MOST_MONTHS)) {
            refusals.add(
                    Refusal.of(
                            "months",
                            "more than 0 and up to %s months".formatted(Plain.number(MOST_MONTHS)),
                            months));
        }
        if (product.percentN() == 0) {
            refusals.add(Feeding.noNitrogen());
        }
        if (!refusals.isEmpty()) {
            return new Reckoned.Refused<>(refusals);
        }
        double gramsN = GRAMS_N_PER_LITRE_AND_MONTH * containerLitres * months;
        return new Reckoned.Found<>(
                new SlowFeed(100 * gramsN / product.percentN(), gramsN), Feeding.CAUTIONS);
    }
}
