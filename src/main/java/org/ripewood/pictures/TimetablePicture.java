package org.ripewood.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** A class day laid out: a line for each tree, and below them one for each instructor. */
public final class TimetablePicture {

    private static final double TOP = 26;
    private static final double ROW_PX = 26;
    private static final double BOX_PX = 18;
    private static final int HOUR = 60;
    private static final double HOUR_ROOM_PX = 44;

    private final TimetableDrawing drawing;
    private final Pen pen;
    private final boolean narrow;
    private final Scale minutes;

    private TimetablePicture(TimetableDrawing drawing, Sheet sheet) {
        this.drawing = drawing;
        this.pen = new Pen(sheet);
        this.narrow = sheet.narrow();
        double left = narrow ? 6 : sheet.widthPx() * 0.3;
        this.minutes =
                new Scale(drawing.fromMinute(), drawing.toMinute(), left, sheet.widthPx() - 8.0);
    }

    /**
     * Draws it.
     *
     * <p>Plain boxes are work alone, hatched ones work with an instructor, filled ones the look at
     * a cut before it is made; a cut has a thick edge. Breaks are upright bands. Edge cases:
     * without benches the hours are drawn alone; what lies outside the class is held at its edges.
     */
    public static Picture of(TimetableDrawing drawing, Sheet sheet) {
        return new TimetablePicture(drawing, sheet).draw();
    }

    private Picture draw() {
        var teaching = teaching();
        double lines = drawing.benches().size() + (teaching.isEmpty() ? 0 : teaching.size() + 0.6);
        double end = TOP + lines * rowPx() + 4;
        hours(end);
        double y = TOP;
        for (var bench : drawing.benches()) {
            words(bench.bench() + "  " + bench.tree(), y);
            for (var phase : bench.phases()) {
                box(phase, y + boxOffset());
            }
            y += rowPx();
        }
        if (!teaching.isEmpty()) {
            double line = y + rowPx() * 0.3;
            pen.line(4, line, pen.sheet().widthPx() - 8.0, line, Stroke.of(Ink.EDGE, 1));
            y += rowPx() * 0.6;
            for (var one : teaching.entrySet()) {
                words(one.getKey(), y);
                for (var phase : one.getValue()) {
                    box(phase, y + boxOffset());
                }
                y += rowPx();
            }
        }
        double below = drawing.benches().isEmpty() ? end : legend(end + 4);
        double room = pen.sheet().widthPx() - 8.0;
        double height = pen.writeLines(4, below + 14, room, Ink.INK, description()) - 8;
        return pen.finish(height, title(), description(), table());
    }

    /** Words stand beside the boxes, or above them. */
    private double rowPx() {
        return narrow ? ROW_PX + 16 : ROW_PX;
    }

    private double boxOffset() {
        return narrow ? 18 : 3;
    }

    /** By instructor the phases they stand by. */
    private Map<String, List<TimetableDrawing.Phase>> teaching() {
        var teaching = new TreeMap<String, List<TimetableDrawing.Phase>>();
        for (var bench : drawing.benches()) {
            for (var phase : bench.phases()) {
                if (!phase.instructor().isEmpty()) {
                    teaching.computeIfAbsent(phase.instructor(), any -> new ArrayList<>())
                            .add(phase);
                }
            }
        }
        return teaching;
    }

    private void words(String words, double top) {
        double room = narrow ? pen.sheet().widthPx() - 12.0 : minutes.startPx() - 10;
        pen.write(
                4,
                top + (narrow ? 13 : 16),
                Pen.Anchor.START,
                Ink.INK,
                XmlText.fitted(words, Pen.LETTER_PX, room));
    }

    private void hours(double end) {
        for (var pause : drawing.breaks()) {
            double from = minutes.px(pause.fromMinute());
            double to = minutes.px(pause.toMinute());
            pen.box(from, TOP - 4, to - from, end - TOP + 4, pen.plain(Ink.SHADE), null);
        }
        int hours = (drawing.toMinute() - drawing.fromMinute()) / HOUR + 1;
        double room = minutes.endPx() - minutes.startPx();
        int step = (int) Math.max(1, Math.ceil(hours * HOUR_ROOM_PX / room));
        int first = (drawing.fromMinute() + HOUR - 1) / HOUR;
        for (int hour = first; hour * HOUR <= drawing.toMinute(); hour += step) {
            double x = minutes.px(hour * HOUR);
            pen.line(x, TOP - 6, x, end, Stroke.of(Ink.RULE, 1));
            double half = XmlText.widthPx(clock(hour * HOUR), Pen.LETTER_PX) / 2;
            double held = Math.max(half + 2, Math.min(pen.sheet().widthPx() - half - 2, x));
            pen.write(held, TOP - 11, Pen.Anchor.MIDDLE, Ink.SOFT, clock(hour * HOUR));
        }
    }

    private void box(TimetableDrawing.Phase phase, double top) {
        double from = minutes.px(phase.fromMinute());
        double width = Math.max(2, minutes.px(phase.toMinute()) - from);
        box(from, top, width, BOX_PX, phase.kind(), phase.cuts());
    }

    private void box(
            double x,
            double y,
            double width,
            double height,
            TimetableDrawing.Kind kind,
            boolean cuts) {
        var edge = Stroke.of(cuts ? Ink.INK : Ink.MOSS, cuts ? 2.4 : 1);
        pen.box(x, y, width, height, pen.plain(Ink.SHEET), null);
        var fill =
                switch (kind) {
                    case ALONE -> pen.plain(Ink.MOSS_WASH);
                    case TOGETHER -> pen.hatched(Hatch.RISING, Ink.MOSS);
                    case INSPECTION -> pen.plain(Ink.OCHRE);
                };
        pen.box(x, y, width, height, fill, edge);
    }

    private double legend(double top) {
        return new Legend(pen)
                .add("alone", (x, y) -> sign(x, y, TimetableDrawing.Kind.ALONE, false))
                .add(
                        "with an instructor",
                        (x, y) -> sign(x, y, TimetableDrawing.Kind.TOGETHER, false))
                .add(
                        "look before the cut",
                        (x, y) -> sign(x, y, TimetableDrawing.Kind.INSPECTION, false))
                .add("cut", (x, y) -> sign(x, y, TimetableDrawing.Kind.TOGETHER, true))
                .draw(4, top);
    }

    private void sign(double x, double y, TimetableDrawing.Kind kind, boolean cuts) {
        box(x - 9, y - 5, 18, 10, kind, cuts);
    }

    private String title() {
        return "Timetable of " + drawing.of();
    }

    private String description() {
        if (drawing.benches().isEmpty()) {
            return "Nothing is laid out.";
        }
        int trees = drawing.benches().size();
        return "%s to %s, %d %s."
                .formatted(
                        clock(drawing.fromMinute()),
                        clock(drawing.toMinute()),
                        trees,
                        trees == 1 ? "tree" : "trees");
    }

    private TextTable table() {
        var rows = new ArrayList<List<String>>();
        for (var bench : drawing.benches()) {
            for (var phase : bench.phases()) {
                rows.add(
                        List.of(
                                bench.bench() + ", " + bench.tree(),
                                clock(phase.fromMinute()) + " to " + clock(phase.toMinute()),
                                told(phase),
                                phase.instructor().isEmpty() ? "nobody" : phase.instructor()));
            }
        }
        return new TextTable(
                title(), List.of("Bench and tree", "When", "Work", "Instructor"), rows);
    }

    private static String told(TimetableDrawing.Phase phase) {
        return switch (phase.kind()) {
            case ALONE -> phase.cuts() ? "cut alone" : "alone";
            case TOGETHER -> phase.cuts() ? "cut together" : "together";
            case INSPECTION -> "look before the cut";
        };
    }

    private static String clock(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / HOUR % 24, minute % HOUR);
    }
}
