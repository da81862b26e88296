package org.ripewood.photos;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.ripewood.photos.Pictures.joined;
import static org.ripewood.photos.Pictures.quarters;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.jpeg.JpegCommentDirectory;
import io.quarkus.runtime.configuration.MemorySize;
import java.awt.Color;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.platform.problems.Refused;

/** What goes in may be anything; what comes out is upright pixels and nothing else. */
@Tag("fast")
class PhotoProcessorTest {

    private static final int MOST_BYTES = 2_000_000;

    private final PhotoProcessor darkroom =
            new PhotoProcessor(
                    new PhotoLimits(
                            new MemorySize(BigInteger.valueOf(MOST_BYTES)), 60_000_000, 500, 200));

    private ProcessedPhoto develop(byte[] sent) {
        return darkroom.develop(1, new ByteArrayInputStream(sent));
    }

    private Refused refusal(byte[] sent) {
        return catchThrowableOfType(Refused.class, () -> develop(sent));
    }

    /**
     * Exif 2.32 (CIPA DC-008), tag 274: on which side of what was seen the 0th row and the 0th
     * column of the pixels lie.
     */
    @ParameterizedTest
    @CsvSource({
        "1, top,    left",
        "2, top,    right",
        "3, bottom, right",
        "4, bottom, left",
        "5, left,   top",
        "6, right,  top",
        "7, right,  bottom",
        "8, left,   bottom"
    })
    void aPhotoIsTurnedTheWayItWasSeen(int orientation, String row0, String column0) {
        var sent = Pictures.jpeg(quarters(96, 64));
        var exif = Pictures.exif(orientation, Pictures.DAY_NOTED);
        var seen = Pictures.decoded(develop(Pictures.withExif(sent, exif)).whole);
        boolean lies = orientation >= 5;
        assertThat(seen.getWidth()).isEqualTo(lies ? 64 : 96);
        assertThat(seen.getHeight()).isEqualTo(lies ? 96 : 64);
        var lastRow = opposite(row0);
        var lastColumn = opposite(column0);
        assertColour(seen, row0, column0, Pictures.TOP_LEFT);
        assertColour(seen, row0, lastColumn, Pictures.TOP_RIGHT);
        assertColour(seen, lastRow, column0, Pictures.BOTTOM_LEFT);
        assertColour(seen, lastRow, lastColumn, Pictures.BOTTOM_RIGHT);
    }

    /** PNG has the same note in a chunk of its own (PNG, third edition, 11.3.4.5). */
    @Test
    void aPngIsTurnedAsWell() {
        var png =
                Pictures.withChunk(
                        Pictures.png(quarters(96, 64)),
                        "eXIf",
                        Pictures.exif(6, Pictures.DAY_NOTED));
        var developed = develop(png);
        assertThat(developed.widthPx).isEqualTo(64);
        assertColour(Pictures.decoded(developed.whole), "right", "top", Pictures.TOP_LEFT);
        assertThat(developed.notedOn).isEqualTo(LocalDate.of(2025, 5, 4));
    }

    private static String opposite(String side) {
        return Map.of("top", "bottom", "bottom", "top", "left", "right", "right", "left").get(side);
    }

    private static void assertColour(BufferedImage seen, String one, String two, Color expected) {
        boolean right = one.equals("right") || two.equals("right");
        boolean bottom = one.equals("bottom") || two.equals("bottom");
        int x = seen.getWidth() * (right ? 7 : 1) / 8;
        int y = seen.getHeight() * (bottom ? 7 : 1) / 8;
        assertNear(new Color(seen.getRGB(x, y)), expected);
    }

    /** Coding as JPEG moves a colour by a few steps of 255. */
    private static void assertNear(Color found, Color expected) {
        var near = Offset.offset(12);
        assertThat(found.getRed()).as("%s", found).isCloseTo(expected.getRed(), near);
        assertThat(found.getGreen()).as("%s", found).isCloseTo(expected.getGreen(), near);
        assertThat(found.getBlue()).as("%s", found).isCloseTo(expected.getBlue(), near);
    }

    @Test
    void placeSerialNumberAndWordsAreGone() throws Exception {
        var sent = Pictures.withExif(Pictures.jpeg(), Pictures.exif(1, Pictures.DAY_NOTED));
        sent = Pictures.with(sent, Pictures.COMMENT, "a comment to be lost".getBytes(ISO_8859_1));
        var before = ImageMetadataReader.readMetadata(new ByteArrayInputStream(sent));
        var place = before.getFirstDirectoryOfType(GpsDirectory.class).getGeoLocation();
        assertThat(place.getLatitude()).isCloseTo(48.1375, Offset.offset(1e-6));
        assertThat(before.getFirstDirectoryOfType(ExifSubIFDDirectory.class).getString(0xA431))
                .isEqualTo(Pictures.SERIAL);

        var developed = develop(sent);
        for (var kept : new byte[][] {developed.whole, developed.thumbnail}) {
            var after = ImageMetadataReader.readMetadata(new ByteArrayInputStream(kept));
            assertThat(after.containsDirectoryOfType(GpsDirectory.class)).isFalse();
            assertThat(after.containsDirectoryOfType(ExifIFD0Directory.class)).isFalse();
            assertThat(after.containsDirectoryOfType(ExifSubIFDDirectory.class)).isFalse();
            assertThat(after.containsDirectoryOfType(JpegCommentDirectory.class)).isFalse();
            assertThat(new String(kept, ISO_8859_1))
                    .doesNotContain(Pictures.SERIAL, Pictures.MAKER_WORDS, "Exif", "comment")
                    .doesNotContain("2025:05:04");
        }
        assertThat(developed.notedOn).isEqualTo(LocalDate.of(2025, 5, 4));
    }

    @ParameterizedTest
    @CsvSource({"0000:00:00 00:00:00", "2025:02:30 10:00:00", "'    :  :     :  :  '", "x"})
    void aDayThatIsNoneIsNotNoted(String day) {
        var padded = (day + " ".repeat(19)).substring(0, 19);
        var sent = Pictures.withExif(Pictures.jpeg(), Pictures.exif(1, padded));
        assertThat(develop(sent).notedOn).isNull();
    }

    @Test
    void brokenNotesDoNotSpoilThePicture() {
        var random = new SplittableRandom(80);
        for (int round = 0; round < 200; round++) {
            var exif = Pictures.exif(6, Pictures.DAY_NOTED);
            for (int i = 0; i < 20; i++) {
                exif[8 + random.nextInt(exif.length - 8)] = (byte) random.nextInt(256);
            }
            var developed = develop(Pictures.withExif(Pictures.jpeg(), exif));
            assertThat(developed.widthPx * developed.heightPx).as("%d", round).isEqualTo(64 * 48);
        }
    }

    @ParameterizedTest
    @CsvSource({"3000, 2000, 2560, 1707, 400, 267", "1000, 6000, 427, 2560, 67, 400"})
    void largePicturesAreMadeSmaller(
            int width, int height, int keptWidth, int keptHeight, int thumbWidth, int thumbHeight) {
        var developed = develop(Pictures.jpeg(quarters(width, height)));
        assertThat(developed.widthPx).isCloseTo(keptWidth, Offset.offset(1));
        assertThat(developed.heightPx).isCloseTo(keptHeight, Offset.offset(1));
        var kept = Pictures.decoded(developed.whole);
        assertThat(kept.getWidth()).isEqualTo(developed.widthPx);
        assertThat(kept.getHeight()).isEqualTo(developed.heightPx);
        assertColour(kept, "right", "bottom", Pictures.BOTTOM_RIGHT);
        var thumbnail = Pictures.decoded(developed.thumbnail);
        assertThat(thumbnail.getWidth()).isCloseTo(thumbWidth, Offset.offset(1));
        assertThat(thumbnail.getHeight()).isCloseTo(thumbHeight, Offset.offset(1));
        assertColour(thumbnail, "left", "top", Pictures.TOP_LEFT);
    }

    @Test
    void smallPicturesKeepTheirSize() {
        var developed = develop(Pictures.png(quarters(40, 30)));
        assertThat(developed.widthPx).isEqualTo(40);
        assertThat(developed.heightPx).isEqualTo(30);
    }

    @Test
    void whatIsSeeThroughIsLaidOnWhite() {
        var picture = new BufferedImage(40, 40, BufferedImage.TYPE_INT_ARGB);
        for (int x = 20; x < 40; x++) {
            for (int y = 0; y < 40; y++) {
                picture.setRGB(x, y, Color.BLUE.getRGB());
            }
        }
        var kept = Pictures.decoded(develop(Pictures.png(picture)).whole);
        assertNear(new Color(kept.getRGB(5, 20)), Color.WHITE);
        assertNear(new Color(kept.getRGB(34, 20)), Color.BLUE);
    }

    @Test
    void sixteenBitsAreTaken() {
        var picture = sixteenBits(40, false);
        for (int y = 0; y < 40; y++) {
            for (int x = 0; x < 40; x++) {
                picture.getRaster().setPixel(x, y, new int[] {0xFFFF, 0x8000, 0});
            }
        }
        var png = Pictures.png(picture);
        // bit depth stands in the 25th byte (ISO/IEC 15948, 11.2.2)
        assertThat(png[24]).isEqualTo((byte) 16);
        var kept = Pictures.decoded(develop(png).whole);
        assertNear(new Color(kept.getRGB(20, 20)), new Color(255, 128, 0));
    }

    /** Nine megapixels of eight bytes would take 72 MB: every second pixel is left out. */
    @Test
    void whatWouldTakeTooMuchMemoryIsThinned() {
        var developed = develop(Pictures.png(sixteenBits(3000, true)));
        assertThat(developed.widthPx).isEqualTo(1500);
        assertThat(developed.heightPx).isEqualTo(1500);
    }

    private static BufferedImage sixteenBits(int edgePx, boolean alpha) {
        var model =
                new ComponentColorModel(
                        ColorSpace.getInstance(ColorSpace.CS_sRGB),
                        alpha,
                        false,
                        alpha ? BufferedImage.TRANSLUCENT : BufferedImage.OPAQUE,
                        DataBuffer.TYPE_USHORT);
        var raster = model.createCompatibleWritableRaster(edgePx, edgePx);
        return new BufferedImage(model, raster, false, null);
    }

    @Test
    void greyStaysAsGreyAsItWas() {
        var grey = new BufferedImage(40, 40, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < 40; y++) {
            for (int x = 0; x < 40; x++) {
                grey.getRaster().setSample(x, y, 0, 100);
            }
        }
        for (var sent : new byte[][] {Pictures.png(grey), Pictures.jpeg(grey)}) {
            var kept = Pictures.decoded(develop(sent).whole);
            assertNear(new Color(kept.getRGB(20, 20)), new Color(100, 100, 100));
        }
    }

    /** Each is a picture and something else at once; only the picture is left. */
    @ParameterizedTest
    @MethodSource("polyglots")
    void whatHidesInAPictureIsGone(String what, byte[] sent, String hidden) {
        assertThat(new String(sent, ISO_8859_1)).contains(hidden);
        var developed = develop(sent);
        for (var kept : new byte[][] {developed.whole, developed.thumbnail}) {
            assertThat(new String(kept, ISO_8859_1)).doesNotContain(hidden);
            assertThat(kept).startsWith(0xFF, 0xD8, 0xFF).endsWith(0xFF, 0xD9);
            assertThat(Pictures.decoded(kept)).isNotNull();
        }
        assertThat(developed.widthPx).isEqualTo(64);
    }

    static Stream<Arguments> polyglots() throws Exception {
        var jpeg = Pictures.jpeg();
        var png = Pictures.png(quarters(64, 48));
        var script = "<?php system($_GET['c']); ?><script>alert(1)</script>";
        return Stream.of(
                arguments(
                        "script in a comment",
                        Pictures.with(jpeg, Pictures.COMMENT, script.getBytes(ISO_8859_1)),
                        "<?php"),
                arguments(
                        "script behind the end",
                        joined(jpeg, script.getBytes(ISO_8859_1)),
                        "alert"),
                arguments(
                        "script in an application's segment",
                        Pictures.with(jpeg, 0xEF, "/*alert(1)*/".getBytes(ISO_8859_1)),
                        "alert"),
                arguments("zip behind the end", joined(jpeg, zip()), "PK\u0003\u0004"),
                arguments(
                        "script in a text chunk",
                        Pictures.withChunk(
                                png, "tEXt", ("Comment\0" + script).getBytes(ISO_8859_1)),
                        "<?php"),
                arguments("zip behind a PNG", joined(png, zip()), "PK\u0003\u0004"));
    }

    private static byte[] zip() throws Exception {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("../../evil.sh"));
            zip.write("rm".getBytes(ISO_8859_1));
        }
        return bytes.toByteArray();
    }

    @ParameterizedTest
    @MethodSource("refused")
    void whatIsNoWholePictureIsRefusedInWords(String what, byte[] sent, String told) {
        var refused = refusal(sent);
        assertThat(refused).as(what).isNotNull();
        var problem = refused.problem();
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.maybe()).isNotBlank();
        assertThat(problem.faults()).hasSize(1);
        assertThat(problem.faults().get(0).field()).isEqualTo("photo");
        assertThat(problem.faults().get(0).message()).contains(told);
    }

    static Stream<Arguments> refused() throws Exception {
        var jpeg = Pictures.jpeg();
        var png = Pictures.png(quarters(64, 48));
        return Stream.of(
                arguments("nothing", new byte[0], "an empty file"),
                arguments("one byte", new byte[] {1}, "something else"),
                arguments("SVG", text("<svg onload='alert(1)'/>"), "SVG"),
                arguments("SVG after blanks", text("  \n<?xml?>"), "SVG"),
                arguments("HTML", text("<html><script>alert(1)</script>"), "HTML"),
                arguments("GIF with HTML", text("GIF89a/*<script>*/=1;alert(1)"), "a GIF"),
                arguments("PDF", text("%PDF-1.7\n%"), "a PDF"),
                arguments("WebP", text("RIFF\0\0\0\0WEBPVP8 "), "a WebP"),
                arguments("TIFF", text("II*\0aaaaaaaa"), "another kind"),
                arguments("HEIC", box("heic"), "a HEIC"),
                arguments("HEIF", box("mif1"), "a HEIC"),
                arguments("AVIF", box("avif"), "an AVIF"),
                arguments("film", box("mp42"), "a film"),
                arguments("zip", zip(), "something else"),
                arguments("words", text("a tree"), "something else"),
                arguments("PNG of 50000 × 50000", Pictures.pngSaying(50_000, 50_000), "50000 ×"),
                arguments(
                        "PNG of 2³¹ pixels",
                        Pictures.pngSaying(Integer.MAX_VALUE, 1),
                        "megapixels"),
                arguments("PNG of no width", Pictures.pngSaying(0, 9), "how large"),
                arguments("PNG of negative width", Pictures.pngSaying(-1, 9), "how large"),
                arguments(
                        "PNG with too few pixels", Pictures.pngSaying(640, 480), "cannot be read"),
                arguments("half a JPEG", Arrays.copyOf(jpeg, jpeg.length / 2), "breaks off"),
                arguments("JPEG without end", Arrays.copyOf(jpeg, jpeg.length - 2), "breaks off"),
                arguments("JPEG cut and ended", cutAndEnded(jpeg), "too early"),
                arguments("start of a JPEG", Arrays.copyOf(jpeg, 3), "breaks off"),
                arguments("half a PNG", Arrays.copyOf(png, png.length / 2), "breaks off"),
                arguments("PNG without end", Arrays.copyOf(png, png.length - 12), "breaks off"),
                arguments("JPEG of no lines", jpegSaying(jpeg, 64, 0), "how large"),
                arguments("JPEG of 65000 × 65000", jpegSaying(jpeg, 65_000, 65_000), "65000 ×"),
                arguments("JPEG of many scans", manyScans(), "scans"),
                arguments("JPEG in CMYK", cmyk(), "CMYK"),
                arguments("more bytes than taken", new byte[MOST_BYTES + 1], "2.0 MB"));
    }

    private static byte[] text(String text) {
        return text.getBytes(ISO_8859_1);
    }

    /** First box of a file in the ISO base media format (ISO/IEC 14496-12, 4.3). */
    private static byte[] box(String brand) {
        return text("\0\0\0\u0018ftyp" + brand + "\0\0\0\0mif1" + brand);
    }

    private static int frame(byte[] jpeg) {
        for (int at = 2; ; at += 2 + ByteBuffer.wrap(jpeg).getShort(at + 2)) {
            if ((jpeg[at + 1] & 0xFF) == 0xC0 || (jpeg[at + 1] & 0xFF) == 0xC2) {
                return at;
            }
        }
    }

    private static byte[] jpegSaying(byte[] jpeg, int width, int height) {
        var changed = ByteBuffer.wrap(jpeg.clone());
        int frame = frame(jpeg);
        return changed.putShort(frame + 5, (short) height)
                .putShort(frame + 7, (short) width)
                .array();
    }

    /** Its pixels stop half way, but an end stands behind them. */
    private static byte[] cutAndEnded(byte[] jpeg) {
        var detailed = new BufferedImage(200, 200, BufferedImage.TYPE_INT_RGB);
        var random = new SplittableRandom(8);
        for (int i = 0; i < 40_000; i++) {
            detailed.setRGB(i % 200, i / 200, random.nextInt());
        }
        var whole = Pictures.jpeg(detailed);
        assertThat(whole.length).isGreaterThan(jpeg.length);
        var half = Arrays.copyOf(whole, whole.length / 2);
        half[half.length - 1] = 0;
        return joined(half, new byte[] {(byte) 0xFF, (byte) 0xD9});
    }

    /** A progressive JPEG whose last scan is told again and again. */
    private static byte[] manyScans() throws Exception {
        var progressive = Pictures.progressive();
        int last = progressive.length - 2;
        int scan = last;
        while (progressive[scan] != (byte) 0xFF || progressive[scan + 1] != (byte) 0xDA) {
            scan--;
        }
        var again = Arrays.copyOfRange(progressive, scan, last);
        byte[] many = Arrays.copyOf(progressive, last);
        for (int i = 0; i < 100; i++) {
            many = joined(many, again);
        }
        return joined(many, new byte[] {(byte) 0xFF, (byte) 0xD9});
    }

    @Test
    void aProgressiveJpegIsTaken() throws Exception {
        var kept = Pictures.decoded(develop(Pictures.progressive()).whole);
        assertColour(kept, "left", "bottom", Pictures.BOTTOM_LEFT);
    }

    private static byte[] cmyk() throws Exception {
        var raster = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 32, 32, 4, null);
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var bytes = new ByteArrayOutputStream();
        try (var output = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(output);
            writer.write(null, new IIOImage(raster, null, null), writer.getDefaultWriteParam());
        }
        return bytes.toByteArray();
    }

    /** Whatever single bytes are turned, the answer is a picture or a refusal in words. */
    @Test
    void noBrokenPictureBreaksAnythingElse() {
        var random = new SplittableRandom(20261125);
        for (var whole : new byte[][] {Pictures.jpeg(), Pictures.png(quarters(64, 48))}) {
            for (int round = 0; round < 2000; round++) {
                var sent = whole.clone();
                for (int i = 0; i <= random.nextInt(4); i++) {
                    sent[random.nextInt(sent.length)] = (byte) random.nextInt(256);
                }
                var hex = round;
                try {
                    var developed = develop(sent);
                    assertThat(developed.whole).as("round %d", hex).isNotEmpty();
                } catch (Refused refused) {
                    assertThat(refused.problem().status()).as("round %d", hex).isEqualTo(400);
                }
            }
        }
    }
}
