package org.ripewood.core.season;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;

/**
 * The growth stage a tree of a habit usually has, by half months, when nobody has looked.
 *
 * <p>A cool-temperate year north of the equator; the south follows half a year later, and between
 * the tropics every tree counts as growing. The stages are common practice, no source. Whatever a
 * person saw wins: see {@link #from}.
 */
public final class TypicalYear implements StageClock {

    /** Days after which an observed stage no longer shifts the typical year. */
    static final int OBSERVATION_LASTS_DAYS = 120;

    /** Days an observed stage is taken as it was seen. */
    static final int OBSERVATION_HOLDS_DAYS = 10;

    /** Stage of trees that grow all the year. */
    public static final int GROWING = 35;

    static final double TROPIC_DEGREES = 23.44;
    private static final int HALF_YEAR_DAYS = 182;

    /** Two entries a month, January first. */
    private static final Map<Habit, int[]> HALF_MONTHS = new EnumMap<>(Habit.class);

    static {
        HALF_MONTHS.put(
                Habit.DECIDUOUS,
                new int[] {
                    0, 0, 0, 1, 3, 7, 10, 15, 19, 31, 33, 35, 37, 39, 39, 91, 91, 91, 92, 93, 95,
                    97, 97, 99
                });
        HALF_MONTHS.put(
                Habit.DECIDUOUS_CONIFER,
                new int[] {
                    0, 0, 0, 1, 3, 7, 10, 15, 19, 31, 33, 35, 37, 39, 39, 91, 91, 91, 92, 93, 95,
                    97, 97, 99
                });
        HALF_MONTHS.put(
                Habit.EVERGREEN_CONIFER,
                new int[] {
                    0, 0, 0, 1, 1, 3, 7, 9, 10, 15, 31, 35, 37, 39, 39, 91, 91, 91, 92, 93, 95, 97,
                    97, 99
                });
        HALF_MONTHS.put(
                Habit.EVERGREEN_BROADLEAF,
                new int[] {
                    0, 0, 0, 0, 1, 3, 7, 10, 15, 19, 31, 33, 35, 37, 39, 91, 91, 91, 92, 95, 97, 97,
                    97, 99
                });
        HALF_MONTHS.put(
                Habit.TROPICAL,
                new int[] {
                    0, 0, 0, 0, 1, 3, 7, 10, 15, 31, 33, 35, 35, 37, 37, 39, 39, 91, 91, 97, 97, 97,
                    97, 99
                });
    }

    private final int[] halfMonths;
    private final int shiftDays;
    private final boolean alwaysGrowing;
    private final PlaceYear place;

    private TypicalYear(int[] halfMonths, int shiftDays, boolean alwaysGrowing, PlaceYear place) {
        this.halfMonths = halfMonths;
        this.shiftDays = shiftDays;
        this.alwaysGrowing = alwaysGrowing;
        this.place = place;
    }

    /**
     * The typical year of a habit at a latitude.
     *
     * @param latitudeDegrees −90 to 90, south negative
     */
    public static TypicalYear of(Habit habit, double latitudeDegrees) {
        if (!(Math.abs(latitudeDegrees) <= 90)) {
            throw new IllegalArgumentException(
                    "latitude must lie between -90 and 90, found " + latitudeDegrees);
        }
        var table = halfMonths(habit);
        var tropics = Math.abs(latitudeDegrees) < TROPIC_DEGREES;
        return new TypicalYear(
                table,
                latitudeDegrees < 0 ? HALF_YEAR_DAYS : 0,
                tropics,
                ReferenceYear.place(latitudeDegrees));
    }

    /** The weather that goes with it: a mild cool-temperate year, or an even warm one. */
    public PlaceYear place() {
        return place;
    }

    /** The stages of a northern year's 24 half months; not to be written to. */
    static int[] halfMonths(Habit habit) {
        var table = HALF_MONTHS.get(habit);
        if (table == null) {
            throw new IllegalArgumentException("no typical year for " + habit);
        }
        return table;
    }

    @Override
    public int stageOn(LocalDate day) {
        if (alwaysGrowing) {
            return GROWING;
        }
        var shifted = shiftDays == 0 ? day : day.minusDays(shiftDays);
        var half = shifted.getDayOfMonth() <= 15 ? 0 : 1;
        return halfMonths[2 * (shifted.getMonthValue() - 1) + half];
    }

    /**
     * A clock that defers to what was seen and moves on from it.
     *
     * <p>For ten days the observed stage stands as it was seen. After that the typical year goes
     * on, as early or as late as the observation showed the tree to be, for four months; then the
     * typical year alone is used again, and so it is before the observation.
     *
     * @param observedStage vegetative BBCH code, 0 to 99
     */
    public StageClock from(int observedStage, LocalDate observedOn) {
        var late = lateDays(observedStage, observedOn);
        return day -> {
            var age = observedOn.until(day, java.time.temporal.ChronoUnit.DAYS);
            if (age < 0 || age > OBSERVATION_LASTS_DAYS) {
                return stageOn(day);
            }
            return age <= OBSERVATION_HOLDS_DAYS ? observedStage : stageOn(day.minusDays(late));
        };
    }

    /**
     * How many days later than usual the stage was seen; negative when early, 0 when it never is.
     */
    private long lateDays(int observedStage, LocalDate observedOn) {
        if (alwaysGrowing) {
            return 0;
        }
        for (int off = 0; off <= HALF_YEAR_DAYS; off++) {
            if (stageOn(observedOn.minusDays(off)) == observedStage) {
                return off;
            }
            if (stageOn(observedOn.plusDays(off)) == observedStage) {
                return -off;
            }
        }
        return 0;
    }
}
