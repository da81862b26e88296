package org.ripewood.news;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A person's present visit.
 *
 * @param since when the visit before it began: what happened from then on is told
 * @param began when it began
 */
record Visit(Instant since, Instant began) {

    /** A visit lasts so long, or until one signs in anew: a reload does not empty the list. */
    static final Duration LASTS = Duration.ofHours(1);

    /** The first there is: nothing happened before it that its person has not seen. */
    static Visit first(Instant now) {
        return new Visit(now, now);
    }

    /**
     * The visit somebody makes who comes now: this one, or the next.
     *
     * @param signedIn when the session they come by began; null when they come by none
     */
    Visit at(Instant now, @Nullable Instant signedIn) {
        var over = !now.isBefore(began.plus(LASTS));
        var anew = signedIn != null && signedIn.isAfter(began);
        return over || anew ? new Visit(began, now) : this;
    }
}
