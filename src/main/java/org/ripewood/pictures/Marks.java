package org.ripewood.pictures;

import java.util.Arrays;

/**
 * Short words over things too small to hold them, none over another: at the next height where one
 * is taken, and left out where all are.
 */
final class Marks {

    static final double HEIGHT_PX = 12;

    private final Pen pen;
    private final double[] takenTo;

    /** For one row of things, told from left to right. */
    Marks(Pen pen, int heights) {
        this.pen = pen;
        this.takenTo = new double[heights];
        Arrays.fill(takenTo, Double.NEGATIVE_INFINITY);
    }

    /** Writes a word in the middle over a thing whose upper edge is at {@code top}. */
    void write(double middle, double top, String word) {
        double half = XmlText.widthPx(word, Pen.LETTER_PX) / 2;
        double right = pen.sheet().widthPx() - 1.0;
        double x = Math.min(Math.max(middle, half + 1), right - half);
        for (int level = 0; level < takenTo.length; level++) {
            if (x - half >= takenTo[level]) {
                takenTo[level] = x + half + 2;
                pen.writeOver(x, top - 4 - level * HEIGHT_PX, Pen.Anchor.MIDDLE, Ink.INK, word);
                return;
            }
        }
    }
}
