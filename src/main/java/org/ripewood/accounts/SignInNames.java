package org.ripewood.accounts;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

/** Sign-in names made of people's names. */
final class SignInNames {

    /** Room for a number behind it, below the sixty letters that a sign-in name may have. */
    private static final int LONGEST = 50;

    /** Letters that are no letter with a mark, so that taking marks off leaves them as they are. */
    private static final Map<String, String> LETTERS =
            Map.of(
                    "ß", "ss", "æ", "ae", "œ", "oe", "ø", "o", "ł", "l", "đ", "d", "ð", "d", "þ",
                    "th", "ı", "i");

    private SignInNames() {}

    /**
     * The first and the last word of a name in small plain letters, with a dot between; numbered
     * from 2 on when that is taken.
     *
     * @return empty when the name has no letter that can be written so
     */
    static String proposed(String name, Predicate<String> isTaken) {
        var words = plain(name).split("\\.", -1);
        var last = words[words.length - 1];
        var whole = words.length == 1 ? words[0] : words[0] + "." + last;
        var base = whole.substring(0, Math.min(whole.length(), LONGEST));
        if (base.isEmpty() || !isTaken.test(base)) {
            return base;
        }
        int number = 2;
        while (isTaken.test(base + number)) {
            number++;
        }
        return base + number;
    }

    private static String plain(String name) {
        var small = name.toLowerCase(Locale.ROOT);
        for (var letter : LETTERS.entrySet()) {
            small = small.replace(letter.getKey(), letter.getValue());
        }
        return Normalizer.normalize(small, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+|['’]", "")
                .replaceAll("[^a-z0-9]+", ".")
                .replaceAll("^\\.|\\.$", "");
    }
}
