package org.ripewood.platform.problems;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A guess at what was meant by a mistyped code. */
public final class Suggestion {

    private Suggestion() {}

    /**
     * The known code nearest to what was typed, or null when none is near.
     *
     * <p>Near means that at most a third of the typed letters have to be put in, taken out or
     * exchanged (Levenshtein 1966); of equals the first in the alphabet.
     */
    public static @Nullable String nearest(Collection<String> known, String typed) {
        var wanted = typed.strip().toLowerCase(Locale.ROOT);
        return known.stream()
                .min(
                        Comparator.<String>comparingInt(code -> steps(wanted, code))
                                .thenComparing(Comparator.naturalOrder()))
                .filter(code -> steps(wanted, code) <= Math.max(1, wanted.length() / 3))
                .orElse(null);
    }

    /** {@code " Maybe “wire_removal”."} ready to be put behind a message; empty without a guess. */
    public static String maybe(Collection<String> known, String typed) {
        var guess = nearest(known, typed);
        return guess == null ? "" : " Maybe “%s”.".formatted(guess);
    }

    private static int steps(String from, String to) {
        var row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int exchanged = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(exchanged, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[to.length()];
    }
}
