package org.ripewood.core.bench;

import java.util.function.BooleanSupplier;

/**
 * The list schedule's plan, made better: first by a search through orders, then, where the day is
 * small enough for that to tell, by a constraint solver that starts from the best plan and finds a
 * better one or proves that there is none.
 *
 * <p>Measured: within seconds the solver (choco 5) settles days of up to about ten trees and adds
 * nothing to larger ones, on which the search through orders does all the work. The same day gives
 * the same plan as long as the limits of moves and failures strike before {@code stop} does; they
 * are set so that a day of sixty trees takes about a second and one of a hundred and twenty about
 * two (a table is in performance.md).
 */
public final class ChocoTimetabler implements Timetabler {

    /**
     * How long to try.
     *
     * @param searches through orders, at most
     * @param moves of one search, at most
     * @param movesTimesTurnsSquared of all searches: more turns need more time for each move, and
     *     there are plenty of moves where there are few
     * @param rounds of the bound
     * @param turns at instructors, tools and students of several trees beyond which the solver is
     *     not asked
     * @param fails of the solver, at most
     */
    record Effort(
            int searches,
            int moves,
            long movesTimesTurnsSquared,
            int rounds,
            int turns,
            int fails) {

        static final Effort USUAL = new Effort(4, 30_000, 400_000_000, 200, 24, 250);

        int searchesFor(int turns) {
            return Math.max(1, Math.min(searches, allMoves(turns) / moves));
        }

        int movesFor(int turns) {
            return Math.min(moves, allMoves(turns) / searchesFor(turns));
        }

        private int allMoves(int turns) {
            long all = movesTimesTurnsSquared / Math.max(1, (long) turns * turns);
            return (int) Math.min((long) searches * moves, all);
        }
    }

    private static final int SHORT_SEARCHES = 12;
    private static final int SHORT_MOVES = 3_000;
    private static final int FROM_ANEW = 99;

    private final long seed;
    private final Effort effort;

    /** A timetabler that draws its moves from a seed. */
    public ChocoTimetabler(long seed) {
        this(seed, Effort.USUAL);
    }

    ChocoTimetabler(long seed, Effort effort) {
        this.seed = seed;
        this.effort = effort;
    }

    @Override
    public Timetable plan(ClassDay day, Underway underway, BooleanSupplier stop) {
        var model = new DayModel(day, underway);
        var listed = new PriorityRules(model);
        var plan = listed.plan();
        int turns = listed.best().length;
        int moves = effort.movesFor(turns);
        for (int i = 0; i < effort.searchesFor(turns); i++) {
            var found = OrderSearch.from(model, listed.best(), moves, seed + i, stop);
            plan = Plan.better(plan, found);
        }
        // Many short searches from anew find a place for a last job sooner than a few long ones.
        for (int i = 0; i < SHORT_SEARCHES && plan.cost() >= SerialScheduler.JOB; i++) {
            int others = Math.min(moves, SHORT_MOVES);
            plan =
                    Plan.better(
                            plan,
                            OrderSearch.from(
                                    model, listed.best(), others, seed + FROM_ANEW + i, stop));
        }
        var bounds = Bounds.of(model, plan, effort.rounds(), stop);
        if (turns <= effort.turns() && !settled(model, plan, bounds)) {
            var proof = Proof.of(model, plan, bounds, effort.fails(), stop);
            plan = proof.plan();
            bounds = proof.bounds();
        }
        boolean proved = settled(model, plan, bounds);
        var found = proved ? Timetable.Found.PROVED : Timetable.Found.SEARCHED;
        return TimetableResult.tell(model, plan, bounds, found);
    }

    /** Whether all is done that can be, at the least cost. */
    private static boolean settled(DayModel model, Plan plan, Bounds bounds) {
        return plan.cost() == bounds.leastCost() && bounds.mostJobs() == model.todo().length;
    }
}
