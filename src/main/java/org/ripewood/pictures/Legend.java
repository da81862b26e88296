package org.ripewood.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/** What the signs of a picture mean, in rows below it. */
final class Legend {

    private static final double SIGN_PX = 24;
    private static final double GAP_PX = 14;
    static final double ROW_PX = 20;

    /** A sign drawn around a middle, 18 px wide and 10 px high. */
    private record Entry(BiConsumer<Double, Double> sign, String words) {}

    private final Pen pen;
    private final List<Entry> entries = new ArrayList<>();

    Legend(Pen pen) {
        this.pen = pen;
    }

    Legend add(String words, BiConsumer<Double, Double> sign) {
        entries.add(new Entry(sign, words));
        return this;
    }

    /** Draws it below {@code top} and tells where it ends. */
    double draw(double left, double top) {
        double x = left;
        double y = top + ROW_PX / 2;
        double right = pen.sheet().widthPx() - 4.0;
        for (var entry : entries) {
            double width = SIGN_PX + XmlText.widthPx(entry.words(), Pen.LETTER_PX);
            if (x > left && x + width > right) {
                x = left;
                y += ROW_PX;
            }
            entry.sign().accept(x + 9, y);
            pen.write(x + SIGN_PX, y + 4, Pen.Anchor.START, Ink.SOFT, entry.words());
            x += width + GAP_PX;
        }
        return y + ROW_PX / 2 + 2;
    }
}
