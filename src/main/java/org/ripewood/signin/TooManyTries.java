package org.ripewood.signin;

import java.time.Duration;
import java.util.List;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/** 429: what was tried too often waits. */
public final class TooManyTries {

    private static final int STATUS = 429;

    private TooManyTries() {}

    /**
     * 429 with when to try again.
     *
     * @param what was tried, as in "wrong passwords"
     */
    public static Refused of(String what, Duration pause, String maybe) {
        long minutes = minutes(pause);
        return new Refused(
                new Problem(
                        STATUS,
                        "too-many-tries",
                        "Too many tries",
                        "Within a quarter of an hour there were too many %s. Try again in %d %s."
                                .formatted(what, minutes, minutes == 1 ? "minute" : "minutes"),
                        maybe,
                        List.of()));
    }

    /** Whole minutes after which it is over. */
    static long minutes(Duration pause) {
        return pause.toSeconds() / 60 + 1;
    }
}
