package org.ripewood.sessions;

import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Numbers for benches that nobody has named: the lowest that are free. */
final class BenchNumbers {

    private BenchNumbers() {}

    /** The lowest number, from 1, that no bench has; names such as "A2" take none. */
    static String free(Collection<String> taken) {
        Set<String> names = taken.stream().map(String::strip).collect(Collectors.toSet());
        return IntStream.rangeClosed(1, names.size() + 1)
                .mapToObj(Integer::toString)
                .filter(number -> !names.contains(number))
                .findFirst()
                .orElseThrow();
    }
}
