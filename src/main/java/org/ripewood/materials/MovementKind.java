package org.ripewood.materials;

/** Why an amount changed. */
public enum MovementKind {
    /** So much came. */
    RECEIVED,
    /** So much went. */
    TAKEN,
    /** So much was found when somebody counted. */
    COUNTED
}
