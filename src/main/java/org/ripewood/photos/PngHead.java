package org.ripewood.photos;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Walks through a PNG's chunks (ISO/IEC 15948, clause 5) to its end, for its size and the camera's
 * notes.
 */
final class PngHead {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    /** Length, name and check sum. */
    private static final int AROUND = 12;

    private PngHead() {}

    static boolean begins(byte[] sent) {
        return sent.length >= SIGNATURE.length
                && Arrays.equals(sent, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length);
    }

    static PictureHead read(byte[] sent) {
        var bytes = ByteBuffer.wrap(sent);
        int widthPx = 0;
        int heightPx = 0;
        int bytesPerPixel = 0;
        var exif = new byte[0];
        var name = "";
        for (int at = SIGNATURE.length; !name.equals("IEND"); ) {
            int length = sent.length - at < AROUND ? -1 : bytes.getInt(at);
            if (length < 0 || length > sent.length - at - AROUND) {
                throw Unfit.broken("a PNG that breaks off after %d bytes".formatted(sent.length));
            }
            name = new String(sent, at + 4, 4, StandardCharsets.ISO_8859_1);
            int from = at + 8;
            if (name.equals("IHDR") && length >= 10) {
                widthPx = bytes.getInt(from);
                heightPx = bytes.getInt(from + 4);
                bytesPerPixel = channels(sent[from + 9]) * (sent[from + 8] > 8 ? 2 : 1);
            } else if (name.equals("eXIf")) {
                exif = Arrays.copyOfRange(sent, from, from + length);
            }
            at = from + length + 4;
        }
        if (widthPx <= 0 || heightPx <= 0) {
            throw Unfit.broken("a PNG that does not say how large it is");
        }
        return new PictureHead("png", widthPx, heightPx, 0, bytesPerPixel, CameraNotes.of(exif));
    }

    /** By the colour type (11.2.2); of one that is none as many as there can be. */
    private static int channels(int colourType) {
        return switch (colourType) {
            case 0, 3 -> 1;
            case 2 -> 3;
            case 4 -> 2;
            default -> 4;
        };
    }
}
