package org.ripewood.core.progress;

/** Whether an instructor may let a reason pass. */
public enum Strength {
    /** The health of tree or person stands behind it: never waived. */
    MUST,
    /** A judgement of teaching: an instructor may waive it with a reason that is kept. */
    SHOULD
}
