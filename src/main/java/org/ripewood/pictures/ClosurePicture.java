package org.ripewood.pictures;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.stream.Stream;
import org.ripewood.core.growth.Closure;
import org.ripewood.core.season.Outlook;

/**
 * A wound's opening against time: what was measured, what is to be expected, and when it is closed
 * enough.
 */
public final class ClosurePicture {

    private static final double LEFT = 44;
    private static final double TOP = 30;

    /** Readings nearer to each other than this are drawn as one. */
    private static final double LEAST_GAP_PX = 3;

    private final ClosureDrawing drawing;
    private final Pen pen;
    private final Units units;
    private final DayScale days;
    private final Scale widths;
    private final double base;

    private ClosurePicture(ClosureDrawing drawing, Sheet sheet) {
        this.drawing = drawing;
        this.pen = new Pen(sheet);
        this.units = sheet.units();
        this.base = TOP + (sheet.narrow() ? 210 : 260);
        this.days = daysOf(drawing, sheet.widthPx() - 14.0);
        this.widths = new Scale(0, widest(drawing) / units.mmEach() * 1.06, base, TOP);
    }

    /**
     * Draws it.
     *
     * <p>Edge cases: without looks or without a band those are left out and the words say so; of
     * looks closer than 3 px one is drawn. Never fails on a record that could be made.
     */
    public static Picture of(ClosureDrawing drawing, Sheet sheet) {
        return new ClosurePicture(drawing, sheet).draw();
    }

    private static DayScale daysOf(ClosureDrawing drawing, double right) {
        var all =
                Stream.of(
                                drawing.looks().stream().map(Closure.Look::on),
                                drawing.band().stream().map(ClosureDrawing.Opening::on),
                                Stream.of(drawing.today()))
                        .flatMap(each -> each)
                        .sorted()
                        .toList();
        return new DayScale(all.get(0), all.get(all.size() - 1), LEFT, right).padded();
    }

    private static double widest(ClosureDrawing drawing) {
        double widest = drawing.thresholdMm() * 1.3;
        for (var look : drawing.looks()) {
            widest = Math.max(widest, look.openMm() + drawing.errorMm());
        }
        for (var opening : drawing.band()) {
            widest = Math.max(widest, opening.mostMm());
        }
        return widest > 0 ? widest : 10;
    }

    private double x(LocalDate day) {
        return days.px(day);
    }

    private double y(double mm) {
        return widths.px(mm / units.mmEach());
    }

    private Picture draw() {
        ground();
        band();
        threshold();
        looks();
        today();
        double end = legend(base + 38);
        var words = new ClosureWords(drawing, units);
        return pen.finish(end, words.title(), words.description(), words.table());
    }

    private void ground() {
        pen.write(4, 14, Pen.Anchor.START, Ink.SOFT, "opening, " + units.word());
        days.draw(pen, TOP, base);
        for (double mark : widths.marks(6)) {
            double y = widths.px(mark);
            pen.line(LEFT - 4, y, LEFT, y, Stroke.of(Ink.EDGE, 1));
            pen.write(LEFT - 8, y + 4, Pen.Anchor.END, Ink.SOFT, units.bare(mark * units.mmEach()));
        }
        pen.line(LEFT, TOP, LEFT, base, Stroke.of(Ink.EDGE, 1));
    }

    private void band() {
        var band = drawing.band();
        if (band.size() < 2) {
            return;
        }
        var rim = new StringBuilder("M");
        for (int i = 0; i < band.size(); i++) {
            rim.append(i == 0 ? "" : "L").append(point(band.get(i), band.get(i).mostMm()));
        }
        for (int i = band.size() - 1; i >= 0; i--) {
            rim.append("L").append(point(band.get(i), band.get(i).leastMm()));
        }
        pen.shape(rim + "z", pen.plain(Ink.MOSS_WASH), null);
        pen.shape(rim + "z", pen.hatched(Hatch.RISING, Ink.MOSS), Stroke.of(Ink.MOSS, 0.8));
        var middle = new StringBuilder("M");
        for (int i = 0; i < band.size(); i++) {
            middle.append(i == 0 ? "" : "L").append(point(band.get(i), band.get(i).likelyMm()));
        }
        pen.shape(middle.toString(), null, Stroke.of(Ink.SHEET, 5));
        pen.shape(middle.toString(), null, Stroke.of(Ink.MOSS, 2.5));
    }

    private String point(ClosureDrawing.Opening opening, double mm) {
        return Pen.path("# #", x(opening.on()), y(mm));
    }

    private void threshold() {
        double y = y(drawing.thresholdMm());
        double right = days.endPx();
        pen.line(LEFT, y, right, y, Stroke.of(Ink.SHEET, 4));
        pen.line(LEFT, y, right, y, Stroke.of(Ink.OCHRE, 1.8).dashed("8 4"));
        if (drawing.outlook() instanceof Outlook.Expected expected) {
            crossing(expected.earliest(), y, -5);
            var latest = expected.latest();
            if (latest != null) {
                crossing(latest, y, 5);
            }
            if (days.holds(expected.likely())) {
                pen.shape(
                        Pen.path("M# #l6 6l-6 6l-6 -6z", x(expected.likely()), y - 6),
                        pen.plain(Ink.OCHRE),
                        Stroke.of(Ink.SHEET, 1.5));
            }
        }
    }

    /** Where the range of the crossing begins or ends: a bracket that opens towards its middle. */
    private void crossing(LocalDate day, double y, double outwards) {
        if (days.holds(day)) {
            double x = x(day);
            var path = Pen.path("M# #h#v14h#", x - outwards, y - 7, outwards, -outwards);
            pen.shape(path, null, Stroke.of(Ink.SHEET, 4.5));
            pen.shape(path, null, Stroke.of(Ink.OCHRE, 2));
        }
    }

    private void looks() {
        var drawn = new ArrayList<Closure.Look>();
        for (var look : drawing.looks()) {
            boolean apart =
                    drawn.isEmpty()
                            || x(look.on()) - x(drawn.get(drawn.size() - 1).on()) >= LEAST_GAP_PX;
            if (apart) {
                drawn.add(look);
            }
        }
        var way = new StringBuilder();
        for (var look : drawn) {
            way.append(way.isEmpty() ? "M" : "L")
                    .append(Pen.path("# #", x(look.on()), y(look.openMm())));
        }
        if (drawn.size() > 1) {
            pen.shape(way.toString(), null, Stroke.of(Ink.INK, 1));
        }
        for (var look : drawn) {
            reading(look);
        }
    }

    private void reading(Closure.Look look) {
        double x = x(look.on());
        double high = y(look.openMm() + drawing.errorMm());
        double low = y(Math.max(0, look.openMm() - drawing.errorMm()));
        if (low - high > 8) {
            pen.line(x, high, x, low, Stroke.of(Ink.INK, 1));
            pen.line(x - 3, high, x + 3, high, Stroke.of(Ink.INK, 1));
            pen.line(x - 3, low, x + 3, low, Stroke.of(Ink.INK, 1));
        }
        pen.disc(x, y(look.openMm()), 3.8, pen.plain(Ink.INK), Stroke.of(Ink.SHEET, 1));
    }

    private void today() {
        double x = x(drawing.today());
        pen.line(x, TOP - 4, x, base, Stroke.of(Ink.SLATE, 1.5).dashed("2 3"));
        pen.shape(Pen.path("M# #h8l-4 6z", x - 4, TOP - 8), pen.plain(Ink.SLATE), null);
        double half = 18;
        double middle = Math.max(x, LEFT + half + 36);
        pen.write(Math.min(middle, days.endPx() - half), 14, Pen.Anchor.MIDDLE, Ink.SLATE, "today");
    }

    private double legend(double top) {
        var legend = new Legend(pen);
        if (!drawing.looks().isEmpty()) {
            legend.add(
                    "measured",
                    (x, y) -> {
                        pen.line(x - 9, y, x + 9, y, Stroke.of(Ink.INK, 1));
                        pen.disc(x, y, 3.8, pen.plain(Ink.INK), null);
                    });
        }
        if (drawing.band().size() > 1) {
            legend.add("likeliest", (x, y) -> pen.line(x - 9, y, x + 9, y, heavy()));
            legend.add(
                    "8 cases in 10",
                    (x, y) -> {
                        pen.box(x - 9, y - 6, 18, 12, pen.plain(Ink.MOSS_WASH), null);
                        pen.box(
                                x - 9,
                                y - 6,
                                18,
                                12,
                                pen.hatched(Hatch.RISING, Ink.MOSS),
                                Stroke.of(Ink.MOSS, 0.8));
                    });
        }
        legend.add(
                "closed enough: at most " + units.length(drawing.thresholdMm()),
                (x, y) -> pen.line(x - 9, y, x + 9, y, Stroke.of(Ink.OCHRE, 1.8).dashed("8 4")));
        if (drawing.outlook() instanceof Outlook.Expected expected) {
            legend.add(reachedBy(expected), this::reached);
        }
        double end = legend.draw(4, top);
        if (drawing.outlook() instanceof Outlook.Unsaid unsaid) {
            double room = pen.sheet().widthPx() - 8.0;
            return pen.writeLines(4, end + 14, room, Ink.INK, "No forecast: " + unsaid.because());
        }
        return end;
    }

    private static Stroke heavy() {
        return Stroke.of(Ink.MOSS, 2.5);
    }

    private void reached(double x, double y) {
        pen.shape(Pen.path("M# #h-4v10h4", x - 5, y - 5), null, Stroke.of(Ink.OCHRE, 1.8));
        pen.shape(Pen.path("M# #h4v10h-4", x + 5, y - 5), null, Stroke.of(Ink.OCHRE, 1.8));
        pen.shape(Pen.path("M# #l4 4l-4 4l-4 -4z", x, y - 4), pen.plain(Ink.OCHRE), null);
    }

    private static String reachedBy(Outlook.Expected expected) {
        var since = expected.likelySince();
        return since == null
                ? "reached: " + months(expected)
                : "likely reached since %s: measure it".formatted(Wording.monthOfYear(since));
    }

    private static String months(Outlook.Expected expected) {
        var latest = expected.latest();
        return "%s (%s to %s)"
                .formatted(
                        Wording.monthOfYear(expected.likely()),
                        Wording.monthOfYear(expected.earliest()),
                        latest == null
                                ? "beyond " + Outlook.REACH_YEARS + " years"
                                : Wording.monthOfYear(latest));
    }
}
