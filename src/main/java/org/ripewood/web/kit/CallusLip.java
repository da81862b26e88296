package org.ripewood.web.kit;

/**
 * A wound seen from the front, on a field of 24 by 24: callus grows in from an uneven edge, and
 * bare wood with its grain is left in the middle.
 *
 * @param lip path of the callus, to be filled by the even-odd rule: its outer edge, and inside it
 *     the edge of the wood that is still bare
 * @param grain path of the lines on the bare wood; empty where none is left
 */
record CallusLip(String lip, String grain) {

    /** Outermost radius, and that of the bare wood before any callus has grown. */
    private static final double OUTER = 10.6;

    private static final double BARE_AT_FIRST = 8.8;

    /** A wound that is all but closed still shows a gap that the eye finds. */
    private static final double BARE_AT_LAST = 1.9;

    private static final double CENTRE = 12;

    /** How far an edge lies from a circle, going round; neither repeats within half a turn. */
    private static final double[] OUTER_EDGE = {.2, -.3, .1, .3, -.1, -.4, .3, 0, -.3, .2, .3, -.2};

    private static final double[] INNER_EDGE = {-.5, .4, .1, -.4, .6, .2, -.3, .5, -.6, 0, .4, -.2};

    /** Where the lines of the grain stand, from the middle of the wood. */
    private static final double[] GRAIN = {-5.6, -2.6, .4, 3.2, 6};

    private static final CallusLip[] BY_PERCENT = new CallusLip[101];

    static {
        for (int percent = 0; percent < BY_PERCENT.length; percent++) {
            BY_PERCENT[percent] = drawn(percent);
        }
    }

    /** The callus that has closed that much of a wound; 100 has no gap. */
    static CallusLip of(int percent) {
        return BY_PERCENT[percent];
    }

    private static CallusLip drawn(int percent) {
        var outside = edge(OUTER, OUTER_EDGE);
        if (percent == 100) {
            // the seam where the lips have met
            return new CallusLip(outside, "M12.4 6.5q-1.3 2.6-.3 5.2t-.4 5.8");
        }
        double bare = BARE_AT_LAST + (BARE_AT_FIRST - BARE_AT_LAST) * (100 - percent) / 100;
        return new CallusLip(outside + edge(bare, INNER_EDGE), grain(bare));
    }

    /** A closed curve through the middles between twelve points, which are its control points. */
    private static String edge(double radius, double[] unevenness) {
        int count = unevenness.length;
        var x = new double[count];
        var y = new double[count];
        for (int i = 0; i < count; i++) {
            double turn = 2 * Math.PI * i / count;
            double reach = radius * (1 + unevenness[i] * .15);
            x[i] = CENTRE + reach * Math.sin(turn);
            y[i] = CENTRE - reach * Math.cos(turn);
        }
        var path = new StringBuilder("M").append(between(x, y, count - 1, 0));
        for (int i = 0; i < count; i++) {
            path.append('Q').append(point(x[i], y[i])).append(' ');
            path.append(between(x, y, i, (i + 1) % count));
        }
        return path.append('Z').toString();
    }

    private static String grain(double radius) {
        var path = new StringBuilder();
        for (var across : GRAIN) {
            double room = .72 * radius;
            if (Math.abs(across) < room) {
                double half = Math.sqrt(room * room - across * across);
                path.append('M').append(point(CENTRE + across, CENTRE - half));
                path.append('V').append(tenth(CENTRE + half));
            }
        }
        return path.toString();
    }

    private static String between(double[] x, double[] y, int one, int other) {
        return point((x[one] + x[other]) / 2, (y[one] + y[other]) / 2);
    }

    private static String point(double x, double y) {
        return tenth(x) + " " + tenth(y);
    }

    private static String tenth(double value) {
        return String.valueOf(Math.round(value * 10) / 10.0);
    }
}
