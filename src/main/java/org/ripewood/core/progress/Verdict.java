package org.ripewood.core.progress;

/** What may happen with a technique on a tree on a day. */
public enum Verdict {
    /** Everything asked for is met and the season is open. */
    READY,
    /** Something measured is not met. */
    HELD,
    /** Nothing known fails, but evidence is missing or too old. */
    MEASURE,
    /** All is met; the growth stage is not the right one. */
    SEASON,
    /** The student has not shown the skill yet. */
    LESSON,
    /** Signed off, and not yet due again. */
    DONE,
    /** This tree does not need it. */
    NOT_NEEDED
}
