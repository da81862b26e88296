package org.ripewood.core.route;

import org.ripewood.core.season.Outlook;

/**
 * Something a step waits for that no other step of the route decides: a wound to close, a trunk to
 * thicken, a lesson.
 *
 * <p>Waits on one fact share one random number in each draw, so that a wound that closes late
 * closes late for every step that waits for it.
 *
 * @param fact what is grown or looked at; also the name of the random number
 * @param key names the wait within its step, such as a criterion's key
 * @param outlook when it is likely to be met, as seen from the route's first day
 * @param ifUnsaid what the route assumes where the outlook says nothing
 */
public record Wait(String fact, String key, Outlook outlook, Assumption ifUnsaid) {

    /** What is taken for granted, and told, where nothing can be said. */
    public enum Assumption {
        /** Somebody looks and finds it met, so that it costs no time beyond the step's window. */
        MET_WHEN_LOOKED_AT,
        /** It is met at the start of the next growing season. */
        MET_NEXT_SEASON,
        /** It is not met at all: it stands still, and nothing is known to change that. */
        NEVER_MET
    }

    public Wait {
        RouteStep.requireName("fact", fact);
        RouteStep.requireName("key", key);
    }

    /** A wait that is assumed to be over next season where nothing can be said. */
    public static Wait of(String fact, Outlook outlook) {
        return new Wait(fact, fact, outlook, Assumption.MET_NEXT_SEASON);
    }

    /** Whether it is taken to be met some day although nothing says so. */
    boolean takenForGranted() {
        return assumed() && ifUnsaid != Assumption.NEVER_MET;
    }

    boolean assumed() {
        return outlook instanceof Outlook.Unsaid;
    }
}
