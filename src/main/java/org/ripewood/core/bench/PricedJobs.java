package org.ripewood.core.bench;

import java.util.Arrays;

/** The cheapest way through the day for each job by itself, at given prices. */
final class PricedJobs {

    private final DayModel model;
    private final Prices prices;

    /** By job, block and minute what it costs at least to have ended that block by then. */
    private final double[][][] cost;

    /** As {@link #cost}, the start of that block. */
    private final int[][][] startAt;

    PricedJobs(Prices prices, int[] jobs) {
        this.prices = prices;
        this.model = prices.model;
        this.cost = new double[model.jobs.size()][][];
        this.startAt = new int[model.jobs.size()][][];
        for (int job : jobs) {
            int blocks = model.firstBlock[job + 1] - model.firstBlock[job];
            cost[job] = new double[blocks + 1][model.length() + 1];
            startAt[job] = new int[blocks + 1][model.length() + 1];
        }
    }

    /** By minute what it costs at least to have ended a job by then. */
    double[] costs(int job) {
        var before = cost[job][0];
        Arrays.fill(before, 0);
        Arrays.fill(before, 0, model.ready[job], Double.POSITIVE_INFINITY);
        for (int b = model.firstBlock[job]; b < model.firstBlock[job + 1]; b++) {
            int i = b - model.firstBlock[job] + 1;
            step(b, before, cost[job][i], startAt[job][i]);
            before = cost[job][i];
        }
        return before;
    }

    private void step(int b, double[] before, double[] after, int[] starts) {
        int minutes = model.blocks.get(b).minutes();
        boolean free = !model.contended[b];
        Arrays.fill(after, 0, Math.min(minutes, after.length), Double.POSITIVE_INFINITY);
        double least = Double.POSITIVE_INFINITY;
        int start = -1;
        for (int at = 0; at + minutes < after.length; at++) {
            double sofar = before[at];
            if (sofar < least && !model.blocks.get(b).barred().holds(at)) {
                double cost = free ? sofar : sofar + prices.cost(b, at);
                if (cost < least) {
                    least = cost;
                    start = at;
                }
            }
            after[at + minutes] = least;
            starts[at + minutes] = start;
        }
    }

    /** Notes in the prices what a job uses that has ended by a minute. */
    void use(int job, int end, int[] starts) {
        int by = end;
        for (int b = model.firstBlock[job + 1] - 1; b >= model.firstBlock[job]; b--) {
            by = startAt[job][b - model.firstBlock[job] + 1][by];
            starts[b] = by;
            prices.use(b, by);
        }
    }
}
