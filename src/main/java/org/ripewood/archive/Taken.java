package org.ripewood.archive;

import java.util.Map;

/**
 * What came in with a file.
 *
 * @param scope {@code SCHOOL}, {@code COURSE} or {@code TREE}
 * @param rows how many, in all
 * @param tables how many of each table that came with any
 */
public record Taken(String scope, int rows, Map<String, Integer> tables) {

    public Taken {
        tables = Map.copyOf(tables);
    }
}
