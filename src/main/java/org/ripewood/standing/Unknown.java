package org.ripewood.standing;

import java.util.LinkedHashSet;
import java.util.Set;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Truth;

/** The facts a student can look at to settle what is not known of a step. */
public final class Unknown {

    private Unknown() {}

    /** Facts as the rules ask for them, in the order of the reasons; none when all is known. */
    public static Set<Fact> of(Standing standing) {
        var unknown = new LinkedHashSet<Fact>();
        for (var reason : standing.reasons()) {
            if (reason.truth() != Truth.UNKNOWN) {
                continue;
            }
            if (reason instanceof Reason.OfCriterion criterion
                    && criterion.look() != Reason.Look.PROVISIONAL) {
                unknown.add(criterion.criterion().fact());
            } else if (reason instanceof Reason.OfNeed need) {
                unknown.addAll(need.missing());
            } else if (reason instanceof Reason.OfLoad) {
                unknown.add(Fact.VIGOUR_INDEX);
            } else if (reason instanceof Reason.OfSeason) {
                unknown.add(Fact.FLOWER_STAGE);
            }
        }
        return unknown;
    }
}
