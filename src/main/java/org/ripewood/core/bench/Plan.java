package org.ripewood.core.bench;

/** Blocks in their places. */
final class Plan {

    private final int[] start;
    private final int[] by;
    private final boolean[] done;
    private final long cost;

    /**
     * A plan.
     *
     * @param start by block its open minute, -1 for none
     * @param by by block the instructor's place, -1 for none
     * @param done by job
     * @param cost jobs left out included
     */
    Plan(int[] start, int[] by, boolean[] done, long cost) {
        this.start = start;
        this.by = by;
        this.done = done;
        this.cost = cost;
    }

    /** The better of two, the first where they cost the same. */
    static Plan better(Plan one, Plan other) {
        return other.cost < one.cost ? other : one;
    }

    int start(int block) {
        return start[block];
    }

    int by(int block) {
        return by[block];
    }

    boolean done(int job) {
        return done[job];
    }

    long cost() {
        return cost;
    }
}
