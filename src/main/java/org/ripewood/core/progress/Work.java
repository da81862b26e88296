package org.ripewood.core.progress;

import java.time.LocalDate;

/**
 * Work done on a tree, as the ledgers count it.
 *
 * @param stress the load it put on the tree, 0 to 10
 * @param recoveryDays days over which the load falls to nothing
 * @param foliageShare share of the foliage taken, 0 to 1
 * @param rootShare share of the roots taken, 0 to 1
 */
public record Work(
        String technique,
        LocalDate doneOn,
        double stress,
        int recoveryDays,
        double foliageShare,
        double rootShare) {

    public Work {
        if (!(stress >= 0 && stress <= 10)) {
            throw new IllegalArgumentException("stress runs from 0 to 10, found " + stress);
        }
        if (recoveryDays < 0) {
            throw new IllegalArgumentException("recovery days must not be negative");
        }
        requireShare(foliageShare);
        requireShare(rootShare);
    }

    public boolean heavy() {
        return stress >= TechniqueRule.HEAVY_STRESS;
    }

    private static void requireShare(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("a share lies between 0 and 1, found " + share);
        }
    }
}
