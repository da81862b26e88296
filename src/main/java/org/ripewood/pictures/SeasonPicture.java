package org.ripewood.pictures;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;

/** A year's degree-days as they add up, with growth stages below and what can be done when. */
public final class SeasonPicture {

    private static final double LEFT = 50;
    private static final double TOP = 30;
    private static final double STRIP_PX = 16;
    private static final double ROW_PX = 32;

    private final SeasonDrawing drawing;
    private final Pen pen;
    private final Units units;
    private final DayScale days;
    private final Scale warmth;
    private final double base;

    private SeasonPicture(SeasonDrawing drawing, Sheet sheet) {
        this.drawing = drawing;
        this.pen = new Pen(sheet);
        this.units = sheet.units();
        this.base = TOP + (sheet.narrow() ? 170 : 210);
        int length = Math.max(365, Math.max(drawing.sums().size(), drawing.usual().size()));
        var last = drawing.firstDay().plusDays(length - 1L);
        this.days = new DayScale(drawing.firstDay(), last, LEFT, sheet.widthPx() - 8.0);
        double most = 0;
        for (var sums : List.of(drawing.sums(), drawing.usual())) {
            for (double sum : sums) {
                most = Math.max(most, sum);
            }
        }
        this.warmth = new Scale(0, units.degreeDays(most > 0 ? most : 100) * 1.05, base, TOP);
    }

    /**
     * Draws it.
     *
     * <p>What lies behind today is an unbroken line, what is expected a dashed one. Edge cases:
     * without sums the stages are drawn alone; what lies outside the year is left out.
     */
    public static Picture of(SeasonDrawing drawing, Sheet sheet) {
        return new SeasonPicture(drawing, sheet).draw();
    }

    private Picture draw() {
        pen.write(4, 14, Pen.Anchor.START, Ink.SOFT, "degree-days, " + units.degreeDayWord());
        double strip = base + STRIP_PX;
        days.draw(pen, TOP, strip);
        axis();
        phases();
        curve(drawing.usual(), 0, drawing.usual().size(), Stroke.of(Ink.EDGE, 1.2));
        int gone = gone();
        curve(drawing.sums(), 0, gone, Stroke.of(Ink.MOSS, 3));
        curve(
                drawing.sums(),
                Math.max(0, gone - 1),
                drawing.sums().size(),
                Stroke.of(Ink.MOSS, 2).dashed("6 3"));
        double end = windows(strip + 40);
        today(end);
        return pen.finish(legend(end + 4), title(), description(), table());
    }

    private void axis() {
        for (double mark : warmth.marks(5)) {
            double y = warmth.px(mark);
            pen.line(LEFT, y, days.endPx(), y, Stroke.of(Ink.RULE, 0.8));
            pen.write(LEFT - 6, y + 4, Pen.Anchor.END, Ink.SOFT, Units.plain(mark));
        }
        pen.line(LEFT, TOP, LEFT, base + STRIP_PX, Stroke.of(Ink.EDGE, 1));
    }

    private void phases() {
        for (var span : drawing.spans()) {
            if (span.to().isBefore(days.first()) || span.from().isAfter(days.last())) {
                continue;
            }
            double x = days.px(span.from());
            double width = Math.min(days.px(span.to()) + days.pxPerDay(), days.endPx()) - x;
            swatch(span.phase(), x, base, width, STRIP_PX);
        }
    }

    private void swatch(Phase phase, double x, double y, double width, double height) {
        pen.box(x, y, width, height, pen.plain(Ink.SLATE_WASH), null);
        pen.box(
                x,
                y,
                width,
                height,
                pen.hatched(phase.hatch(), Ink.SLATE),
                Stroke.of(Ink.SLATE, 0.8));
    }

    /** So many of the sums lie behind today, today among them. */
    private int gone() {
        long gone = drawing.today().toEpochDay() - drawing.firstDay().toEpochDay() + 1;
        return (int) Math.max(0, Math.min(gone, drawing.sums().size()));
    }

    private void curve(List<Double> sums, int from, int to, Stroke stroke) {
        if (to - from < 2) {
            return;
        }
        var way = new StringBuilder("M");
        int step = Math.max(1, (to - from) / 120);
        for (int i = from; i < to; i += step) {
            way.append(i == from ? "" : "L").append(point(sums, i));
        }
        way.append("L").append(point(sums, to - 1));
        pen.shape(way.toString(), null, stroke);
    }

    private String point(List<Double> sums, int index) {
        var day = drawing.firstDay().plusDays(index);
        return Pen.path("# #", days.px(day), warmth.px(units.degreeDays(sums.get(index))));
    }

    private double windows(double top) {
        double y = top;
        for (var window : drawing.windows()) {
            if (window.to().isBefore(days.first()) || window.from().isAfter(days.last())) {
                continue;
            }
            double x = days.px(window.from());
            double width = Math.max(3, days.px(window.to()) - x);
            var words = XmlText.fitted(window.what(), Pen.LETTER_PX, days.endPx() - 8);
            pen.write(4, y + 11, Pen.Anchor.START, Ink.INK, words);
            pen.line(LEFT, y + 21, days.endPx(), y + 21, Stroke.of(Ink.RULE, 1));
            pen.box(x, y + 16, width, 10, pen.plain(Ink.SLATE), null);
            y += ROW_PX;
        }
        return y;
    }

    private void today(double end) {
        if (!days.holds(drawing.today())) {
            return;
        }
        double x = days.px(drawing.today());
        double low = drawing.windows().isEmpty() ? base + STRIP_PX : end;
        pen.line(x, TOP - 4, x, low, Stroke.of(Ink.INK, 1.5).dashed("2 3"));
        pen.shape(Pen.path("M# #h8l-4 6z", x - 4, TOP - 8), pen.plain(Ink.INK), null);
        double sum = drawing.sumToday();
        var words = Double.isNaN(sum) ? "today" : "today: " + told(sum);
        double half = XmlText.widthPx(words, Pen.LETTER_PX) / 2 + 2;
        double least = 4 + XmlText.widthPx("degree-days, °C·d", Pen.LETTER_PX) + 12 + half;
        double place = Math.min(Math.max(x, least), days.endPx() - half);
        pen.write(place, 14, Pen.Anchor.MIDDLE, Ink.INK, words);
        if (!Double.isNaN(sum)) {
            double y = warmth.px(units.degreeDays(sum));
            pen.disc(x, y, 4, pen.plain(Ink.INK), Stroke.of(Ink.SHEET, 1.5));
        }
    }

    private String told(double sum) {
        return Units.whole(units.degreeDays(sum));
    }

    private double legend(double top) {
        var legend = new Legend(pen);
        if (gone() > 1) {
            legend.add("gone by", (x, y) -> pen.line(x - 9, y, x + 9, y, Stroke.of(Ink.MOSS, 3)));
        }
        if (gone() < drawing.sums().size()) {
            var dashed = Stroke.of(Ink.MOSS, 2).dashed("6 3");
            legend.add("to be expected", (x, y) -> pen.line(x - 9, y, x + 9, y, dashed));
        }
        if (!drawing.usual().isEmpty()) {
            legend.add(
                    "a usual year",
                    (x, y) -> pen.line(x - 9, y, x + 9, y, Stroke.of(Ink.EDGE, 1.2)));
        }
        var seen = EnumSet.noneOf(Phase.class);
        drawing.spans().forEach(span -> seen.add(span.phase()));
        for (var phase : seen) {
            legend.add(phase.words(), (x, y) -> swatch(phase, x - 9, y - 6, 18, 12));
        }
        return legend.draw(4, top);
    }

    private String title() {
        return "The season: " + drawing.place();
    }

    private String description() {
        double sum = drawing.sumToday();
        var now =
                drawing.spans().stream()
                        .filter(span -> holds(span, drawing.today()))
                        .map(span -> "the tree is at: " + span.phase().words())
                        .findFirst()
                        .orElse("the growth stage is not known");
        return "On %s %s; %s."
                .formatted(
                        Wording.day(drawing.today()),
                        Double.isNaN(sum)
                                ? "no degree-days are known"
                                : told(sum) + " " + units.degreeDayWord() + " have gone by",
                        now);
    }

    private static boolean holds(SeasonDrawing.Span span, LocalDate day) {
        return !day.isBefore(span.from()) && !day.isAfter(span.to());
    }

    private TextTable table() {
        var rows = new ArrayList<List<String>>();
        for (var span : drawing.spans()) {
            rows.add(row("stage: " + span.phase().words(), span.from(), span.to()));
        }
        for (var window : drawing.windows()) {
            rows.add(row("can be done: " + window.what(), window.from(), window.to()));
        }
        return TextTable.ofSeries(
                title(),
                List.of("What", "From", "To", "Degree-days by then, " + units.degreeDayWord()),
                rows);
    }

    private List<String> row(String what, LocalDate from, LocalDate to) {
        long index = to.toEpochDay() - drawing.firstDay().toEpochDay();
        boolean known = index >= 0 && index < drawing.sums().size();
        return List.of(
                what,
                Wording.day(from),
                Wording.day(to),
                known ? told(drawing.sums().get((int) index)) : "not known");
    }
}
