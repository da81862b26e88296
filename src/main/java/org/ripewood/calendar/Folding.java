package org.ripewood.calendar;

/**
 * Folds lines at 75 octets of UTF-8 (RFC 5545, 3.1); the library that writes them counts
 * characters.
 */
final class Folding {

    private static final int MOST_OCTETS = 75;
    private static final String BREAK = "\r\n ";

    private Folding() {}

    /** Folds every line of a text whose lines end with CR LF; no character is torn apart. */
    static String folded(String text) {
        var folded = new StringBuilder(text.length() + text.length() / 32);
        int octets = 0;
        for (int at = 0; at < text.length(); ) {
            int character = text.codePointAt(at);
            at += Character.charCount(character);
            if (character == '\r' || character == '\n') {
                octets = 0;
            } else {
                int more = octets(character);
                if (octets + more > MOST_OCTETS) {
                    folded.append(BREAK);
                    // the blank that begins a continued line counts
                    octets = 1;
                }
                octets += more;
            }
            folded.appendCodePoint(character);
        }
        return folded.toString();
    }

    /** Octets of a character in UTF-8 (RFC 3629). */
    private static int octets(int character) {
        if (character < 0x80) {
            return 1;
        }
        if (character < 0x800) {
            return 2;
        }
        return character < 0x10000 ? 3 : 4;
    }
}
