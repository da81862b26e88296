package org.ripewood.pictures;

/**
 * How a line is drawn.
 *
 * @param dashes as in SVG, empty for an unbroken line
 */
record Stroke(Ink ink, double widthPx, String dashes) {

    static Stroke of(Ink ink, double widthPx) {
        return new Stroke(ink, widthPx, "");
    }

    Stroke dashed(String other) {
        return new Stroke(ink, widthPx, other);
    }
}
