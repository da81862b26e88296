package org.ripewood.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Set;

/**
 * A paper as PDF: the same HTML as in the browser, laid out on numbered sheets.
 *
 * <p>Tagged for reading aloud (PDF/UA), with the house's own fonts inside. Nothing is fetched from
 * anywhere, whatever the HTML asks for. Letters that the fonts lack become a box-like mark.
 */
final class PaperPdf {

    private static final String SANS = "Source Sans 3";
    private static final String SERIF = "Source Serif 4";
    private static final String MISSING_LETTER = "\u25A1";

    private static final Set<FSFontUseCase> TEXT_AND_PICTURES =
            EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);

    /** Pictures have no slanted letters, and would take them for upright ones. */
    private static final Set<FSFontUseCase> TEXT = EnumSet.of(FSFontUseCase.DOCUMENT);

    private static final byte[] REGULAR = font("SourceSans3_400Regular");
    private static final byte[] ITALIC = font("SourceSans3_400Regular_Italic");
    private static final byte[] SEMI_BOLD = font("SourceSans3_600SemiBold");
    private static final byte[] HEADING = font("SourceSerif4_600SemiBold");
    private static final String STYLE =
            new String(resource("/print/paper.css"), StandardCharsets.UTF_8);

    static {
        // a server has no screen; said before anything asks for one
        System.setProperty("java.awt.headless", "true");
        // it would tell everybody's console of every glyph
        XRLog.setLoggingEnabled(false);
    }

    private PaperPdf() {}

    static byte[] of(PaperHtml html, PaperSize size) {
        var out = new ByteArrayOutputStream();
        try (var pictures = new BatikSVGDrawer()) {
            var builder = new PdfRendererBuilder();
            builder.withW3cDocument(html.styled(size, STYLE), null);
            builder.usePdfUaAccessibility(true);
            builder.withProducer("Ripewood");
            builder.useReplacementText(MISSING_LETTER);
            builder.useSVGDrawer(pictures);
            refuseEverythingElse(builder);
            use(builder, REGULAR, SANS, 400, FontStyle.NORMAL, TEXT_AND_PICTURES);
            use(builder, SEMI_BOLD, SANS, 600, FontStyle.NORMAL, TEXT_AND_PICTURES);
            use(builder, ITALIC, SANS, 400, FontStyle.ITALIC, TEXT);
            use(builder, HEADING, SERIF, 600, FontStyle.NORMAL, TEXT);
            builder.toStream(out);
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException("the paper \"%s\"".formatted(html.title()), e);
        }
        return out.toByteArray();
    }

    /** No address is looked up: not by name, not by file, not by what a name resolves to. */
    private static void refuseEverythingElse(PdfRendererBuilder builder) {
        builder.useUriResolver((base, uri) -> null);
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
    }

    private static void use(
            PdfRendererBuilder builder,
            byte[] font,
            String family,
            int weight,
            FontStyle style,
            Set<FSFontUseCase> where) {
        builder.useFont(() -> new ByteArrayInputStream(font), family, weight, style, true, where);
    }

    private static byte[] font(String name) {
        return resource("/META-INF/resources/fonts/" + name + ".ttf");
    }

    private static byte[] resource(String path) {
        try (var in = PaperPdf.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is missing from the jar");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
