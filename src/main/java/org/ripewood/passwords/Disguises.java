package org.ripewood.passwords;

import java.util.Map;

/**
 * Digits and marks that are written for letters, as in p4$$w0rd. An estimate tries every way to
 * read them, and some thousand ways in a text that has them all, which takes seconds.
 */
final class Disguises {

    private static final int MOST_WAYS = 8;

    /** As zxcvbn reads them (its own table). */
    private static final Map<Character, String> LETTERS =
            Map.ofEntries(
                    Map.entry('a', "4@"),
                    Map.entry('b', "8"),
                    Map.entry('c', "({[<"),
                    Map.entry('e', "3"),
                    Map.entry('g', "69"),
                    Map.entry('i', "1!|"),
                    Map.entry('l', "1|7"),
                    Map.entry('o', "0"),
                    Map.entry('s', "$5"),
                    Map.entry('t', "+7"),
                    Map.entry('x', "%"),
                    Map.entry('z', "2"));

    private static final String MARKS = "@{[<!|$+";
    private static final String INSTEAD = "4(((1157";

    private Disguises() {}

    /** The same, with one mark for each letter when there would be too many ways to read it. */
    static String fewer(String text) {
        if (ways(text) <= MOST_WAYS) {
            return text;
        }
        var fewer = new StringBuilder(text);
        for (int i = 0; i < fewer.length(); i++) {
            int mark = MARKS.indexOf(fewer.charAt(i));
            if (mark >= 0) {
                fewer.setCharAt(i, INSTEAD.charAt(mark));
            }
        }
        return fewer.toString();
    }

    private static long ways(String text) {
        return LETTERS.values().stream()
                .mapToLong(
                        marks ->
                                Math.max(
                                        1,
                                        marks.chars()
                                                .filter(mark -> text.indexOf(mark) >= 0)
                                                .count()))
                .reduce(1, (one, other) -> one * other);
    }
}
