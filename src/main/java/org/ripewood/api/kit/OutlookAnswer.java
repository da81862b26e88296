package org.ripewood.api.kit;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Outlook;

/**
 * When something is likely to have come about.
 *
 * @param already whether it has
 * @param earliest day by which it has in one case of ten; null when it cannot be said
 * @param likely in every second case
 * @param latest in nine cases of ten; null as well when that lies more than thirty years ahead
 * @param because why it cannot be said; null when it can
 * @param likelySince the day since which it has likely come about without anybody having looked:
 *     measure it; null when nothing was likely before today
 */
public record OutlookAnswer(
        boolean already,
        @Nullable LocalDate earliest,
        @Nullable LocalDate likely,
        @Nullable LocalDate latest,
        @Nullable String because,
        @Nullable LocalDate likelySince) {

    public static OutlookAnswer of(Outlook outlook) {
        if (outlook instanceof Outlook.Expected expected) {
            return new OutlookAnswer(
                    false,
                    expected.earliest(),
                    expected.likely(),
                    expected.latest(),
                    null,
                    expected.likelySince());
        }
        return outlook instanceof Outlook.Unsaid unsaid
                ? new OutlookAnswer(false, null, null, null, unsaid.because(), null)
                : new OutlookAnswer(true, null, null, null, null, null);
    }
}
