package org.ripewood.search;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a search found.
 *
 * @param asked the words, without blanks around them
 * @param groups kinds of which something was found
 * @param maybe words that were perhaps meant, made of what the reader may find; null when something
 *     was found, or nothing is near
 */
public record Found(String asked, List<Group> groups, @Nullable String maybe) {

    /**
     * What was found of one kind.
     *
     * @param hits the best, at most ten
     * @param total how many there are
     */
    public record Group(Kind kind, List<Hit> hits, int total) {
        public Group {
            hits = List.copyOf(hits);
        }

        /** Whether there are more than are told. */
        public boolean more() {
            return total > hits.size();
        }
    }

    public Found {
        groups = List.copyOf(groups);
    }

    /** How many were found of all kinds. */
    public int total() {
        return groups.stream().mapToInt(Group::total).sum();
    }
}
