package org.ripewood.core.supply;

import java.util.Arrays;

/**
 * Container classes of nursery stock, by the volume a container holds.
 *
 * <p>A class is a range of volumes and its number is no number of gallons: what the trade calls a
 * one-gallon container holds 2.5 to 4.1 litres, a US gallon 3.785. So a class is never converted,
 * only looked up. Source: ANSI Z60.1, table of container classes (figures from memory; the standard
 * gives cubic inches).
 */
public enum NurseryClass {
    SP4("SP4", 51, 63),
    SP5("SP5", 93, 136),
    NO_1("#1", 152, 251),
    NO_2("#2", 320, 474),
    NO_3("#3", 628, 742),
    NO_5("#5", 785, 1242),
    NO_7("#7", 1337, 1790),
    NO_10("#10", 2080, 2646),
    NO_15("#15", 2768, 3696),
    NO_20("#20", 4520, 5152),
    NO_25("#25", 5775, 6861);

    /** A cubic inch, exact by the definition of the inch. */
    private static final double LITRES_PER_CUBIC_INCH = 0.016387064;

    private final String label;
    private final int leastCubicInches;
    private final int mostCubicInches;

    NurseryClass(String label, int leastCubicInches, int mostCubicInches) {
        this.label = label;
        this.leastCubicInches = leastCubicInches;
        this.mostCubicInches = mostCubicInches;
    }

    /** As it is printed on containers. */
    public String label() {
        return label;
    }

    /** What containers of this class hold. */
    public Span litres() {
        return new Span(leastCubicInches, mostCubicInches).times(LITRES_PER_CUBIC_INCH);
    }

    /** Where a volume lies among the classes. */
    public sealed interface Place {

        String words();

        /** In a class. */
        record In(NurseryClass of) implements Place {
            @Override
            public String words() {
                return "class " + of.label;
            }
        }

        /** In the gap between two classes, to which no class belongs. */
        record Between(NurseryClass below, NurseryClass above) implements Place {
            @Override
            public String words() {
                return "between the classes %s and %s".formatted(below.label, above.label);
            }
        }

        /** Smaller than the smallest class. */
        record Below(NurseryClass smallest) implements Place {
            @Override
            public String words() {
                return "smaller than class " + smallest.label;
            }
        }

        /** Larger than the largest class. */
        record Above(NurseryClass largest) implements Place {
            @Override
            public String words() {
                return "larger than class " + largest.label;
            }
        }
    }

    /**
     * Where a volume lies.
     *
     * <p>Edge cases: both ends of a class belong to it; classes leave gaps, and a volume in a gap
     * is told to lie between two of them.
     *
     * @throws IllegalArgumentException unless the volume is above 0 and finite
     */
    public static Place of(double litres) {
        if (!(litres > 0 && litres < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a volume is above 0, found " + litres);
        }
        var within =
                Arrays.stream(values())
                        .filter(
                                one ->
                                        litres >= one.litres().low()
                                                && litres <= one.litres().high())
                        .findFirst();
        if (within.isPresent()) {
            return new Place.In(within.get());
        }
        for (int i = 0; i < values().length; i++) {
            if (litres < values()[i].litres().low()) {
                return i == 0
                        ? new Place.Below(values()[0])
                        : new Place.Between(values()[i - 1], values()[i]);
            }
        }
        return new Place.Above(values()[values().length - 1]);
    }
}
