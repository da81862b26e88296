package org.ripewood.archive;

import java.util.List;
import java.util.Map;

/**
 * What forgetting a person does.
 *
 * @param trees they still keep, by label; while there are any, they cannot be forgotten
 * @param forgotten whether nothing is left by which they could be known
 * @param courses how many they leave
 * @param photos how many of those they sent are there and will be deleted
 * @param words rows whose words are removed, by table
 */
public record Forgetting(
        long personId,
        long version,
        String name,
        boolean forgotten,
        List<String> trees,
        long courses,
        long photos,
        Map<String, Long> words) {

    public Forgetting {
        trees = List.copyOf(trees);
        words = Map.copyOf(words);
    }

    /** All rows whose words are removed. */
    public long entries() {
        return words.values().stream().mapToLong(Long::longValue).sum();
    }
}
