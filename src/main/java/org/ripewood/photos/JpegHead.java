package org.ripewood.photos;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Walks through a JPEG's segments (ITU-T T.81, annex B) to its end, for its size and the camera's
 * notes. What comes after the end is no part of the picture and is never looked at.
 */
final class JpegHead {

    private static final int START = 0xD8;
    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;
    private static final int APP1 = 0xE1;
    private static final int FIRST_RESTART = 0xD0;
    private static final int LAST_RESTART = 0xD7;

    /** Cameras take one and programs about ten; each costs the decoder a walk over all pixels. */
    private static final int MOST_SCANS = 100;

    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

    private final byte[] sent;
    private int at = 2;
    private int widthPx;
    private int heightPx;
    private int channels;
    private int scans;
    private byte[] exif = new byte[0];

    private JpegHead(byte[] sent) {
        this.sent = sent;
    }

    static boolean begins(byte[] sent) {
        return sent.length >= 3
                && (sent[0] & 0xFF) == 0xFF
                && (sent[1] & 0xFF) == START
                && (sent[2] & 0xFF) == 0xFF;
    }

    static PictureHead read(byte[] sent) {
        var walk = new JpegHead(sent);
        walk.toTheEnd();
        if (walk.widthPx == 0 || walk.heightPx == 0) {
            throw Unfit.broken("a JPEG that does not say how large it is");
        }
        return new PictureHead(
                "jpeg",
                walk.widthPx,
                walk.heightPx,
                walk.channels,
                walk.channels,
                CameraNotes.of(walk.exif));
    }

    private void toTheEnd() {
        for (int marker = marker(); marker != END; marker = marker()) {
            if (standsAlone(marker)) {
                continue;
            }
            int length = twoBytes(at);
            if (length < 2) {
                throw Unfit.broken("a JPEG with a part of no length");
            }
            segment(marker, at + 2, at + length);
            at += length;
            if (marker == SCAN) {
                scans++;
                if (scans > MOST_SCANS) {
                    throw Unfit.because(
                            "expected a JPEG of at most %d scans, found more".formatted(MOST_SCANS),
                            "Maybe save it anew.");
                }
                passScan();
            }
        }
    }

    private void segment(int marker, int from, int to) {
        if (isFrame(marker)) {
            if (channels > 0) {
                throw Unfit.broken("a JPEG that tells two sizes");
            }
            heightPx = twoBytes(from + 1);
            widthPx = twoBytes(from + 3);
            channels = oneByte(from + 5);
        } else if (marker == APP1 && exif.length == 0 && isExif(from, to)) {
            exif = Arrays.copyOfRange(sent, from + EXIF.length, to);
        }
    }

    /** Start of frame: C0 to CF but for tables (C4), an extension (C8) and conditioning (CC). */
    private static boolean isFrame(int marker) {
        return marker >= 0xC0
                && marker <= 0xCF
                && marker != 0xC4
                && marker != 0xC8
                && marker != 0xCC;
    }

    private boolean isExif(int from, int to) {
        return to <= sent.length
                && to - from > EXIF.length
                && Arrays.equals(sent, from, from + EXIF.length, EXIF, 0, EXIF.length);
    }

    private static boolean standsAlone(int marker) {
        return marker == 0x01 || (marker >= FIRST_RESTART && marker <= LAST_RESTART);
    }

    /** The next marker; any number of FF may stand before it. */
    private int marker() {
        if (oneByte(at) != 0xFF) {
            throw Unfit.broken("a JPEG whose parts do not follow each other");
        }
        while (oneByte(at) == 0xFF) {
            at++;
        }
        return oneByte(at++);
    }

    /** Coded pixels go on to a marker that is neither a restart nor an escaped FF. */
    private void passScan() {
        while (oneByte(at) != 0xFF || isOfScan(oneByte(at + 1))) {
            at++;
        }
    }

    private static boolean isOfScan(int after) {
        return after == 0 || (after >= FIRST_RESTART && after <= LAST_RESTART);
    }

    private int twoBytes(int from) {
        return oneByte(from) << 8 | oneByte(from + 1);
    }

    private int oneByte(int from) {
        if (from >= sent.length) {
            throw Unfit.broken("a JPEG that breaks off after %d bytes".formatted(sent.length));
        }
        return sent[from] & 0xFF;
    }
}
