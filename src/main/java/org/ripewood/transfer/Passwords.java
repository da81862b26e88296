package org.ripewood.transfer;

import java.security.SecureRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Makes passwords that can be read off a screen and typed: five groups of two syllables. */
final class Passwords {

    private static final String CONSONANTS = "bdfghjkmnprstvz";
    private static final String VOWELS = "aeiou";
    private static final int GROUPS = 5;

    private final SecureRandom random = new SecureRandom();

    /** About 62 bits: 75 syllables, ten of them. */
    String make() {
        return IntStream.range(0, GROUPS)
                .mapToObj(group -> syllable() + syllable())
                .collect(Collectors.joining("-"));
    }

    private String syllable() {
        return "" + oneOf(CONSONANTS) + oneOf(VOWELS);
    }

    private char oneOf(String letters) {
        return letters.charAt(random.nextInt(letters.length()));
    }
}
