package org.ripewood.course;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects everything wrong in the content files, so that one fault never hides the next. */
final class Faults {

    private static final Comparator<ContentFault> BY_PLACE =
            Comparator.comparing(ContentFault::file)
                    .thenComparingInt(ContentFault::line)
                    .thenComparing(ContentFault::found);

    private final Set<ContentFault> found = new LinkedHashSet<>();

    void add(String file, int line, String found, String expected) {
        this.found.add(new ContentFault(file, line, found, expected));
    }

    void add(Part at, String found, String expected) {
        add(at.file(), at.line(), found, expected);
    }

    boolean none() {
        return found.isEmpty();
    }

    /** File by file, from top to bottom. */
    List<ContentFault> all() {
        return found.stream().sorted(BY_PLACE).toList();
    }
}
