package org.ripewood.transfer;

import java.util.Comparator;

/**
 * Something in a file that cannot be taken as it is.
 *
 * @param line from 1; 0 when it is about the whole file
 * @param message what was found and what was expected
 */
record FileFault(String file, int line, String message) implements Comparable<FileFault> {

    private static final Comparator<FileFault> BY_PLACE =
            Comparator.comparing(FileFault::file)
                    .thenComparingInt(FileFault::line)
                    .thenComparing(FileFault::message);

    @Override
    public int compareTo(FileFault other) {
        return BY_PLACE.compare(this, other);
    }

    @Override
    public String toString() {
        return line == 0
                ? "%s: %s".formatted(file, message)
                : "%s:%d: %s".formatted(file, line, message);
    }
}
