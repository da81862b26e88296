package org.ripewood.core.bench;

import java.util.Arrays;

/**
 * The first open minute by which a day's jobs can all be done.
 *
 * <p>The largest of: each student's own work; and, for instructors and each tool, any set of blocks
 * that cannot begin before a head and after which a tail is left: from the head the load takes
 * until the minutes of all who are there add up to it, and then comes the tail. Source: Carlier
 * 1982, "The one-machine sequencing problem", European Journal of Operational Research 11, over all
 * sets given by a least head and a least tail, with instructors counted together.
 */
final class FinishBound {

    private final DayModel model;
    private final int[] jobs;
    private int bound;

    private FinishBound(DayModel model, int[] jobs) {
        this.model = model;
        this.jobs = jobs;
    }

    static int of(DayModel model, int[] jobs) {
        var finish = new FinishBound(model, jobs);
        finish.students();
        finish.instructors();
        for (int tool = 0; tool < model.tools.size(); tool++) {
            finish.tool(tool);
        }
        return finish.bound;
    }

    private void students() {
        var ready = new int[model.students];
        var minutes = new int[model.students];
        Arrays.fill(ready, model.length());
        for (int job : jobs) {
            int student = model.student[job];
            ready[student] = Math.min(ready[student], model.ready[job]);
            minutes[student] += model.minutes(job);
            bound = Math.max(bound, model.ready[job] + model.minutes(job));
        }
        for (int s = 0; s < ready.length; s++) {
            bound = minutes[s] == 0 ? bound : Math.max(bound, ready[s] + minutes[s]);
        }
    }

    private void instructors() {
        var there = new int[model.length()];
        for (var away : model.away) {
            for (int at = 0; at < there.length; at++) {
                there[at] += away.holds(at) ? 0 : 1;
            }
        }
        load(there, -1);
    }

    private void tool(int tool) {
        load(model.free[tool], tool);
    }

    /** Heads, loads and tails of blocks on instructors, or on a tool. */
    private void load(int[] there, int tool) {
        int count = 0;
        var heads = new int[model.blocks.size()];
        var loads = new int[heads.length];
        var tails = new int[heads.length];
        for (int job : jobs) {
            int head = model.ready[job];
            int left = model.minutes(job);
            for (int b = model.firstBlock[job]; b < model.firstBlock[job + 1]; b++) {
                var block = model.blocks.get(b);
                int from = fromMinute(block, tool);
                int to = toMinute(block, tool);
                if (to > from) {
                    heads[count] = head + from;
                    loads[count] = to - from;
                    tails[count++] = left - to;
                }
                head += block.minutes();
                left -= block.minutes();
            }
        }
        raise(there, Arrays.copyOf(heads, count), loads, tails);
    }

    private static int fromMinute(Block block, int tool) {
        return block.tools().stream()
                .filter(hold -> hold.tool() == tool)
                .mapToInt(Block.Hold::fromMinute)
                .min()
                .orElse(0);
    }

    private static int toMinute(Block block, int tool) {
        return tool < 0
                ? block.taughtMinutes()
                : block.tools().stream()
                        .filter(hold -> hold.tool() == tool)
                        .mapToInt(Block.Hold::toMinute)
                        .max()
                        .orElse(0);
    }

    private void raise(int[] there, int[] heads, int[] loads, int[] tails) {
        for (int head : Arrays.stream(heads).distinct().toArray()) {
            for (int tail : Arrays.stream(tails, 0, heads.length).distinct().toArray()) {
                int load = 0;
                for (int i = 0; i < heads.length; i++) {
                    load += heads[i] >= head && tails[i] >= tail ? loads[i] : 0;
                }
                if (load == 0) {
                    continue;
                }
                int at = head;
                while (load > 0 && at < there.length) {
                    load -= there[at++];
                }
                bound = Math.max(bound, at + tail);
            }
        }
    }
}
