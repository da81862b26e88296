package org.ripewood.aftercare;

import java.time.LocalDate;

/**
 * A day by which something on a tree is to be measured again, or what is known of it grows too old
 * for the techniques that ask for it.
 *
 * @param measuredOn the day it was measured last
 * @param by last day on which that measure counts
 */
public record MeasuringDay(
        long treeId, String tree, Subject subject, LocalDate measuredOn, LocalDate by) {

    /** What is measured. */
    public enum Subject {
        WOUNDS,
        TRUNK
    }

    /** Names it within the tree. */
    public String id() {
        return treeId + "-" + subject.name().toLowerCase(java.util.Locale.ROOT) + "-" + measuredOn;
    }
}
