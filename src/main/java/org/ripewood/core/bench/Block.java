package org.ripewood.core.bench;

import java.util.List;

/**
 * What is done in one go at one tree: from where an instructor comes, or the work begins, to where
 * the next instructor is asked for. A student leaves a tree between blocks alone, that is where it
 * has to wait for an instructor's look.
 *
 * @param job its place in the model
 * @param firstPhase of the job, the first one in it
 * @param phases one or more, at most the first two of them taught
 * @param minutes from start to end, open ones
 * @param taughtMinutes from its start for which an instructor is needed; 0 for none
 * @param barred starts at which a break for all, or the lesson, would fall into what must not
 *     pause, or would cut off too short a piece of work
 * @param tools what it holds
 * @param before the place of the instructor in the plan in force; -1 for none
 * @param startBefore the open minute it starts in the plan in force; -1 for none
 */
record Block(
        int job,
        int firstPhase,
        List<WorkPhase> phases,
        int minutes,
        int taughtMinutes,
        Minutes barred,
        List<Hold> tools,
        int before,
        int startBefore) {

    /**
     * A tool in use.
     *
     * @param fromMinute after the block's start
     */
    record Hold(int tool, int fromMinute, int toMinute) {}

    boolean taught() {
        return taughtMinutes > 0;
    }
}
