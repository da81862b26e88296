package org.ripewood.photos;

import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.regex.Pattern;

/** Names under which bytes are kept: 128 random bits, so that none is met twice or guessed. */
final class FileKeys {

    private static final int BYTES = 16;
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final Pattern KEY = Pattern.compile("[0-9a-f]{32}");

    private FileKeys() {}

    static String fresh() {
        var bits = new byte[BYTES];
        RANDOM.nextBytes(bits);
        return HexFormat.of().formatHex(bits);
    }

    static boolean isKey(String text) {
        return KEY.matcher(text).matches();
    }
}
