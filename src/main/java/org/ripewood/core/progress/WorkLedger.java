package org.ripewood.core.progress;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.ripewood.core.season.GrowingSeason;

/**
 * What a tree has gone through: the load still to be recovered from and the doses of the season.
 *
 * <p>Each work's load falls in a straight line from its stress to nothing over its recovery days;
 * what is left adds up. Works after the day asked for are not counted. Common practice, no source.
 *
 * @param works in any order
 * @param latitudeDegrees decides where the growing season begins
 */
public record WorkLedger(List<Work> works, double latitudeDegrees) {

    /** Stands for "never": longer than any record. */
    public static final int NEVER_DAYS = 36_600;

    public WorkLedger {
        works = List.copyOf(works);
    }

    /** The load left on a day; 0 for a tree at rest. Unit: stress, 0 to 10 for one work. */
    public double loadLeft(LocalDate on) {
        double left = 0;
        for (var work : works) {
            var days = days(work, on);
            if (days >= 0 && days < work.recoveryDays()) {
                left += work.stress() * (1 - (double) days / work.recoveryDays());
            }
        }
        return left;
    }

    /** Days since the last heavy work, or {@link #NEVER_DAYS}. */
    public int daysSinceHeavy(LocalDate on) {
        long least = NEVER_DAYS;
        for (var work : works) {
            var days = days(work, on);
            if (work.heavy() && days >= 0) {
                least = Math.min(least, days);
            }
        }
        return (int) least;
    }

    /** Number of heavy works in the growing season that holds the day, up to it. */
    public int heavyThisSeason(LocalDate on) {
        var season = GrowingSeason.of(on, latitudeDegrees);
        int heavy = 0;
        for (var work : works) {
            if (work.heavy() && !work.doneOn().isAfter(on) && season.holds(work.doneOn())) {
                heavy++;
            }
        }
        return heavy;
    }

    /** Share taken of foliage or roots in the growing season that holds the day, up to it. */
    public double takenThisSeason(DoseRule.Kind kind, LocalDate on) {
        var season = GrowingSeason.of(on, latitudeDegrees);
        double taken = 0;
        for (var work : works) {
            if (!work.doneOn().isAfter(on) && season.holds(work.doneOn())) {
                taken +=
                        switch (kind) {
                            case FOLIAGE -> work.foliageShare();
                            case ROOT -> work.rootShare();
                        };
            }
        }
        return taken;
    }

    private static long days(Work work, LocalDate on) {
        return ChronoUnit.DAYS.between(work.doneOn(), on);
    }
}
