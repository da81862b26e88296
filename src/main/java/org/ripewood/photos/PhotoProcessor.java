package org.ripewood.photos;

import jakarta.enterprise.context.ApplicationScoped;
import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;

/**
 * Makes of what was sent what is kept: decoded, turned upright, made smaller and encoded anew.
 * Nothing but pixels comes through, neither the camera's notes nor anything hidden beside them.
 */
@ApplicationScoped
class PhotoProcessor {

    static final int LONGEST_EDGE_PX = 2560;
    static final int THUMBNAIL_EDGE_PX = 400;

    private static final Logger LOG = Logger.getLogger(PhotoProcessor.class);

    /** What a decoded picture may take, 16 megapixels of a phone; larger ones are thinned. */
    private static final double BYTES_AT_ONCE = 48e6;

    /** Fine enough that a wound's edge can be made out; common practice, no source. */
    private static final float QUALITY = 0.85f;

    /** From here on decoding may take more than half a second on a small machine (tried). */
    private static final long MANY_PIXELS_OF_PNG = 8_000_000;

    private static final long MANY_PIXELS_OF_JPEG = 20_000_000;

    /** A class that sends its photos at once is through in that time (tried). */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final DecodingQueue queue = new DecodingQueue(PATIENCE);

    private final PhotoLimits limits;

    static {
        // a service has no screen
        System.setProperty("java.awt.headless", "true");
        // otherwise what is decoded is written to a temporary file
        ImageIO.setUseCache(false);
    }

    PhotoProcessor(PhotoLimits limits) {
        this.limits = limits;
    }

    /** What was sent, and either what was made of it or, while that takes long, nothing yet. */
    private static final class Opened {

        private final byte[] sent;
        private final PictureHead head;
        private final @Nullable ProcessedPhoto developed;

        Opened(byte[] sent, PictureHead head, @Nullable ProcessedPhoto developed) {
            this.sent = sent;
            this.head = head;
            this.developed = developed;
        }
    }

    /**
     * Develops a JPEG or PNG, known by its content alone.
     *
     * @param personId who sent it
     * @throws org.ripewood.platform.problems.Refused 400 for anything else, for a broken picture,
     *     and for one with more pixels than are taken, which is told before it is decoded; 429 or
     *     503 when there is too much to do
     */
    ProcessedPhoto develop(long personId, InputStream sent) {
        return queue.ofPerson(personId, () -> develop(sent));
    }

    private ProcessedPhoto develop(InputStream sent) {
        var opened = queue.usual(() -> open(sent));
        var developed = opened.developed;
        return developed != null ? developed : queue.large(() -> develop(opened.sent, opened.head));
    }

    private Opened open(InputStream sent) {
        var bytes = read(sent);
        var head = head(bytes);
        return new Opened(bytes, head, isLarge(head) ? null : develop(bytes, head));
    }

    private static boolean isLarge(PictureHead head) {
        return head.pixels()
                > (head.format().equals("png") ? MANY_PIXELS_OF_PNG : MANY_PIXELS_OF_JPEG);
    }

    /**
     * Looks through a JPEG that is to be kept as it is, since it was developed elsewhere.
     *
     * @return the same bytes, with the thumbnail and sizes that go with them
     * @throws org.ripewood.platform.problems.Refused 400 when it is none that {@link #develop}
     *     could have made, which is told before it is decoded, or when its pixels are not whole;
     *     503 when there is too much to do
     */
    ProcessedPhoto check(byte[] developed) {
        return queue.usual(() -> checked(developed));
    }

    private ProcessedPhoto checked(byte[] developed) {
        if (!JpegHead.begins(developed)) {
            throw OtherKind.of(developed);
        }
        var head = head(developed);
        KeptJpeg.require(developed);
        if (head.longestPx() > LONGEST_EDGE_PX) {
            throw Unfit.because(
                    "expected at most %d px a side, found %d"
                            .formatted(LONGEST_EDGE_PX, head.longestPx()),
                    null);
        }
        var warnings = new ArrayList<String>();
        var pixels = decoded(developed, head, warnings);
        if (!warnings.isEmpty()) {
            LOG.debugf("a picture from a file: %s", warnings);
            throw Unfit.because(
                    "expected a JPEG of nothing but pixels, found more than make up the picture",
                    null);
        }
        return new ProcessedPhoto(
                developed,
                jpeg(smaller(onWhite(pixels), THUMBNAIL_EDGE_PX)),
                head.widthPx(),
                head.heightPx(),
                null);
    }

    private byte[] read(InputStream sent) {
        try {
            var bytes = sent.readNBytes((int) limits.mostBytes() + 1);
            if (bytes.length > limits.mostBytes()) {
                throw Unfit.because(
                        "expected at most %.1f MB, found more"
                                .formatted(limits.mostBytes() / 1_000_000.0),
                        "Maybe send it in a smaller size.");
            }
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException("what was sent cannot be read again", e);
        }
    }

    private PictureHead head(byte[] bytes) {
        var head = PictureHead.of(bytes);
        if (head.pixels() > limits.mostPixels()) {
            throw Unfit.because(
                    "expected at most %d megapixels, found %d × %d pixels"
                            .formatted(
                                    limits.mostPixels() / 1_000_000,
                                    head.widthPx(),
                                    head.heightPx()),
                    "Maybe send it in a smaller size.");
        }
        if (head.channels() > 3) {
            throw Unfit.because(
                    "expected colours for screens, found a JPEG of %d channels, such as CMYK"
                            .formatted(head.channels()),
                    "Maybe save it as JPEG in RGB.");
        }
        return head;
    }

    private static ProcessedPhoto develop(byte[] sent, PictureHead head) {
        var small = smaller(onWhite(decoded(sent, head, new ArrayList<>())), LONGEST_EDGE_PX);
        var upright = ExifOrientation.upright(small, head.notes().orientation());
        return new ProcessedPhoto(
                jpeg(upright),
                jpeg(smaller(upright, THUMBNAIL_EDGE_PX)),
                upright.getWidth(),
                upright.getHeight(),
                head.notes().takenOn());
    }

    /** The decoder fills up what is missing and only warns. */
    private static BufferedImage decoded(byte[] sent, PictureHead head, List<String> warnings) {
        var reader = ImageIO.getImageReadersByFormatName(head.format()).next();
        try (var input = new MemoryCacheImageInputStream(new ByteArrayInputStream(sent))) {
            reader.setInput(input, true, true);
            reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
            var how = reader.getDefaultReadParam();
            if (reader.getWidth(0) != head.widthPx() || reader.getHeight(0) != head.heightPx()) {
                throw Unfit.broken("a picture that tells two sizes");
            }
            int every = every(head);
            how.setSourceSubsampling(every, every, 0, 0);
            var picture = reader.read(0, how);
            if (warnings.stream().anyMatch(PhotoProcessor::tellsOfTheEnd)) {
                throw Unfit.broken("a picture whose pixels end too early");
            }
            return picture;
        } catch (IOException | IllegalArgumentException | IllegalStateException unreadable) {
            throw broken(head, unreadable);
        } catch (IndexOutOfBoundsException | NullPointerException | ClassCastException bug) {
            // the decoder's own, met by pictures that contradict themselves
            throw broken(head, bug);
        } finally {
            reader.dispose();
        }
    }

    private static RuntimeException broken(PictureHead head, Exception why) {
        LOG.debugf(why, "a %s could not be decoded", head.format());
        return Unfit.broken(
                "a %s whose pixels cannot be read"
                        .formatted(head.format().toUpperCase(Locale.ROOT)));
    }

    private static boolean tellsOfTheEnd(String warning) {
        return warning.toLowerCase(Locale.ROOT).contains("premature end");
    }

    /** Every how many pixels one is kept while decoding, so that memory has a bound. */
    private static int every(PictureHead head) {
        double bytes = (double) head.pixels() * head.bytesPerPixel();
        int thinned = (int) Math.ceil(Math.sqrt(bytes / BYTES_AT_ONCE));
        return Math.max(1, Math.max(thinned, head.longestPx() / LONGEST_EDGE_PX));
    }

    /** In the colours of screens, and what was see-through on white. */
    private static BufferedImage onWhite(BufferedImage picture) {
        var rgb =
                new BufferedImage(
                        picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        var colours = picture.getColorModel().getColorSpace();
        if (!picture.getColorModel().hasAlpha()
                && colours.getType() == ColorSpace.TYPE_RGB
                && !colours.isCS_sRGB()) {
            // drawing would convert pixel by pixel, a hundred times slower
            return new ColorConvertOp(null).filter(picture, rgb);
        }
        var pen = rgb.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, rgb.getWidth(), rgb.getHeight());
        pen.drawImage(picture, 0, 0, null);
        pen.dispose();
        return rgb;
    }

    /** Halved as often as possible first: a bilinear step looks at four pixels only. */
    private static BufferedImage smaller(BufferedImage picture, int longestPx) {
        BufferedImage now = picture;
        int longest = Math.max(now.getWidth(), now.getHeight());
        while (longest > longestPx) {
            double share = Math.max(0.5, longestPx / (double) longest);
            now =
                    scaled(
                            now,
                            Math.max(1, (int) Math.round(now.getWidth() * share)),
                            Math.max(1, (int) Math.round(now.getHeight() * share)));
            longest = Math.max(now.getWidth(), now.getHeight());
        }
        return now;
    }

    private static BufferedImage scaled(BufferedImage picture, int widthPx, int heightPx) {
        var scaled = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        var pen = scaled.createGraphics();
        pen.setRenderingHint(
                RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.drawImage(picture, 0, 0, widthPx, heightPx, null);
        pen.dispose();
        return scaled;
    }

    private static byte[] jpeg(BufferedImage picture) {
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var bytes = new ByteArrayOutputStream();
        try (var output = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(output);
            var how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(picture, null, null), how);
        } catch (IOException e) {
            throw new UncheckedIOException("pixels can always be encoded", e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
