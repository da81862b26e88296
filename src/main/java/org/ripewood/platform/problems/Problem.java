package org.ripewood.platform.problems;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why something was refused, in the terms of RFC 9457.
 *
 * @param status HTTP status
 * @param kind last part of the problem's type URI, such as {@code invalid}
 * @param title the same for every problem of the kind
 * @param detail what happened this time, with the values
 * @param maybe a guess at what was meant; null when there is none
 * @param faults field by field; may be empty
 */
public record Problem(
        int status,
        String kind,
        String title,
        String detail,
        @Nullable String maybe,
        List<Fault> faults) {

    public Problem {
        faults = List.copyOf(faults);
    }
}
