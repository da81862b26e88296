package org.ripewood.core.progress;

/** How fast a kind of tree recovers from work, against the rest. Common practice, no source. */
public enum RecoveryPace {
    SLOW(0.8),
    USUAL(1),
    FAST(1.2);

    private final double factor;

    RecoveryPace(double factor) {
        this.factor = factor;
    }

    /** By what the pace of recovery is multiplied. */
    double factor() {
        return factor;
    }
}
