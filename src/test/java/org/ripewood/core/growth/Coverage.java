package org.ripewood.core.growth;

import java.time.LocalDate;
import org.ripewood.core.season.Outlook;

/** How many truths lay between the early and the late day of a forecast. */
final class Coverage {

    private int within;
    private int early;
    private int late;
    private int unsaid;

    /**
     * Counts one forecast. One that is given no likely day reaches from its early day, or from what
     * can be said at all, to never.
     */
    void add(Outlook outlook, LocalDate truth, LocalDate today) {
        var reach = today.plusYears(Outlook.REACH_YEARS);
        if (outlook instanceof Outlook.Expected expected) {
            var latest = expected.latest();
            count(truth.isBefore(expected.earliest()), latest != null && truth.isAfter(latest));
        } else {
            unsaid++;
            boolean mayCome = outlook.toString().contains("may come about");
            count(!mayCome && truth.isBefore(reach), false);
        }
    }

    private void count(boolean tooEarly, boolean tooLate) {
        early += tooEarly ? 1 : 0;
        late += tooLate ? 1 : 0;
        within += tooEarly || tooLate ? 0 : 1;
    }

    void add(Coverage other) {
        within += other.within;
        early += other.early;
        late += other.late;
        unsaid += other.unsaid;
    }

    int seen() {
        return within + early + late;
    }

    double share() {
        return (double) within / seen();
    }

    /** Share without a likely day within thirty years. */
    double unsaid() {
        return (double) unsaid / seen();
    }

    long percent() {
        return Math.round(100 * share());
    }
}
