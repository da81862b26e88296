package org.ripewood.search;

import java.util.Collection;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * What was perhaps meant by a mistyped word: the nearest known one by letters put in, left out,
 * exchanged, or swapped with their neighbour (Damerau 1964, Levenshtein 1966, in the restricted
 * form that changes no letter twice).
 */
final class Slips {

    /** Below it every word is near some other. */
    private static final int SHORTEST = 4;

    /** From this length on two slips are forgiven, one before it (common practice, no source). */
    private static final int LONG = 7;

    private Slips() {}

    /** The nearest known word, of equals the first in the alphabet; null when none is near. */
    static @Nullable String nearest(Collection<String> known, String typed) {
        if (typed.length() < SHORTEST) {
            return null;
        }
        int most = typed.length() < LONG ? 1 : 2;
        return known.stream()
                .filter(word -> Math.abs(word.length() - typed.length()) <= most)
                .filter(word -> steps(typed, word) <= most)
                .min(
                        Comparator.<String>comparingInt(word -> steps(typed, word))
                                .thenComparing(Comparator.naturalOrder()))
                .orElse(null);
    }

    static int steps(String from, String to) {
        var steps = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                steps[i][j] = i == 0 || j == 0 ? i + j : fewest(steps, from, to, i, j);
            }
        }
        return steps[from.length()][to.length()];
    }

    private static int fewest(int[][] steps, String from, String to, int i, int j) {
        boolean same = from.charAt(i - 1) == to.charAt(j - 1);
        int exchanged = steps[i - 1][j - 1] + (same ? 0 : 1);
        int fewest = Math.min(exchanged, 1 + Math.min(steps[i - 1][j], steps[i][j - 1]));
        boolean swapped =
                i > 1
                        && j > 1
                        && from.charAt(i - 1) == to.charAt(j - 2)
                        && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(fewest, steps[i - 2][j - 2] + 1) : fewest;
    }
}
