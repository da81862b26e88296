package org.ripewood.pictures;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Days laid from left to right. */
record DayScale(LocalDate first, LocalDate last, double startPx, double endPx) {

    /** Years that a record or a forecast may speak of; what lies beyond is drawn at the edge. */
    private static final LocalDate EARLIEST = LocalDate.of(1, 1, 1);

    private static final LocalDate LATEST = LocalDate.of(9999, 12, 31);

    private static final double ROOM_PX = 44;

    /** A mark under the axis; the year is empty where the mark before has it already. */
    record Mark(LocalDate day, String word, String year) {}

    DayScale {
        first = held(first);
        last = held(last);
        if (!last.isAfter(first)) {
            last = first.plusDays(1);
        }
    }

    private static LocalDate held(LocalDate day) {
        if (day.isBefore(EARLIEST)) {
            return EARLIEST;
        }
        // A day is kept free, so that an axis has a length wherever it starts.
        return day.isBefore(LATEST) ? day : LATEST.minusDays(1);
    }

    /** With a little room on both sides, so that nothing sits on the frame. */
    DayScale padded() {
        long room = 5 + (last.toEpochDay() - first.toEpochDay()) / 30;
        return new DayScale(first.minusDays(room), last.plusDays(room), startPx, endPx);
    }

    double px(LocalDate day) {
        var scale = new Scale(number(first), number(last), startPx, endPx);
        return scale.px(number(held(day)));
    }

    double pxPerDay() {
        return (endPx - startPx) / (number(last) - number(first));
    }

    private static double number(LocalDate day) {
        return (double) day.toEpochDay();
    }

    boolean holds(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last);
    }

    /** Starts of months or of years, as many as there is room for. */
    List<Mark> marks() {
        int most = Math.max(1, (int) ((endPx - startPx) / ROOM_PX));
        int[] months = {1, 2, 3, 6, 12, 24, 60, 120, 240, 600, 1200, 6000, 12000, 60000};
        int next = 0;
        while (next < months.length - 1 && monthsBetween() / months[next] > most) {
            next++;
        }
        return marks(months[next]);
    }

    private long monthsBetween() {
        return java.time.temporal.ChronoUnit.MONTHS.between(first, last);
    }

    private List<Mark> marks(int step) {
        var marks = new ArrayList<Mark>();
        long count = first.getYear() * 12L + first.getMonthValue() - 1;
        long start = Math.floorDiv(count + step - 1, (long) step) * step;
        int told = Integer.MIN_VALUE;
        for (long month = start; month / 12 <= 9999; month += step) {
            if (month < 12) {
                continue;
            }
            var day = LocalDate.of((int) (month / 12), (int) (month % 12) + 1, 1);
            if (day.isAfter(last)) {
                break;
            }
            if (!day.isBefore(first)) {
                marks.add(mark(day, step, told));
                told = day.getYear();
            }
        }
        return marks;
    }

    private static Mark mark(LocalDate day, int step, int told) {
        var year = Integer.toString(day.getYear());
        return step % 12 == 0
                ? new Mark(day, year, "")
                : new Mark(day, Wording.month(day), day.getYear() == told ? "" : year);
    }

    /** Draws the marks below a line: a stroke up, the word, and the year below it. */
    void draw(Pen pen, double topPx, double basePx) {
        for (var mark : marks()) {
            double x = px(mark.day());
            pen.line(x, topPx, x, basePx + 4, Stroke.of(Ink.RULE, 1));
            pen.write(x, basePx + 17, anchorAt(x), Ink.SOFT, mark.word());
            if (!mark.year().isEmpty()) {
                pen.write(x, basePx + 31, anchorAt(x), Ink.SOFT, mark.year());
            }
        }
        pen.line(startPx, basePx, endPx, basePx, Stroke.of(Ink.EDGE, 1));
    }

    /** Words near an edge run inwards. */
    Pen.Anchor anchorAt(double x) {
        if (x > endPx - 14) {
            return Pen.Anchor.END;
        }
        return Pen.Anchor.MIDDLE;
    }
}
