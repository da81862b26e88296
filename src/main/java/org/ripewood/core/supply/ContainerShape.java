package org.ripewood.core.supply;

/** The inside of a container: straight walls, upright or leaning, over a level bottom. */
public sealed interface ContainerShape {

    /** Inner depth from rim to bottom, mm. Feet and the bottom's own thickness do not count. */
    double depthMm();

    /** Sizes at the bottom. */
    Footprint bottom();

    /** Sizes at the rim. */
    Footprint top();

    /** Round, a cylinder or a piece of a cone. */
    record Round(double topMm, double bottomMm, double depthMm) implements ContainerShape {
        public Round {
            requireDepth(depthMm);
            Footprint.round(topMm);
            Footprint.round(bottomMm);
        }

        @Override
        public Footprint bottom() {
            return Footprint.round(bottomMm);
        }

        @Override
        public Footprint top() {
            return Footprint.round(topMm);
        }
    }

    /** Oval: an ellipse at every height. */
    record Oval(
            double topLengthMm,
            double topWidthMm,
            double bottomLengthMm,
            double bottomWidthMm,
            double depthMm)
            implements ContainerShape {
        public Oval {
            requireDepth(depthMm);
            new Footprint(Outline.OVAL, topLengthMm, topWidthMm);
            new Footprint(Outline.OVAL, bottomLengthMm, bottomWidthMm);
        }

        @Override
        public Footprint bottom() {
            return new Footprint(Outline.OVAL, bottomLengthMm, bottomWidthMm);
        }

        @Override
        public Footprint top() {
            return new Footprint(Outline.OVAL, topLengthMm, topWidthMm);
        }
    }

    /** Rectangular, with square corners. */
    record Rectangular(
            double topLengthMm,
            double topWidthMm,
            double bottomLengthMm,
            double bottomWidthMm,
            double depthMm)
            implements ContainerShape {
        public Rectangular {
            requireDepth(depthMm);
            new Footprint(Outline.RECTANGULAR, topLengthMm, topWidthMm);
            new Footprint(Outline.RECTANGULAR, bottomLengthMm, bottomWidthMm);
        }

        @Override
        public Footprint bottom() {
            return new Footprint(Outline.RECTANGULAR, bottomLengthMm, bottomWidthMm);
        }

        @Override
        public Footprint top() {
            return new Footprint(Outline.RECTANGULAR, topLengthMm, topWidthMm);
        }
    }

    /**
     * The level cut at a height above the inner bottom; sizes change in a straight line.
     *
     * @throws IllegalArgumentException below the bottom or above the rim
     */
    default Footprint at(double heightMm) {
        requireInside(heightMm);
        double share = heightMm / depthMm();
        return new Footprint(
                top().outline(),
                between(bottom().lengthMm(), top().lengthMm(), share),
                between(bottom().widthMm(), top().widthMm(), share));
    }

    /**
     * What it holds when it is filled to a height above the inner bottom.
     *
     * <p>Formula: the prismatoid's, {@code V = h/6 · (A₀ + 4 A½ + A₁)} with the areas at the
     * bottom, half way up and at the height. It is exact, since an area is a product of two lengths
     * that change in a straight line; for similar ends it is the frustum's {@code h/3 · (A₀ + A₁ +
     * √(A₀A₁))}.
     *
     * <p>Shapes and units: millimetres in, litres out. Edge cases: 0 at the bottom. Limits: corners
     * are taken as square and walls as flat, so a soft-cornered container holds a little less.
     * Source: solid geometry.
     *
     * @throws IllegalArgumentException below the bottom or above the rim
     */
    default double litres(double fillMm) {
        requireInside(fillMm);
        double cubicMm =
                fillMm
                        / 6
                        * (bottom().areaMm2()
                                + 4 * at(fillMm / 2).areaMm2()
                                + at(fillMm).areaMm2());
        return cubicMm / 1e6;
    }

    private void requireInside(double heightMm) {
        if (!(heightMm >= 0 && heightMm <= depthMm())) {
            throw new IllegalArgumentException(
                    "expected a height of 0 to %s mm, found %s".formatted(depthMm(), heightMm));
        }
    }

    private static double between(double bottomMm, double topMm, double share) {
        return bottomMm + (topMm - bottomMm) * share;
    }

    private static void requireDepth(double depthMm) {
        if (!(depthMm > 0 && depthMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a depth is above 0 mm, found " + depthMm);
        }
    }
}
