package org.ripewood.aftercare;

/**
 * What a word is said of.
 *
 * @param time how many times the task has come after that work: 1 for the first
 */
record TaskKey(long workId, String task, int time) {

    /** As it stands in addresses. */
    String text() {
        return workId + "-" + task + "-" + time;
    }
}
