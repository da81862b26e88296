package org.ripewood.pictures;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.TaperProfile;

/**
 * A trunk with what is on it, to be drawn.
 *
 * @param tree what to call the tree
 * @param profile diameters measured; may be empty
 * @param heightMm height of the tree; null when not measured
 * @param wounds numbered 1, 2, 3 … in this order
 * @param branches lettered A, B, C … in this order
 */
public record TrunkDrawing(
        String tree,
        TaperProfile profile,
        @Nullable Double heightMm,
        List<WoundPlace> wounds,
        List<BranchPlace> branches) {

    /** What is smaller is drawn as if it were as large. */
    private static final double LEAST_MM = 0.1;

    public TrunkDrawing {
        Checked.lengths(tree, heightMm);
        wounds = List.copyOf(wounds);
        branches = List.copyOf(branches);
    }

    /**
     * The tree's height, or the highest place known and some more when that lies higher; 100 mm
     * when there is none.
     */
    double topMm() {
        double top = heightMm == null ? 0 : heightMm;
        for (var reading : profile.readings()) {
            top = Math.max(top, reading.heightMm());
        }
        for (var wound : wounds) {
            top = Math.max(top, withRoom(wound.heightMm(), top));
        }
        for (var branch : branches) {
            top = Math.max(top, withRoom(branch.heightMm(), top));
        }
        return top > 0 ? Math.max(top, LEAST_MM) : 100;
    }

    private static double withRoom(@Nullable Double heightMm, double top) {
        if (heightMm == null || heightMm < top) {
            return top;
        }
        return Math.min(heightMm * 1.15, Double.MAX_VALUE);
    }

    /** Greatest diameter measured; a tenth of the height when there is none. */
    double widestMm() {
        double widest = 0;
        for (var reading : profile.readings()) {
            widest = Math.max(widest, reading.diameterMm());
        }
        return widest > 0 ? Math.max(widest, LEAST_MM) : topMm() / 10;
    }

    /**
     * Radius at a height: straight between two marks; as the nearest mark beyond them, but thinning
     * to a third at the tree's tip where that lies higher.
     */
    double radiusMm(double heightMm) {
        var readings = profile.readings();
        if (readings.isEmpty()) {
            return widestMm() / 2;
        }
        var below = readings.get(0);
        if (heightMm <= below.heightMm()) {
            return below.diameterMm() / 2;
        }
        for (var reading : readings) {
            if (reading.heightMm() >= heightMm) {
                double share =
                        (heightMm - below.heightMm()) / (reading.heightMm() - below.heightMm());
                return (below.diameterMm() * (1 - share) + reading.diameterMm() * share) / 2;
            }
            below = reading;
        }
        double left = topMm() - below.heightMm();
        double share = left > 0 ? (heightMm - below.heightMm()) / left : 0;
        return below.diameterMm() / 2 * (1 - share * 2 / 3);
    }

    static String letter(int index) {
        char last = (char) ('A' + index % 26);
        return index < 26 ? String.valueOf(last) : letter(index / 26 - 1) + last;
    }
}
