package org.ripewood.pictures;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import org.ripewood.pictures.TimetableDrawing.Bench;
import org.ripewood.pictures.TimetableDrawing.Kind;
import org.ripewood.pictures.TimetableDrawing.Pause;
import org.ripewood.pictures.TimetableDrawing.Phase;

/** A class day laid out: a row for each tree, and below them one for each instructor. */
public final class TimetablePicture {

    private static final int HOUR = 60;
    private static final double HOUR_ROOM_PX = 52;
    private static final double LEAST_WAIT_PX = 2;

    /** How much wider heavy letters are than others. */
    private static final double BOLD = 1.08;

    private final TimetableDrawing all;
    private final TimetableDrawing drawing;
    private final Pen pen;
    private final Letters letters;
    private final Scale minutes;
    private final double top;

    private TimetablePicture(TimetableDrawing all, List<Bench> benches, Sheet sheet) {
        this.all = all;
        this.drawing = all.with(benches);
        this.pen = new Pen(sheet);
        this.letters = Letters.of(sheet);
        double left = sheet.narrow() ? 6 : sheet.widthPx() * 0.26;
        this.minutes =
                new Scale(drawing.fromMinute(), drawing.toMinute(), left, sheet.widthPx() - 10.0);
        this.top = letters.workPx() + 12;
    }

    /**
     * Draws it.
     *
     * <p>Plain boxes are work of the student's own, hatched ones work together with an instructor,
     * black ones a visit that begins with the look before a cut. Who stands by is named in the box
     * by initials, which stand before the name below; there a box has its bench. A broken line is a
     * student's wait. The lesson is a band over all benches; breaks are gaps. Edge cases: names for
     * which there is no room are left out and stand in the table; without benches the hours are
     * drawn alone; what lies outside the class is held at its edges.
     */
    public static Picture of(TimetableDrawing drawing, Sheet sheet) {
        return new TimetablePicture(drawing, drawing.benches(), sheet).draw();
    }

    /**
     * The day on as many sheets as it needs, each with so many benches at most and all instructors.
     */
    public static List<Picture> sheets(TimetableDrawing drawing, Sheet sheet, int benches) {
        var pictures = new ArrayList<Picture>();
        var all = drawing.benches();
        for (int at = 0; at == 0 || at < all.size(); at += benches) {
            var some = all.subList(at, Math.min(all.size(), at + benches));
            pictures.add(new TimetablePicture(drawing, some, sheet).draw());
        }
        return pictures;
    }

    private Picture draw() {
        double end =
                top
                        + drawing.benches().size() * letters.benchRowPx()
                        + drawing.instructors().size() * letters.instructorRowPx()
                        + (drawing.instructors().isEmpty() ? 0 : 8);
        bands(end);
        hours(end);
        double y = top;
        for (var bench : drawing.benches()) {
            bench(bench, y);
            y += letters.benchRowPx();
            pen.line(4, y, minutes.endPx(), y, Stroke.of(Ink.RULE, 1));
        }
        if (!drawing.instructors().isEmpty()) {
            pen.line(4, y + 3, minutes.endPx(), y + 3, Stroke.of(Ink.INK, 1.5));
            y += 8;
            for (var name : drawing.instructors()) {
                instructor(name, y);
                y += letters.instructorRowPx();
            }
        }
        lessonName(end);
        return pen.finish(legend(end + 4) + 4, title(), description(), table());
    }

    private void bands(double end) {
        for (var pause : drawing.breaks()) {
            double from = minutes.px(pause.fromMinute());
            double width = minutes.px(pause.toMinute()) - from;
            pen.box(from, top - 4, width, end - top + 4, pen.plain(Ink.SHADE), null);
        }
        for (var lesson : drawing.lessonAt()) {
            double from = minutes.px(lesson.fromMinute());
            double width = minutes.px(lesson.toMinute()) - from;
            pen.box(from, top - 4, width, end - top + 4, pen.plain(Ink.SHEET), null);
            pen.box(
                    from,
                    top - 4,
                    width,
                    end - top + 4,
                    pen.hatched(Hatch.DOTTED, Ink.SLATE),
                    Stroke.of(Ink.SLATE, 1.5));
        }
    }

    private void lessonName(double end) {
        if (letters.narrow()) {
            return;
        }
        double size = letters.namePx();
        for (var lesson : drawing.lessonAt()) {
            double from = minutes.px(lesson.fromMinute());
            double room = minutes.px(lesson.toMinute()) - from - 16;
            double y = Math.min((top + end) / 2, top + 2.4 * letters.benchRowPx());
            var lines = XmlText.lines("Lesson: " + drawing.lesson(), size, room);
            double widest = lines.stream().mapToDouble(one -> width(one, size)).max().orElse(0);
            if (room < width("Lesson", size)) {
                continue;
            }
            double middle = from + 8 + room / 2;
            pen.box(
                    middle - widest / 2 - 6,
                    y - size - 4,
                    widest + 12,
                    lines.size() * size * 1.2 + 10,
                    pen.plain(Ink.SHEET),
                    null);
            for (var line : lines) {
                pen.write(middle, y, Pen.Anchor.MIDDLE, Ink.INK, true, size, line);
                y += size * 1.2;
            }
        }
    }

    private static double width(String text, double sizePx) {
        return XmlText.widthPx(text, sizePx);
    }

    private void hours(double end) {
        int hours = (drawing.toMinute() - drawing.fromMinute()) / HOUR + 1;
        double room = minutes.endPx() - minutes.startPx();
        int step = (int) Math.max(1, Math.ceil(hours * HOUR_ROOM_PX / room));
        int first = (drawing.fromMinute() + HOUR - 1) / HOUR;
        double size = letters.workPx();
        for (int hour = first; hour * HOUR <= drawing.toMinute(); hour += step) {
            double x = minutes.px(hour * HOUR);
            pen.line(x, top - 6, x, end, Stroke.of(Ink.EDGE, 1));
            double half = width(clock(hour * HOUR), size) / 2;
            double held = Math.max(half + 2, Math.min(pen.sheet().widthPx() - half - 2, x));
            pen.write(held, top - 9, Pen.Anchor.MIDDLE, Ink.INK, false, size, clock(hour * HOUR));
        }
    }

    private void bench(Bench bench, double y) {
        label(bench, y);
        works(bench, y + letters.workPx());
        double boxes = y + letters.boxOffsetPx();
        for (var pause : bench.waits()) {
            waitSign(minutes.px(pause.fromMinute()), minutes.px(pause.toMinute()), boxes);
        }
        for (var phase : bench.phases()) {
            box(phase, boxes);
            named(phase, initials(phase.instructor()), boxes);
        }
    }

    private void label(Bench bench, double y) {
        double name = letters.namePx();
        var words = bench.bench() + "  " + bench.tree();
        if (letters.narrow()) {
            underlaid(words + ", " + bench.student(), y);
            return;
        }
        double room = minutes.startPx() - 12;
        write(4, y + name, true, name, words, room);
        write(
                4,
                y + name + letters.workPx() * 1.15,
                false,
                letters.workPx(),
                bench.student(),
                room);
    }

    /** On a phone names lie over the lesson's band. */
    private void underlaid(String words, double y) {
        double size = letters.namePx();
        double room = pen.sheet().widthPx() - 12.0;
        double wide = Math.min(room, width(words, size) * BOLD + 8);
        pen.box(2, y + 1.5, wide, size + 3, pen.plain(Ink.SHEET), null);
        write(4, y + size, true, size, words, room);
    }

    private void write(double x, double y, boolean bold, double size, String text, double room) {
        pen.write(
                x,
                y,
                Pen.Anchor.START,
                Ink.INK,
                bold,
                size,
                XmlText.fitted(text, bold ? size * BOLD : size, room));
    }

    /** What is done, over the first box of each work; on a phone the table tells it. */
    private void works(Bench bench, double y) {
        if (letters.narrow()) {
            return;
        }
        var firsts = new LinkedHashMap<String, Integer>();
        bench.phases().forEach(phase -> firsts.putIfAbsent(phase.work(), phase.fromMinute()));
        var works = new ArrayList<>(firsts.entrySet());
        double taken = minutes.startPx();
        for (int i = 0; i < works.size(); i++) {
            double size = letters.workPx();
            double to =
                    i + 1 < works.size()
                            ? minutes.px(works.get(i + 1).getValue()) - 6
                            : minutes.endPx();
            double wanted = width(works.get(i).getKey(), size);
            double from = minutes.px(works.get(i).getValue());
            boolean last = i + 1 == works.size();
            from = last ? Math.max(taken, Math.min(from, to - wanted - 2)) : from;
            double room = to - from;
            taken = from + Math.min(room, wanted) + 6;
            pen.box(
                    from - 1,
                    y - size + 1,
                    Math.min(room, wanted) + 3,
                    size + 3,
                    pen.plain(Ink.SHEET),
                    null);
            write(from, y, false, size, works.get(i).getKey(), room);
        }
    }

    private void instructor(String name, double y) {
        double size = letters.namePx();
        if (letters.narrow()) {
            underlaid(initials(name) + " " + name, y);
        } else {
            var words = initials(name) + " " + name;
            write(4, y + size, true, size, words, minutes.startPx() - 12);
        }
        double boxes = y + letters.instructorBoxPx();
        for (var bench : drawing.benches()) {
            for (var phase : bench.phases()) {
                if (phase.instructor().equals(name)) {
                    box(phase, boxes);
                    named(phase, bench.bench(), boxes);
                }
            }
        }
    }

    private void box(Phase phase, double y) {
        double from = minutes.px(phase.fromMinute());
        box(
                from,
                y,
                Math.max(2, minutes.px(phase.toMinute()) - from),
                letters.boxPx(),
                phase.kind());
    }

    private void box(double x, double y, double width, double height, Kind kind) {
        pen.box(x, y, width, height, pen.plain(Ink.SHEET), null);
        switch (kind) {
            case ALONE ->
                    pen.box(x, y, width, height, pen.plain(Ink.MOSS_WASH), Stroke.of(Ink.MOSS, 1));
            case TOGETHER ->
                    pen.box(
                            x,
                            y,
                            width,
                            height,
                            pen.hatched(Hatch.RISING, Ink.MOSS),
                            Stroke.of(Ink.MOSS, 1.5));
            case INSPECTION ->
                    pen.box(x, y, width, height, pen.plain(Ink.INK), Stroke.of(Ink.INK, 1.5));
        }
    }

    /** In its box, where there is room. */
    private void named(Phase phase, String word, double y) {
        double from = minutes.px(phase.fromMinute());
        double to = minutes.px(phase.toMinute());
        double size = letters.workPx();
        if (word.isEmpty() || width(word, size) > to - from - 2) {
            return;
        }
        double line = y + letters.boxPx() - (letters.boxPx() - size) / 2 - size * 0.16;
        if (phase.kind() == Kind.INSPECTION) {
            pen.write((from + to) / 2, line, Pen.Anchor.MIDDLE, Ink.SHEET, true, size, word);
        } else {
            // a box, as print engines draw no rim round letters
            double half = width(word, size) / 2 + 1;
            pen.box(
                    (from + to) / 2 - half,
                    y + 2,
                    2 * half,
                    letters.boxPx() - 4,
                    paper(phase),
                    null);
            pen.write((from + to) / 2, line, Pen.Anchor.MIDDLE, Ink.INK, false, size, word);
        }
    }

    private String paper(Phase phase) {
        return pen.plain(phase.kind() == Kind.ALONE ? Ink.MOSS_WASH : Ink.SHEET);
    }

    private void waitSign(double from, double to, double y) {
        if (to - from > LEAST_WAIT_PX) {
            double middle = y + letters.boxPx() / 2;
            pen.line(from + 1, middle, to - 1, middle, Stroke.of(Ink.INK, 2).dashed("2 4"));
        }
    }

    private double legend(double y) {
        var legend = new Legend(pen);
        if (letters.narrow() && !drawing.lessonAt().isEmpty()) {
            legend.add("lesson", (x, at) -> lessonSign(x - 9, at - 5));
        }
        return legend.add("on their own", (x, at) -> box(x - 9, at - 5, 18, 10, Kind.ALONE))
                .add(
                        "together with an instructor",
                        (x, at) -> box(x - 9, at - 5, 18, 10, Kind.TOGETHER))
                .add(
                        "an instructor looks before the cut",
                        (x, at) -> box(x - 9, at - 5, 18, 10, Kind.INSPECTION))
                .add("student waits", (x, at) -> waitSign(x - 9, x + 9, at - letters.boxPx() / 2))
                .draw(4, y);
    }

    private void lessonSign(double x, double y) {
        var dots = pen.hatched(Hatch.DOTTED, Ink.SLATE);
        pen.box(x, y, 18, 10, dots, Stroke.of(Ink.SLATE, 1.5));
    }

    /** Initials, with a number where those of several are the same. */
    private String initials(String name) {
        if (name.isEmpty()) {
            return "";
        }
        var count = new HashMap<String, Integer>();
        var initials = new HashMap<String, String>();
        for (var one : all.instructors()) {
            var plain = plainInitials(one);
            initials.put(one, plain + count.merge(plain, 1, Integer::sum));
        }
        var plain = plainInitials(name);
        return count.getOrDefault(plain, 0) > 1 ? initials.getOrDefault(name, plain) : plain;
    }

    private static String plainInitials(String name) {
        var initials = new StringBuilder();
        for (var word : name.strip().split("\\s+", 3)) {
            if (!word.isEmpty() && initials.length() < 2) {
                initials.append(word, 0, word.offsetByCodePoints(0, 1));
            }
        }
        return initials.toString().toUpperCase(Locale.ROOT);
    }

    private String title() {
        return "Timetable of " + drawing.of();
    }

    private String description() {
        if (drawing.benches().isEmpty()) {
            return "Nothing is laid out.";
        }
        var text = new StringBuilder();
        int trees = drawing.benches().size();
        text.append(
                "%s to %s, %d %s."
                        .formatted(
                                clock(drawing.fromMinute()),
                                clock(drawing.toMinute()),
                                trees,
                                trees == 1 ? "tree" : "trees"));
        drawing.lessonAt()
                .forEach(
                        at -> text.append(" Lesson %s: %s.".formatted(told(at), drawing.lesson())));
        drawing.breaks().forEach(at -> text.append(" Break %s.".formatted(told(at))));
        long cuts =
                drawing.benches().stream()
                        .flatMap(bench -> bench.phases().stream())
                        .filter(phase -> phase.kind() == Kind.INSPECTION)
                        .count();
        if (cuts > 0) {
            text.append(
                    " An instructor looks before %d %s."
                            .formatted(cuts, cuts == 1 ? "cut" : "cuts"));
        }
        return text.toString();
    }

    private static String told(Pause pause) {
        return clock(pause.fromMinute()) + " to " + clock(pause.toMinute());
    }

    private TextTable table() {
        var rows = new ArrayList<List<String>>();
        for (var bench : drawing.benches()) {
            var name = "%s, %s, %s".formatted(bench.bench(), bench.tree(), bench.student());
            for (var pause : bench.waits()) {
                rows.add(List.of(name, told(pause), "the student waits", "-"));
            }
            for (var phase : bench.phases()) {
                rows.add(
                        List.of(
                                name,
                                told(new Pause(phase.fromMinute(), phase.toMinute())),
                                phase.work() + ": " + told(phase.kind()),
                                phase.instructor().isEmpty() ? "-" : phase.instructor()));
            }
        }
        return new TextTable(
                title(), List.of("Bench, tree and student", "When", "Work", "Instructor"), rows);
    }

    private static String told(Kind kind) {
        return switch (kind) {
            case ALONE -> "on their own";
            case TOGETHER -> "together";
            case INSPECTION -> "look before the cut, then the cut";
        };
    }

    private static String clock(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / HOUR % 24, minute % HOUR);
    }

    /**
     * How large things of a timetable are, in px of the view box.
     *
     * @param namePx letters of trees and instructors
     * @param workPx letters of students, work and hours
     */
    private record Letters(boolean narrow, double namePx, double workPx) {

        /** From this width on a sheet of paper is read at arm's length. */
        private static final int LARGE_PX = 900;

        /**
         * A large sheet of paper is printed at most 980 px wide, on US Letter lying on its side
         * 0.727 pt to the px: names of 19.5 px are 14 pt, work of 16.6 px is 12 pt.
         */
        static Letters of(Sheet sheet) {
            return sheet.paper() && sheet.widthPx() >= LARGE_PX
                    ? new Letters(false, 19.5, 16.6)
                    : new Letters(sheet.narrow(), 13.5, 13);
        }

        double boxPx() {
            return workPx * 1.15;
        }

        /** From the top of a row to its boxes. */
        double boxOffsetPx() {
            return narrow ? namePx + 5 : workPx + 4;
        }

        double benchRowPx() {
            return boxOffsetPx() + boxPx() + 4;
        }

        /** From the top of an instructor's row to its boxes. */
        double instructorBoxPx() {
            return narrow ? namePx + 5 : 2;
        }

        double instructorRowPx() {
            return instructorBoxPx() + boxPx() + 6;
        }
    }
}
