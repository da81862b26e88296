package org.ripewood.archive;

import java.util.ArrayList;
import java.util.List;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

/** What is wrong with a file, each with a JSON Pointer to where (RFC 6901). */
final class FileFaults {

    /** Who gets a hundred has the wrong file, and more help nobody. */
    static final int MOST_TOLD = 100;

    private final List<Fault> found = new ArrayList<>();

    void add(String pointer, String message) {
        found.add(new Fault(pointer, message));
        if (found.size() >= MOST_TOLD) {
            throwIfAny();
        }
    }

    /** A fault after which nothing can be read any more. */
    void end(String pointer, String message) {
        add(pointer, message);
        throwIfAny();
    }

    /** Whether nothing was found so far. */
    boolean none() {
        return found.isEmpty();
    }

    /**
     * Goes on only when nothing was found.
     *
     * @throws Refused 400 with all of it
     */
    void throwIfAny() {
        if (!found.isEmpty()) {
            throw Refused.invalid(List.copyOf(found));
        }
    }
}
