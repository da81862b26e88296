package org.ripewood.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * One of the house's fonts, the same as on its pages; what a paper uses of it travels inside it.
 */
final class PaperFont {
    private static final List<PaperFont> ALL =
            List.of(
                    new PaperFont("Source Sans 3", 400, FontStyle.NORMAL, "SourceSans3_400Regular"),
                    new PaperFont(
                            "Source Sans 3", 600, FontStyle.NORMAL, "SourceSans3_600SemiBold"),
                    new PaperFont(
                            "Source Sans 3",
                            400,
                            FontStyle.ITALIC,
                            "SourceSans3_400Regular_Italic"),
                    new PaperFont(
                            "Source Serif 4", 600, FontStyle.NORMAL, "SourceSerif4_600SemiBold"));

    private static final Set<FSFontUseCase> PICTURES = EnumSet.of(FSFontUseCase.SVG);

    private final String family;
    private final int weight;
    private final FontStyle style;
    private final byte[] file;

    private PaperFont(String family, int weight, FontStyle style, String name) {
        this.family = family;
        this.weight = weight;
        this.style = style;
        this.file = PaperFiles.bytes("/META-INF/resources/fonts/" + name + ".ttf");
    }

    static void addAll(PdfRendererBuilder builder, PDDocument pdf) {
        for (var font : ALL) {
            builder.useFont(font.of(pdf), font.family, font.weight, font.style, true);
            // pictures have no slanted letters, and would mix them up with upright ones
            if (font.style == FontStyle.NORMAL) {
                builder.useFont(
                        () -> new ByteArrayInputStream(font.file),
                        font.family,
                        font.weight,
                        font.style,
                        true,
                        PICTURES);
            }
        }
    }

    /**
     * Read when first used. Letters are not joined to ligatures: the engine looks for them anew in
     * every word, which took three quarters of all its time.
     */
    private PDFontSupplier of(PDDocument pdf) {
        return new PDFontSupplier(null) {
            @Override
            public PDFont supply() {
                try {
                    var font = new TTFParser().parse(new RandomAccessReadBuffer(file));
                    font.setEnableGsub(false);
                    return PDType0Font.load(pdf, font, true);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        };
    }
}
