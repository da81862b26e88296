package org.ripewood.photos;

import java.util.Arrays;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Set;

/**
 * Walks through a JPEG that is to be kept as it is (ITU-T T.81, annex B), and lets pass only what
 * {@link PhotoProcessor} writes: no part that carries anything but pixels, none twice, nothing
 * after the end.
 */
final class KeptJpeg {

    private static final int HEADER = 0xE0;
    private static final int QUANTISATION = 0xDB;
    private static final int FRAME = 0xC0;
    private static final int CODES = 0xC4;
    private static final int SCAN = 0xDA;
    private static final int END = 0xD9;

    /** Lengths with the two bytes that tell them. */
    private static final int QUANTISATION_LENGTH = 67;

    private static final int FRAME_LENGTH = 17;
    private static final int SCAN_LENGTH = 12;
    private static final int BEFORE_CODES = 19;

    /** JFIF 1.2, no unit, one to one, no thumbnail, with its length before it (ITU-T T.871). */
    private static final byte[] JFIF = HexFormat.of().parseHex("00104a46494600010200000100010000");

    private final byte[] sent;
    private final Set<String> met = new HashSet<>();
    private int at = 2;

    private KeptJpeg(byte[] sent) {
        this.sent = sent;
    }

    /**
     * Goes on only when nothing is besides the picture.
     *
     * @param sent a JPEG whose parts follow each other to an end, as {@link JpegHead} found
     * @throws org.ripewood.platform.problems.Refused 400 otherwise
     */
    static void require(byte[] sent) {
        new KeptJpeg(sent).walk();
    }

    private void walk() {
        int marker = 0;
        while (marker != SCAN) {
            marker = oneByte(at) == 0xFF ? oneByte(at + 1) : -1;
            at += 2;
            int length = oneByte(at) << 8 | oneByte(at + 1);
            if (!isOurs(marker, length) || !met.add(marker + " " + number(marker))) {
                throw besides("a part FF%02X of %d bytes".formatted(marker & 0xFF, length));
            }
            at += length;
        }
        passScan();
        if (oneByte(at + 1) != END) {
            throw besides("more after the pixels");
        }
        if (at + 2 != sent.length) {
            throw besides("%d bytes after its end".formatted(sent.length - at - 2));
        }
    }

    private boolean isOurs(int marker, int length) {
        return switch (marker) {
            case HEADER ->
                    at + JFIF.length <= sent.length
                            && Arrays.equals(sent, at, at + JFIF.length, JFIF, 0, JFIF.length);
            case QUANTISATION -> length == QUANTISATION_LENGTH && oneByte(at + 2) < 4;
            case FRAME -> length == FRAME_LENGTH;
            case CODES -> length == BEFORE_CODES + codes();
            case SCAN -> length == SCAN_LENGTH;
            default -> false;
        };
    }

    /** Of each there are several, told apart by a number; of all else there is one. */
    private int number(int marker) {
        return marker == QUANTISATION || marker == CODES ? oneByte(at + 2) : 0;
    }

    /** How many codes a table has, summed over their sixteen lengths (B.2.4.2). */
    private int codes() {
        int codes = 0;
        for (int each = at + 3; each < at + BEFORE_CODES; each++) {
            codes += oneByte(each);
        }
        return codes;
    }

    /** No restarts: ours has none. */
    private void passScan() {
        while (oneByte(at) != 0xFF || oneByte(at + 1) == 0) {
            at++;
        }
    }

    private int oneByte(int from) {
        if (from >= sent.length) {
            throw Unfit.broken("a JPEG that breaks off after %d bytes".formatted(sent.length));
        }
        return sent[from] & 0xFF;
    }

    private static RuntimeException besides(String found) {
        return Unfit.because("expected a JPEG of nothing but pixels, found " + found, null);
    }
}
