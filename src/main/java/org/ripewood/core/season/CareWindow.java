package org.ripewood.core.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * When a tree needs some care after work, counted from the work and moved by the season.
 *
 * <p>Common practice, no source.
 *
 * @param fromDay first day, counted from the work; 0 is the same day
 * @param days for how many days at most, at least 1
 * @param waitDays how many days at most it waits for its stages; 0 when it is then or never
 * @param onlyStages growth stages (BBCH) outside of which there is nothing to do; empty for all
 * @param notStages growth stages in which there is nothing to do all the same
 */
public record CareWindow(
        int fromDay,
        int days,
        int waitDays,
        List<StageRange> onlyStages,
        List<StageRange> notStages) {

    /** The season comes round within a year; a stage that has not come by then does not come. */
    public static final int A_YEAR_ROUND = 400;

    public CareWindow {
        onlyStages = List.copyOf(onlyStages);
        notStages = List.copyOf(notStages);
        if (fromDay < 0 || days < 1 || waitDays < 0) {
            throw new IllegalArgumentException(
                    "care begins on day 0 or later and lasts a day or longer, found day %d,"
                                    .formatted(fromDay)
                            + " %d days, %d of waiting".formatted(days, waitDays));
        }
    }

    /**
     * The days of the care after one piece of work.
     *
     * <p>It begins on the first day from {@code fromDay} on whose stage is open, waiting for the
     * season where it has to, and ends with its days or with the last day of open stages, whichever
     * comes first. Once ended it does not begin again in a later year.
     *
     * @param workedOn day of the work
     * @param stages of the tree at its place
     * @return empty when no open stage comes while it waits: frost in a place without winter
     */
    public Optional<Span> after(LocalDate workedOn, StageClock stages) {
        var earliest = workedOn.plusDays(fromDay);
        for (int waited = 0; waited <= waitDays; waited++) {
            var from = earliest.plusDays(waited);
            if (open(stages.stageOn(from))) {
                return Optional.of(new Span(from, lastOpen(from, stages)));
            }
        }
        return Optional.empty();
    }

    /**
     * Whether the care is given where trees never rest, such as between the tropics. Care against
     * frost must not be.
     */
    public boolean openWhereTreesNeverRest() {
        return open(TypicalYear.GROWING);
    }

    private LocalDate lastOpen(LocalDate from, StageClock stages) {
        var last = from;
        for (int day = 1; day < days && open(stages.stageOn(from.plusDays(day))); day++) {
            last = from.plusDays(day);
        }
        return last;
    }

    private boolean open(int stage) {
        return (onlyStages.isEmpty() || onlyStages.stream().anyMatch(range -> range.holds(stage)))
                && notStages.stream().noneMatch(range -> range.holds(stage));
    }
}
