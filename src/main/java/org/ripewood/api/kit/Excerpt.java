package org.ripewood.api.kit;

/** What was sent, short enough and plain enough to be shown in a message. */
final class Excerpt {

    private static final int MOST = 40;

    private Excerpt() {}

    static String of(String text) {
        var plain = text.replaceAll("[\\p{Cc}\\p{Cf}]", "?");
        return plain.length() <= MOST ? plain : plain.substring(0, MOST) + "…";
    }
}
