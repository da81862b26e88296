package org.ripewood.aftercare;

/** What somebody says of a task. */
public enum Saying {
    DONE,
    NOT_NEEDED,
    /** What was said before was a slip. */
    TAKEN_BACK
}
