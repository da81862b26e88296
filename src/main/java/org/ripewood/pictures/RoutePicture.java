package org.ripewood.pictures;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.SeasonOfYear;

/** A tree's way to a goal as a timeline, each step from its earliest to its latest day. */
public final class RoutePicture {

    private static final double TOP = 40;
    private static final double STAGE_PX = 28;
    private static final double LINE_PX = 15;

    /** Bold letters are a little wider. */
    private static final double BOLD_PX = Pen.LETTER_PX * 1.04;

    private final RouteDrawing drawing;
    private final Pen pen;
    private final boolean narrow;
    private final DayScale days;

    private RoutePicture(RouteDrawing drawing, Sheet sheet) {
        this.drawing = drawing;
        this.pen = new Pen(sheet);
        this.narrow = sheet.narrow();
        double left = narrow ? 12 : sheet.widthPx() * 0.36;
        this.days =
                new DayScale(
                        drawing.today().minusDays(45),
                        lastDay(drawing),
                        left,
                        sheet.widthPx() - 14.0);
    }

    /**
     * Draws it.
     *
     * <p>A bar runs from the day by which a step is done in one case of ten to that of nine in ten;
     * the upright stroke is the likeliest day. A bar that runs out to the right in a point has no
     * latest day within reach. Edge cases: without a step the years are drawn alone; a step whose
     * day cannot be said has a broken line and a question mark.
     */
    public static Picture of(RouteDrawing drawing, Sheet sheet) {
        return new RoutePicture(drawing, sheet).draw();
    }

    /** The latest day known; a year and more is left where a bar has no end. */
    private static LocalDate lastDay(RouteDrawing drawing) {
        var outlooks =
                Stream.concat(
                                Stream.of(drawing.reached()),
                                drawing.steps().map(RouteDrawing.Step::when))
                        .filter(Outlook.Expected.class::isInstance)
                        .map(Outlook.Expected.class::cast)
                        .toList();
        var last = drawing.today().plusYears(1);
        for (var expected : outlooks) {
            last = later(last, expected.likely());
            last = later(last, Objects.requireNonNullElse(expected.latest(), last));
        }
        boolean open = outlooks.stream().anyMatch(expected -> expected.latest() == null);
        long room = 60 + (last.toEpochDay() - drawing.today().toEpochDay()) / (open ? 6 : 20);
        return last.getYear() > 9000 ? last : last.plusDays(room);
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? other : one;
    }

    private Picture draw() {
        double end = TOP + 8 + height();
        new YearGround(pen, days, drawing.latitudeDegrees(), days.px(drawing.today()) + 26)
                .draw(TOP - 6, end);
        today(end);
        double y = TOP + 8;
        for (var stage : drawing.stages()) {
            pen.writeBold(wordsPx(), y + 18, Pen.Anchor.START, Ink.INK, fitted(stage.title()));
            pen.line(4, y + 24, days.endPx(), y + 24, Stroke.of(Ink.EDGE, 1));
            y += STAGE_PX;
            for (var step : stage.steps()) {
                step(step, y);
                y += rowPx(step);
            }
        }
        return pen.finish(below(legend(end + 6)), title(), description(), table());
    }

    /** Where words begin: beside the bars, or above them and right of today. */
    private double wordsPx() {
        return narrow ? days.px(drawing.today()) + 8 : 4;
    }

    private double rowPx(RouteDrawing.Step step) {
        return (narrow ? 38 : 25) + (titleLines(step).size() - 1) * LINE_PX;
    }

    private double height() {
        double steps = drawing.steps().mapToDouble(this::rowPx).sum();
        return drawing.stages().size() * STAGE_PX + steps + 4;
    }

    private double roomPx() {
        return narrow ? days.endPx() - wordsPx() : days.startPx() - 16;
    }

    private String fitted(String words) {
        return XmlText.fitted(words, BOLD_PX, roomPx());
    }

    /** A title in two lines at most. */
    private List<String> titleLines(RouteDrawing.Step step) {
        var lines = XmlText.lines(step.title(), BOLD_PX, roomPx());
        return lines.size() <= 2
                ? lines
                : List.of(lines.get(0), fitted(lines.get(1) + " " + lines.get(2)));
    }

    private void step(RouteDrawing.Step step, double top) {
        double words = narrow ? top + 15 : top + 16;
        double middle = narrow ? top + 26 + rowPx(step) - 38 : top + 12;
        for (var line : titleLines(step)) {
            if (step.critical()) {
                pen.writeBold(wordsPx(), words, Pen.Anchor.START, Ink.INK, line);
            } else {
                pen.write(wordsPx(), words, Pen.Anchor.START, Ink.INK, line);
            }
            words += LINE_PX;
        }
        if (step.when() instanceof Outlook.Expected expected) {
            bar(expected, step.critical(), middle);
        } else if (step.when() instanceof Outlook.Unsaid) {
            unsaid(middle);
        } else {
            done(middle);
        }
    }

    private void bar(Outlook.Expected expected, boolean critical, double y) {
        double from = days.px(expected.earliest());
        var latest = expected.latest();
        double to = latest == null ? days.endPx() : days.px(latest);
        double width = Math.max(2, to - from);
        var shape =
                latest == null
                        ? Pen.path("M# #H#l6 5l-6 5H#z", from, y - 5, to - 6, from)
                        : Pen.path("M# #h#v10h#z", from, y - 5, width, -width);
        bar(shape, critical);
        double likely = days.px(expected.likely());
        pen.line(likely, y - 9, likely, y + 9, Stroke.of(Ink.SHEET, 5));
        pen.line(likely, y - 8, likely, y + 8, Stroke.of(Ink.INK, 2.5));
        year(expected, from, from + width, y);
    }

    private void bar(String shape, boolean critical) {
        if (critical) {
            pen.shape(shape, pen.plain(Ink.MOSS), Stroke.of(Ink.MOSS, 1));
        } else {
            pen.shape(shape, pen.plain(Ink.SHEET), null);
            pen.shape(shape, pen.hatched(Hatch.RISING, Ink.MOSS), Stroke.of(Ink.MOSS, 1));
        }
    }

    /** The likeliest season, beside the bar on that side on which there is room. */
    private void year(Outlook.Expected expected, double from, double to, double y) {
        var words = SeasonOfYear.of(expected.likely(), drawing.latitudeDegrees()).shortName();
        double room = XmlText.widthPx(words, Pen.LETTER_PX) + 8;
        if (to + room < days.endPx()) {
            pen.writeOver(to + 6, y + 4, Pen.Anchor.START, Ink.SOFT, words);
        } else if (from - room > days.startPx()) {
            pen.writeOver(from - 6, y + 4, Pen.Anchor.END, Ink.SOFT, words);
        }
    }

    private void unsaid(double y) {
        double from = days.px(drawing.today());
        pen.line(from + 8, y, days.endPx() - 20, y, Stroke.of(Ink.EDGE, 1.5).dashed("3 5"));
        pen.writeOver(days.endPx() - 8, y + 5, Pen.Anchor.MIDDLE, Ink.INK, "?");
    }

    private void done(double y) {
        tick(days.px(drawing.today()), y);
    }

    private void tick(double x, double y) {
        var tick = Pen.path("M# #l4 4l8 -9", x - 6, y);
        pen.shape(tick, null, Stroke.of(Ink.SHEET, 6));
        pen.shape(tick, null, Stroke.of(Ink.MOSS, 2.5));
    }

    private void today(double end) {
        double x = days.px(drawing.today());
        pen.line(x, TOP - 8, x, end, Stroke.of(Ink.SLATE, 1.5).dashed("2 3"));
        pen.shape(Pen.path("M# #h8l-4 6z", x - 4, TOP - 14), pen.plain(Ink.SLATE), null);
        double half = 18;
        pen.write(Math.max(x, half + 4), TOP - 20, Pen.Anchor.MIDDLE, Ink.SLATE, "today");
    }

    private double legend(double top) {
        var legend = new Legend(pen);
        legend.add(
                "8 cases in 10, likeliest season",
                (x, y) -> {
                    bar(Pen.path("M# #h18v10h-18z", x - 9, y - 5), false);
                    pen.line(x, y - 8, x, y + 8, Stroke.of(Ink.SHEET, 5));
                    pen.line(x, y - 7, x, y + 7, Stroke.of(Ink.INK, 2.5));
                });
        if (drawing.steps().anyMatch(RouteDrawing.Step::critical)) {
            legend.add(
                    "a delay here delays the goal",
                    (x, y) -> bar(Pen.path("M# #h18v10h-18z", x - 9, y - 5), true));
        }
        if (drawing.steps().anyMatch(step -> step.when() instanceof Outlook.Already)) {
            legend.add("done", this::tick);
        }
        if (drawing.steps().anyMatch(step -> step.when() instanceof Outlook.Unsaid)) {
            legend.add(
                    "cannot be said yet",
                    (x, y) -> {
                        pen.line(x - 9, y, x + 1, y, Stroke.of(Ink.EDGE, 1.5).dashed("3 5"));
                        pen.write(x + 6, y + 5, Pen.Anchor.MIDDLE, Ink.INK, "?");
                    });
        }
        return legend.draw(4, top);
    }

    private double below(double end) {
        double room = pen.sheet().widthPx() - 8.0;
        return pen.writeLines(4, end + 14, room, Ink.INK, description()) - 8;
    }

    private String title() {
        return "Route of %s to: %s".formatted(drawing.tree(), drawing.goal());
    }

    private String description() {
        var waits = drawing.waitsLongestFor();
        var granted = drawing.assumed() ? ", if what is taken for granted is so" : "";
        return "%s: %s%s.%s"
                .formatted(
                        drawing.goal(),
                        told(drawing.reached(), drawing.assumed()).replaceAll("\\.$", ""),
                        granted,
                        waits.isBlank() ? "" : " It waits longest for: " + waits + ".");
    }

    private String told(Outlook outlook, boolean assumed) {
        if (!(outlook instanceof Outlook.Expected expected)) {
            return Wording.outlook(outlook);
        }
        double latitude = drawing.latitudeDegrees();
        return assumed
                ? SeasonOfYear.toldWithCare(expected, latitude)
                : SeasonOfYear.told(expected, latitude);
    }

    private TextTable table() {
        var rows = new ArrayList<List<String>>();
        for (var stage : drawing.stages()) {
            for (var step : stage.steps()) {
                rows.add(
                        List.of(
                                step.title(),
                                stage.title(),
                                told(step.when(), step.assumed()),
                                step.critical() ? "yes" : "no",
                                step.waitsFor().isBlank() ? "nothing" : step.waitsFor()));
            }
        }
        return new TextTable(
                title(), List.of("Step", "Stage", "When", "Delays the goal", "Waits for"), rows);
    }
}
