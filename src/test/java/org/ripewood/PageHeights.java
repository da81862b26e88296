package org.ripewood;

import java.util.List;
import java.util.regex.Pattern;

/**
 * How long a page may be, in pixels, so that one that grows out of hand is noticed: about half as
 * much again as the demo school's pages are.
 */
final class PageHeights {

    private record Kind(Pattern path, int desk, int phone) {
        static Kind of(String path, int desk, int phone) {
            return new Kind(Pattern.compile(path), desk, phone);
        }
    }

    private static final int DESK_FROM = 1000;

    private static final List<Kind> KINDS =
            List.of(
                    Kind.of("/lessons/[^/]+", 9000, 16_000),
                    Kind.of("/glossary", 10_000, 20_000),
                    Kind.of("/content/species/.*", 9000, 14_000),
                    Kind.of("/trees/\\d+", 1600, 4000),
                    Kind.of("/trees/\\d+/(passport|route/print)", 7000, 5500),
                    Kind.of("/trees/\\d+/(checklist|measure|record|life).*", 8000, 8500),
                    Kind.of("/help/?.*", 12_000, 20_000),
                    Kind.of(".*", 6000, 9000));

    private PageHeights() {}

    /** The most for a page in a window of that width. */
    static int most(String path, int width) {
        return KINDS.stream()
                .filter(kind -> kind.path().matcher(path).matches())
                .mapToInt(kind -> width >= DESK_FROM ? kind.desk() : kind.phone())
                .findFirst()
                .orElseThrow();
    }
}
