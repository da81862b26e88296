package org.ripewood.aftercare;

import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A word on a task.
 *
 * @param on day it was done or found not to be needed; today when left out
 * @param corrects whether it is to stand for what was said before
 */
public record NewWord(
        @Nullable LocalDate on,
        @Nullable @Size(max = 2000) String note,
        @Nullable Boolean corrects) {

    /** A plain word as of today. */
    public static final NewWord TODAY = new NewWord(null, null, null);
}
