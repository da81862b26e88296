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
    private final Map<String, List<TimetableDrawing.Phase>> teaching;
    private final Map<String, String> letters = new TreeMap<>();

    private TimetablePicture(TimetableDrawing drawing, Sheet sheet) {
        this.drawing = drawing;
        this.pen = new Pen(sheet);
        this.narrow = sheet.narrow();
        double left = narrow ? 6 : sheet.widthPx() * 0.3;
        this.minutes =
                new Scale(drawing.fromMinute(), drawing.toMinute(), left, sheet.widthPx() - 8.0);
        this.teaching = teaching();
        nameInstructors();
    }

    /** Initials, with a number where those of several are the same. */
    private void nameInstructors() {
        var count = new TreeMap<String, Integer>();
        for (var name : teaching.keySet()) {
            letters.put(name, initials(name) + count.merge(initials(name), 1, Integer::sum));
        }
        letters.replaceAll(
                (name, letter) ->
                        count.getOrDefault(initials(name), 0) > 1 ? letter : initials(name));
    }

    private static String initials(String name) {
        var initials = new StringBuilder();
        for (var word : name.strip().split("\\s+", 3)) {
            if (!word.isEmpty() && initials.length() < 2) {
                initials.append(word, 0, word.offsetByCodePoints(0, 1));
            }
        }
        return initials.toString().toUpperCase(Locale.ROOT);
    }

    private String letter(String instructor) {
        return letters.getOrDefault(instructor, "");
    }

    /**
     * Draws it.
     *
     * <p>Plain boxes are work alone, hatched ones work with an instructor, filled ones the look at
     * a cut before it is made; a cut has a thick edge. Who stands by is named in the box, or over
     * it by the initials that stand before the name below; there a box has its bench. A broken line
     * is a wait. Breaks are upright bands, over which work alone stops. Edge cases: names for which
     * there is no room are left out and stand in the table; without benches the hours are drawn
     * alone; what lies outside the class is held at its edges.
     */
    public static Picture of(TimetableDrawing drawing, Sheet sheet) {
        return new TimetablePicture(drawing, sheet).draw();
    }

    private Picture draw() {
        double lines = drawing.benches().size() + (teaching.isEmpty() ? 0 : teaching.size() + 0.6);
        double end = TOP + lines * rowPx() + 4;
        hours(end);
        double y = TOP;
        for (var bench : drawing.benches()) {
            words(bench.bench() + "  " + bench.tree(), y);
            bench(bench, y + boxOffset());
            y += rowPx();
        }
        if (!teaching.isEmpty()) {
            double line = y + rowPx() * 0.3;
            pen.line(4, line, pen.sheet().widthPx() - 8.0, line, Stroke.of(Ink.EDGE, 1));
            y += rowPx() * 0.6;
            for (var one : teaching.entrySet()) {
                words(letter(one.getKey()) + "  " + one.getKey(), y);
                instructor(one.getKey(), y + boxOffset());
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
        return boxOffset() + ROW_PX - 3;
    }

    private double boxOffset() {
        return Marks.HEIGHT_PX + (narrow ? 18 : 3);
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
                top + (narrow ? 13 : boxOffset() + 13),
                Pen.Anchor.START,
                Ink.INK,
                XmlText.fitted(words, Pen.LETTER_PX, room));
    }

    private void bench(TimetableDrawing.Bench bench, double top) {
        var marks = new Marks(pen, 1);
        int before = Integer.MAX_VALUE;
        for (var phase : bench.phases()) {
            waits(before, phase.fromMinute(), top + BOX_PX / 2);
            before = phase.toMinute();
            box(phase, top);
            pauses(phase, top);
        }
        for (var visit : visits(bench.phases())) {
            named(visit, letter(visit.get(0).instructor()), top, marks);
        }
    }

    private void instructor(String name, double top) {
        var marks = new Marks(pen, 1);
        for (var bench : drawing.benches()) {
            for (var phase : bench.phases()) {
                if (phase.instructor().equals(name)) {
                    box(phase, top);
                }
            }
        }
        var visits = new TreeMap<Integer, TimetableDrawing.Bench>();
        for (var bench : drawing.benches()) {
            for (var visit : visits(bench.phases())) {
                if (visit.get(0).instructor().equals(name)) {
                    visits.put(visit.get(0).fromMinute(), bench);
                }
            }
        }
        visits.forEach(
                (from, bench) ->
                        visits(bench.phases()).stream()
                                .filter(visit -> visit.get(0).fromMinute() == from)
                                .forEach(visit -> named(visit, bench.bench(), top, marks)));
    }

    /** Phases right after one another with one instructor. */
    private static List<List<TimetableDrawing.Phase>> visits(List<TimetableDrawing.Phase> phases) {
        var visits = new ArrayList<List<TimetableDrawing.Phase>>();
        TimetableDrawing.Phase before = null;
        for (var phase : phases) {
            boolean goesOn =
                    before != null
                            && before.toMinute() == phase.fromMinute()
                            && before.instructor().equals(phase.instructor());
            if (!phase.instructor().isEmpty()) {
                if (!goesOn) {
                    visits.add(new ArrayList<>());
                }
                visits.get(visits.size() - 1).add(phase);
            }
            before = phase;
        }
        return visits;
    }

    /** In the longest box of a visit, or over all of them. */
    private void named(List<TimetableDrawing.Phase> visit, String word, double top, Marks marks) {
        var longest = visit.get(0);
        for (var phase : visit) {
            int minutes = phase.toMinute() - phase.fromMinute();
            longest = minutes > longest.toMinute() - longest.fromMinute() ? phase : longest;
        }
        double from = minutes.px(longest.fromMinute());
        double to = minutes.px(longest.toMinute());
        if (XmlText.widthPx(word, Pen.LETTER_PX) <= to - from - 6) {
            pen.writeOver((from + to) / 2, top + 13, Pen.Anchor.MIDDLE, Ink.INK, word);
        } else {
            double first = minutes.px(visit.get(0).fromMinute());
            double last = minutes.px(visit.get(visit.size() - 1).toMinute());
            marks.write((first + last) / 2, top, word);
        }
    }

    /** Not over a break for all. */
    private void waits(int sinceMinute, int untilMinute, double y) {
        int since = sinceMinute;
        for (var pause : drawing.breaks()) {
            if (pause.fromMinute() >= since && pause.toMinute() <= untilMinute) {
                waitSign(minutes.px(since), minutes.px(pause.fromMinute()), y);
                since = pause.toMinute();
            }
        }
        if (since < untilMinute) {
            waitSign(minutes.px(since), minutes.px(untilMinute), y);
        }
    }

    private void waitSign(double from, double to, double y) {
        if (to - from > 2) {
            pen.line(from + 1, y, to - 1, y, Stroke.of(Ink.EDGE, 1.5).dashed("2 3"));
        }
    }

    private void pauses(TimetableDrawing.Phase phase, double top) {
        for (var pause : drawing.breaks()) {
            double from = minutes.px(Math.max(pause.fromMinute(), phase.fromMinute()));
            double to = minutes.px(Math.min(pause.toMinute(), phase.toMinute()));
            if (to - from > 1) {
                pen.box(from, top + 0.5, to - from, BOX_PX - 1, pen.plain(Ink.SHADE), null);
            }
        }
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
                .add("waits", (x, y) -> waitSign(x - 9, x + 9, y))
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
