package org.ripewood.passwords;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Words that whoever knows a person and the school tries first. */
final class OwnWords {

    private static final List<String> SCHOOLS =
            List.of("ripewood", "bonsai", "school", "tree", "trees");

    /** Shorter ones stand in many a word. */
    private static final int SHORTEST = 3;

    private OwnWords() {}

    static List<String> of(String name, String login) {
        var words = new ArrayList<>(SCHOOLS);
        add(words, name);
        add(words, login);
        return words;
    }

    /** The parts, and all of them as one word. */
    private static void add(List<String> words, String text) {
        var parts = text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+");
        var whole = String.join("", parts);
        if (!whole.isEmpty()) {
            words.add(whole);
        }
        for (var part : parts) {
            if (part.length() >= SHORTEST) {
                words.add(part);
            }
        }
    }
}
