package org.ripewood.print;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jsoup.nodes.Element;

/** An inline picture, said in the older SVG that a print engine draws. */
final class SheetPicture {

    private SheetPicture() {}

    static void fit(Element svg) {
        svg.attr("alt", told(svg));
        svg.select("circle[pathLength]").forEach(SheetPicture::measureDashes);
        wholePixels(svg);
    }

    /** What is said instead of it; a sign whose word stands beside it is no more than a sign. */
    private static String told(Element svg) {
        if (svg.attr("aria-hidden").equals("true")) {
            return "sign";
        }
        var parts = svg.select("> title, > desc").eachText();
        return parts.isEmpty() ? svg.attr("aria-label") : String.join(". ", parts);
    }

    /** Dashes told in shares of the way round become dashes told in its own units. */
    private static void measureDashes(Element circle) {
        double share = 2 * Math.PI * number(circle, "r") / number(circle, "pathLength");
        circle.removeAttr("pathLength");
        if (circle.hasAttr("stroke-dasharray")) {
            circle.attr(
                    "stroke-dasharray",
                    Arrays.stream(circle.attr("stroke-dasharray").trim().split("[\\s,]+", -1))
                            .map(dash -> plain(share * Double.parseDouble(dash)))
                            .collect(Collectors.joining(" ")));
        }
    }

    /** The engine takes a size in whole pixels only. */
    private static void wholePixels(Element svg) {
        var box = svg.attr("viewBox").trim().split("\\s+", -1);
        if (box.length == 4) {
            var width = whole(box[2]);
            var height = whole(box[3]);
            // put, as attr() would write its name in small letters
            svg.attributes().put("viewBox", "%s %s %s %s".formatted(box[0], box[1], width, height));
            if (svg.hasAttr("width")) {
                svg.attr("width", width).attr("height", height);
            }
        }
    }

    private static String whole(String number) {
        return String.valueOf((long) Math.ceil(Double.parseDouble(number)));
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.attr(attribute));
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
