package org.ripewood.transfer;

import java.util.ArrayList;
import java.util.List;

/** Gathers faults, so that the first never hides the next. */
final class Faults {

    private final List<FileFault> found = new ArrayList<>();

    void add(FileFault fault) {
        if (!found.contains(fault)) {
            found.add(fault);
        }
    }

    int count() {
        return found.size();
    }

    void throwIfAny() {
        if (!found.isEmpty()) {
            throw new FaultyFiles(found);
        }
    }
}
