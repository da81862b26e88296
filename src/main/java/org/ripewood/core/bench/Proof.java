package org.ripewood.core.bench;

import java.util.function.BooleanSupplier;

/**
 * What a constraint solver adds to a plan: a better one that leaves no job out, proof that there is
 * none, or nothing.
 *
 * @param plan the best one known
 */
record Proof(Plan plan, Bounds bounds) {

    private static final int BOUND_ROUNDS = 100;

    static Proof of(DayModel model, Plan plan, Bounds bounds, int mostFails, BooleanSupplier stop) {
        int todo = model.todo().length;
        if (bounds.mostJobs() < todo) {
            return new Proof(plan, bounds);
        }
        boolean all = plan.cost() < SerialScheduler.JOB;
        long dearest = dearest(model);
        var day =
                all
                        ? new ChocoDay(model, plan.cost(), bounds.leastCost())
                        : new ChocoDay(model, dearest, 0);
        var answer = day.solve(mostFails, stop);
        var found = answer.plan();
        if (found == null && !all) {
            return answer.complete()
                    ? new Proof(plan, new Bounds(todo - 1, bounds.leastCost()))
                    : new Proof(plan, bounds);
        }
        var best = found == null ? plan : found;
        if (answer.complete()) {
            return new Proof(best, new Bounds(todo, best.cost()));
        }
        return new Proof(best, all ? bounds : Bounds.of(model, best, BOUND_ROUNDS, stop));
    }

    /** More than any plan can cost that leaves no job out. */
    private static long dearest(DayModel model) {
        long minutes = (long) model.length() * (model.students + 1);
        return 1
                + Timetable.Worth.WAITING * minutes
                + (long) (Timetable.Worth.CHANGE + Timetable.Worth.RETURN) * model.blocks.size();
    }
}
