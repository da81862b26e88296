package org.ripewood.core.supply;

/**
 * A level cut through a container or a root ball.
 *
 * @param lengthMm the diameter where it is round
 * @param widthMm as the length where it is round
 */
public record Footprint(Outline outline, double lengthMm, double widthMm) {

    /**
     * @throws IllegalArgumentException when a size is not above 0 and finite, or a round one has
     *     two diameters
     */
    public Footprint {
        if (!(lengthMm > 0 && widthMm > 0 && lengthMm + widthMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "sizes are above 0, found %s by %s mm".formatted(lengthMm, widthMm));
        }
        if (outline == Outline.ROUND && lengthMm != widthMm) {
            throw new IllegalArgumentException(
                    "what is round has one diameter, found %s and %s mm"
                            .formatted(lengthMm, widthMm));
        }
    }

    public static Footprint round(double diameterMm) {
        return new Footprint(Outline.ROUND, diameterMm, diameterMm);
    }

    /** Area of the ellipse {@code π/4 · length · width}, or of the rectangle. */
    public double areaMm2() {
        return (outline == Outline.RECTANGULAR ? 1 : Math.PI / 4) * lengthMm * widthMm;
    }

    /** The longer of both sizes. */
    public double longerMm() {
        return Math.max(lengthMm, widthMm);
    }

    /** The shorter of both sizes. */
    public double shorterMm() {
        return Math.min(lengthMm, widthMm);
    }

    /**
     * Whether this lies inside another one, both with one centre and the longer side along the
     * longer side.
     *
     * <p>Formula: an ellipse lies in an ellipse or a rectangle, and a rectangle in a rectangle,
     * when neither size exceeds the other's; a rectangle lies in an ellipse when its corners do,
     * {@code (l/L)² + (w/W)² ≤ 1}. Edge cases: the same size fits. Limits: turned askew a rectangle
     * may fit where this says no. Source: plane geometry.
     */
    boolean fitsIn(Footprint other) {
        return excess(other) <= 1 + 1e-12;
    }

    /** How many times too large this is for another one; at most 1 when it fits. */
    private double excess(Footprint other) {
        double along = longerMm() / other.longerMm();
        double across = shorterMm() / other.shorterMm();
        boolean byCorners = outline == Outline.RECTANGULAR && other.outline != Outline.RECTANGULAR;
        return byCorners ? Math.hypot(along, across) : Math.max(along, across);
    }

    /**
     * What is left of this when it is cut to fit into another one, long side first.
     *
     * <p>Formula: each size cut to the other's; a rectangle that must fit an ellipse is shortened
     * on both sides by one factor.
     */
    Footprint cutTo(Footprint other) {
        if (fitsIn(other)) {
            return this;
        }
        if (outline == Outline.RECTANGULAR && other.outline != Outline.RECTANGULAR) {
            double factor = 1 / excess(other);
            return new Footprint(outline, longerMm() * factor, shorterMm() * factor);
        }
        double length = Math.min(longerMm(), other.longerMm());
        double width = Math.min(shorterMm(), other.shorterMm());
        var kept = outline == Outline.ROUND && length != width ? Outline.OVAL : outline;
        return new Footprint(kept, length, width);
    }

    /** Half the difference of the sizes where it is smallest: the room left at the sides, mm. */
    double roomIn(Footprint other) {
        return Math.min(other.longerMm() - longerMm(), other.shorterMm() - shorterMm()) / 2;
    }

    /** Such as {@code 320 × 240 mm}. */
    public String words() {
        return outline == Outline.ROUND
                ? Plain.mm(lengthMm) + " mm across"
                : "%s × %s mm".formatted(Plain.mm(longerMm()), Plain.mm(shorterMm()));
    }
}
