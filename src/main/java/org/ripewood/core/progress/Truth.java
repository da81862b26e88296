package org.ripewood.core.progress;

/** Kleene's three-valued logic: what is not known is never taken for met. */
public enum Truth {
    NO,
    UNKNOWN,
    YES;

    public static Truth of(boolean known) {
        return known ? YES : NO;
    }

    /** Met only if both are; not met as soon as one is not. */
    public Truth and(Truth other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** Met as soon as one is; not met only if neither is. */
    public Truth or(Truth other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** The unknown stays unknown. */
    public Truth not() {
        return switch (this) {
            case NO -> YES;
            case UNKNOWN -> UNKNOWN;
            case YES -> NO;
        };
    }
}
