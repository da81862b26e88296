package org.ripewood.print;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A paper read back from its PDF. */
final class Pdf implements AutoCloseable {

    final PDDocument document;

    private Pdf(PDDocument document) {
        this.document = document;
    }

    static Pdf of(String html, PaperSize size) throws IOException {
        return of(PaperPdf.of(PaperHtml.of(html), size));
    }

    static Pdf of(byte[] bytes) throws IOException {
        return new Pdf(Loader.loadPDF(bytes));
    }

    /** The text of each page, what stands together being told together. */
    List<String> pages() throws IOException {
        return pages(false);
    }

    private List<String> pages(boolean lineByLine) throws IOException {
        var pages = new ArrayList<String>();
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
            var reader = new PDFTextStripper();
            reader.setStartPage(page);
            reader.setEndPage(page);
            reader.setSortByPosition(lineByLine);
            reader.setLineSeparator("\n");
            reader.setParagraphEnd("\n");
            pages.add(
                    reader.getText(document)
                            .replaceAll("[ \\t]+(?=\\n|$)", "")
                            .replaceAll("\\n{2,}", "\n")
                            .strip());
        }
        return pages;
    }

    String text() throws IOException {
        return String.join("\n", pages());
    }

    /** All pages, each under its number, line by line. */
    String told() throws IOException {
        var told = new StringBuilder();
        var pages = pages(true);
        for (int i = 0; i < pages.size(); i++) {
            told.append("--- sheet %d ---%n%s%n".formatted(i + 1, pages.get(i)));
        }
        return told.toString().replace("\r\n", "\n");
    }

    /** Every letter of a page with its place in points. */
    List<TextPosition> letters(int page) throws IOException {
        var letters = new ArrayList<TextPosition>();
        var reader =
                new PDFTextStripper() {
                    @Override
                    protected void writeString(String text, List<TextPosition> positions) {
                        letters.addAll(positions);
                    }
                };
        reader.setStartPage(page);
        reader.setEndPage(page);
        reader.getText(document);
        return letters;
    }

    List<PDFont> fonts() throws IOException {
        var fonts = new ArrayList<PDFont>();
        for (var page : document.getPages()) {
            for (var name : page.getResources().getFontNames()) {
                fonts.add(page.getResources().getFont(name));
            }
        }
        return fonts;
    }

    /** A page as a printer without colours puts it on paper. */
    BufferedImage picture(int page, int dotsPerInch) throws IOException {
        return new PDFRenderer(document).renderImageWithDPI(page - 1, dotsPerInch, ImageType.GRAY);
    }

    /** Colours on any page that are no shade of grey. */
    Set<Integer> colours() throws IOException {
        var colours = new HashSet<Integer>();
        for (int page = 0; page < document.getNumberOfPages(); page++) {
            var drawn = new PDFRenderer(document).renderImageWithDPI(page, 60, ImageType.RGB);
            for (int colour :
                    drawn.getRGB(
                            0, 0, drawn.getWidth(), drawn.getHeight(), null, 0, drawn.getWidth())) {
                int red = colour >> 16 & 0xFF;
                int green = colour >> 8 & 0xFF;
                int blue = colour & 0xFF;
                if (Math.abs(red - green) > 2 || Math.abs(green - blue) > 2) {
                    colours.add(colour);
                }
            }
        }
        return colours;
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
