package org.ripewood.sessions;

/** Whether somebody came to a class. */
public enum Presence {
    CAME,
    LATE,
    /** Did not come. */
    AWAY;

    /** Whether they were there at all. */
    public boolean there() {
        return this != AWAY;
    }
}
