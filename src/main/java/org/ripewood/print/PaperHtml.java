package org.ripewood.print;

import java.text.Normalizer;
import java.util.Locale;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.Element;
import org.ripewood.platform.problems.Characters;
import org.w3c.dom.Document;

/** The HTML of a paper made fit for sheets: what only a screen needs is taken out. */
final class PaperHtml {

    private static final String HOUSE = " · Ripewood";
    private static final String ONLY_ON_A_SCREEN =
            "script, style, link, base, meta[http-equiv], iframe, object, embed, img, form, nav,"
                    + " .skip, .noprint, caption.hidden, summary";

    /** The sign for a diameter is in none of our fonts; this letter looks the same. */
    private static final char DIAMETER = '\u2300';

    private static final char LIKE_DIAMETER = '\u00D8';

    private static final int LONGEST_FILE_NAME = 80;

    /** What has room above the text, in letters of ordinary width. */
    private static final int LONGEST_RUNNING_TITLE = 80;

    private final org.jsoup.nodes.Document html;
    private final String title;

    private PaperHtml(org.jsoup.nodes.Document html, String title) {
        this.html = html;
        this.title = title;
    }

    static PaperHtml of(String text) {
        // the layout ends where it meets a code that is no character, and drops all that follows
        var html = Jsoup.parse(Characters.keepable(text).replace(DIAMETER, LIKE_DIAMETER));
        html.select(ONLY_ON_A_SCREEN).remove();
        html.select("a").unwrap();
        // what a phone folds away stands open on paper
        html.select("details").unwrap();
        html.select("svg").forEach(SheetPicture::fit);
        html.select(".cards, .treecards, .slips").forEach(PaperHtml::layInPairs);
        var title = html.title();
        title = title.endsWith(HOUSE) ? title.substring(0, title.length() - HOUSE.length()) : title;
        html.title(title);
        html.head().appendElement("meta").attr("name", "subject").attr("content", title);
        html.body()
                .prependElement("div")
                .addClass("running")
                .text(sampleMark(html.body()) + inOneLine(title));
        runAtTheFoot(html.body());
        LongWords.letBreak(html.body());
        return new PaperHtml(html, title);
    }

    /** What is made up says so at the foot of every sheet, before the title that may be cut off. */
    private static String sampleMark(Element body) {
        var mark = body.selectFirst("body > .sampled");
        if (mark == null) {
            return "";
        }
        mark.remove();
        return mark.text() + " ";
    }

    /** The name of the school goes from the head of the page to the foot of every sheet. */
    private static void runAtTheFoot(Element body) {
        var school = body.selectFirst("body > .ofschool");
        if (school != null) {
            school.remove();
            body.prependElement("div").addClass("runningschool").text(school.text());
        }
    }

    private static String inOneLine(String title) {
        return title.codePointCount(0, title.length()) <= LONGEST_RUNNING_TITLE
                ? title
                : title.substring(0, title.offsetByCodePoints(0, LONGEST_RUNNING_TITLE - 1)) + "…";
    }

    /** Two cards side by side and no row of them over two sheets: the engine does so for tables. */
    private static void layInPairs(Element cards) {
        var all = cards.children();
        var rows = cards.appendElement("table").appendElement("tbody");
        for (int i = 0; i < all.size(); i += 2) {
            var row = rows.appendElement("tr");
            row.appendElement("td").appendChild(all.get(i));
            var second = row.appendElement("td");
            if (i + 1 < all.size()) {
                second.appendChild(all.get(i + 1));
            }
        }
    }

    /** What the paper is called. */
    String title() {
        return title;
    }

    /** A name for its file, in small plain letters. */
    String fileName() {
        var plain =
                Normalizer.normalize(title, Normalizer.Form.NFKD)
                        .replaceAll("\\p{M}+", "")
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9]+", "-")
                        .replaceAll("^-|-$", "");
        var name = plain.isEmpty() ? "paper" : plain;
        return name.substring(0, Math.min(name.length(), LONGEST_FILE_NAME)) + ".pdf";
    }

    /** The tree of it, for a sheet and with a style sheet of its own. */
    Document styled(PaperSize size, String style) {
        var copy = html.clone();
        copy.body().addClass(size.code());
        var page =
                "@page { size: %s; } @page side { size: %s; }"
                        .formatted(
                                size.measures(copy.body().hasClass("wide")), size.measures(true));
        copy.head().appendElement("style").appendChild(new org.jsoup.nodes.DataNode(page + style));
        return new W3CDom().namespaceAware(true).fromJsoup(copy);
    }
}
