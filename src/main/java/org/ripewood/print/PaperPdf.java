package org.ripewood.print;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A paper as PDF: the same HTML as in the browser, laid out on numbered sheets.
 *
 * <p>Tagged for reading aloud (PDF/UA), with the house's own fonts inside. Nothing is fetched from
 * anywhere, whatever the HTML asks for. A letter that the fonts lack becomes an empty box.
 */
final class PaperPdf {

    private static final String MISSING_LETTER = "\u25A1";

    static {
        // a server has no screen; said before anything asks for one
        System.setProperty("java.awt.headless", "true");
        // it would tell of every letter it does not know
        XRLog.setLoggingEnabled(false);
    }

    private static final String STYLE =
            new String(PaperFiles.bytes("/print/paper.css"), StandardCharsets.UTF_8);

    private PaperPdf() {}

    static byte[] of(PaperHtml html, PaperSize size) {
        var out = new ByteArrayOutputStream();
        try (var pdf = new PDDocument();
                var pictures = new BatikSVGDrawer()) {
            var builder = new PdfRendererBuilder();
            builder.withW3cDocument(html.styled(size, STYLE), null);
            builder.usePDDocument(pdf);
            builder.usePdfUaAccessibility(true);
            builder.withProducer("Ripewood");
            builder.useReplacementText(MISSING_LETTER);
            builder.useSVGDrawer(pictures);
            refuseEveryAddress(builder);
            PaperFont.addAll(builder, pdf);
            builder.toStream(out);
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException("the paper \"%s\"".formatted(html.title()), e);
        }
        return out.toByteArray();
    }

    /** Neither as it is written nor as what it resolves to. */
    private static void refuseEveryAddress(PdfRendererBuilder builder) {
        builder.useUriResolver((base, uri) -> null);
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
    }
}
