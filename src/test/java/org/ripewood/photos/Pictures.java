package org.ripewood.photos;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;

/** Pictures drawn by code, and what else may stand in their files. */
public final class Pictures {

    static final Color TOP_LEFT = Color.RED;
    static final Color TOP_RIGHT = Color.GREEN;
    static final Color BOTTOM_LEFT = Color.BLUE;
    static final Color BOTTOM_RIGHT = Color.YELLOW;

    static final int APP1 = 0xE1;
    public static final int COMMENT = 0xFE;

    static final String SERIAL = "SN-4711-0815";
    static final String MAKER_WORDS = "Maker of nothing";
    static final String DAY_NOTED = "2025:05:04 10:11:12";

    private Pictures() {}

    /** Four quarters of four colours. */
    public static BufferedImage quarters(int widthPx, int heightPx) {
        var picture = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < heightPx; y++) {
            for (int x = 0; x < widthPx; x++) {
                boolean left = x < widthPx / 2;
                var colour =
                        y < heightPx / 2
                                ? (left ? TOP_LEFT : TOP_RIGHT)
                                : (left ? BOTTOM_LEFT : BOTTOM_RIGHT);
                picture.setRGB(x, y, colour.getRGB());
            }
        }
        return picture;
    }

    /** A small picture as a phone would send it. */
    public static byte[] jpeg() {
        return jpeg(quarters(64, 48));
    }

    public static byte[] jpeg(BufferedImage picture) {
        return encoded(picture, "jpeg");
    }

    public static byte[] png(BufferedImage picture) {
        return encoded(picture, "png");
    }

    static byte[] encoded(BufferedImage picture, String format) {
        var bytes = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(picture, format, bytes)) {
                throw new IllegalStateException("no encoder for " + format);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** In several scans, each finer than the one before. */
    static byte[] progressive() {
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var bytes = new ByteArrayOutputStream();
        try (var output = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(output);
            var how = writer.getDefaultWriteParam();
            how.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
            writer.write(null, new IIOImage(quarters(64, 48), null, null), how);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    public static BufferedImage decoded(byte[] bytes) {
        try {
            return ImageIO.read(new ByteArrayInputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A JPEG with one more segment right after its start. */
    public static byte[] with(byte[] jpeg, int marker, byte[] content) {
        return ByteBuffer.allocate(jpeg.length + content.length + 4)
                .put(jpeg, 0, 2)
                .put((byte) 0xFF)
                .put((byte) marker)
                .putShort((short) (content.length + 2))
                .put(content)
                .put(jpeg, 2, jpeg.length - 2)
                .array();
    }

    public static byte[] withExif(byte[] jpeg, byte[] exif) {
        return with(jpeg, APP1, joined("Exif\0\0".getBytes(StandardCharsets.US_ASCII), exif));
    }

    public static byte[] joined(byte[] first, byte[] second) {
        return ByteBuffer.allocate(first.length + second.length).put(first).put(second).array();
    }

    /**
     * What a camera notes (Exif 2.32, CIPA DC-008): orientation, maker, day, serial number and a
     * place, laid out by hand in Motorola's order.
     */
    public static byte[] exif(int orientation, String day) {
        var tiff = ByteBuffer.allocate(400);
        tiff.put(new byte[] {'M', 'M', 0, 42}).putInt(8);
        tiff.putShort((short) 4);
        entry(tiff, 0x010F, 2, MAKER_WORDS.length() + 1, 100);
        tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1);
        tiff.putShort((short) orientation).putShort((short) 0);
        entry(tiff, 0x8769, 4, 1, 140);
        entry(tiff, 0x8825, 4, 1, 240);
        tiff.putInt(0);
        text(tiff, 100, MAKER_WORDS);
        tiff.position(140);
        tiff.putShort((short) 2);
        entry(tiff, 0x9003, 2, 20, 180);
        entry(tiff, 0xA431, 2, SERIAL.length() + 1, 210);
        tiff.putInt(0);
        text(tiff, 180, day);
        text(tiff, 210, SERIAL);
        tiff.position(240);
        tiff.putShort((short) 4);
        tiff.putShort((short) 1).putShort((short) 2).putInt(2).put(new byte[] {'N', 0, 0, 0});
        entry(tiff, 2, 5, 3, 320);
        tiff.putShort((short) 3).putShort((short) 2).putInt(2).put(new byte[] {'E', 0, 0, 0});
        entry(tiff, 4, 5, 3, 344);
        tiff.putInt(0);
        tiff.position(320);
        for (int part : new int[] {48, 1, 8, 1, 15, 1, 11, 1, 34, 1, 30, 1}) {
            tiff.putInt(part);
        }
        return tiff.array();
    }

    private static void entry(ByteBuffer tiff, int tag, int type, int count, int value) {
        tiff.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }

    private static void text(ByteBuffer tiff, int at, String text) {
        tiff.position(at);
        tiff.put(text.getBytes(StandardCharsets.US_ASCII)).put((byte) 0);
    }

    /** A PNG that says it is so large, with no pixels to speak of. */
    static byte[] pngSaying(int widthPx, int heightPx) {
        var png = png(quarters(8, 8));
        var changed = ByteBuffer.wrap(png.clone());
        changed.putInt(16, widthPx).putInt(20, heightPx);
        var sum = new CRC32();
        sum.update(changed.array(), 12, 17);
        changed.putInt(29, (int) sum.getValue());
        return changed.array();
    }

    /** A PNG of that size that is black all over: few bytes, and slow to decode. */
    static byte[] blackPng(int widthPx, int heightPx) {
        var head =
                ByteBuffer.allocate(13)
                        .putInt(widthPx)
                        .putInt(heightPx)
                        // eight bits of red, green and blue; no filter between lines
                        .put(new byte[] {8, 2, 0, 0, 0});
        var pixels = new ByteArrayOutputStream();
        try (var packed = new DeflaterOutputStream(pixels)) {
            for (int line = 0; line < heightPx; line++) {
                packed.write(new byte[1 + 3 * widthPx]);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        var signature = Arrays.copyOf(png(quarters(8, 8)), 8);
        return joined(
                joined(signature, chunk("IHDR", head.array())),
                joined(chunk("IDAT", pixels.toByteArray()), chunk("IEND", new byte[0])));
    }

    /** A PNG with one more chunk before its pixels. */
    static byte[] withChunk(byte[] png, String name, byte[] content) {
        int afterHead = 33;
        var chunk = chunk(name, content);
        return ByteBuffer.allocate(png.length + chunk.length)
                .put(png, 0, afterHead)
                .put(chunk)
                .put(png, afterHead, png.length - afterHead)
                .array();
    }

    private static byte[] chunk(String name, byte[] content) {
        var named = joined(name.getBytes(StandardCharsets.US_ASCII), content);
        var sum = new CRC32();
        sum.update(named);
        return ByteBuffer.allocate(named.length + 8)
                .putInt(content.length)
                .put(named)
                .putInt((int) sum.getValue())
                .array();
    }
}
