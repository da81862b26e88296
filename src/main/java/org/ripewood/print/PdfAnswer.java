package org.ripewood.print;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import org.jspecify.annotations.Nullable;

/** A paper answered as PDF, to be looked at in the browser or kept under its own name. */
final class PdfAnswer {

    static final String TYPE = "application/pdf";

    private PdfAnswer() {}

    /**
     * Lays the paper out.
     *
     * @param size code of the sheet; null for A4, 400 when there is none such
     */
    static Response of(String html, @Nullable String size) {
        var sheet = PaperSize.of(size);
        var paper = PaperHtml.of(html);
        return Response.ok(PaperPdf.of(paper, sheet), TYPE)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        "inline; filename=\"%s\"".formatted(paper.fileName()))
                .build();
    }
}
