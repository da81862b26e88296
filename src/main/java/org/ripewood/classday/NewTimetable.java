package org.ripewood.classday;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.bench.Span;

/**
 * A timetable to be laid out.
 *
 * @param now time of the day from which on; null for the whole day anew
 * @param absent students who are not there, or have left
 * @param late students who come later
 * @param overruns work that runs on longer than planned
 * @param breaks for all; null to keep those there are
 * @param lesson when the day's lesson is held; null to keep what was said before, at first as early
 *     as the day begins and as long as the lesson takes
 */
public record NewTimetable(
        @Nullable LocalTime now,
        @Nullable @Size(max = 200) List<@NotNull Long> absent,
        @Nullable @Size(max = 200) List<@NotNull @Valid Late> late,
        @Nullable @Size(max = 200) List<@NotNull @Valid Overrun> overruns,
        @Nullable @Size(max = 6) List<@NotNull @Valid Break> breaks,
        @Nullable @Valid Lesson lesson) {

    /**
     * The day's lesson for all.
     *
     * @param at null for as early as the day begins
     * @param minutes null for as long as the lesson takes; 0 for none
     */
    public record Lesson(
            @Nullable LocalTime at, @Nullable @Min(0) @Max(Span.DAY_MINUTES) Integer minutes) {}

    public record Late(@NotNull Long personId, @NotNull LocalTime at) {}

    public record Overrun(@NotNull Long treeId, @NotNull LocalTime until) {}

    public record Break(@NotNull LocalTime from, @NotNull LocalTime until) {}
}
