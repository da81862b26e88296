package org.ripewood.core.season;

import java.util.Arrays;

/**
 * At which warmth and which coolness each stage of a habit begins.
 *
 * <p>Stages follow each other as in {@link TypicalYear}; the half month in which a stage begins
 * there is turned into a share of warmth (until 91) or of coolness (from 92). The shares of half
 * months are the means of two cool-temperate normal years: four years of one oceanic station at
 * 47.6° (NOAA NCDC daily summaries, public domain) and a made-up lowland inland at 50° with July
 * means of 14 and 25 °C and January means of −1 and 4 °C. Common practice, no source.
 */
record SeasonScales(StageScale spring, StageScale autumn) {

    /** Stage from which coolness decides. */
    static final int FIRST_AUTUMN_STAGE = 92;

    /** Share of the mean year's warmth on the morning that begins a half month, January first. */
    private static final double[] WARMTH = {
        0, 0.0005, 0.0010, 0.0025, 0.0120, 0.0270, 0.0500, 0.0800, 0.1180, 0.1680, 0.2320, 0.3010,
        0.3790, 0.4640, 0.5590, 0.6480, 0.7370, 0.8100, 0.8710, 0.9190, 0.9540, 0.9740, 0.9860,
        0.9940
    };

    /**
     * Share of the mean autumn's coolness on the morning that begins a half month, August first.
     */
    private static final double[] COOLNESS = {
        0, 0, 0.0005, 0.0330, 0.0920, 0.1800, 0.3060, 0.4550, 0.6260, 0.8050
    };

    private static final int FIRST_COOL_HALF_MONTH = 14;

    static SeasonScales of(Habit habit) {
        return new SeasonScales(
                scale(habit, 1, FIRST_AUTUMN_STAGE - 1, 0, WARMTH),
                scale(habit, FIRST_AUTUMN_STAGE, 99, FIRST_COOL_HALF_MONTH, COOLNESS));
    }

    private static StageScale scale(
            Habit habit, int fromStage, int toStage, int firstHalfMonth, double[] shares) {
        var halfMonths = TypicalYear.halfMonths(habit);
        var stages = new int[halfMonths.length];
        var begins = new double[halfMonths.length];
        int count = 0;
        for (int half = Math.max(1, firstHalfMonth); half < halfMonths.length; half++) {
            int stage = halfMonths[half];
            if (stage != halfMonths[half - 1] && stage >= fromStage && stage <= toStage) {
                stages[count] = stage;
                begins[count] = shares[half - firstHalfMonth];
                count++;
            }
        }
        return new StageScale(Arrays.copyOf(stages, count), Arrays.copyOf(begins, count));
    }

    /** The stage at a warmth and a coolness; autumn wins once it has begun. */
    int stageAt(double warmth, double coolness) {
        return Math.max(spring.stageAt(warmth), autumn.stageAt(coolness));
    }
}
