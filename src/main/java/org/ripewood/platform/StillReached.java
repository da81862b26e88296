package org.ripewood.platform;

import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;

/** Told by the doors: whether somebody may still read an answer they were given before. */
public interface StillReached {

    /**
     * Goes on only when the actor reaches what a request was about.
     *
     * @param path of the request
     * @param location of what it made; null when it made nothing
     * @throws Refused as reading it would be
     */
    void require(Actor actor, String path, @Nullable String location);
}
