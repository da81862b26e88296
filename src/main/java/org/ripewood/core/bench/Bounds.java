package org.ripewood.core.bench;

import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * What no plan does better.
 *
 * @param mostJobs of those that are left to be done
 * @param leastCost of a plan that does the same jobs
 */
record Bounds(int mostJobs, long leastCost) {

    static Bounds of(DayModel model, Plan plan, int rounds, BooleanSupplier stop) {
        var todo = model.todo();
        var done = IntStream.of(todo).filter(job -> plan.done(job)).toArray();
        int most =
                done.length == todo.length
                        ? todo.length
                        : PriceBound.mostJobs(model, todo, rounds, stop);
        long cost = costOfDone(model, plan);
        return new Bounds(
                Math.max(most, done.length), PriceBound.leastCost(model, done, cost, rounds, stop));
    }

    /** What a plan costs, but for the jobs it leaves out. */
    static long costOfDone(DayModel model, Plan plan) {
        return plan.cost()
                - IntStream.of(model.todo())
                        .filter(job -> !plan.done(job))
                        .mapToLong(job -> SerialScheduler.leftOut(model.jobs.get(job)))
                        .sum();
    }
}
