package org.ripewood.secondfactor;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How a person's second factor stands.
 *
 * @param onSince null while there is none
 * @param wanted whether the school wants them to have one
 */
public record SecondFactor(@Nullable Instant onSince, long codesLeft, boolean wanted) {

    public boolean on() {
        return onSince != null;
    }
}
