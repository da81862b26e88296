package org.ripewood.core.growth;

/**
 * A fresh wound as an ellipse, closing from all sides alike.
 *
 * @param widthMm the shorter way, across the trunk
 * @param lengthMm the longer way, along it
 */
public record WoundEllipse(double widthMm, double lengthMm) {

    public WoundEllipse {
        if (!(widthMm > 0 && lengthMm > 0)) {
            throw new IllegalArgumentException(
                    "a wound has a width and a length, found %s and %s"
                            .formatted(widthMm, lengthMm));
        }
    }

    /** Area in mm²: {@code π/4 × width × length}. */
    public double areaMm2() {
        return Math.PI / 4 * widthMm * lengthMm;
    }

    /**
     * Share of the first area still open when the callus lip has come in by so much on every side.
     *
     * <p>Formula: {@code (a − 2x)(b − 2x) / (ab)}; 0 as soon as either side is closed.
     *
     * <p>Shapes and units: millimetres in, 0 to 1 out. Errors: IllegalArgumentException for a
     * negative advance or NaN. Limits: a real lip comes in faster at the sides than at the ends
     * (Neely 1988, J. Arboric. 14(10):250-254, abstract), so the true share is a little smaller.
     */
    public double openShare(double lipMm) {
        if (!(lipMm >= 0)) {
            throw new IllegalArgumentException("a lip does not draw back, found " + lipMm);
        }
        double width = Math.max(0, widthMm - 2 * lipMm);
        double length = Math.max(0, lengthMm - 2 * lipMm);
        return width * length / (widthMm * lengthMm);
    }
}
