package org.ripewood.core.bench;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * A price for each minute of whatever is scarce: instructors, tools and students of several trees.
 *
 * <p>Instructors who are there at the same times and may stand by the same work are one resource of
 * which there is more than one: told apart, their prices would only rock from one to the other.
 */
final class Prices {

    final DayModel model;
    final double[][] price;
    final int[][] capacity;

    /** By resource and minute how much the plan at these prices uses. */
    final int[][] used;

    /** By resource what all minutes before one cost. */
    private final double[][] sums;

    /** By block the groups of instructors who may stand by. */
    private final int[][] groups;

    /** By group and minute when somebody of it is next not there. */
    private final int[][] awayFrom;

    private final int firstTool;
    private final int[] studentAt;

    Prices(DayModel model) {
        this.model = model;
        var groupOf = groupsOfInstructors();
        firstTool = Arrays.stream(groupOf).max().orElse(-1) + 1;
        studentAt = new int[model.students];
        int count = firstTool + model.tools.size();
        for (int s = 0; s < studentAt.length; s++) {
            studentAt[s] = model.several[s] ? count++ : -1;
        }
        int length = model.length();
        price = new double[count][length];
        capacity = new int[count][length];
        used = new int[count][length];
        sums = new double[count][length + 1];
        for (int k = 0; k < groupOf.length; k++) {
            for (int at = 0; at < length; at++) {
                capacity[groupOf[k]][at] += model.away[k].holds(at) ? 0 : 1;
            }
        }
        for (int i = 0; i < model.tools.size(); i++) {
            capacity[firstTool + i] = model.free[i].clone();
        }
        for (int s : studentAt) {
            if (s >= 0) {
                Arrays.fill(capacity[s], 1);
            }
        }
        groups = new int[model.blocks.size()][];
        Arrays.setAll(
                groups,
                b -> Arrays.stream(model.teachers(b)).map(k -> groupOf[k]).distinct().toArray());
        awayFrom = new int[firstTool][];
        Arrays.setAll(awayFrom, g -> nextAway(capacity[g]));
    }

    private int[] groupsOfInstructors() {
        Map<String, Integer> groups = new HashMap<>();
        return IntStream.range(0, model.away.length)
                .map(k -> groups.computeIfAbsent(signature(k), unseen -> groups.size()))
                .toArray();
    }

    /** When an instructor is away, and what they may stand by. */
    private String signature(int k) {
        var text = new StringBuilder();
        write(text, model.length(), model.away[k]::holds);
        write(
                text,
                model.blocks.size(),
                b -> Arrays.stream(model.teachers(b)).anyMatch(other -> other == k));
        return text.toString();
    }

    private static void write(StringBuilder text, int length, IntPredicate holds) {
        IntStream.range(0, length).forEach(i -> text.append(holds.test(i) ? '1' : '0'));
    }

    private static int[] nextAway(int[] there) {
        var next = new int[there.length + 1];
        next[there.length] = there.length;
        for (int at = there.length - 1; at >= 0; at--) {
            next[at] = there[at] == 0 ? at : next[at + 1];
        }
        return next;
    }

    /** Adds up prices, forgets what was used, and tells what all capacity is worth. */
    double worth() {
        double worth = 0;
        for (int r = 0; r < price.length; r++) {
            double sum = 0;
            for (int at = 0; at < price[r].length; at++) {
                sums[r][at] = sum;
                sum += price[r][at];
                worth += price[r][at] * capacity[r][at];
            }
            sums[r][price[r].length] = sum;
            Arrays.fill(used[r], 0);
        }
        return worth;
    }

    /** What a block costs at a start; without end where no instructor is there all the while. */
    double cost(int b, int at) {
        var block = model.blocks.get(b);
        double cost = 0;
        if (block.barred().holds(at)) {
            return Double.POSITIVE_INFINITY;
        }
        if (block.taught()) {
            int group = cheapest(b, at);
            if (group < 0) {
                return Double.POSITIVE_INFINITY;
            }
            cost = between(group, at, at + block.taughtMinutes());
        }
        for (var hold : block.tools()) {
            cost += between(firstTool + hold.tool(), at + hold.fromMinute(), at + hold.toMinute());
        }
        int student = studentAt[model.student[block.job()]];
        return student < 0 ? cost : cost + between(student, at, at + block.minutes());
    }

    private int cheapest(int b, int at) {
        int to = at + model.blocks.get(b).taughtMinutes();
        int cheapest = -1;
        for (int group : groups[b]) {
            if (awayFrom[group][at] >= to
                    && (cheapest < 0 || between(group, at, to) < between(cheapest, at, to))) {
                cheapest = group;
            }
        }
        return cheapest;
    }

    private double between(int resource, int from, int to) {
        return sums[resource][to] - sums[resource][from];
    }

    /** Notes what a block uses at a start. */
    void use(int b, int at) {
        var block = model.blocks.get(b);
        if (block.taught()) {
            use(cheapest(b, at), at, at + block.taughtMinutes());
        }
        for (var hold : block.tools()) {
            use(firstTool + hold.tool(), at + hold.fromMinute(), at + hold.toMinute());
        }
        int student = studentAt[model.student[block.job()]];
        if (student >= 0) {
            use(student, at, at + block.minutes());
        }
    }

    private void use(int resource, int from, int to) {
        for (int at = from; at < to; at++) {
            used[resource][at]++;
        }
    }
}
