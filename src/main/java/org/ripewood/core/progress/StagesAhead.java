package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.Arrays;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.PlaceYear;
import org.ripewood.core.season.StageClock;

/**
 * A tree's growth stages in the days to come.
 *
 * <p>Every technique that waits for its season walks over the same days, so each day is asked for
 * once. For one thread.
 */
final class StagesAhead {

    /** A window is looked for over a year and a month, so that none just missed is lost. */
    static final int LOOK_AHEAD_DAYS = 396;

    /** Farther away no stage is asked for: what outlooks reach over, and the season after. */
    static final int REACH_DAYS = Outlook.REACH_YEARS * 366 + LOOK_AHEAD_DAYS;

    private final StageClock clock;
    private final LocalDate on;
    private final PlaceYear place;

    /** Entry i: the stage in i days plus one; 0 where nobody has asked. */
    private byte[] known = {};

    StagesAhead(StageClock clock, LocalDate on, PlaceYear place) {
        this.clock = clock;
        this.on = on;
        this.place = place;
    }

    PlaceYear place() {
        return place;
    }

    LocalDate day(int days) {
        return on.plusDays(days);
    }

    /**
     * The stage some days on.
     *
     * @param days 0 to {@link #REACH_DAYS}
     */
    int in(int days) {
        if (days >= known.length) {
            int size = Math.min(Math.max(2 * known.length, days + LOOK_AHEAD_DAYS), REACH_DAYS + 1);
            known = Arrays.copyOf(known, size);
        }
        if (known[days] == 0) {
            known[days] = (byte) (clock.stageOn(on.plusDays(days)) + 1);
        }
        return known[days] - 1;
    }
}
