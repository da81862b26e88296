package org.ripewood.passwords;

import com.nulabinc.zxcvbn.Strength;
import com.nulabinc.zxcvbn.Zxcvbn;
import com.nulabinc.zxcvbn.matchers.Match;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Whether a password is easy to guess for somebody who knows how people choose them: how many
 * guesses it takes is zxcvbn's estimate (Wheeler, USENIX Security 2016).
 */
final class Guessing {

    /** From here on zxcvbn calls a password safe against guessing at a hash that is slow. */
    private static final double LEAST = 1e8;

    /** Without what stands between its words it is still more than one word and a year. */
    private static final double LEAST_CLOSED_UP = 1e6;

    /** With words that are known of the person and the school (our own choice). */
    private static final double LEAST_BESIDE_OWN = 1e9;

    /** An estimate takes time by the cube of the length: 37 s for 256 letters, 0.1 s for these. */
    private static final int WINDOW = 48;

    /** Marks between words, which are tried both ways. */
    private static final Pattern MARKS = Pattern.compile("[^\\p{L}\\p{M}\\p{N}]+");

    private static final String OWN = "user_inputs";

    private static final Zxcvbn ESTIMATE = new Zxcvbn();

    private static final Map<com.nulabinc.zxcvbn.Pattern, Weakness> PATTERNS =
            Map.of(
                    com.nulabinc.zxcvbn.Pattern.Repeat, Weakness.REPEATED,
                    com.nulabinc.zxcvbn.Pattern.Sequence, Weakness.IN_ORDER,
                    com.nulabinc.zxcvbn.Pattern.Spatial, Weakness.NEIGHBOURS,
                    com.nulabinc.zxcvbn.Pattern.Date, Weakness.DAY,
                    com.nulabinc.zxcvbn.Pattern.Regex, Weakness.DAY);

    private Guessing() {}

    /**
     * What makes a password easy to guess; empty when it is not.
     *
     * @param own words that are known of the person and the school
     */
    static Optional<Weakness> weakness(String password, List<String> own) {
        if (CommonPasswords.has(password)) {
            return Optional.of(Weakness.COMMON);
        }
        return weakness(password, own, LEAST)
                .or(() -> weakness(MARKS.matcher(password).replaceAll(""), own, LEAST_CLOSED_UP));
    }

    /**
     * It is hard to guess as soon as a part of it is; of one that is not, what the first part is.
     */
    private static Optional<Weakness> weakness(String text, List<String> own, double least) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        var parts =
                IntStream.iterate(0, from -> from < text.length(), from -> from + WINDOW)
                        .mapToObj(
                                from ->
                                        text.substring(
                                                from, Math.min(text.length(), from + WINDOW)))
                        .toList();
        Weakness first = null;
        for (var part : parts) {
            var strength = ESTIMATE.measure(Disguises.fewer(part), own);
            boolean known = strength.getSequence().stream().anyMatch(Guessing::isOwn);
            if (strength.getGuesses() >= (known ? LEAST_BESIDE_OWN : least)) {
                return Optional.empty();
            }
            first = first == null ? kind(strength) : first;
        }
        return Optional.ofNullable(first);
    }

    private static Weakness kind(Strength strength) {
        var found = strength.getSequence();
        if (found.stream().anyMatch(Guessing::isOwn)) {
            return Weakness.OWN;
        }
        Predicate<Match> named = match -> PATTERNS.containsKey(match.pattern);
        return found.stream()
                .filter(named)
                .max(Comparator.comparingInt(Match::tokenLength))
                .filter(match -> match.tokenLength() * 2 >= length(found))
                .map(Guessing::named)
                .orElse(Weakness.WORDS);
    }

    /** A letter that stands still counts there as a row whose steps are none. */
    private static Weakness named(Match match) {
        return match.token.chars().distinct().count() == 1
                ? Weakness.REPEATED
                : PATTERNS.getOrDefault(match.pattern, Weakness.WORDS);
    }

    private static boolean isOwn(Match match) {
        return OWN.equals(match.dictionaryName)
                || (match.baseMatches != null
                        && match.baseMatches.stream().anyMatch(Guessing::isOwn));
    }

    private static int length(List<Match> matches) {
        return matches.stream().mapToInt(Match::tokenLength).sum();
    }
}
