package org.ripewood.passwords;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Passwords that leaked so often that they are tried first, in small letters and capitals alike.
 */
final class CommonPasswords {

    private static final String FILE = "/people/common-passwords.txt";

    /** One in 10⁸ others is taken for one of them. */
    private static final int DIGITS = 10;

    private static final Set<String> KNOWN = read();

    private CommonPasswords() {}

    static boolean has(String password) {
        var hash = Secret.hash(password.toLowerCase(Locale.ROOT));
        return KNOWN.contains(hash.substring(0, DIGITS));
    }

    static int size() {
        return KNOWN.size();
    }

    private static Set<String> read() {
        try (var file = Objects.requireNonNull(CommonPasswords.class.getResourceAsStream(FILE));
                var lines =
                        new BufferedReader(
                                new InputStreamReader(file, StandardCharsets.US_ASCII))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new UncheckedIOException(FILE, e);
        }
    }
}
