package org.ripewood.core.route;

/**
 * What years and people are like in one draw; used again for the next.
 *
 * <p>Each year's seasons come early or late by a normal number of days; the one that holds the
 * first day is as it is. Each turn has a number for whether its window is missed and one for how
 * many days after it could be done it is, which falls off exponentially. Common practice, no
 * source.
 */
final class YearsOfDraw {

    private static final int CELLS = 1_024;
    private static final double[] NORMAL = new double[CELLS];
    private static final double[] EXPONENTIAL = new double[CELLS];

    /** A quarter of a year: how long a step that has no window is put off when it is missed. */
    private static final int PUT_OFF_DAYS = 91;

    static {
        for (int i = 0; i < CELLS; i++) {
            double probability = (i + 0.5) / CELLS;
            NORMAL[i] = Chance.normal(probability);
            EXPONENTIAL[i] = -Math.log(1 - probability);
        }
    }

    private final Spread spread;
    private final long years;
    private final long pace;
    private final long[] windows;
    private final long[] delays;
    private final int[] shift;
    private final boolean[] missed;
    private final int[] late;
    private double recovery = 1;

    YearsOfDraw(PrecedenceGraph network, YearsAhead terrain, Spread spread, long seed) {
        this.spread = spread;
        years = Chance.stream(seed, "years");
        pace = Chance.stream(seed, "pace of recovery");
        int turns = network.turns.size();
        windows = new long[turns];
        delays = new long[turns];
        for (int i = 0; i < turns; i++) {
            var turn = network.turns.get(i);
            var name = turn.step().code() + " " + turn.number();
            windows[i] = Chance.stream(seed, "window of " + name);
            delays[i] = Chance.stream(seed, "delay of " + name);
        }
        shift = new int[terrain.seasons()];
        missed = new boolean[turns];
        late = new int[turns];
    }

    /** Draws anew. */
    void next(int draw) {
        if (spread.seasonDays() > 0) {
            for (int season = 1; season < shift.length; season++) {
                long stream = years + season * 0x632BE59BD9B4E019L;
                shift[season] = (int) Math.round(spread.seasonDays() * of(NORMAL, stream, draw));
            }
        }
        recovery = Math.exp(spread.recovery() * of(NORMAL, pace, draw));
        for (int i = 0; i < windows.length; i++) {
            missed[i] = Chance.uniform(windows[i], draw) < spread.missed();
            late[i] = (int) Math.round(spread.lateDays() * of(EXPONENTIAL, delays[i], draw));
        }
    }

    private static double of(double[] table, long stream, int draw) {
        return table[(int) (Chance.uniform(stream, draw) * CELLS)];
    }

    /** Days by which the seasons of a growing season come later than usual. */
    int shift(int season) {
        return shift[season];
    }

    /** How fast the tree recovers against what is usual. */
    double recovery() {
        return recovery;
    }

    /** Whether a turn's first window goes by. */
    boolean missed(int turn) {
        return missed[turn];
    }

    /** Days from when a turn could be done to when it is. */
    int late(int turn) {
        return late[turn];
    }

    /** Where a window never shuts, a missed step is done so many days later. */
    static int putOffDays() {
        return PUT_OFF_DAYS;
    }
}
