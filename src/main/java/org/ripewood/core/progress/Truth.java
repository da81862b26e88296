package org.ripewood.core.progress;

/** Kleene's three-valued logic: what is not known is never taken for met. */
@SuppressWarnings("EnumOrdinal") // the order is the logic
public enum Truth {
    NO,
    UNKNOWN,
    YES;

    private static final Truth[] BY_ORDINAL = values();

    public static Truth of(boolean known) {
        return known ? YES : NO;
    }

    /** Met only if both are; not met as soon as one is not. */
    public Truth and(Truth other) {
        return BY_ORDINAL[Math.min(ordinal(), other.ordinal())];
    }

    /** Met as soon as one is; not met only if neither is. */
    public Truth or(Truth other) {
        return BY_ORDINAL[Math.max(ordinal(), other.ordinal())];
    }

    /** The unknown stays unknown. */
    public Truth not() {
        return BY_ORDINAL[YES.ordinal() - ordinal()];
    }
}
