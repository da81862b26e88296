package org.ripewood.search;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Texts as they are compared: in small letters, without accents, cut into words of letters and
 * digits of any script. "Ficus-Prebonsái" becomes "ficus" and "prebonsai".
 */
final class Letters {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");

    /** Letters that Unicode does not take apart into a plain letter and a mark. */
    private static final Map<Character, String> PLAIN =
            Map.of(
                    'ß', "ss", 'ø', "o", 'æ', "ae", 'œ', "oe", 'ł', "l", 'đ', "d", 'ð', "d", 'þ',
                    "th", 'ı', "i");

    private Letters() {}

    /** The words of a text, in their order; none when it has no letter and no digit. */
    static List<String> words(String text) {
        return Arrays.stream(BETWEEN_WORDS.split(fold(text)))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static String fold(String text) {
        var apart = Normalizer.normalize(text, Normalizer.Form.NFKD);
        // an apostrophe parts no word: "tree's" is found by "trees"
        var small =
                MARKS.matcher(apart)
                        .replaceAll("")
                        .replace("'", "")
                        .replace("’", "")
                        .toLowerCase(Locale.ROOT);
        var plain = new StringBuilder(small.length());
        small.chars().forEach(letter -> append(plain, (char) letter));
        return plain.toString();
    }

    private static void append(StringBuilder plain, char letter) {
        var other = letter < 'ß' ? null : PLAIN.get(letter);
        if (other == null) {
            plain.append(letter);
        } else {
            plain.append(other);
        }
    }
}
