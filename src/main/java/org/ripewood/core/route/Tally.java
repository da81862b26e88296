package org.ripewood.core.route;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Counts what the draws bring: days, deciders, chains and the time spent waiting. */
final class Tally {

    private static final List<Cause> CAUSES = List.of(Cause.values());
    private static final Map<Cause, Integer> PLACES = new EnumMap<>(Cause.class);

    static {
        CAUSES.forEach(cause -> PLACES.put(cause, PLACES.size()));
    }

    private final int turns;

    /** Room for every wait, arrow or turn, and for nobody and the past before them. */
    private final int width;

    /** Draw by draw the goal's day. */
    final int[] goalDays;

    /** By turn, draw by draw, its day. */
    final int[][] days;

    /** By turn the number of draws in which the goal's day hangs on it. */
    final int[] onChain;

    /** By turn how often it is the last before the goal. */
    final int[] last;

    /** By turn and {@link #slot} how often that decided, in all draws. */
    final int[][] decided;

    /** As {@link #decided}, in those draws in which the goal hangs on the turn. */
    final int[][] decidedOnChain;

    /** By slot the days waited along the chains; a season's slot is the turn that waits for it. */
    final double[] waited;

    /** Draws that reach the goal. */
    int reached;

    Tally(PrecedenceGraph network, RandomDraw draw, int draws) {
        turns = network.turns.size();
        width = Math.max(Math.max(turns, draw.waits.size()), network.arrows.size()) + 2;
        int slots = CAUSES.size() * width;
        goalDays = new int[draws];
        days = new int[turns][draws];
        onChain = new int[turns];
        last = new int[turns];
        decided = new int[turns][slots];
        decidedOnChain = new int[turns][slots];
        waited = new double[slots];
    }

    private int slot(Cause cause, int by) {
        return PLACES.getOrDefault(cause, 0) * width + by + 2;
    }

    Cause causeOf(int slot) {
        return CAUSES.get(slot / width);
    }

    /** The wait, arrow or turn of a slot; below 0 for nobody and the past. */
    int byOf(int slot) {
        return slot % width - 2;
    }

    void count(SimulationRun walk, int draw) {
        int end = -1;
        for (int i = 0; i < turns; i++) {
            days[i][draw] = walk.day[i];
            decided[i][slot(walk.cause[i], walk.by[i])]++;
            if (end < 0 || later(walk, i, end)) {
                end = i;
            }
        }
        goalDays[draw] = end < 0 ? 0 : walk.day[end];
        if (end >= 0 && walk.day[end] != YearsAhead.NEVER) {
            reached++;
            last[end]++;
            follow(walk, end);
        }
    }

    private static boolean later(SimulationRun walk, int turn, int than) {
        return walk.day[turn] > walk.day[than]
                || (walk.day[turn] == walk.day[than] && walk.place[turn] > walk.place[than]);
    }

    /** Walks from the goal back to the first day; every day on the way is put down to one cause. */
    private void follow(SimulationRun walk, int end) {
        int turn = end;
        while (turn >= 0) {
            var cause = walk.cause[turn];
            int before = walk.decidedBy(turn);
            onChain[turn]++;
            decidedOnChain[turn][slot(cause, walk.by[turn])]++;
            waited[slot(Cause.SEASON, turn)] += walk.day[turn] - walk.freeFrom[turn];
            // A work that was left the season and then not done in it explains no more than that.
            boolean goesOn =
                    before >= 0
                            && walk.place[before] < walk.place[turn]
                            && walk.day[before] <= walk.freeFrom[turn];
            int since = goesOn ? walk.day[before] : 0;
            waited[slot(cause, walk.by[turn])] += walk.freeFrom[turn] - since;
            turn = goesOn ? before : -1;
        }
    }
}
