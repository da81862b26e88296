package org.ripewood.core.season;

/** How a species lives through the year; it decides which typical year a tree follows. */
public enum Habit {
    DECIDUOUS,
    EVERGREEN_BROADLEAF,
    EVERGREEN_CONIFER,
    DECIDUOUS_CONIFER,
    TROPICAL
}
