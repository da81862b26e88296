package org.ripewood.pictures;

import java.util.ArrayList;
import java.util.List;

/** Foreign text made fit for XML. */
final class XmlText {

    private static final int MOST_LINES = 6;

    private XmlText() {}

    /**
     * The text with the five special characters escaped, and without what XML 1.0 does not allow at
     * all: control characters, halves of surrogate pairs, and the two last codes of the plane.
     */
    static String escaped(String text) {
        var out = new StringBuilder(text.length() + 16);
        text.codePoints().filter(XmlText::allowed).forEach(point -> append(out, point));
        return out.toString();
    }

    private static boolean allowed(int point) {
        return point == '\t'
                || point == '\n'
                || point == '\r'
                || (point >= 0x20 && point <= 0xD7FF)
                || (point >= 0xE000 && point <= 0xFFFD)
                || point >= 0x10000;
    }

    private static void append(StringBuilder out, int point) {
        switch (point) {
            case '&' -> out.append("&amp;");
            case '<' -> out.append("&lt;");
            case '>' -> out.append("&gt;");
            case '"' -> out.append("&quot;");
            case '\'' -> out.append("&#39;");
            default -> out.appendCodePoint(point);
        }
    }

    /** Width in px, as far as it can be told without the font; half an em a letter. */
    static double widthPx(String text, double sizePx) {
        double ems = text.codePoints().mapToDouble(XmlText::emsOf).sum();
        return ems * sizePx;
    }

    private static double emsOf(int point) {
        if (point >= 0x1100) {
            return point < 0x2000 || point > 0x2E7F ? 1 : 0.55;
        }
        if (" .,:;'|ijltfrI()".indexOf(point) >= 0) {
            return 0.3;
        }
        return Character.isUpperCase(point) || point == 'm' || point == 'w' ? 0.68 : 0.52;
    }

    /** As much of the text as fits, with an ellipsis where something is left out. */
    static String fitted(String text, double sizePx, double roomPx) {
        var flat = text.strip().replaceAll("\\s+", " ");
        if (widthPx(flat, sizePx) <= roomPx) {
            return flat;
        }
        int end = flat.length();
        while (end > 0 && widthPx(flat.substring(0, end) + "…", sizePx) > roomPx) {
            end = flat.offsetByCodePoints(end, -1);
        }
        return flat.substring(0, end).stripTrailing() + "…";
    }

    /**
     * The text broken between words into lines that fit; at most six, the last with an ellipsis.
     */
    static List<String> lines(String text, double sizePx, double roomPx) {
        var lines = new ArrayList<String>();
        var line = "";
        for (var word : text.strip().split("\\s+", -1)) {
            var longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && widthPx(longer, sizePx) > roomPx) {
                lines.add(fitted(line, sizePx, roomPx));
                longer = word;
            }
            line = longer;
        }
        lines.add(fitted(line, sizePx, roomPx));
        if (lines.size() <= MOST_LINES) {
            return lines;
        }
        var kept = new ArrayList<>(lines.subList(0, MOST_LINES));
        kept.set(MOST_LINES - 1, fitted(kept.get(MOST_LINES - 1) + " …", sizePx, roomPx));
        return kept;
    }
}
