package org.ripewood.core.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Growth stage of a habit at a place, from its temperatures and its days' length.
 *
 * <p>From bud swelling to the end of shoot growth a stage begins at its share of the place's mean
 * yearly warmth, that of short winter days left out; colour and fall of leaves begin at their share
 * of autumn's coolness ({@link SeasonProgress}, {@link SeasonScales}). At midwinter the count
 * begins anew. On a cool-temperate normal year the stages begin within three weeks of those of
 * {@link TypicalYear}, which stays in use where temperatures are not known.
 *
 * <p>Where no winter comes ({@link TypicalWeather}: the temperatures decide, whatever the latitude)
 * every tree counts as growing. Tropical kinds grow wherever and as long as the usual daily mean is
 * about 18 °C and days are at least 10 hours long; in warmth and shorter days, as in a heated house
 * in winter, they stand in full leaf and make no shoots. Where a year has less than 100 degree-days
 * above 5 °C, buds stay shut. Days outside the span are answered by the same day of its nearest
 * year. Values are worked out once; threads may share them.
 */
public final class SeasonModel implements StageClock {

    /** Stages of flower and fruit, which run beside leaves and shoots and shift nothing here. */
    private static final StageRange FLOWER_TRACK =
            new StageRange(StageRange.FIRST_FLOWER_STAGE, StageRange.LAST_FLOWER_STAGE);

    private static final int RESTING = 0;
    private static final int RESTING_AFTER_LEAF_FALL = 99;
    private static final int HALF_FALLEN = 95;

    /** Leaves full, and the last stage of shoots: between them a tropical kind grows in warmth. */
    private static final int LEAVES_FULL = 19;

    private static final int SHOOTS_DONE = 39;

    /** In full leaf, growth ended: a tropical kind in warmth while days are short. */
    private static final int PAUSING = 91;

    /** The coolest day may come before midwinter; from then on it is a year away again. */
    private static final int PAST_THE_COOLEST_DAYS = 300;

    private final SeasonProgress progress;
    private final SeasonScales scales;
    private final boolean tropical;
    private final byte[] stages;

    private SeasonModel(SeasonProgress progress, Habit habit) {
        this.progress = progress;
        this.scales = SeasonScales.of(habit);
        this.tropical = habit == Habit.TROPICAL;
        this.stages = new byte[progress.days()];
        for (int i = 0; i < stages.length; i++) {
            stages[i] = (byte) stage(progress.firstDay().plusDays(i), 0, 0);
        }
    }

    /**
     * The stages over the growing seasons that hold two days and all between.
     *
     * @throws IllegalArgumentException when the days run backwards or over more than 200 years
     */
    public static SeasonModel of(Climate climate, Habit habit, LocalDate first, LocalDate last) {
        return new SeasonModel(SeasonProgress.of(climate, first, last), habit);
    }

    @Override
    public int stageOn(LocalDate day) {
        return stages[progress.index(day)];
    }

    /**
     * A clock that defers to what was seen and moves on from it.
     *
     * <p>For ten days the observed stage stands as it was seen. After that the model goes on, ahead
     * or behind by as much warmth and coolness as the observation showed the tree to be, for four
     * months or until midwinter, and never back behind what was seen; then the model alone is used
     * again, and so it is before the observation. A stage of flower or fruit (51 to 89) stands for
     * its ten days and shifts nothing.
     *
     * @param observedStage BBCH code, 0 to 99
     * @throws IllegalArgumentException when it is not
     */
    public StageClock from(int observedStage, LocalDate observedOn) {
        if (observedStage < 0 || observedStage > 99) {
            throw new IllegalArgumentException(
                    "BBCH stages run from 00 to 99, found " + observedStage);
        }
        boolean shifts = !progress.alwaysGrowing() && !FLOWER_TRACK.holds(observedStage);
        int seen = asOf(observedStage, observedOn);
        var season = progress.season(observedOn);
        double ahead = shifts ? scales.spring().lead(seen, progress.warmth(at(observedOn))) : 0;
        double cooler = shifts ? scales.autumn().lead(seen, progress.coolness(at(observedOn))) : 0;
        return day -> {
            long age = ChronoUnit.DAYS.between(observedOn, day);
            if (age >= 0 && age <= TypicalYear.OBSERVATION_HOLDS_DAYS) {
                return observedStage;
            }
            if (!shifts
                    || age < 0
                    || age > TypicalYear.OBSERVATION_LASTS_DAYS
                    || !season.holds(day)) {
                return stageOn(day);
            }
            return Math.max(seen, stage(day, ahead, cooler));
        };
    }

    /** The usual weather of the place. */
    public PlaceYear place() {
        return progress.place();
    }

    SeasonProgress progress() {
        return progress;
    }

    private int at(LocalDate day) {
        return progress.index(day);
    }

    /** Rest is 99 before midwinter and 00 after it, whichever of the two was written down. */
    private int asOf(int observedStage, LocalDate on) {
        boolean past = progress.pastMidsummer(on);
        if (past && observedStage == RESTING) {
            return RESTING_AFTER_LEAF_FALL;
        }
        return !past && observedStage >= HALF_FALLEN ? RESTING : observedStage;
    }

    private int stage(LocalDate day, double ahead, double cooler) {
        if (progress.alwaysGrowing()) {
            return tropical && isDim(day) ? PAUSING : TypicalYear.GROWING;
        }
        int index = at(day);
        int stage =
                scales.stageAt(progress.warmth(index) + ahead, progress.coolness(index) + cooler);
        return tropical ? warmed(stage, day) : stage;
    }

    /** The stage of a tropical kind, which the warmth of the days keeps in growth. */
    private int warmed(int stage, LocalDate day) {
        var place = progress.place();
        int growing = place.tropicalGrowthAhead(day) ? Math.min(SHOOTS_DONE, stage) : stage;
        if (progress.pastMidsummer(day) && place.daysToCoolest(day) > PAST_THE_COOLEST_DAYS) {
            return stage; // the warmth ahead is that of the next growing season
        }
        if (!place.tropicalGrowth(day)) {
            return growing;
        }
        return isDim(day) ? PAUSING : Math.max(LEAVES_FULL, growing);
    }

    private boolean isDim(LocalDate day) {
        return progress.hours(day) < SeasonProgress.LEAST_DAY_HOURS;
    }
}
