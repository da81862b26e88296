package org.ripewood.core.bench;

import java.util.List;

/**
 * What is done in one go: a phase, or an inspection and the cut right after it.
 *
 * @param job its place in the model
 * @param firstPhase of the job, the first one in it
 * @param phases one or two
 * @param minutes from start to end, open ones
 * @param taughtMinutes from its start for which an instructor is needed; 0 for none
 * @param interrupted starts at which a break for all would fall into what must not pause
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
        Minutes interrupted,
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
