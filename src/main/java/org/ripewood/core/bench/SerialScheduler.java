package org.ripewood.core.bench;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Puts blocks on the day one after another, each as early as it fits: serial schedule generation.
 *
 * <p>But for the cost of coming back to a tree no cost falls when something ends later, so some
 * order leads to a plan that no plan with the same instructors beats by more than that; {@link
 * #asked} may name them. Source: Sprecher, Kolisch and Drexl 1995, "Semi-active, active, and
 * non-delay schedules for the resource-constrained project scheduling problem", European Journal of
 * Operational Research 80.
 */
final class SerialScheduler {

    /** The cost of a job left out outweighs all else. */
    static final long JOB = 2_000_000_000_000_000L;

    /** The cost of a thousandth of usefulness left out outweighs all waiting. */
    private static final long USEFULNESS = 5_000_000L;

    private final DayModel model;
    private final Minutes[] taught;
    private final Minutes[] atWork;
    private final Minutes[] allHeld;
    private final int[][] held;
    private final int[] next;
    private final int[] freeFrom;

    /** By block the only instructor to be asked; -1 for whoever can begin first. */
    final int[] asked;

    /** By block the open minute it starts; -1 where it has no place. */
    final int[] start;

    /** By block the instructor's place; -1 for none. */
    final int[] by;

    /** By job whether it is done. */
    final boolean[] done;

    SerialScheduler(DayModel model) {
        this.model = model;
        int length = model.length();
        taught = sets(model.away.length, length);
        atWork = sets(model.students, length);
        allHeld = sets(model.tools.size(), length);
        held = new int[model.tools.size()][length];
        next = new int[model.jobs.size()];
        freeFrom = new int[model.jobs.size()];
        asked = new int[model.blocks.size()];
        Arrays.fill(asked, -1);
        start = new int[model.blocks.size()];
        by = new int[model.blocks.size()];
        done = new boolean[model.jobs.size()];
    }

    private static Minutes[] sets(int count, int length) {
        var sets = new Minutes[count];
        Arrays.setAll(sets, unused -> new Minutes(length));
        return sets;
    }

    /** Whether a job alone fits into the day. */
    static boolean alone(DayModel model, int job) {
        var placing = new SerialScheduler(model);
        placing.begin();
        for (int b = model.firstBlock[job]; b < model.blocks.size(); b++) {
            if (!placing.put(b, placing.freeFrom[job])) {
                return false;
            }
            placing.freeFrom[job] = placing.start[b] + model.blocks.get(b).minutes();
        }
        return true;
    }

    private void begin() {
        for (int k = 0; k < taught.length; k++) {
            taught[k].copyFrom(model.away[k]);
        }
        for (var set : atWork) {
            set.clear();
        }
        for (int i = 0; i < held.length; i++) {
            allHeld[i].clear();
            System.arraycopy(model.free[i], 0, held[i], 0, held[i].length);
            for (int at = 0; at < held[i].length; at++) {
                if (held[i][at] == 0) {
                    allHeld[i].add(at);
                }
            }
        }
        System.arraycopy(model.firstBlock, 0, next, 0, next.length);
        System.arraycopy(model.ready, 0, freeFrom, 0, freeFrom.length);
        Arrays.fill(start, -1);
        Arrays.fill(by, -1);
        Arrays.fill(done, false);
    }

    /**
     * Lays out a day.
     *
     * @param order jobs, each as often as it has blocks; a job that is not in it is left out
     * @return what the plan costs
     */
    long lay(int[] order) {
        begin();
        for (int job : order) {
            int b = next[job];
            while (b >= 0 && !model.contended[b]) {
                b = putNext(job, b);
            }
            if (b >= 0) {
                b = putNext(job, b);
            }
            while (b >= 0 && b < model.firstBlock[job + 1] && !model.contended[b]) {
                b = putNext(job, b);
            }
            next[job] = b;
            done[job] = b == model.firstBlock[job + 1];
        }
        return cost();
    }

    /** Puts a job's block in its place and tells the next one; -1 where there is no place. */
    private int putNext(int job, int b) {
        if (put(b, freeFrom[job])) {
            freeFrom[job] = start[b] + model.blocks.get(b).minutes();
            return b + 1;
        }
        takeOff(job, b);
        return -1;
    }

    /**
     * The order in which blocks come when whatever can begin first does, and a rule decides between
     * those that can begin together.
     */
    int[] asTheyCome(Comparator<Integer> rule) {
        begin();
        var order = new int[model.blocks.size()];
        int length = 0;
        for (int i = 0; i < order.length; i++) {
            int chosen = -1;
            int earliest = Integer.MAX_VALUE;
            for (int job : model.todo()) {
                int b = next[job];
                if (b == model.firstBlock[job + 1]) {
                    continue;
                }
                int at = firstStart(b, freeFrom[job]);
                if (at < earliest || (at == earliest && rule.compare(b, chosen) < 0)) {
                    earliest = at;
                    chosen = b;
                }
            }
            int job = model.blocks.get(chosen).job();
            if (model.contended[chosen]) {
                order[length++] = job;
            }
            next[job]++;
            freeFrom[job] =
                    put(chosen, freeFrom[job])
                            ? start[chosen] + model.blocks.get(chosen).minutes()
                            : model.length();
        }
        return Arrays.copyOf(order, length);
    }

    /** The first start of a block, under any instructor; past the day where there is none. */
    private int firstStart(int b, int from) {
        var block = model.blocks.get(b);
        int first = block.taught() ? -1 : earliest(block, -1, from);
        for (int k : model.teachers(b)) {
            int at = earliest(block, k, from);
            first = first < 0 || (at >= 0 && at < first) ? at : first;
        }
        return first < 0 ? model.length() : first;
    }

    private void takeOff(int job, int end) {
        for (int b = model.firstBlock[job]; b < end; b++) {
            mark(model.blocks.get(b), start[b], by[b], false);
            start[b] = -1;
            by[b] = -1;
        }
    }

    private boolean put(int b, int from) {
        var block = model.blocks.get(b);
        int best = Integer.MAX_VALUE;
        int bestStart = -1;
        int bestBy = -1;
        if (!block.taught()) {
            bestStart = earliest(block, -1, from);
        }
        for (int k : model.teachers(b)) {
            int at = asked[b] < 0 || asked[b] == k ? earliest(block, k, from) : -1;
            int change = block.before() >= 0 && block.before() != k ? Timetable.Worth.CHANGE : 0;
            int worth = at * Timetable.Worth.WAITING + change;
            if (at >= 0 && worth < best) {
                best = worth;
                bestStart = at;
                bestBy = k;
            }
        }
        if (bestStart < 0) {
            return false;
        }
        start[b] = bestStart;
        by[b] = bestBy;
        mark(block, bestStart, bestBy, true);
        return true;
    }

    /** The first start at which all that a block needs is free; -1 where there is none. */
    private int earliest(Block block, int instructor, int from) {
        int length = model.length();
        boolean several = model.several[model.student[block.job()]];
        int at = from;
        while (at + block.minutes() <= length) {
            int fits = block.barred().nextGap(at, 1);
            if (several && fits < length) {
                fits = atWork[model.student[block.job()]].nextGap(fits, block.minutes());
            }
            if (instructor >= 0 && fits < length) {
                fits = taught[instructor].nextGap(fits, block.taughtMinutes());
            }
            for (var hold : block.tools()) {
                if (fits < length) {
                    fits =
                            allHeld[hold.tool()].nextGap(
                                            fits + hold.fromMinute(),
                                            hold.toMinute() - hold.fromMinute())
                                    - hold.fromMinute();
                }
            }
            if (fits == at) {
                return at;
            }
            at = fits;
        }
        return -1;
    }

    private void mark(Block block, int at, int instructor, boolean taken) {
        if (instructor >= 0) {
            mark(taught[instructor], at, at + block.taughtMinutes(), taken);
        }
        if (model.several[model.student[block.job()]]) {
            mark(atWork[model.student[block.job()]], at, at + block.minutes(), taken);
        }
        for (var hold : block.tools()) {
            var free = held[hold.tool()];
            for (int t = at + hold.fromMinute(); t < at + hold.toMinute(); t++) {
                free[t] += taken ? -1 : 1;
                if (free[t] == 0) {
                    allHeld[hold.tool()].add(t);
                } else {
                    allHeld[hold.tool()].remove(t);
                }
            }
        }
    }

    private static void mark(Minutes set, int from, int to, boolean taken) {
        if (taken) {
            set.add(from, to);
        } else {
            set.remove(from, to);
        }
    }

    private long cost() {
        return cost(model, start, by, done);
    }

    /** What was laid out last. */
    Plan plan() {
        return new Plan(start.clone(), by.clone(), done.clone(), cost());
    }

    /**
     * Lays out the plan in force again, as far as it still fits, and the rest behind it.
     *
     * @return the order in which blocks that have to take turns were placed
     */
    int[] layAsBefore() {
        begin();
        var order = new int[model.blocks.size()];
        int length = 0;
        for (int b : model.inOrderBefore()) {
            var block = model.blocks.get(b);
            int job = block.job();
            if (model.contended[b]) {
                order[length++] = job;
            }
            if (next[job] != b) {
                continue;
            }
            int at = block.startBefore();
            boolean kept =
                    at >= freeFrom[job]
                            && block.taught() == (block.before() >= 0)
                            && Arrays.stream(model.teachers(b)).anyMatch(k -> k == block.before())
                                    == block.taught()
                            && earliest(block, block.before(), at) == at;
            if (kept) {
                start[b] = at;
                by[b] = block.before();
                mark(block, at, by[b], true);
                freeFrom[job] = at + block.minutes();
                next[job] = b + 1;
            } else {
                next[job] = putNext(job, b);
            }
            done[job] = next[job] == model.firstBlock[job + 1];
        }
        return Arrays.copyOf(order, length);
    }

    /** What a plan costs, jobs left out first. */
    static long cost(DayModel model, int[] start, int[] by, boolean[] done) {
        var ends = new int[model.students];
        Arrays.fill(ends, -1);
        long cost = 0;
        int finish = 0;
        for (int j = 0; j < done.length; j++) {
            int last = model.firstBlock[j + 1] - 1;
            if (last < model.firstBlock[j]) {
                continue;
            }
            if (!done[j]) {
                cost += leftOut(model.jobs.get(j));
                continue;
            }
            int end = start[last] + model.blocks.get(last).minutes();
            ends[model.student[j]] = Math.max(ends[model.student[j]], end);
            finish = Math.max(finish, end);
            for (int b = model.firstBlock[j]; b <= last; b++) {
                int before = model.blocks.get(b).before();
                cost += before >= 0 && before != by[b] ? Timetable.Worth.CHANGE : 0;
                cost += model.comesBack(b, at -> start[at]) ? Timetable.Worth.RETURN : 0;
            }
        }
        for (int s = 0; s < ends.length; s++) {
            int inClass = ends[s] < 0 ? 0 : ends[s] - model.arrival[s];
            cost += (long) Timetable.Worth.WAITING * inClass;
        }
        return cost + (long) Timetable.Worth.FINISH * finish;
    }

    static long leftOut(Job job) {
        return JOB + USEFULNESS * Math.round(1000 * job.usefulness());
    }
}
