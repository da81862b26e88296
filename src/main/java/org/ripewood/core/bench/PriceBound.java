package org.ripewood.core.bench;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * What no plan can lie below, by prices on minutes of instructors, tools and students.
 *
 * <p>Whatever the prices, 0 or more: let each student take the cheapest way through the day as if
 * nobody else were there, paying for the minutes used; what they all pay, less what all minutes
 * there are would bring, is at most the cost of any plan, since a plan uses no minute twice. The
 * prices are raised where more is asked for than there is and lowered where less is (Lagrangian
 * relaxation with subgradient steps of Polyak's length). The bound so found is at least that of the
 * plan in which instructors may divide themselves among benches, and holds each student's own chain
 * of work, heads, tails and the loads of instructors and tools.
 *
 * <p>A student's own subproblem is exact for one tree, by dynamic programming over the minutes; for
 * several trees each has its own way, and the last of them ends no earlier than their work takes
 * together. Source of the method: Christofides, Alvarez-Valdés and Tamarit 1987, "Project
 * scheduling with resource constraints: a branch and bound approach", European Journal of
 * Operational Research 29; Fisher 1981, "The Lagrangian relaxation method", Management Science 27.
 */
final class PriceBound {

    /** Prices are doubles; this much may be lost in adding them up. */
    private static final double ROUNDING = 1e-5;

    private final DayModel model;
    private final int[] jobs;
    private final boolean counting;
    private final Prices prices;
    private final PricedJobs priced;
    private final int[][] byStudent;
    private final int[] starts;
    private double best = Double.NEGATIVE_INFINITY;

    private PriceBound(DayModel model, int[] jobs, boolean counting) {
        this.model = model;
        this.jobs = jobs;
        this.counting = counting;
        this.prices = new Prices(model);
        this.priced = new PricedJobs(prices, jobs);
        this.starts = new int[model.blocks.size()];
        this.byStudent =
                IntStream.range(0, model.students)
                        .mapToObj(
                                student ->
                                        Arrays.stream(jobs)
                                                .filter(job -> model.student[job] == student)
                                                .toArray())
                        .filter(own -> own.length > 0)
                        .toArray(int[][]::new);
    }

    /**
     * The least cost of a plan that does these jobs and no others.
     *
     * @param upper the cost of a plan that does them
     */
    static long leastCost(
            DayModel model, int[] jobs, long upper, int rounds, BooleanSupplier stop) {
        long finish = (long) Timetable.Worth.FINISH * FinishBound.of(model, jobs);
        var bound = new PriceBound(model, jobs, false);
        bound.ascend((double) (upper - finish), rounds, stop);
        int weight = Timetable.Worth.WAITING;
        long waiting = weight * (long) Math.ceil(bound.best / weight - ROUNDING);
        return Math.max(0, Math.min(upper, waiting + finish));
    }

    /** The most of these jobs that a plan can do. */
    static int mostJobs(DayModel model, int[] jobs, int rounds, BooleanSupplier stop) {
        var bound = new PriceBound(model, jobs, true);
        bound.ascend(jobs.length, rounds, stop);
        int leftOut = (int) Math.ceil(bound.best - ROUNDING);
        return jobs.length - Math.max(0, leftOut);
    }

    private void ascend(double upper, int rounds, BooleanSupplier stop) {
        var bestPrice = copyOfPrices();
        double pace = 1;
        int stale = 0;
        for (int i = 0; i < rounds && !(i > 0 && stop.getAsBoolean()); i++) {
            double value = counting ? valueOfCount() : valueOfCost();
            if (value > best + 1e-9) {
                best = value;
                bestPrice = copyOfPrices();
                stale = 0;
            } else if (++stale == 10) {
                stale = 0;
                pace *= 0.7;
                for (int r = 0; r < bestPrice.length; r++) {
                    System.arraycopy(bestPrice[r], 0, prices.price[r], 0, bestPrice[r].length);
                }
            }
            if (!step(pace * Math.max(upper - value, 1e-3))) {
                return;
            }
        }
    }

    private double[][] copyOfPrices() {
        return Arrays.stream(prices.price).map(double[]::clone).toArray(double[][]::new);
    }

    /** Raises what is asked for too much; false when nothing is, and the bound is a plan's cost. */
    private boolean step(double way) {
        double square = 0;
        for (int r = 0; r < prices.price.length; r++) {
            for (int at = 0; at < model.length(); at++) {
                int excess = prices.used[r][at] - prices.capacity[r][at];
                if (excess > 0 || prices.price[r][at] > 0) {
                    square += (double) excess * excess;
                }
            }
        }
        if (square == 0) {
            return false;
        }
        double step = way / square;
        for (int r = 0; r < prices.price.length; r++) {
            var price = prices.price[r];
            for (int at = 0; at < model.length(); at++) {
                int excess = prices.used[r][at] - prices.capacity[r][at];
                price[at] = Math.max(0, price[at] + step * excess);
            }
        }
        return true;
    }

    private double valueOfCount() {
        double value = -prices.worth();
        for (int job : jobs) {
            double cost = priced.costs(job)[model.length()];
            value += Math.min(1, cost);
            if (cost < 1) {
                priced.use(job, model.length(), starts);
            }
        }
        return value;
    }

    private double valueOfCost() {
        double value = -prices.worth();
        for (var own : byStudent) {
            var sums = new double[model.length() + 1];
            for (int job : own) {
                var costs = priced.costs(job);
                for (int at = 0; at < sums.length; at++) {
                    sums[at] += costs[at];
                }
            }
            int end = cheapestEnd(sums, earliestEnd(own));
            for (int job : own) {
                priced.use(job, end, starts);
            }
            int arrival = model.arrival[model.student[own[0]]];
            value += sums[end] + Timetable.Worth.WAITING * (double) (end - arrival);
        }
        return value;
    }

    private int earliestEnd(int[] own) {
        int ready = model.length();
        int minutes = 0;
        for (int job : own) {
            ready = Math.min(ready, model.ready[job]);
            minutes += model.minutes(job);
        }
        return ready + minutes;
    }

    private int cheapestEnd(double[] sums, int from) {
        int cheapest = model.length();
        for (int at = model.length() - 1; at >= from; at--) {
            double cost = sums[at] + Timetable.Worth.WAITING * (double) at;
            if (cost <= sums[cheapest] + Timetable.Worth.WAITING * (double) cheapest) {
                cheapest = at;
            }
        }
        return cheapest;
    }
}
