package org.ripewood.pictures;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A QR code as a shape to be drawn (ISO/IEC 18004).
 *
 * <p>It still reads with a quarter of it worn off (level Q), since a card hangs in sun and rain,
 * and has the four empty modules round it that the standard asks for.
 *
 * @param side how many modules it is wide and high, those round it included
 * @param path of the dark modules, one unit each, in the manner of SVG
 */
public record QrCode(int side, String path) {

    private static final int QUIET_MODULES = 4;

    public static QrCode of(String text) {
        try {
            var dark = Encoder.encode(text, ErrorCorrectionLevel.Q).getMatrix();
            return new QrCode(dark.getWidth() + 2 * QUIET_MODULES, path(dark));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException(
                    "a text of %d letters has no room in a QR code".formatted(text.length()),
                    tooLong);
        }
    }

    /** Dark modules that lie side by side are one box, so that no hair line is left between. */
    private static String path(ByteMatrix dark) {
        var path = new StringBuilder();
        for (int y = 0; y < dark.getHeight(); y++) {
            int x = 0;
            while (x < dark.getWidth()) {
                int end = x;
                while (end < dark.getWidth() && dark.get(end, y) == 1) {
                    end++;
                }
                if (end > x) {
                    path.append(
                            "M%d %dh%dv1h-%dz"
                                    .formatted(
                                            x + QUIET_MODULES,
                                            y + QUIET_MODULES,
                                            end - x,
                                            end - x));
                }
                x = end + 1;
            }
        }
        return path.toString();
    }
}
