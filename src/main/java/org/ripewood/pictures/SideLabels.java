package org.ripewood.pictures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Words in a column beside a drawing, none over another, each led to its place by a line. */
final class SideLabels {

    private static final double ROW_PX = 16;

    private record Label(double x, double y, String words) {}

    private final List<Label> labels = new ArrayList<>();

    void add(double x, double y, String words) {
        labels.add(new Label(x, y, words));
    }

    /** Draws them from {@code column} to the right and tells where the last one ends. */
    double draw(Pen pen, double column, double roomPx, double top, double bottom) {
        labels.sort(Comparator.comparingDouble(Label::y));
        var rows = rows(top, bottom);
        for (int i = 0; i < rows.length; i++) {
            var label = labels.get(i);
            var way = Pen.path("M# #L# #h6", label.x(), label.y(), column - 10, rows[i]);
            pen.shape(way, null, Stroke.of(Ink.EDGE, 0.8));
        }
        for (int i = 0; i < rows.length; i++) {
            var words = XmlText.fitted(labels.get(i).words(), Pen.LETTER_PX, roomPx);
            pen.write(column, rows[i] + 4, Pen.Anchor.START, Ink.INK, words);
        }
        return rows.length == 0 ? top : rows[rows.length - 1] + ROW_PX;
    }

    /** Down from the top, then back up from the bottom as far as there is room. */
    private double[] rows(double top, double bottom) {
        var rows = new double[labels.size()];
        double next = top;
        for (int i = 0; i < rows.length; i++) {
            rows[i] = Math.max(next, labels.get(i).y());
            next = rows[i] + ROW_PX;
        }
        double most = Math.max(bottom, top + ROW_PX * (rows.length - 1));
        for (int i = rows.length - 1; i >= 0; i--) {
            rows[i] = Math.min(rows[i], most);
            most = rows[i] - ROW_PX;
        }
        return rows;
    }
}
