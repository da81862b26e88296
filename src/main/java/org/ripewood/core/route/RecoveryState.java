package org.ripewood.core.route;

import java.util.Arrays;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.WorkLedger;

/**
 * What works have cost the tree so far in one draw: load, quiet, heavy works and doses by season.
 *
 * <p>The same rules as the ledger's (one heavy work in a growing season, shares per season, load
 * that falls in a straight line of growth-time), laid out for works that come one after the other.
 */
final class RecoveryState {

    /** Nobody's work. */
    static final int NOBODY = -1;

    /** Work done before the route begins. */
    static final int PAST = -2;

    /** As the rulebook's: shares are told in whole per cents. */
    private static final double SHARE_SLACK = 1e-3;

    private static final double LOAD_SLACK = 1e-9;
    private static final int KINDS = DoseRule.Kind.values().length;

    private final YearsAhead terrain;
    private final double loadBudget;
    private final int[] heavyBy;
    private final double[] taken;
    private final int[] takenBy;
    private final double[] loadAt;
    private final double[] loadStress;
    private final double[] loadRecovery;
    private final int[] loadBy;
    private double drawnPace = 1;
    private int loads;
    private final double pace;
    private int lastHeavyDay;
    private double lastHeavyGrowth;
    private int lastHeavyBy;

    private final int pastLoads;
    private final int pastHeavyDay;
    private final double pastHeavyGrowth;
    private final int pastHeavyThisSeason;
    private final double[] pastTaken = new double[KINDS];

    RecoveryState(RouteStart start, YearsAhead terrain, int turns) {
        this.terrain = terrain;
        this.loadBudget = start.loadBudget();
        var on = start.on();
        var ledger = start.ledger();
        int most = turns + ledger.works().size();
        loadAt = new double[most];
        loadStress = new double[most];
        loadRecovery = new double[most];
        loadBy = new int[most];
        for (var work : ledger.works()) {
            if (!work.doneOn().isAfter(on)) {
                double at = -terrain.plainDays(work.doneOn(), on);
                addLoad(at, work.stress(), work.recoveryDays(), PAST);
            }
        }
        pastLoads = loads;
        pace = ledger.recovery().pace();
        pastHeavyDay = -ledger.daysSinceHeavy(on);
        pastHeavyGrowth = ledger.lastHeavy(on).map(day -> -terrain.plainDays(day, on)).orElse(0.0);
        pastHeavyThisSeason = ledger.heavyThisSeason(on) > 0 ? PAST : NOBODY;
        for (var kind : DoseRule.Kind.values()) {
            pastTaken[place(kind)] = ledger.takenThisSeason(kind, on);
        }
        heavyBy = new int[terrain.seasons()];
        taken = new double[KINDS * terrain.seasons()];
        takenBy = new int[taken.length];
        clear(1);
    }

    /**
     * Back to the first day of the route.
     *
     * @param recovery how fast the tree recovers this time against what is usual, above 0
     */
    void clear(double recovery) {
        drawnPace = recovery;
        loads = pastLoads;
        lastHeavyDay = pastHeavyDay;
        lastHeavyGrowth = pastHeavyGrowth;
        lastHeavyBy = PAST;
        Arrays.fill(heavyBy, NOBODY);
        heavyBy[0] = pastHeavyThisSeason;
        Arrays.fill(taken, 0);
        System.arraycopy(pastTaken, 0, taken, 0, KINDS);
        Arrays.fill(takenBy, PAST);
    }

    /** Counts a work done on a day. */
    void add(RouteStep step, int day, int by) {
        int season = terrain.seasonOf(day);
        addLoad(terrain.growth(day), step.stress(), step.recoveryDays(), by);
        if (step.heavy()) {
            lastHeavyDay = day;
            lastHeavyGrowth = terrain.growth(day);
            lastHeavyBy = by;
            heavyBy[season] = by;
        }
        var dose = step.dose();
        if (dose != null) {
            if (dose.startsAnew()) {
                // what is taken from the season's new leaves is counted anew
                taken[season * KINDS + place(dose.kind())] = 0;
            } else {
                take(dose.kind(), season, dose.typicalShare(), by);
            }
        }
    }

    private void addLoad(double at, double stress, int recoveryDays, int by) {
        if (stress > 0 && recoveryDays > 0) {
            loadAt[loads] = at;
            loadStress[loads] = stress;
            loadRecovery[loads] = recoveryDays;
            loadBy[loads] = by;
            loads++;
        }
    }

    private static int place(DoseRule.Kind kind) {
        return switch (kind) {
            case FOLIAGE -> 0;
            case ROOT -> 1;
        };
    }

    private void take(DoseRule.Kind kind, int season, double share, int by) {
        if (share > 0) {
            int place = season * KINDS + place(kind);
            taken[place] += share;
            takenBy[place] = by;
        }
    }

    /** Whose heavy work a season has seen. */
    int heavyBy(int season) {
        return heavyBy[season];
    }

    /** Whose was the last heavy work. */
    int lastHeavyBy() {
        return lastHeavyBy;
    }

    /** First day after so many days without heavy work, as {@link WorkLedger#quietFrom}. */
    int quietFrom(int days) {
        int byDays = lastHeavyDay + days;
        if (days < WorkLedger.SEASON_QUIET_DAYS || lastHeavyDay <= -WorkLedger.NEVER_DAYS) {
            return byDays;
        }
        double season = WorkLedger.SEASON_SHARE * days * pace;
        return Math.min(byDays, terrain.dayOfGrowth(lastHeavyGrowth + season));
    }

    /**
     * Whose dose leaves no room for another one in a season; {@link #NOBODY} when there is room.
     */
    int doseInTheWay(DoseRule dose, int season) {
        int place = season * KINDS + place(dose.kind());
        boolean room = taken[place] + dose.typicalShare() <= dose.limitShare() + SHARE_SLACK;
        return room ? NOBODY : takenBy[place];
    }

    /**
     * First day, from a day on, on which the tree may carry so much more.
     *
     * <p>The load left is convex and falls, so that Newton's steps from the left never overshoot,
     * and each passes at least one bend: exact after as many steps as there are works.
     */
    int carries(double stress, int from) {
        double room = Math.max(0, loadBudget - stress);
        double growth = terrain.growth(from);
        int steps = 0;
        while (true) {
            double load = 0;
            double slope = 0;
            for (int i = 0; i < loads; i++) {
                double share = 1 - drawnPace * (growth - loadAt[i]) / loadRecovery[i];
                if (share > 0) {
                    load += loadStress[i] * share;
                    slope += drawnPace * loadStress[i] / loadRecovery[i];
                }
            }
            if (load <= room + LOAD_SLACK) {
                return steps == 0 ? from : terrain.dayOfGrowth(growth - LOAD_SLACK);
            }
            growth += (load - room) / slope;
            steps++;
        }
    }

    /** The work of which most load is left on a day; there is one whenever load is in the way. */
    int loadedBy(int day) {
        double growth = terrain.growth(day);
        int most = NOBODY;
        double left = 0;
        for (int i = loads - 1; i >= 0; i--) {
            double share = 1 - drawnPace * (growth - loadAt[i]) / loadRecovery[i];
            if (share * loadStress[i] > left) {
                left = share * loadStress[i];
                most = loadBy[i];
            }
        }
        return most;
    }
}
