package org.ripewood.core.season;

import java.util.Arrays;

/**
 * At which progress each growth stage begins: stages and shares, both rising.
 *
 * <p>Below the first share the stage is 00.
 */
final class StageScale {

    /** A hair below the next stage's beginning, in shares. */
    private static final double HAIR = 1e-9;

    private final int[] stages;
    private final double[] shares;

    StageScale(int[] stages, double[] shares) {
        if (stages.length != shares.length || stages.length == 0) {
            throw new IllegalArgumentException(
                    "as many shares as stages are needed, found %d and %d"
                            .formatted(shares.length, stages.length));
        }
        for (int i = 1; i < stages.length; i++) {
            if (!(stages[i] > stages[i - 1] && shares[i] > shares[i - 1])) {
                throw new IllegalArgumentException("stages and shares must rise at " + stages[i]);
            }
        }
        this.stages = stages.clone();
        this.shares = shares.clone();
    }

    int stageAt(double progress) {
        int found = Arrays.binarySearch(shares, progress);
        int reached = found >= 0 ? found : -found - 2;
        return reached < 0 ? 0 : stages[reached];
    }

    /**
     * How far a tree seen in a stage is ahead of a progress (behind: negative), by the least that
     * brings the two together. A stage between two of the scale lies between their shares.
     */
    double lead(int seen, double progress) {
        double begins = begins(seen);
        double ends = ends(seen);
        return progress < begins ? begins - progress : Math.min(0, ends - HAIR - progress);
    }

    private double begins(int stage) {
        int found = Arrays.binarySearch(stages, stage);
        if (found >= 0) {
            return shares[found];
        }
        int next = -found - 1;
        if (next == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        if (next == stages.length) {
            return shares[next - 1];
        }
        double into = (double) (stage - stages[next - 1]) / (stages[next] - stages[next - 1]);
        return shares[next - 1] + into * (shares[next] - shares[next - 1]);
    }

    private double ends(int stage) {
        int found = Arrays.binarySearch(stages, stage);
        int next = found >= 0 ? found + 1 : -found - 1;
        return next == stages.length ? Double.POSITIVE_INFINITY : shares[next];
    }
}
