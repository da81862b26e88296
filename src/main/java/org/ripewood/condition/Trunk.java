package org.ripewood.condition;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.TaperProfile;
import org.ripewood.core.growth.Thickening;
import org.ripewood.core.season.Outlook;

/**
 * A trunk on a day.
 *
 * @param profile its diameters at marked heights; may be empty
 * @param heightMm of the tree; null when not measured
 * @param plannedBaseMm how thick its base is to be; null when not planned
 * @param base how its base thickens
 */
public record Trunk(
        LocalDate on,
        TaperProfile profile,
        @Nullable Double heightMm,
        @Nullable Double plannedBaseMm,
        Thickening base) {

    /** When its base will be as thick as planned; null when nothing is planned. */
    public @Nullable Outlook baseAsPlanned() {
        return plannedBaseMm == null ? null : base.whenAtLeast(plannedBaseMm, on);
    }
}
