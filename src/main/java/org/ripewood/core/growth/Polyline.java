package org.ripewood.core.growth;

/** Straight lines from point to point. */
final class Polyline {

    private Polyline() {}

    /**
     * The height of the line at a place; level before its first point and after its last.
     *
     * @param at places of the points, rising
     * @param heights as many
     */
    static double along(double place, double[] at, double[] heights) {
        if (place <= at[0]) {
            return heights[0];
        }
        for (int i = 1; i < at.length; i++) {
            if (place < at[i]) {
                double share = (place - at[i - 1]) / (at[i] - at[i - 1]);
                return heights[i - 1] + share * (heights[i] - heights[i - 1]);
            }
        }
        return heights[heights.length - 1];
    }
}
