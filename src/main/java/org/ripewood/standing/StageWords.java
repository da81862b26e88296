package org.ripewood.standing;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.ripewood.core.season.Habit;

/**
 * Growth stages in words that are seen at a tree of some habit. Codes and what they stand for:
 * Meier 2001, BBCH Monograph, 2nd edition, general scale; the words are our own.
 */
final class StageWords {

    /** What is seen from a code on, up to the next one that is named. */
    private static final NavigableMap<Integer, String> LOSING_ALL_LEAVES =
            new TreeMap<>(
                    Map.ofEntries(
                            Map.entry(0, "winter rest"),
                            Map.entry(1, "buds begin to swell"),
                            Map.entry(3, "buds swollen"),
                            Map.entry(7, "buds opening"),
                            Map.entry(9, "green tips"),
                            Map.entry(10, "first leaves"),
                            Map.entry(14, "more leaves"),
                            Map.entry(19, "leaves out"),
                            Map.entry(31, "shoots growing"),
                            Map.entry(35, "shoots at half length"),
                            Map.entry(39, "shoots at full length"),
                            Map.entry(51, "flower buds"),
                            Map.entry(60, "flowering"),
                            Map.entry(70, "fruit growing"),
                            Map.entry(80, "fruit ripening"),
                            Map.entry(91, "growth finished"),
                            Map.entry(92, "leaves colouring"),
                            Map.entry(93, "leaf fall begins"),
                            Map.entry(95, "half of the leaves down"),
                            Map.entry(97, "leaves down"),
                            Map.entry(99, "winter rest")));

    /**
     * In autumn evergreens drop the foliage of earlier years alone, and no more is seen at rest.
     */
    private static final NavigableMap<Integer, String> EVERGREEN =
            with(
                    LOSING_ALL_LEAVES,
                    Map.of(
                            92, "old foliage turning yellow",
                            93, "old foliage falling",
                            95, "old foliage down",
                            97, "winter rest"));

    private final NavigableMap<Integer, String> words;

    private StageWords(NavigableMap<Integer, String> words) {
        this.words = words;
    }

    static StageWords of(Habit habit) {
        return new StageWords(
                habit == Habit.DECIDUOUS || habit == Habit.DECIDUOUS_CONIFER
                        ? LOSING_ALL_LEAVES
                        : EVERGREEN);
    }

    private static NavigableMap<Integer, String> with(
            Map<Integer, String> words, Map<Integer, String> others) {
        var all = new TreeMap<>(words);
        all.putAll(others);
        return all;
    }

    /** {@code "shoots at full length (growth stage 39)"}. */
    String stage(int stage) {
        return "%s (growth stage %02d)".formatted(name(stage), stage);
    }

    /** {@code "leaves down to buds swollen (growth stage 97 to 03)"}. */
    String range(int from, int to) {
        var first = name(from);
        var last = name(to);
        var seen = first.equals(last) ? first : first + " to " + last;
        return "%s (growth stage %02d to %02d)".formatted(seen, from, to);
    }

    private String name(int stage) {
        return words.floorEntry(stage).getValue();
    }
}
