package org.ripewood.course;

import java.util.Set;
import org.ripewood.platform.problems.Suggestion;

/**
 * The codes of one kind that other files may name.
 *
 * @param what the kind, as said to people
 */
record Codes(String what, Set<String> known) {

    void check(Part at, Faults faults) {
        var code = at.text();
        if (code != null) {
            check(at, code, faults);
        }
    }

    /** Checks a code that is a part of the text. */
    void check(Part at, String code, Faults faults) {
        if (!known.contains(code)) {
            faults.add(
                    at,
                    "\"%s\"".formatted(code),
                    "the code of a %s.%s".formatted(what, Suggestion.maybe(known, code)));
        }
    }
}
