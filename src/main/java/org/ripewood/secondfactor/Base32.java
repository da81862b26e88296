package org.ripewood.secondfactor;

/** RFC 4648, 6, without padding: letters and digits that a person can type into an app. */
final class Base32 {

    static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

    private static final int BITS = 5;

    private Base32() {}

    static String encode(byte[] bytes) {
        var text = new StringBuilder();
        int held = 0;
        int heldBits = 0;
        for (byte next : bytes) {
            held = ((held << Byte.SIZE) | (next & 0xFF)) & 0xFFFF;
            heldBits += Byte.SIZE;
            while (heldBits >= BITS) {
                heldBits -= BITS;
                text.append(LETTERS.charAt((held >> heldBits) & 0x1F));
            }
        }
        if (heldBits > 0) {
            text.append(LETTERS.charAt((held << (BITS - heldBits)) & 0x1F));
        }
        return text.toString();
    }
}
