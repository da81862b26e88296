package org.ripewood.platform.problems;

/** Which characters of a text nobody can keep, and which nobody can see. */
public final class Characters {

    /** Letters and signs that are drawn as nothing, though Unicode counts them as no spaces. */
    private static final String DRAWN_AS_NOTHING =
            "\u034F\u115F\u1160\u17B4\u17B5\u2800\u3164\uFFA0";

    private Characters() {}

    /**
     * Whether a character is none: half of one, one of the noncharacters (Unicode Standard 23.7),
     * or a control character of either set (ISO/IEC 6429) other than tab and line ends.
     */
    public static boolean isUnkeepable(int character) {
        return isNoncharacter(character)
                || Character.getType(character) == Character.SURROGATE
                || (Character.isISOControl(character)
                        && character != '\t'
                        && character != '\n'
                        && character != '\r');
    }

    private static boolean isNoncharacter(int character) {
        return (character & 0xFFFE) == 0xFFFE || (character >= 0xFDD0 && character <= 0xFDEF);
    }

    /** Whether a character leaves no mark on a screen or a sheet: blanks of every kind as well. */
    public static boolean isInvisible(int character) {
        return Character.isWhitespace(character)
                || Character.isSpaceChar(character)
                || Character.getType(character) == Character.FORMAT
                || isVariation(character)
                || DRAWN_AS_NOTHING.indexOf(character) >= 0
                || isUnkeepable(character);
    }

    /** Selects how the character before it is drawn, and is nothing by itself. */
    private static boolean isVariation(int character) {
        return (character >= 0x180B && character <= 0x180F)
                || (character >= 0xFE00 && character <= 0xFE0F)
                || (character >= 0xE0100 && character <= 0xE01EF);
    }

    /** Whether there is something and none of it can be seen. */
    public static boolean hidesAll(String text) {
        return !text.isEmpty() && text.codePoints().allMatch(Characters::isInvisible);
    }

    /** Whether the text goes on in a further line, by any sign that ends one (UAX 14). */
    public static boolean hasLines(String text) {
        return text.codePoints()
                .anyMatch(
                        character ->
                                character == '\n'
                                        || character == '\r'
                                        || character == 0x2028
                                        || character == 0x2029);
    }

    /** The text without what is {@linkplain #isUnkeepable unkeepable}. */
    public static String keepable(String text) {
        if (text.codePoints().noneMatch(Characters::isUnkeepable)) {
            return text;
        }
        var kept = new StringBuilder(text.length());
        text.codePoints()
                .filter(character -> !isUnkeepable(character))
                .forEach(kept::appendCodePoint);
        return kept.toString();
    }
}
