package org.ripewood.pictures;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Best weeks for each technique: a small picture for each technique, all to one scale. */
public final class WeeksPicture {

    private static final double PANEL_PX = 104;
    private static final double CHART_PX = 58;
    private static final double GAP_PX = 18;
    private static final double LEAST_WIDTH_PX = 190;

    private final WeeksDrawing drawing;
    private final Pen pen;
    private final int columns;
    private final double width;

    private WeeksPicture(WeeksDrawing drawing, Sheet sheet) {
        this.drawing = drawing;
        this.pen = new Pen(sheet);
        double room = sheet.widthPx() - 8.0;
        this.columns = Math.max(1, (int) ((room + GAP_PX) / (LEAST_WIDTH_PX + GAP_PX)));
        this.width = (room - (columns - 1) * GAP_PX) / columns;
    }

    /**
     * Draws it.
     *
     * <p>Filled: trees that could in nine cases of ten; hatched above it: up to those that could in
     * one of ten; the line: in every second. Where nothing stands on the ground line the season is
     * shut or no tree is that far. Edge cases: without techniques the text alone is left;
     * techniques none of whose weeks has a tree are drawn empty.
     */
    public static Picture of(WeeksDrawing drawing, Sheet sheet) {
        return new WeeksPicture(drawing, sheet).draw();
    }

    private Picture draw() {
        double end = 6;
        for (int i = 0; i < drawing.rows().size(); i++) {
            double x = 4 + (i % columns) * (width + GAP_PX);
            int line = i / columns;
            double y = 6 + line * PANEL_PX;
            panel(drawing.rows().get(i), x, y);
            end = y + PANEL_PX;
        }
        double below = drawing.rows().isEmpty() ? end : legend(end);
        double room = pen.sheet().widthPx() - 8.0;
        double height = pen.writeLines(4, below + 14, room, Ink.INK, description()) - 8;
        return pen.finish(height, title(), description(), table());
    }

    private void panel(WeeksDrawing.Row row, double left, double top) {
        double room = width - 60;
        pen.writeBold(
                left,
                top + 13,
                Pen.Anchor.START,
                Ink.INK,
                XmlText.fitted(row.title(), Pen.LETTER_PX * 1.04, room));
        pen.write(
                left + width,
                top + 13,
                Pen.Anchor.END,
                Ink.SOFT,
                "%d of %d".formatted(row.most(), drawing.trees()));
        double ground = top + 20 + CHART_PX;
        var weeks = new Scale(0, drawing.weeks(), left, left + width);
        var trees = new Scale(0, Math.max(1, drawing.trees()), ground, top + 20);
        months(left, ground);
        var possible = area(row, weeks, trees, WeeksDrawing.Week::possible);
        pen.shape(possible, pen.plain(Ink.SHEET), null);
        pen.shape(possible, pen.hatched(Hatch.RISING, Ink.MOSS), Stroke.of(Ink.MOSS, 0.6));
        pen.shape(area(row, weeks, trees, WeeksDrawing.Week::sure), pen.plain(Ink.MOSS), null);
        pen.shape(steps(row, weeks, trees), null, Stroke.of(Ink.SHEET, 3.5));
        pen.shape(steps(row, weeks, trees), null, Stroke.of(Ink.INK, 1.6));
        pen.line(left, ground, left + width, ground, Stroke.of(Ink.EDGE, 1));
    }

    /** Upright lines at the starts of months, named where there is room. */
    private void months(double left, double ground) {
        LocalDate last = drawing.from().plusWeeks(Math.max(1, drawing.weeks()));
        var days = new DayScale(drawing.from(), last, left, left + width);
        for (var mark : days.marks()) {
            double x = days.px(mark.day());
            pen.line(x, ground - CHART_PX, x, ground + 3, Stroke.of(Ink.RULE, 1));
            double half = XmlText.widthPx(mark.word(), Pen.LETTER_PX) / 2;
            if (x + half <= left + width && x - half >= left) {
                pen.write(x, ground + 15, Pen.Anchor.MIDDLE, Ink.SOFT, mark.word());
            }
        }
    }

    private static String area(
            WeeksDrawing.Row row,
            Scale weeks,
            Scale trees,
            ToIntFunction<WeeksDrawing.Week> count) {
        var path = new StringBuilder(Pen.path("M# #", weeks.px(0), trees.px(0)));
        for (int week = 0; week < row.weeks().size(); week++) {
            path.append(
                    Pen.path(
                            "V#H#",
                            trees.px(count.applyAsInt(row.weeks().get(week))),
                            weeks.px(week + 1)));
        }
        return path.append(Pen.path("V#z", trees.px(0))).toString();
    }

    private static String steps(WeeksDrawing.Row row, Scale weeks, Scale trees) {
        var path = new StringBuilder();
        for (int week = 0; week < row.weeks().size(); week++) {
            double y = trees.px(row.weeks().get(week).likely());
            path.append(
                    week == 0
                            ? Pen.path("M# #H#", weeks.px(0), y, weeks.px(1))
                            : Pen.path("V#H#", y, weeks.px(week + 1)));
        }
        return path.toString();
    }

    private double legend(double top) {
        return new Legend(pen)
                .add(
                        "in nine cases of ten",
                        (x, y) -> pen.box(x - 9, y - 5, 18, 10, pen.plain(Ink.MOSS), null))
                .add(
                        "up to one case of ten",
                        (x, y) ->
                                pen.box(
                                        x - 9,
                                        y - 5,
                                        18,
                                        10,
                                        pen.hatched(Hatch.RISING, Ink.MOSS),
                                        Stroke.of(Ink.MOSS, 1)))
                .add(
                        "in every second case",
                        (x, y) -> pen.line(x - 9, y, x + 9, y, Stroke.of(Ink.INK, 1.6)))
                .draw(4, top);
    }

    private String title() {
        return "Best weeks for each technique: " + drawing.of();
    }

    private String description() {
        if (drawing.rows().isEmpty()) {
            return "No technique can be done on any tree in these weeks.";
        }
        return "%s, %s, in %s from %s. The numbers are the most trees that likely could in one week."
                .formatted(
                        counted(drawing.rows().size(), "technique"),
                        counted(drawing.trees(), "tree"),
                        counted(drawing.weeks(), "week"),
                        Wording.day(drawing.from()));
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /** For each technique the stretches of weeks with as many trees. */
    private TextTable table() {
        var rows = new ArrayList<List<String>>();
        for (var row : drawing.rows()) {
            rows.add(List.of(row.title(), Integer.toString(row.most()), stretches(row)));
        }
        return new TextTable(
                title(), List.of("Technique", "Trees at most", "Trees that likely could"), rows);
    }

    private String stretches(WeeksDrawing.Row row) {
        var told = new ArrayList<String>();
        int from = 0;
        for (int week = 1; week <= row.weeks().size(); week++) {
            int trees = row.weeks().get(from).likely();
            boolean ends = week == row.weeks().size() || row.weeks().get(week).likely() != trees;
            if (ends) {
                if (trees > 0) {
                    told.add(
                            "%d from %s to %s"
                                    .formatted(
                                            trees,
                                            Wording.day(drawing.from().plusWeeks(from)),
                                            Wording.day(
                                                    drawing.from().plusWeeks(week).minusDays(1))));
                }
                from = week;
            }
        }
        return told.isEmpty() ? "none" : String.join("; ", told);
    }
}
