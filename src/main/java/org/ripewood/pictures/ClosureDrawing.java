package org.ripewood.pictures;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.ripewood.core.growth.Closure;
import org.ripewood.core.season.Outlook;

/**
 * A wound's closing, to be drawn.
 *
 * @param wound what to call the wound, such as its place
 * @param looks open widths measured, the first width among them; any order in, oldest first out
 * @param errorMm what a reading may be off by to either side, 0 or more
 * @param band openings to be expected; any order in, earliest first out; empty without a forecast
 * @param thresholdMm opening from which on it is closed enough, 0 or more
 * @param outlook when that is likely to be; its reason is told when it cannot be said
 * @param today the day that is marked
 */
public record ClosureDrawing(
        String wound,
        List<Closure.Look> looks,
        double errorMm,
        List<Opening> band,
        double thresholdMm,
        Outlook outlook,
        LocalDate today) {

    /**
     * The opening to be expected on a day, in millimetres.
     *
     * @param leastMm in one case of ten it is narrower
     * @param likelyMm in every second case
     * @param mostMm in nine cases of ten
     */
    public record Opening(LocalDate on, double leastMm, double likelyMm, double mostMm) {
        public Opening {
            if (!(leastMm >= 0
                    && likelyMm >= leastMm
                    && mostMm >= likelyMm
                    && mostMm < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "openings of 0 mm or more must follow each other, found %s, %s, %s"
                                .formatted(leastMm, likelyMm, mostMm));
            }
        }
    }

    public ClosureDrawing {
        if (!(errorMm >= 0 && errorMm < Double.POSITIVE_INFINITY)
                || !(thresholdMm >= 0 && thresholdMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "an error and a threshold are 0 mm or more, found %s and %s"
                            .formatted(errorMm, thresholdMm));
        }
        looks = looks.stream().sorted(Comparator.comparing(Closure.Look::on)).toList();
        band = band.stream().sorted(Comparator.comparing(Opening::on)).toList();
    }
}
