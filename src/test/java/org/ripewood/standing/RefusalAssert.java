package org.ripewood.standing;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/** Runs what has to be refused and hands out why it was. */
public final class RefusalAssert {

    private RefusalAssert() {}

    public static Problem refusalOf(ThrowingCallable call) {
        var refused = catchThrowableOfType(Refused.class, call);
        if (refused == null) {
            throw new AssertionError("was not refused");
        }
        return refused.problem();
    }
}
