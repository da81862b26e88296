package org.ripewood.core.bench;

import java.util.HashSet;
import java.util.List;
import java.util.function.Function;

/** What names have to be. */
final class JobIds {

    private JobIds() {}

    static void require(String what, String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(what + " has a name, found a blank one");
        }
    }

    static <T> void requireDifferent(String what, List<T> named, Function<T, String> name) {
        var seen = new HashSet<String>();
        for (var one : named) {
            if (!seen.add(name.apply(one))) {
                throw new IllegalArgumentException(
                        "two %s are called %s".formatted(what, name.apply(one)));
            }
        }
    }
}
