package org.ripewood.core.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;
import org.chocosolver.util.objects.setDataStructures.iterable.IntIterableRangeSet;
import org.jspecify.annotations.Nullable;

/**
 * A day on which no job is left out, as variables and constraints: a start for each block, an
 * instructor for each taught one, of every two blocks that need the same one the one first or the
 * other, tools by their number.
 */
final class ChocoDay {

    /**
     * What the solver says.
     *
     * @param plan a better one; null when it found none
     * @param complete whether there is none better than this, or than the one it began with
     */
    record Answer(@Nullable Plan plan, boolean complete) {}

    private final DayModel day;
    private final Model model;
    private final @Nullable IntVar[] start;
    private final @Nullable IntVar[] by;
    private final IntVar finish;
    private final IntVar cost;

    /**
     * @param above the cost of a plan to be beaten
     * @param least what no plan lies below
     */
    ChocoDay(DayModel day, long above, long least) {
        this.day = day;
        // Without lazy clause generation: choco 5's own assertions on its clauses failed here.
        this.model = new Model("day");
        this.start = new IntVar[day.blocks.size()];
        this.by = new IntVar[day.blocks.size()];
        this.finish = model.intVar("finish", 0, day.length());
        for (int job : day.todo()) {
            chain(job);
        }
        for (int one = 0; one < start.length; one++) {
            for (int other = one + 1; other < start.length; other++) {
                apart(one, other);
            }
        }
        for (int tool = 0; tool < day.tools.size(); tool++) {
            share(tool);
        }
        together();
        this.cost = cost(above, least);
    }

    private IntVar start(int b) {
        return Objects.requireNonNull(start[b]);
    }

    private IntVar by(int b) {
        return Objects.requireNonNull(by[b]);
    }

    /** A job's blocks one after another, each within what its head and tail leave of the day. */
    private void chain(int job) {
        int head = day.ready[job];
        int left = day.minutes(job);
        for (int b = day.firstBlock[job]; b < day.firstBlock[job + 1]; b++) {
            var block = day.blocks.get(b);
            int place = b;
            int[] starts =
                    IntStream.rangeClosed(head, day.length() - left)
                            .filter(at -> at % day.step == 0 && someoneStandsBy(place, at))
                            .toArray();
            start[b] = model.intVar("start " + b, starts);
            if (block.taught()) {
                instructor(b, starts);
            }
            if (b > day.firstBlock[job]) {
                int minutes = day.blocks.get(b - 1).minutes();
                model.arithm(start(b), ">=", start(b - 1), "+", minutes).post();
            }
            head = starts[0] + block.minutes();
            left -= block.minutes();
        }
        int last = day.firstBlock[job + 1] - 1;
        int minutes = day.blocks.get(last).minutes();
        model.arithm(finish, ">=", start(last), "+", minutes).post();
    }

    private boolean someoneStandsBy(int b, int at) {
        var block = day.blocks.get(b);
        return !block.barred().holds(at)
                && (!block.taught()
                        || Arrays.stream(day.teachers(b)).anyMatch(k -> there(k, block, at)));
    }

    private boolean there(int instructor, Block block, int at) {
        return day.away[instructor].nextGap(at, block.taughtMinutes()) == at;
    }

    private void instructor(int b, int[] starts) {
        var block = day.blocks.get(b);
        var chosen = model.intVar("by " + b, day.teachers(b));
        by[b] = chosen;
        for (int k : day.teachers(b)) {
            int[] possible = Arrays.stream(starts).filter(at -> there(k, block, at)).toArray();
            if (possible.length == 0) {
                model.arithm(chosen, "!=", k).post();
            } else if (possible.length < starts.length) {
                var then = model.boolVar();
                model.reifyXinS(start(b), new IntIterableRangeSet(possible), then);
                model.addClausesBoolLe(chosen.eq(k).boolVar(), then);
            }
        }
    }

    private void apart(int one, int other) {
        var first = day.blocks.get(one);
        var second = day.blocks.get(other);
        if (first.job() == second.job()) {
            return;
        }
        if (day.student[first.job()] == day.student[second.job()]) {
            either(one, first.minutes(), other, second.minutes(), null);
        } else if (first.taught() && second.taught()) {
            if (Arrays.stream(day.teachers(one)).anyMatch(k -> teaches(k, other))) {
                boolean alone = by(one).isInstantiated() && by(other).isInstantiated();
                var same = alone ? null : by(one).eq(by(other)).boolVar();
                either(one, first.taughtMinutes(), other, second.taughtMinutes(), same);
            }
        }
    }

    private boolean teaches(int instructor, int b) {
        return Arrays.stream(day.teachers(b)).anyMatch(k -> k == instructor);
    }

    /** One ends before the other begins, unless they do not meet at all. */
    private void either(int one, int minutes, int other, int others, @Nullable BoolVar meet) {
        var before = start(one).add(minutes).le(start(other)).boolVar();
        var after = start(other).add(others).le(start(one)).boolVar();
        model.addClausesBoolOrArrayEqualTrue(
                meet == null
                        ? new BoolVar[] {before, after}
                        : new BoolVar[] {before, after, meet.not().boolVar()});
    }

    private void share(int tool) {
        int there = Arrays.stream(day.free[tool]).max().orElse(0);
        var tasks = new ArrayList<Task>();
        var heights = new ArrayList<IntVar>();
        for (int b = 0; b < start.length; b++) {
            for (var hold : day.blocks.get(b).tools()) {
                if (hold.tool() == tool) {
                    var from = model.offset(start(b), hold.fromMinute());
                    tasks.add(new Task(from, hold.toMinute() - hold.fromMinute()));
                    heights.add(model.intVar(1));
                }
            }
        }
        for (int at = 0; at < day.length() && !tasks.isEmpty(); at++) {
            if (day.free[tool][at] < there) {
                tasks.add(new Task(model.intVar(at), 1));
                heights.add(model.intVar(there - day.free[tool][at]));
            }
        }
        cumulative(tasks, heights, there);
    }

    /** Follows from the rest, and cuts the search short: no more at once than instructors. */
    private void together() {
        var tasks = new ArrayList<Task>();
        var heights = new ArrayList<IntVar>();
        for (int b = 0; b < start.length; b++) {
            if (day.blocks.get(b).taught()) {
                tasks.add(new Task(start(b), day.blocks.get(b).taughtMinutes()));
                heights.add(model.intVar(1));
            }
        }
        cumulative(tasks, heights, day.away.length);
    }

    private void cumulative(List<Task> tasks, List<IntVar> heights, int capacity) {
        if (tasks.size() > capacity) {
            model.cumulative(
                            tasks.toArray(new Task[0]),
                            heights.toArray(new IntVar[0]),
                            model.intVar(capacity))
                    .post();
        }
    }

    private IntVar cost(long above, long least) {
        var terms = new ArrayList<IntVar>();
        var weights = new ArrayList<Integer>();
        int constant = 0;
        for (int student = 0; student < day.students; student++) {
            var end = end(student);
            if (end != null) {
                terms.add(end);
                weights.add(Timetable.Worth.WAITING);
                constant += Timetable.Worth.WAITING * day.arrival[student];
            }
        }
        for (int b = 0; b < start.length; b++) {
            int before = day.blocks.get(b).before();
            if (before >= 0 && day.blocks.get(b).taught()) {
                terms.add(by(b).ne(before).boolVar());
                weights.add(Timetable.Worth.CHANGE);
            }
        }
        for (int b = 0; b < day.blocks.size(); b++) {
            if (start[b] != null && (day.rivals[b].length > 0 || day.leftBefore[b])) {
                terms.add(comesBack(b));
                weights.add(Timetable.Worth.RETURN);
            }
        }
        terms.add(finish);
        weights.add(Timetable.Worth.FINISH);
        int low = (int) least + constant;
        var sum = model.intVar("cost", low, Math.max(low, (int) above - 1 + constant));
        model.scalar(
                        terms.toArray(new IntVar[0]),
                        weights.stream().mapToInt(Integer::intValue).toArray(),
                        "=",
                        sum)
                .post();
        return sum;
    }

    /** Whether a student comes to a block from another tree, see {@link DayModel#comesBack}. */
    private BoolVar comesBack(int b) {
        var back = day.leftBefore[b] ? model.boolVar(true) : model.boolVar("back " + b);
        for (int other : day.rivals[b]) {
            if (start[other] != null) {
                var earlier = start(other).lt(start(b)).boolVar();
                if (day.follows(b)) {
                    var later = start(other).gt(start(b - 1)).boolVar();
                    model.addClausesBoolOrArrayEqualTrue(
                            new BoolVar[] {back, earlier.not().boolVar(), later.not().boolVar()});
                } else {
                    model.addClausesBoolOrArrayEqualTrue(
                            new BoolVar[] {back, earlier.not().boolVar()});
                }
            }
        }
        return back;
    }

    /** When a student's last work ends; null where there is none. */
    private @Nullable IntVar end(int student) {
        int ready = day.length();
        int minutes = 0;
        var lasts = new ArrayList<Integer>();
        for (int job : day.todo()) {
            if (day.student[job] == student) {
                ready = Math.min(ready, day.ready[job]);
                minutes += day.minutes(job);
                lasts.add(day.firstBlock[job + 1] - 1);
            }
        }
        if (lasts.isEmpty()) {
            return null;
        }
        int earliest = Math.min(ready + minutes, day.length());
        var end = model.intVar("end " + student, earliest, day.length());
        for (int b : lasts) {
            model.arithm(end, ">=", start(b), "+", day.blocks.get(b).minutes()).post();
        }
        return end;
    }

    /** Searches until there is nothing better, or a number of failures, or the guard says so. */
    Answer solve(int mostFails, BooleanSupplier stop) {
        var solver = model.getSolver();
        model.setObjective(Model.MINIMIZE, cost);
        solver.limitFail(mostFails);
        solver.addStopCriterion(stop::getAsBoolean);
        Plan best = null;
        while (solver.solve()) {
            best = plan();
        }
        return new Answer(best, !solver.isStopCriterionMet());
    }

    private Plan plan() {
        var starts = new int[start.length];
        var who = new int[start.length];
        var done = new boolean[day.jobs.size()];
        for (int b = 0; b < starts.length; b++) {
            starts[b] = start(b).getValue();
            who[b] = day.blocks.get(b).taught() ? by(b).getValue() : -1;
        }
        for (int job : day.todo()) {
            done[job] = true;
        }
        return new Plan(starts, who, done, SerialScheduler.cost(day, starts, who, done));
    }
}
