package org.ripewood.web.trees;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The bench form as it is sent.
 *
 * @param mark diameter by the height of a mark known before
 * @param newHeight height by the number of a blank row
 * @param newDiameter diameter by the number of a blank row
 * @param wound open width by the wound's id
 * @param whole value by the fact's code
 */
record MeasureForm(
        @NotNull LocalDate observedOn,
        @Nullable @Size(max = 2000) String note,
        @Nullable @Size(max = 100) Map<String, String> mark,
        @Nullable @Size(max = 100) Map<String, String> newHeight,
        @Nullable @Size(max = 100) Map<String, String> newDiameter,
        @Nullable @Size(max = 200) Map<String, String> wound,
        @Nullable @Size(max = 60) Map<String, String> whole,
        @Nullable @Size(max = 400) List<String> confirmed) {}
