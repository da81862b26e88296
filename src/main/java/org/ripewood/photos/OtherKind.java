package org.ripewood.photos;

import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.ripewood.platform.problems.Refused;

/** What was sent instead of a JPEG or PNG, by its first bytes, and what to do about it. */
final class OtherKind {

    private static final String EXPECTED = "expected a JPEG or PNG picture, found ";

    private static final String SAVE_AS =
            "Maybe open it in a program for pictures and save it as JPEG.";

    private static final String PHONE =
            "Maybe set the phone's camera to its most compatible format, which is JPEG; a photo that"
                    + " is there already becomes a JPEG on many phones when it is sent by mail, or"
                    + " chosen from the photos and not from the files.";

    /** Brands of still pictures in the ISO base media format (ISO/IEC 23008-12, annex B). */
    private static final Set<String> HEIF =
            Set.of("heic", "heix", "heim", "heis", "hevc", "hevx", "hevm", "hevs", "mif1", "msf1");

    private static final Set<String> AVIF = Set.of("avif", "avis");

    private OtherKind() {}

    static Refused of(byte[] sent) {
        var first = new String(sent, 0, Math.min(sent.length, 64), StandardCharsets.ISO_8859_1);
        if (first.isEmpty()) {
            return Unfit.because(EXPECTED + "an empty file", "Maybe choose the photo once more.");
        }
        if (first.startsWith("ftyp", 4) && first.length() >= 12) {
            return ofBrand(first.substring(8, 12));
        }
        if (first.startsWith("RIFF") && first.startsWith("WEBP", 8)) {
            return Unfit.because(EXPECTED + "a WebP picture", SAVE_AS);
        }
        if (first.startsWith("GIF8")) {
            return Unfit.because(EXPECTED + "a GIF picture", SAVE_AS);
        }
        if (first.startsWith("%PDF")) {
            return Unfit.because(EXPECTED + "a PDF", "Maybe send the photo it was made of.");
        }
        if (first.startsWith("II*\0") || first.startsWith("MM\0*") || first.startsWith("BM")) {
            return Unfit.because(EXPECTED + "a picture of another kind", SAVE_AS);
        }
        return first.replaceFirst("^(ï»¿)?\\s*", "").startsWith("<")
                ? Unfit.because(EXPECTED + "text with tags, such as SVG or HTML", SAVE_AS)
                : Unfit.because(EXPECTED + "something else", "Maybe the wrong file was chosen.");
    }

    private static Refused ofBrand(String brand) {
        if (HEIF.contains(brand)) {
            return Unfit.because(EXPECTED + "a HEIC picture (HEIF)", PHONE);
        }
        return AVIF.contains(brand)
                ? Unfit.because(EXPECTED + "an AVIF picture", SAVE_AS)
                : Unfit.because(EXPECTED + "a film", "Maybe take a photo instead.");
    }
}
