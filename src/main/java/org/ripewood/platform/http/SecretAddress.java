package org.ripewood.platform.http;

import java.util.regex.Pattern;

/** Addresses by which whoever has them is let in: a calendar's, and one to choose a password by. */
public final class SecretAddress {

    private static final Pattern SECRET = Pattern.compile("^(/+(?:calendar|password)/+).*");

    private SecretAddress() {}

    public static boolean is(String path) {
        return SECRET.matcher(path).matches();
    }

    /** The path without its secret. */
    static String hidden(String path) {
        return SECRET.matcher(path).replaceFirst("$1…");
    }
}
