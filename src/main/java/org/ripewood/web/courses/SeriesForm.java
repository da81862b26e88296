package org.ripewood.web.courses;

import jakarta.validation.constraints.NotNull;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sessions.SeriesDates;

/**
 * The days of sessions to be set, as the form says them.
 *
 * @param heldOn the first
 * @param unit null for one day only
 * @param days those chosen of the ones shown; null when none were shown or chosen
 */
record SeriesForm(
        @NotNull LocalDate heldOn,
        SeriesDates.@Nullable Unit unit,
        @Nullable Integer every,
        @Nullable Integer times,
        @Nullable List<@NotNull LocalDate> days) {

    /**
     * The days that follow from the rule.
     *
     * @throws Refused 400 when the rule is incomplete or out of its bounds
     */
    List<LocalDate> proposed() {
        if (unit == null && times != null && times > 1) {
            throw Refused.invalid("unit", "Choose weeks or months to repeat the session.");
        }
        return unit == null
                ? List.of(heldOn)
                : SeriesDates.of(
                        heldOn, unit, every == null ? 1 : every, times == null ? 1 : times);
    }
}
