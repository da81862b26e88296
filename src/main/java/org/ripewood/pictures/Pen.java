package org.ripewood.pictures;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;

/** Writes SVG: a few shapes, in the house's inks. */
final class Pen {

    /** Letters on every sheet, in px of its view box. */
    static final double LETTER_PX = 13;

    static final double LINE_PX = 17;

    /** Stands for the picture's own name until that is known; no foreign text can hold it. */
    private static final String NAME = "\u0001";

    private final Sheet sheet;
    private final StringBuilder body = new StringBuilder();
    private final Map<String, String> patterns = new LinkedHashMap<>();

    Pen(Sheet sheet) {
        this.sheet = sheet;
    }

    Sheet sheet() {
        return sheet;
    }

    /** A number with one decimal at most. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a place on a sheet is a number, found " + value);
        }
        var text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? whole(text) : text;
    }

    private static String whole(String text) {
        var whole = text.substring(0, text.length() - 2);
        return whole.equals("-0") ? "0" : whole;
    }

    /** Puts numbers into a path's text, each in place of a {@code #}. */
    static String path(String pattern, double... values) {
        var out = new StringBuilder();
        int next = 0;
        for (int i = 0; i < pattern.length(); i++) {
            char letter = pattern.charAt(i);
            if (letter == '#') {
                out.append(number(values[next++]));
            } else {
                out.append(letter);
            }
        }
        return out.toString();
    }

    String plain(Ink ink) {
        return ink.on(sheet);
    }

    String hatched(Hatch hatch, Ink ink) {
        var key = hatch.name().toLowerCase(Locale.ROOT) + "-" + ink.name().toLowerCase(Locale.ROOT);
        patterns.computeIfAbsent(
                key,
                unseen ->
                        "<pattern id=\"%s-%s\" width=\"%d\" height=\"%d\" patternUnits=\"userSpaceOnUse\"><path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"0.8\"/></pattern>"
                                .formatted(
                                        NAME,
                                        key,
                                        Hatch.TILE_PX,
                                        Hatch.TILE_PX,
                                        hatch.path(),
                                        ink.on(sheet)));
        return "url(#" + NAME + "-" + key + ")";
    }

    Pen line(double x1, double y1, double x2, double y2, Stroke stroke) {
        return shape(path("M# #L# #", x1, y1, x2, y2), null, stroke);
    }

    Pen box(double x, double y, double width, double height, String fill, @Nullable Stroke stroke) {
        return shape(path("M# #h#v#h#z", x, y, width, height, -width), fill, stroke);
    }

    Pen disc(double x, double y, double radius, String fill, @Nullable Stroke stroke) {
        return oval(x, y, radius, radius, fill, stroke);
    }

    Pen oval(double x, double y, double rx, double ry, String fill, @Nullable Stroke stroke) {
        body.append(
                "<ellipse cx=\"%s\" cy=\"%s\" rx=\"%s\" ry=\"%s\" fill=\"%s\"%s/>\n"
                        .formatted(
                                number(x),
                                number(y),
                                number(rx),
                                number(ry),
                                fill,
                                strokeText(stroke)));
        return this;
    }

    /** A shape by its path; unfilled when no fill is given. */
    Pen shape(String path, @Nullable String fill, @Nullable Stroke stroke) {
        body.append(
                "<path d=\"%s\" fill=\"%s\"%s/>\n"
                        .formatted(path, fill == null ? "none" : fill, strokeText(stroke)));
        return this;
    }

    private String strokeText(@Nullable Stroke stroke) {
        if (stroke == null) {
            return "";
        }
        var dashes =
                stroke.dashes().isEmpty()
                        ? ""
                        : " stroke-dasharray=\"%s\"".formatted(stroke.dashes());
        return " stroke=\"%s\" stroke-width=\"%s\"%s"
                .formatted(stroke.ink().on(sheet), number(stroke.widthPx()), dashes);
    }

    Pen write(double x, double y, Anchor anchor, Ink ink, String text) {
        return write(x, y, anchor, ink, false, text);
    }

    Pen writeBold(double x, double y, Anchor anchor, Ink ink, String text) {
        return write(x, y, anchor, ink, true, text);
    }

    /** Letters with a rim in the sheet's own colour, for those that lie on other things. */
    Pen writeOver(double x, double y, Anchor anchor, Ink ink, String text) {
        letters(x, y, anchor, Ink.SHEET, false, text, strokeText(Stroke.of(Ink.SHEET, 3.5)));
        return write(x, y, anchor, ink, text);
    }

    private Pen write(double x, double y, Anchor anchor, Ink ink, boolean bold, String text) {
        return letters(x, y, anchor, ink, bold, text, "");
    }

    /** Letters of another size. */
    Pen write(
            double x, double y, Anchor anchor, Ink ink, boolean bold, double sizePx, String text) {
        return letters(x, y, anchor, ink, bold, text, sizeText(sizePx));
    }

    private static String sizeText(double sizePx) {
        return sizePx == LETTER_PX ? "" : " font-size=\"%s\"".formatted(number(sizePx));
    }

    private Pen letters(
            double x, double y, Anchor anchor, Ink ink, boolean bold, String text, String more) {
        body.append(
                "<text x=\"%s\" y=\"%s\" text-anchor=\"%s\" fill=\"%s\"%s%s>%s</text>\n"
                        .formatted(
                                number(x),
                                number(y),
                                anchor.word(),
                                ink.on(sheet),
                                bold ? " font-weight=\"600\"" : "",
                                more,
                                XmlText.escaped(text)));
        return this;
    }

    /** Writes as many lines as the text needs, the first at {@code y}; tells where the next is. */
    double writeLines(double x, double y, double roomPx, Ink ink, String text) {
        double next = y;
        for (var line : XmlText.lines(text, LETTER_PX, roomPx)) {
            write(x, next, Anchor.START, ink, line);
            next += LINE_PX;
        }
        return next;
    }

    /** Which part of a text lies at its place. */
    enum Anchor {
        START,
        MIDDLE,
        END;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    Picture finish(double height, String title, String description, TextTable table) {
        var drawn = new StringBuilder();
        if (!patterns.isEmpty()) {
            drawn.append("<defs>").append(String.join("", patterns.values())).append("</defs>\n");
        }
        drawn.append(body);
        var inner =
                "<title id=\"%1$s-t\">%2$s</title>\n<desc id=\"%1$s-d\">%3$s</desc>\n%4$s"
                        .formatted(
                                NAME, XmlText.escaped(title), XmlText.escaped(description), drawn);
        var svg =
                "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"picture\" viewBox=\"0 0 %d %s\" width=\"%d\" height=\"%s\" role=\"img\" aria-labelledby=\"%s-t %s-d\" font-family=\"%s\" font-size=\"%s\">\n%s</svg>\n"
                        .formatted(
                                sheet.widthPx(),
                                number(height),
                                sheet.widthPx(),
                                number(height),
                                NAME,
                                NAME,
                                letters(),
                                number(LETTER_PX),
                                inner);
        return new Picture(title, description, svg.replace(NAME, nameOf(svg)), table);
    }

    private String letters() {
        return sheet.paper()
                ? "'Source Sans 3', sans-serif"
                : "var(--sans, 'Source Sans 3', sans-serif)";
    }

    /** A name of its own for each picture, as a page may hold several: patterns go by it. */
    private static String nameOf(String svg) {
        var sum = new CRC32();
        sum.update(svg.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return "p%08x".formatted(sum.getValue());
    }
}
