package org.ripewood.print;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.SchoolProfile;
import org.ripewood.people.Course;
import org.ripewood.pictures.RoutePicture;
import org.ripewood.pictures.Sheet;

/** What stands on each paper, as a page and sheet by sheet. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class GoldenPapersTest {

    @Test
    void aPlanAndItsBenchCardsReadAsTheyDid() throws IOException {
        unchanged("plan", PlanPages.Templates.plan(Samples.sheets(5), List.of()).render());
    }

    /** Cautions and the look before a cut stand on the card itself, and the first sheet is one. */
    @Test
    void aCardIsCompleteByItself() throws IOException {
        var html = PlanPages.Templates.plan(Samples.sheets(8), List.of()).render();
        for (var card : Jsoup.parse(html).select(".benchcards .card")) {
            var text = card.text();
            assertThat(text).contains("Friday 24 April 2026", "Structure and refinement", "tree ");
            assertThat(card.select(".qr")).hasSize(1);
            boolean cuts = text.contains("Cut branches back hard");
            assertThat(text.contains("An instructor looks before the cut.")).isEqualTo(cuts);
        }
        assertThat(Jsoup.parse(html).select(".benchcards .card").get(1).text())
                .contains("DANGER: A blade under load slips. Cut away from the hand.")
                .contains("Until 8 May 2026: Keep out of full sun.")
                .contains("1 May 2026 to 30 June 2026: Look at every turn.")
                .doesNotContain("days");
        for (var size : PaperSize.values()) {
            try (var pdf = Pdf.of(html, size)) {
                assertThat(pdf.pages()).filteredOn(page -> page.contains("Danger:")).hasSize(1);
                assertThat(pdf.pages()).allSatisfy(page -> assertThat(page).hasSizeGreaterThan(60));
            }
        }
    }

    @Test
    void aChecklistReadsAsItDid() throws IOException {
        unchanged("checklist", checklist());
    }

    private static String checklist() {
        return ChecklistPaperPages.Templates.checklist(
                        Samples.TREE, "Stan Student", Samples.checklist(), Samples.care())
                .render();
    }

    @Test
    void aRouteReadsAsItDid() throws IOException {
        unchanged("route", route());
    }

    private static String route() {
        var route = Samples.route();
        return RoutePaperPages.Templates.route(
                        Samples.TREE,
                        "Stan Student",
                        route,
                        RoutePicture.of(RoutePaperPages.drawing(Samples.TREE, route), Sheet.PAPER))
                .render();
    }

    @Test
    void aTreeCardReadsAsItDid() throws IOException {
        unchanged("card", CardPages.Templates.card(Samples.card()).render());
    }

    @Test
    void theCardsOfACourseReadAsTheyDid() throws IOException {
        unchanged("cards", cards());
    }

    private static String cards() {
        var course = new Course(2, 0, "Structure", Samples.ON, Samples.ON.plusYears(1));
        var cards = List.of(Samples.card(7, "Slanting field elm"), Samples.card(8, "Broom elm"));
        return CourseCardPages.Templates.cards(course, cards, "").render();
    }

    @Test
    void aReadinessSheetReadsAsItDid() throws IOException {
        unchanged("readiness", ReadinessSample.html(3));
    }

    /** Sixteen trees stand on one sheet, and each further sheet says again what its columns are. */
    @Test
    void aReadinessSheetHoldsSixteenTreesAndRepeatsItsHead() throws IOException {
        for (var size : PaperSize.values()) {
            try (var pdf = Pdf.of(ReadinessSample.html(16), size)) {
                assertThat(pdf.pages()).as(size.title()).hasSize(1);
            }
            try (var pdf = Pdf.of(ReadinessSample.html(40), size)) {
                assertThat(pdf.pages())
                        .as(size.title())
                        .hasSize(3)
                        .allSatisfy(page -> assertThat(page).contains("Refine", "Wounds"));
                assertThat(pdf.pages().get(1)).contains("field elm 17", "field elm 32");
            }
        }
    }

    @Test
    void aPassportReadsAsItDid() throws IOException {
        unchanged("passport", PassportPages.Templates.passport(Samples.passport()).render());
    }

    /** Forty benches are more than any school has under one roof; each slip and card is whole. */
    @Test
    void noSlipOrCardOfALongPlanRunsOverTwoSheets() throws IOException {
        var html = PlanPages.Templates.plan(Samples.sheets(40), List.of()).render();
        for (var size : PaperSize.values()) {
            try (var pdf = Pdf.of(html, size)) {
                var pages = pdf.pages();
                assertThat(pages.size()).isGreaterThan(5);
                for (int bench = 1; bench <= 40; bench++) {
                    assertOnOneSheet(pages, bench);
                }
            }
        }
    }

    /** From what begins a slip or a card to what ends it, with nothing of another between. */
    private static void assertOnOneSheet(List<String> pages, int bench) {
        var flat = pages.stream().map(page -> page.replaceAll("\\s+", " ")).toList();
        assertThat(flat)
                .as("slip of student %d", bench)
                .anyMatch(
                        page ->
                                found(
                                        page,
                                        "Stan Student %1$d Friday ",
                                        bench,
                                        "(?:(?!Stan Student).)*(11:15 to 11:45|to 11:15 Break)"));
        assertThat(flat)
                .as("card of bench %d", bench)
                .anyMatch(
                        page ->
                                found(
                                        page,
                                        "Bench %1$d: Elm %1$d ",
                                        bench,
                                        "(?:(?!Bench \\d).)*(Look at every turn|this season's reference)"));
    }

    private static boolean found(String page, String beginning, int bench, String end) {
        return Pattern.compile(beginning.formatted(bench) + end).matcher(page).find();
    }

    @Test
    void everyPaperKeepsToItsSheetsAndNeedsNoColour() throws IOException {
        for (var html : all()) {
            for (var size : PaperSize.values()) {
                try (var pdf = Pdf.of(html, size)) {
                    PaperPdfTest.assertOnTheSheets(pdf);
                    assertThat(pdf.colours()).isEmpty();
                }
            }
        }
    }

    /** Those who cannot see it are told it in order, pictures included. */
    @Test
    void everyPaperKeepsToPdfUa() throws Exception {
        for (var html : all()) {
            var paper = PaperHtml.of(html);
            assertThat(PdfUa.faults(PaperPdf.of(paper, PaperSize.A4))).as(paper.title()).isEmpty();
        }
    }

    private static List<String> all() {
        return List.of(
                PlanPages.Templates.plan(Samples.sheets(8), List.of()).render(),
                checklist(),
                route(),
                CardPages.Templates.card(Samples.card()).render(),
                cards(),
                ReadinessSample.html(2),
                PassportPages.Templates.passport(Samples.passport()).render());
    }

    private static void unchanged(String name, String html) throws IOException {
        Golden.assertUnchanged(name, told(html));
        try (var pdf = Pdf.of(html, PaperSize.A4)) {
            Golden.assertUnchanged(name + "-a4", pdf.told());
        }
    }

    /** A line for each heading, paragraph, item and row of a table. */
    private static String told(String html) {
        return Jsoup.parse(html)
                        .select("title, h1, h2, h3, p, li, tr, figure, .treecard svg")
                        .stream()
                        .filter(line -> !line.parents().is("tr, li, figure"))
                        .map(GoldenPapersTest::line)
                        .collect(Collectors.joining("\n"))
                + "\n";
    }

    private static String line(Element line) {
        return switch (line.normalName()) {
            case "tr" ->
                    line.children().stream().map(Element::text).collect(Collectors.joining(" | "));
            case "li" -> "- " + line.text();
            case "svg" -> "[" + line.attr("aria-label") + "]";
            case "figure" -> "[" + line.select("svg > title, svg > desc").text() + "]";
            case "p" -> line.text();
            default -> line.normalName() + ": " + line.text();
        };
    }
}
