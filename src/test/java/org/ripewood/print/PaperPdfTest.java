package org.ripewood.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.platform.problems.Refused;

@Tag("fast")
class PaperPdfTest {

    private static final String RING =
            "<svg class=\"ring\" viewBox=\"0 0 24 24\" role=\"img\" aria-label=\"60 % closed\"><circle"
                    + " class=\"bark\" cx=\"12\" cy=\"12\" r=\"9\" pathLength=\"100\""
                    + " stroke-dasharray=\"60 100\"/></svg>";

    private static String page(String title, String main) {
        return "<!DOCTYPE html><html lang=\"en\"><head><title>%s · Ripewood</title>"
                        .formatted(title)
                + "<link rel=\"stylesheet\" href=\"/style.css\"></head><body class=\"paper\">"
                + "<nav class=\"back noprint\"><a href=\"/trees/7\">Back</a></nav><main>"
                + main
                + "</main></body></html>";
    }

    private static String longPaper() {
        return page(
                "Checklist, Elm 3",
                "<h1>Elm 3</h1>"
                        + IntStream.rangeClosed(1, 120)
                                .mapToObj("<p>Line %d of a long paper.</p>"::formatted)
                                .collect(Collectors.joining()));
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void everySheetIsNumberedAndSaysWhatItBelongsTo(PaperSize size) throws IOException {
        try (var pdf = Pdf.of(longPaper(), size)) {
            var pages = pdf.pages();
            assertThat(pages.size()).isBetween(3, 6);
            for (int i = 0; i < pages.size(); i++) {
                assertThat(pages.get(i))
                        .contains("page %d of %d".formatted(i + 1, pages.size()))
                        .contains("Checklist, Elm 3");
            }
            assertThat(pdf.text()).contains("Line 1 of", "Line 120 of");
        }
    }

    /** ISO 216: 210 by 297 mm. ANSI/ASME Y14.1: 8.5 by 11 inches. 72 points are an inch. */
    @ParameterizedTest
    @CsvSource({"A4, 595.28, 841.89", "LETTER, 612, 792"})
    void sheetsHaveTheSizeAskedFor(PaperSize size, float width, float height) throws IOException {
        try (var pdf = Pdf.of(longPaper(), size)) {
            for (var page : pdf.document.getPages()) {
                assertThat(page.getMediaBox().getWidth()).isCloseTo(width, within(0.5f));
                assertThat(page.getMediaBox().getHeight()).isCloseTo(height, within(0.5f));
                assertThat(page.getRotation()).isZero();
            }
        }
    }

    /** What ISO 14289-1 (PDF/UA) asks of the document as a whole. */
    @Test
    void aPaperCanBeReadAloud() throws IOException {
        try (var pdf = Pdf.of(page("Passport", "<h1>Elm</h1>" + RING), PaperSize.A4)) {
            var catalog = pdf.document.getDocumentCatalog();
            assertThat(catalog.getLanguage()).isEqualTo("en");
            assertThat(catalog.getMarkInfo().isMarked()).isTrue();
            assertThat(catalog.getViewerPreferences().displayDocTitle()).isTrue();
            assertThat(pdf.document.getDocumentInformation().getTitle()).isEqualTo("Passport");
            assertThat(new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8))
                    .contains("pdfuaid");
            var root = catalog.getStructureTreeRoot();
            assertThat(root).isNotNull();
            var kinds = elements(root).map(PDStructureElement::getStructureType).toList();
            assertThat(kinds).contains("H1", "Figure");
            assertThat(elements(root).map(PDStructureElement::getAlternateDescription))
                    .contains("60 % closed");
        }
    }

    /** As rows kept before such codes were refused may have. */
    @ParameterizedTest
    @ValueSource(ints = {0xFFFF, 0xFFFE, 0xFDD0, 0x10FFFF, 0x85, 0x9F, 0x07, 0x00})
    void aLabelThatIsNoCharacterLeavesNothingOut(int code) throws IOException {
        var label = Character.toString(code);
        var html =
                page(
                        "Passport, " + label,
                        "<h1>" + label + "</h1><p>Facts " + label + "</p><p>Mind the frost.</p>");
        try (var pdf = Pdf.of(html, PaperSize.A4)) {
            assertThat(pdf.text()).contains("Facts", "Mind the frost.");
        }
    }

    private static Stream<PDStructureElement> elements(PDStructureNode node) {
        return node.getKids().stream()
                .filter(PDStructureElement.class::isInstance)
                .map(PDStructureElement.class::cast)
                .flatMap(kid -> Stream.concat(Stream.of(kid), elements(kid)));
    }

    @Test
    void fontsTravelInsideThePaper() throws IOException {
        var html = page("Route", "<h1>Elm</h1><p>plain <b>strong</b> <i>slanted</i></p>");
        try (var pdf = Pdf.of(html, PaperSize.A4)) {
            assertThat(pdf.fonts()).hasSizeGreaterThanOrEqualTo(4);
            assertThat(pdf.fonts())
                    .allSatisfy(
                            font -> {
                                assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                                assertThat(Standard14Fonts.containsName(font.getName())).isFalse();
                                assertThat(font.getName()).contains("SourceS");
                            });
        }
    }

    static void assertOnTheSheets(Pdf pdf) throws IOException {
        for (int page = 1; page <= pdf.document.getNumberOfPages(); page++) {
            var box = pdf.document.getPage(page - 1).getMediaBox();
            // 14 mm of margin, and two points for the slant of the last letter
            var right = box.getWidth() - 14 / 25.4f * 72 + 2;
            assertThat(pdf.letters(page))
                    .isNotEmpty()
                    .allSatisfy(
                            letter -> {
                                assertThat(letter.getXDirAdj()).isGreaterThan(36);
                                assertThat(letter.getXDirAdj() + letter.getWidthDirAdj())
                                        .as("end of \"%s\"", letter)
                                        .isLessThanOrEqualTo(right);
                                assertThat(letter.getYDirAdj()).isBetween(20f, box.getHeight());
                            });
        }
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void aWordLongerThanALineIsBroken(PaperSize size) throws IOException {
        var word = "Ulmenwald".repeat(40);
        var html =
                page(
                        word,
                        "<h1>%1$s</h1><p>%1$s</p><table class=\"ledger\"><tr><th>%1$s</th><td>short</td><td>%1$s</td></tr></table>"
                                .formatted(word));
        try (var pdf = Pdf.of(html, size)) {
            assertOnTheSheets(pdf);
            assertThat(pdf.text().replaceAll("\\s+", "")).contains(word).contains("short");
        }
    }

    @Test
    void aHeadingStaysWithTheFirstRowBelowIt() throws IOException {
        for (int lines = 25; lines < 50; lines++) {
            var html =
                    page(
                            "Passport",
                            "<h1>Elm</h1>"
                                    + "<p>line</p>".repeat(lines)
                                    + "<section><h2>Wounds</h2><table class=\"ledger\"><thead><tr>"
                                    + "<th>Head</th></tr></thead><tbody><tr><td>first<br>row<br>of<br>"
                                    + "the<br>table</td></tr><tr><td>second</td></tr></tbody></table>"
                                    + "</section>");
            try (var pdf = Pdf.of(html, PaperSize.A4)) {
                assertThat(pdf.pages())
                        .as("after %d lines", lines)
                        .anyMatch(page -> page.matches("(?s).*Wounds\\s+Head\\s+first\\s+row.*"));
            }
        }
    }

    /** Otherwise a table's columns would be squeezed to a letter each. */
    @Test
    void anOrdinaryWordIsNotBroken() throws IOException {
        var html =
                page(
                        "Plan",
                        "<table class=\"ledger\"><tr><th>Bench</th><td>%s</td></tr></table>"
                                .formatted("many words ".repeat(60)));
        try (var pdf = Pdf.of(html, PaperSize.A4)) {
            assertThat(pdf.text()).contains("Bench");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u05D0\u05D9\u05DC\u05DF", // Hebrew
                "\u0634\u062C\u0631\u0629", // Arabic
                "\uD83C\uDF33\uD83C\uDF42", // pictures of trees
                "\u76C6\u683D", // Han
                "\u202Eback to front\u202C",
                "\uD800", // half a letter
                "a\u0300\u0301\u0302\u0303\u0304", // a heap of accents
                "\u0007\u000B\uFFFE"
            })
    void lettersNoFontKnowsDoNotBreakThePaper(String strange) throws IOException {
        var html = page("Elm", "<h1>before %s after</h1>".formatted(strange));
        try (var pdf = Pdf.of(html, PaperSize.A4)) {
            assertThat(pdf.text()).contains("before", "after", "page 1 of 1");
        }
    }

    @Test
    void aLetterNoFontKnowsBecomesABox() throws IOException {
        try (var pdf = Pdf.of(page("Elm", "<p>x\u76C6y</p>"), PaperSize.A4)) {
            assertThat(pdf.text()).contains("x\u25A1y");
        }
    }

    @Test
    void aDiameterIsSaidByALetterThatLooksLikeIt() throws IOException {
        try (var pdf = Pdf.of(page("Elm", "<p>\u2300 14 mm</p>"), PaperSize.A4)) {
            assertThat(pdf.text()).contains("\u00D8 14 mm");
        }
    }

    @Test
    void nothingIsFetchedWhateverThePaperSays(@TempDir Path folder) throws Exception {
        var secret = Files.writeString(folder.resolve("secret.txt"), "secret of the house");
        var picture = folder.resolve("secret.png");
        ImageIO.write(
                new java.awt.image.BufferedImage(9, 9, java.awt.image.BufferedImage.TYPE_BYTE_GRAY),
                "png",
                picture.toFile());
        var asked = new AtomicInteger();
        var listening = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        var ear = listen(listening, asked);
        var web = "http://127.0.0.1:" + listening.getLocalPort() + "/x";
        for (var address : List.of(web, picture.toUri().toString(), secret.toUri().toString())) {
            try (var pdf = Pdf.of(hostile(address), PaperSize.A4)) {
                assertThat(pdf.text())
                        .contains("before", "after")
                        .doesNotContain("secret of the house");
                assertThat(images(pdf)).isEmpty();
            }
        }
        listening.close();
        ear.join();
        assertThat(asked).hasValue(0);
    }

    private static Thread listen(ServerSocket listening, AtomicInteger asked) {
        var ear =
                new Thread(
                        () -> {
                            try {
                                while (true) {
                                    listening.accept().close();
                                    asked.incrementAndGet();
                                }
                            } catch (IOException closed) {
                                // the test is over
                            }
                        });
        ear.start();
        return ear;
    }

    private static String hostile(String address) {
        return """
                <!DOCTYPE html [<!ENTITY x SYSTEM "@"><!ENTITY % y SYSTEM "@"> %y;]>
                <html lang="en"><head><title>Elm</title><base href="@">
                <link rel="stylesheet" href="@"><style>@import url("@"); p { color: red }</style>
                <style>@font-face { font-family: "Source Sans 3"; src: url("@") }</style></head>
                <body><h1>before</h1><p style='background-image: url("@"); list-style: url("@")'>&x;</p>
                <img src="@" alt="x"><object data="@"></object><iframe src="@"></iframe>
                <embed src="@"><video src="@" poster="@"></video><script src="@"></script>
                <ul style='list-style-image: url("@")'><li>item</li></ul>
                <svg viewBox="0 0 24 24" width="24" height="24" role="img" aria-label="x"
                  xmlns:xlink="http://www.w3.org/1999/xlink"><image href="@" width="9" height="9"/>
                <image xlink:href="@" width="9" height="9"/><use href="@#x"/><use xlink:href="@#x"/>
                <filter id="f"><feImage href="@"/><feImage xlink:href="@"/></filter>
                <rect width="9" height="9" filter="url(#f)" fill="url(@#g)"/>
                <style>@import url("@"); rect { fill: url("@#g") }</style>
                <a href="@"><text>t</text></a><script href="@">1</script></svg>
                <a href="@">after</a></body></html>
                """
                .replace("@import", "\u0001import")
                .replace("@font", "\u0001font")
                .replace("@", address)
                .replace('\u0001', '@');
    }

    private static List<Object> images(Pdf pdf) throws IOException {
        var images = new java.util.ArrayList<Object>();
        for (var page : pdf.document.getPages()) {
            for (COSName name : page.getResources().getXObjectNames()) {
                if (page.getResources().getXObject(name) instanceof PDImageXObject image) {
                    images.add(image);
                }
            }
        }
        return images;
    }

    /** Only a picture on a screen could be followed; on paper nothing is a link. */
    @Test
    void aPaperHasNothingToPress() throws IOException {
        var html = page("Elm", "<p><a href=\"https://trees.example/\">the elm</a></p>");
        try (var pdf = Pdf.of(html, PaperSize.A4)) {
            assertThat(pdf.document.getPage(0).getAnnotations()).isEmpty();
            assertThat(pdf.text()).contains("the elm").doesNotContain("Back");
        }
    }

    /** By hand: round a circle of radius 9 it is 2 π 9 = 56.55, of which 60 % are 33.93. */
    @Test
    void dashesKeepTheirShareOfARing() {
        var svg = org.jsoup.Jsoup.parse(RING).selectFirst("svg");
        SheetPicture.fit(svg);
        var circle = svg.selectFirst("circle");
        assertThat(circle.attr("stroke-dasharray")).isEqualTo("33.93 56.55");
        assertThat(circle.attributes().hasKeyIgnoreCase("pathLength")).isFalse();
        assertThat(svg.attributes().get("viewBox")).isEqualTo("0 0 24 24");
    }

    @ParameterizedTest
    @CsvSource({
        "'Checklist, Glasshouse fig', checklist-glasshouse-fig.pdf",
        "'Passport, Érable à sucre', passport-erable-a-sucre.pdf",
        "'../../etc/passwd\"; x=\r\nSet-Cookie: a', etc-passwd-x-set-cookie-a.pdf",
        "'\u76C6\u683D', paper.pdf"
    })
    void aPapersFileIsNamedByItsTitle(String title, String name) {
        assertThat(PaperHtml.of(page(title, "")).fileName()).isEqualTo(name);
    }

    @Test
    void aFileNameIsNeverTooLong() {
        assertThat(PaperHtml.of(page("x".repeat(500), "")).fileName()).hasSizeLessThan(100);
    }

    @Test
    void aSheetNobodyKnowsIsRefusedWithThoseThereAre() {
        assertThat(PaperSize.of(null)).isEqualTo(PaperSize.A4);
        assertThat(PaperSize.of("letter")).isEqualTo(PaperSize.LETTER);
        for (var wrong : List.of("a3", "A4", "", "letter ", "<b>")) {
            assertThatThrownBy(() -> PaperSize.of(wrong))
                    .isInstanceOf(Refused.class)
                    .extracting(refused -> ((Refused) refused).problem().faults().toString())
                    .asString()
                    .contains("a4", "letter", wrong);
        }
    }
}
