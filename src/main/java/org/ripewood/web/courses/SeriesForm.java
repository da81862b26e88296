package org.ripewood.web.courses;

import jakarta.validation.constraints.NotNull;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.sessions.SeriesDates;

/**
 * The days of sessions to be set, as the form says them.
 *
 * @param heldOn the first
 * @param unit null for one day only
 * @param show whether the days are to be shown before anything is set
 */
record SeriesForm(
        @NotNull LocalDate heldOn,
        SeriesDates.@Nullable Unit unit,
        @Nullable Integer every,
        @Nullable Integer times,
        @Nullable List<@NotNull LocalDate> days,
        boolean show) {

    /** The days that follow from the rule. */
    List<LocalDate> proposed() {
        return unit == null
                ? List.of(heldOn)
                : SeriesDates.of(
                        heldOn, unit, every == null ? 1 : every, times == null ? 1 : times);
    }

    /** Whether days have to be looked at first: a series of which none are chosen yet. */
    boolean toBeShown() {
        return show || (unit != null && days == null);
    }
}
