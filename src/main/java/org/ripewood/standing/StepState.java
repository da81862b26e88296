package org.ripewood.standing;

/** Where an assigned step is. */
public enum StepState {
    /** The student may do it. */
    ASSIGNED,
    /** The student says it is done; an instructor has to look. */
    REPORTED,
    /** The instructor wants something put right. */
    SENT_BACK,
    /** Done and seen. */
    SIGNED_OFF,
    /** Taken back before it was done. */
    WITHDRAWN,
    /** Found already done, before the tree or its record came to the school. */
    FOUND_DONE
}
