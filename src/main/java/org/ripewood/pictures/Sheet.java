package org.ripewood.pictures;

/**
 * What a picture is drawn on.
 *
 * <p>A picture is not stretched from one width to another, as its letters would be too small or too
 * large: it is drawn anew. {@link #PHONE} suits a column of 328 px, which a screen 360 px wide
 * leaves; {@link #PAGE} suits 640 px.
 *
 * @param widthPx width of the view box; letters keep their size
 * @param paper whether it is printed: no custom properties, black on white
 * @param units what lengths are shown in
 */
public record Sheet(int widthPx, boolean paper, Units units) {

    public static final Sheet PHONE = new Sheet(328, false, Units.METRIC);
    public static final Sheet PAGE = new Sheet(640, false, Units.METRIC);
    public static final Sheet PAPER = new Sheet(640, true, Units.METRIC);

    public Sheet {
        if (widthPx < 300 || widthPx > 2000) {
            throw new IllegalArgumentException("a sheet is 300 to 2000 px wide, found " + widthPx);
        }
    }

    /** The same sheet with other units. */
    public Sheet in(Units other) {
        return new Sheet(widthPx, paper, other);
    }

    /** Whether there is no room beside things. */
    boolean narrow() {
        return widthPx < 520;
    }
}
