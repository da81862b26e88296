package org.ripewood.core.route;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * How the years go in one draw; used again for the next.
 *
 * <p>Works are placed in the order of their days. Of the turns whose predecessors are done the one
 * with the earliest possible day comes next; what is placed only makes other days later, so that an
 * old answer is a lower bound and is worked out anew only when it is the earliest. A heavy work
 * leaves the growing season to another one that is due in it and goes first by {@link Ranks}. That
 * is what a teacher would do, not the best of all plans.
 */
final class SimulationRun {

    private final YearsAhead terrain;
    private final RandomDraw draw;
    private final RecoveryState toll;
    private final WindowsOfDraw windows;
    private final RouteStep[] steps;
    private final boolean[] heavy;
    private final int[][] nextOpen;
    private final PrecedenceGraph.Arrow[] arrows;
    private final int[][] arrowsFrom;
    private final int[] arrowsTo;
    private final int[] rank;
    private final int[] base;
    private final Cause[] baseCause;
    private final int[] baseBy;
    private final int[] ahead;
    private final int[] candidate;
    private final int[] blockedUntil;
    private final int[] blockedBy;
    private int done;

    /** By turn: the day it is done, or never. */
    final int[] day;

    /** By turn: the day from which only the season was waited for. */
    final int[] freeFrom;

    /** By turn: what decided {@link #freeFrom}. */
    final Cause[] cause;

    /** By turn: which wait, arrow (of a lag) or turn did; below 0 when none on the route did. */
    final int[] by;

    /** By turn: how many were placed before it. */
    final int[] place;

    SimulationRun(RouteStart start, PrecedenceGraph network, YearsAhead terrain, RandomDraw draw) {
        this.terrain = terrain;
        this.draw = draw;
        windows = new WindowsOfDraw(terrain, draw.years);
        steps = network.turns.stream().map(PrecedenceGraph.Turn::step).toArray(RouteStep[]::new);
        int n = steps.length;
        toll = new RecoveryState(start, terrain, n);
        rank = Ranks.of(network);
        heavy = new boolean[n];
        nextOpen = new int[n][];
        arrows = network.arrows.toArray(PrecedenceGraph.Arrow[]::new);
        arrowsFrom = new int[n][];
        arrowsTo = new int[n];
        for (int i = 0; i < n; i++) {
            int from = i;
            heavy[i] = steps[i].heavy();
            nextOpen[i] = terrain.nextOpen(steps[i].openStages());
            arrowsFrom[i] =
                    IntStream.range(0, arrows.length)
                            .filter(arrow -> arrows[arrow].from() == from)
                            .toArray();
        }
        network.arrows.forEach(arrow -> arrowsTo[arrow.to()]++);
        base = new int[n];
        baseCause = new Cause[n];
        baseBy = new int[n];
        ahead = new int[n];
        candidate = new int[n];
        blockedUntil = new int[n];
        blockedBy = new int[n];
        day = new int[n];
        freeFrom = new int[n];
        cause = new Cause[n];
        by = new int[n];
        place = new int[n];
    }

    /** Goes through the years once. */
    void go(int number) {
        draw.next(number);
        toll.clear(draw.years.recovery());
        done = 0;
        Arrays.fill(blockedUntil, 0);
        System.arraycopy(arrowsTo, 0, ahead, 0, ahead.length);
        for (int i = 0; i < steps.length; i++) {
            begin(i);
        }
        for (int i = 0; i < steps.length; i++) {
            if (ahead[i] == 0) {
                candidate[i] = soonest(i);
            }
        }
        while (done < steps.length) {
            int next = earliest();
            int now = soonest(next);
            if (now == candidate[next] && (now == YearsAhead.NEVER || !standsBack(next, now))) {
                put(next, now);
            } else {
                candidate[next] = soonest(next);
            }
        }
    }

    private void begin(int turn) {
        base[turn] = 0;
        baseCause[turn] = Cause.NOTHING;
        baseBy[turn] = RecoveryState.NOBODY;
        place[turn] = -1;
        for (int wait = draw.firstWait(turn); wait < draw.firstWait(turn + 1); wait++) {
            raise(turn, draw.day(wait), Cause.WAIT, wait);
        }
    }

    private void raise(int turn, int to, Cause because, int whose) {
        if (to > base[turn]) {
            base[turn] = to;
            baseCause[turn] = because;
            baseBy[turn] = whose;
        }
    }

    private int earliest() {
        int best = -1;
        for (int i = 0; i < steps.length; i++) {
            if (place[i] < 0
                    && ahead[i] == 0
                    && (best < 0
                            || candidate[i] < candidate[best]
                            || (candidate[i] == candidate[best] && rank[i] < rank[best]))) {
                best = i;
            }
        }
        return best;
    }

    /** Leaves the season to a heavy work that goes first; false when there is none. */
    private boolean standsBack(int turn, int on) {
        if (!heavy[turn]) {
            return false;
        }
        int nextSeason = terrain.seasonAfter(terrain.seasonOf(on));
        for (int i = 0; i < steps.length; i++) {
            if (place[i] < 0
                    && ahead[i] == 0
                    && rank[i] < rank[turn]
                    && candidate[i] < nextSeason
                    && heavy[i]) {
                candidate[i] = soonest(i);
                if (candidate[i] < nextSeason) {
                    blockedUntil[turn] = nextSeason;
                    blockedBy[turn] = i;
                    return true;
                }
            }
        }
        return false;
    }

    private void put(int turn, int on) {
        day[turn] = on;
        place[turn] = done++;
        if (on != YearsAhead.NEVER) {
            toll.add(steps[turn], on, turn);
        }
        for (int index : arrowsFrom[turn]) {
            var arrow = arrows[index];
            var lag = arrow.lag();
            int days = arrow.lagDays() + (lag == null ? 0 : draw.days(lag));
            int free = on == YearsAhead.NEVER ? on : on + days;
            if (days > 0) {
                raise(arrow.to(), free, Cause.LAG, index);
            } else {
                raise(arrow.to(), free, Cause.ORDER, turn);
            }
            if (--ahead[arrow.to()] == 0) {
                candidate[arrow.to()] = soonest(arrow.to());
            }
        }
    }

    /** The day a turn is done on, as things stand; what decides it is noted. */
    private int soonest(int turn) {
        settle(turn, base[turn], baseCause[turn], baseBy[turn]);
        int first = free(turn, base[turn]);
        if (first != YearsAhead.NEVER && draw.years.missed(turn)) {
            first = free(turn, windows.shutAfter(nextOpen[turn], first));
        }
        return first == YearsAhead.NEVER
                ? first
                : windows.later(nextOpen[turn], first, draw.years.late(turn));
    }

    /** The first day from one on with an open window on which earlier works let a turn be. */
    private int free(int turn, int from) {
        int at = from;
        while (at < terrain.days) {
            at = windows.open(nextOpen[turn], at);
            if (at == YearsAhead.NEVER) {
                return at;
            }
            int moved = held(turn, steps[turn], at);
            if (moved == at) {
                return at;
            }
            at = moved;
        }
        return YearsAhead.NEVER;
    }

    /** The day to which earlier works put a turn off; the day itself when they do not. */
    private int held(int turn, RouteStep step, int at) {
        int season = terrain.seasonOf(at);
        if (heavy[turn]) {
            if (toll.heavyBy(season) != RecoveryState.NOBODY) {
                return settle(turn, terrain.seasonAfter(season), Cause.HEAVY, toll.heavyBy(season));
            }
            if (blockedUntil[turn] > at) {
                return settle(turn, blockedUntil[turn], Cause.HEAVY, blockedBy[turn]);
            }
        }
        int quiet = step.quietDaysBefore() == 0 ? at : toll.quietFrom(step.quietDaysBefore());
        if (quiet > at) {
            return settle(turn, quiet, Cause.QUIET, toll.lastHeavyBy());
        }
        var dose = step.dose();
        if (dose != null && toll.doseInTheWay(dose, season) != RecoveryState.NOBODY) {
            int whose = toll.doseInTheWay(dose, season);
            return settle(turn, terrain.seasonAfter(season), Cause.DOSE, whose);
        }
        int carries = step.stress() == 0 ? at : toll.carries(step.stress(), at);
        return carries == at ? at : settle(turn, carries, Cause.LOAD, toll.loadedBy(at));
    }

    /** The turn that decided this one's day; below 0 when none on the route did. */
    int decidedBy(int turn) {
        return switch (cause[turn]) {
            case WAIT -> RecoveryState.NOBODY;
            case LAG -> arrows[by[turn]].from();
            default -> by[turn];
        };
    }

    private int settle(int turn, int from, Cause because, int whose) {
        freeFrom[turn] = from;
        cause[turn] = because;
        by[turn] = whose;
        return from;
    }
}
