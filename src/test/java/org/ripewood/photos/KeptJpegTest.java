package org.ripewood.photos;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.ripewood.photos.Pictures.joined;
import static org.ripewood.photos.Pictures.quarters;

import io.quarkus.runtime.configuration.MemorySize;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.platform.problems.Refused;

/** A JPEG that is kept as it came is pixels and nothing else (ITU-T T.81, annex B). */
@Tag("fast")
class KeptJpegTest {

    private static final byte[] WORDS = "<script>hidden</script>".repeat(20).getBytes(ISO_8859_1);

    private static final PhotoProcessor DARKROOM =
            new PhotoProcessor(
                    new PhotoLimits(
                            new MemorySize(BigInteger.valueOf(2_000_000)), 60_000_000, 500, 200));

    private static byte[] developed(BufferedImage picture) {
        return DARKROOM.develop(1, new ByteArrayInputStream(Pictures.png(picture))).whole;
    }

    private static BufferedImage noise(int widthPx, int heightPx, long seed) {
        var random = new SplittableRandom(seed);
        var picture = quarters(widthPx, heightPx);
        for (int i = 0; i < widthPx * heightPx / 2; i++) {
            picture.setRGB(random.nextInt(widthPx), random.nextInt(heightPx), random.nextInt());
        }
        return picture;
    }

    @Test
    void whatTheDarkroomMadeIsTakenAsItIs() {
        long seed = 20_261_126L;
        int[][] sizes = {{1, 1}, {7, 3}, {64, 48}, {401, 299}, {2560, 17}};
        for (var size : sizes) {
            for (var picture :
                    new BufferedImage[] {
                        quarters(size[0], size[1]), noise(size[0], size[1], seed)
                    }) {
                var kept = developed(picture);
                var checked = DARKROOM.check(kept);
                assertThat(checked.whole).as("seed %d", seed).isEqualTo(kept);
                assertThat(checked.widthPx).isEqualTo(size[0]);
                assertThat(checked.heightPx).isEqualTo(size[1]);
                assertThat(Pictures.decoded(checked.thumbnail).getWidth())
                        .isEqualTo(Math.min(size[0], PhotoProcessor.THUMBNAIL_EDGE_PX));
            }
        }
    }

    static Stream<Arguments> others() {
        var plain = developed(quarters(64, 48));
        var end = Arrays.copyOfRange(plain, plain.length - 2, plain.length);
        var open = Arrays.copyOf(plain, plain.length - 2);
        var exif = Pictures.exif(1, Pictures.DAY_NOTED);
        var anotherHeader = plain.clone();
        anotherHeader[13] = 1;
        return Stream.of(
                arguments("bytes after the end", joined(plain, WORDS), "460 bytes after its end"),
                arguments("one byte after the end", joined(plain, new byte[1]), "1 bytes after"),
                arguments("two pictures", joined(plain, plain), "bytes after its end"),
                arguments("a camera's notes", Pictures.withExif(plain, exif), "a part FFE1"),
                arguments("a comment", Pictures.with(plain, Pictures.COMMENT, WORDS), "part FFFE"),
                arguments("colours", Pictures.with(plain, 0xE2, WORDS), "a part FFE2"),
                arguments("a header of its own", anotherHeader, "a part FFE0 of 16 bytes"),
                arguments("a second header", twice(plain, 0xE0), "a part FFE0 of 16 bytes"),
                arguments("tables twice", twice(plain, 0xDB), "a part FFDB of 67 bytes"),
                arguments("long tables", Pictures.with(plain, 0xDB, WORDS), "a part FFDB of 462"),
                arguments("codes", Pictures.with(plain, 0xC4, WORDS), "a part FFC4 of 462"),
                arguments(
                        "words among the pixels",
                        joined(joined(open, WORDS), end),
                        "more than make up the picture"),
                arguments(
                        "a restart",
                        joined(joined(open, new byte[] {(byte) 0xFF, (byte) 0xD0}), end),
                        "more after the pixels"),
                arguments("cut off", Arrays.copyOf(plain, plain.length - 40), "breaks off"),
                arguments("nothing", new byte[0], "an empty file"),
                arguments("a PNG", Pictures.png(quarters(64, 48)), "expected a JPEG"),
                arguments("too wide", Pictures.jpeg(quarters(2561, 4)), "at most 2560 px a side"),
                arguments("in several goes", Pictures.progressive(), "a part FFC2"),
                arguments("of one colour", grey(), "a part FFC0 of 11 bytes"),
                arguments("HTML", WORDS, "text with tags"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("others")
    void anythingElseIsRefusedWithWhatItIs(String what, byte[] sent, String told) {
        assertThat(refusal(sent)).as(what).contains(told);
    }

    /** What is cut off or changed is refused or still a picture; the decoder never gets out. */
    @Test
    void brokenOnesAreRefusedOrPictures() {
        long seed = 20_261_127L;
        var random = new SplittableRandom(seed);
        var plain = developed(noise(60, 40, seed));
        int refused = 0;
        for (int round = 0; round < 400; round++) {
            var bent = plain.clone();
            bent[random.nextInt(bent.length)] = (byte) random.nextInt(256);
            if (refusal(bent).isEmpty()) {
                assertThat(Pictures.decoded(bent)).as("seed %d, %d", seed, round).isNotNull();
            } else {
                refused++;
            }
            var cut = Arrays.copyOf(plain, random.nextInt(plain.length));
            assertThat(refusal(cut)).as("seed %d, round %d", seed, round).isNotEmpty();
        }
        assertThat(refused).isPositive();
    }

    private static String refusal(byte[] sent) {
        var refused = catchThrowableOfType(Refused.class, () -> DARKROOM.check(sent));
        return refused == null ? "" : refused.problem().faults().get(0).message();
    }

    /** The first part of its kind once more. */
    private static byte[] twice(byte[] jpeg, int marker) {
        int at = 2;
        while ((jpeg[at + 1] & 0xFF) != marker) {
            at += 2 + ((jpeg[at + 2] & 0xFF) << 8 | (jpeg[at + 3] & 0xFF));
        }
        int length = (jpeg[at + 2] & 0xFF) << 8 | (jpeg[at + 3] & 0xFF);
        return Pictures.with(jpeg, marker, Arrays.copyOfRange(jpeg, at + 4, at + 2 + length));
    }

    private static byte[] grey() {
        return Pictures.jpeg(new BufferedImage(30, 20, BufferedImage.TYPE_BYTE_GRAY));
    }
}
