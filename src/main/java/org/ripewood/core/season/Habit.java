package org.ripewood.core.season;

/** How a species lives through the year; it decides which typical year a tree follows. */
public enum Habit {
    DECIDUOUS,
    EVERGREEN_BROADLEAF,
    EVERGREEN_CONIFER,
    DECIDUOUS_CONIFER,
    TROPICAL;

    /** Leaves turn and fall from here, and cannot be graded until the new ones are out. */
    private static final int LEAVES_TURN = 93;

    private static final int LEAVES_OUT = 11;

    /**
     * Whether trees of the habit stand without leaves in their season.
     *
     * @param stage vegetative BBCH code, 0 to 99
     */
    public boolean bareAt(int stage) {
        return (this == DECIDUOUS || this == DECIDUOUS_CONIFER)
                && (stage >= LEAVES_TURN || stage < LEAVES_OUT);
    }
}
