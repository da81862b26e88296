package org.ripewood.classday;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A timetable to be laid out.
 *
 * @param now time of the day from which on; null for the whole day anew
 * @param absent students who are not there, or have left
 * @param late students who come later
 * @param overruns work that runs on longer than planned
 * @param breaks for all; null to keep those there are
 */
public record NewTimetable(
        @Nullable LocalTime now,
        @Nullable @Size(max = 200) List<@NotNull Long> absent,
        @Nullable @Size(max = 200) List<@NotNull @Valid Late> late,
        @Nullable @Size(max = 200) List<@NotNull @Valid Overrun> overruns,
        @Nullable @Size(max = 6) List<@NotNull @Valid Break> breaks) {

    public record Late(@NotNull Long personId, @NotNull LocalTime at) {}

    public record Overrun(@NotNull Long treeId, @NotNull LocalTime until) {}

    public record Break(@NotNull LocalTime from, @NotNull LocalTime until) {}
}
