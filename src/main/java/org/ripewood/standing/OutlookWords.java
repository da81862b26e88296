package org.ripewood.standing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.ripewood.core.season.Outlook;
import org.ripewood.steps.Wording;

/** An outlook as a part of a sentence. */
public final class OutlookWords {

    /** Within this span a month would say less than the day does. */
    private static final int SURE_DAYS = 21;

    private OutlookWords() {}

    /** {@code "from about June 2028, between May 2027 and July 2030"}: from then on it may be. */
    public static String when(Outlook.Expected expected) {
        return "from " + around(expected);
    }

    /** {@code "by about June 2028, between May 2027 and July 2030"}: by then it has come about. */
    public static String by(Outlook.Expected expected) {
        return "by " + around(expected);
    }

    /** {@code "since about May 2026, but nobody has looked: measure it"}. */
    public static String unseen(LocalDate likelySince) {
        return "since about %s, but nobody has looked: measure it"
                .formatted(Wording.month(likelySince));
    }

    private static String around(Outlook.Expected expected) {
        var earliest = expected.earliest();
        var likely = expected.likely();
        var latest = expected.latest();
        if (latest == null) {
            return "about %s; not before %s, and how late cannot be said"
                    .formatted(Wording.month(likely), Wording.month(earliest));
        }
        if (ChronoUnit.DAYS.between(earliest, latest) <= SURE_DAYS) {
            return "about " + Wording.day(likely);
        }
        return "about %s, between %s and %s"
                .formatted(Wording.month(likely), Wording.month(earliest), Wording.month(latest));
    }
}
