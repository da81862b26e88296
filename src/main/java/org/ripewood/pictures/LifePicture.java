package org.ripewood.pictures;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Outlook;

/**
 * A tree's life on one axis of time: what was left of today, what its route says right of it. One
 * lane for each kind of thing.
 */
public final class LifePicture {

    /** So many wounds are drawn, those open widest in these years. */
    static final int MOST_WOUNDS = 5;

    private static final double TOP = 34;
    private static final double ROW_PX = 22;
    private static final double TRUNK_PX = 56;
    private static final double WEDGE_PX = 13;
    private static final double BOLD_PX = Pen.LETTER_PX * 1.04;

    /**
     * What is drawn; every list in the order of days, the earliest first.
     *
     * @param tree what to call the tree
     * @param from the first day told
     * @param until the last day told of what was: today, or the end of earlier years
     * @param today where what is ahead begins; null when these years are not the latest
     * @param stages said by an instructor, each until the next
     * @param containers each until the next
     * @param ahead what is to come; none when {@code today} is null
     */
    public record Drawing(
            String tree,
            LocalDate from,
            LocalDate until,
            @Nullable LocalDate today,
            List<Since> stages,
            List<Since> containers,
            List<Dot> steps,
            List<LocalDate> photos,
            List<Wedge> wounds,
            List<Width> trunk,
            List<Ahead> ahead) {

        /**
         * @throws IllegalArgumentException when the days end before they begin
         */
        public Drawing {
            if (until.isBefore(from)) {
                throw new IllegalArgumentException(
                        "days from %s cannot end on %s".formatted(from, until));
            }
            stages = List.copyOf(stages);
            containers = List.copyOf(containers);
            steps = List.copyOf(steps);
            photos = List.copyOf(photos);
            wounds = List.copyOf(wounds);
            trunk = List.copyOf(trunk);
            ahead = List.copyOf(ahead);
        }
    }

    /** Something that is so since a day. */
    public record Since(LocalDate on, String title) {}

    /**
     * Work on a day.
     *
     * @param signedOff whether an instructor signed it off
     */
    public record Dot(LocalDate on, String title, boolean signedOff) {}

    /** A width on a day, mm. */
    public record Width(LocalDate on, double mm) {
        public Width {
            Checked.lengths("a day", mm);
        }
    }

    /** A wound and how wide open it was, the earliest look first; at least one. */
    public record Wedge(String place, List<Width> looks) {

        /**
         * @throws IllegalArgumentException without a look
         */
        public Wedge {
            looks = List.copyOf(looks);
            if (looks.isEmpty()) {
                throw new IllegalArgumentException("a wound has at least one look");
            }
        }

        double widestMm() {
            return looks.stream().mapToDouble(Width::mm).max().orElse(0);
        }
    }

    /** Something to come. */
    public record Ahead(String title, Outlook when, boolean goal) {}

    private final Drawing drawing;
    private final Pen pen;
    private final double left;
    private final DayScale days;

    private LifePicture(Drawing drawing, Sheet sheet) {
        this.drawing = drawing;
        this.pen = new Pen(sheet);
        this.left = Math.min(230, sheet.widthPx() * 0.28);
        this.days = new DayScale(drawing.from(), lastDay(drawing), left, sheet.widthPx() - 14.0);
    }

    /**
     * Draws it.
     *
     * <p>A wound is a wedge as thick as it is open, so that one that closes runs to a point; it
     * keeps its last width up to the last day told. Edge cases: lanes with nothing in them are left
     * out; what is ahead and cannot be said has a broken line and a question mark; a bar without a
     * latest day runs out to the right.
     */
    public static Picture of(Drawing drawing, Sheet sheet) {
        return new LifePicture(drawing, sheet).draw();
    }

    /** The latest day known ahead; half a year is left where nothing is. */
    private static LocalDate lastDay(Drawing drawing) {
        if (drawing.today() == null) {
            return drawing.until();
        }
        return drawing.ahead().stream()
                .map(Ahead::when)
                .filter(Outlook.Expected.class::isInstance)
                .map(Outlook.Expected.class::cast)
                .map(when -> when.latest() == null ? when.likely().plusYears(1) : when.latest())
                .max(Comparator.naturalOrder())
                .filter(last -> last.isAfter(drawing.until().plusMonths(6)))
                .orElse(drawing.until().plusMonths(6));
    }

    private Picture draw() {
        double base = base();
        days.draw(pen, TOP - 6, base);
        double y = TOP;
        y = since("Stage", drawing.stages(), Ink.MOSS_WASH, Ink.MOSS, y);
        y = steps(y);
        y = photos(y);
        y = since("Container", drawing.containers(), Ink.SHADE, Ink.EDGE, y);
        y = wounds(y);
        y = trunk(y);
        ahead(y);
        today(base);
        double end = legend(base + 40);
        return pen.finish(end, title(), description(), table());
    }

    /** Below all lanes. */
    private double base() {
        long rows =
                Stream.of(drawing.stages(), drawing.steps(), drawing.photos(), drawing.containers())
                                .filter(lane -> !lane.isEmpty())
                                .count()
                        + Math.min(MOST_WOUNDS, drawing.wounds().size())
                        + drawing.ahead().size();
        return TOP + rows * ROW_PX + (drawing.trunk().isEmpty() ? 0 : TRUNK_PX) + 4;
    }

    private void name(double y, String text) {
        pen.write(
                4,
                y + 4,
                Pen.Anchor.START,
                Ink.INK,
                XmlText.fitted(text, Pen.LETTER_PX, left - 16));
    }

    private double since(String lane, List<Since> all, Ink wash, Ink edge, double y) {
        if (all.isEmpty()) {
            return y;
        }
        double middle = y + ROW_PX / 2;
        name(middle, lane);
        for (int i = 0; i < all.size(); i++) {
            double from = days.px(all.get(i).on());
            var until = i + 1 < all.size() ? all.get(i + 1).on() : drawing.until();
            double width = Math.max(2, days.px(until) - from);
            pen.box(from, y + 2, width, ROW_PX - 4, pen.plain(wash), Stroke.of(edge, 1));
            if (width > 40) {
                pen.write(
                        from + 5,
                        middle + 4,
                        Pen.Anchor.START,
                        Ink.INK,
                        XmlText.fitted(all.get(i).title(), Pen.LETTER_PX, width - 8));
            }
        }
        return y + ROW_PX;
    }

    private double steps(double y) {
        if (drawing.steps().isEmpty()) {
            return y;
        }
        double middle = y + ROW_PX / 2;
        name(middle, "Steps and work");
        for (var dot : drawing.steps()) {
            step(days.px(dot.on()), middle, dot.signedOff());
        }
        return y + ROW_PX;
    }

    private void step(double x, double y, boolean signedOff) {
        pen.disc(x, y, 5, pen.plain(signedOff ? Ink.MOSS : Ink.SHEET), Stroke.of(Ink.MOSS, 1.5));
    }

    private double photos(double y) {
        if (drawing.photos().isEmpty()) {
            return y;
        }
        double middle = y + ROW_PX / 2;
        name(middle, "Photos");
        drawing.photos().forEach(on -> photo(days.px(on), middle));
        return y + ROW_PX;
    }

    private void photo(double x, double y) {
        pen.box(x - 5, y - 4, 10, 8, pen.plain(Ink.SLATE_WASH), Stroke.of(Ink.SLATE, 1.2));
        pen.disc(x, y, 2, pen.plain(Ink.SLATE), null);
    }

    private double wounds(double y) {
        var shown =
                drawing.wounds().stream()
                        .sorted(Comparator.comparingDouble(Wedge::widestMm).reversed())
                        .limit(MOST_WOUNDS)
                        .toList();
        double widest = shown.stream().mapToDouble(Wedge::widestMm).max().orElse(0);
        double next = y;
        for (var wound : shown) {
            wedge(wound, widest, next + ROW_PX / 2);
            next += ROW_PX;
        }
        return next;
    }

    private void wedge(Wedge wound, double widestMm, double y) {
        name(y, "Wound: " + wound.place());
        var looks = new ArrayList<>(wound.looks());
        var last = looks.get(looks.size() - 1);
        if (last.mm() > 0) {
            looks.add(new Width(drawing.until(), last.mm()));
        }
        var rim = new StringBuilder();
        for (int i = 0; i < looks.size(); i++) {
            rim.append(rim(looks.get(i), i == 0 ? "M" : "L", -1, widestMm, y));
        }
        for (int i = looks.size() - 1; i >= 0; i--) {
            rim.append(rim(looks.get(i), "L", 1, widestMm, y));
        }
        pen.shape(rim + "z", pen.plain(Ink.OCHRE_WASH), Stroke.of(Ink.OCHRE, 1.2));
        for (var look : wound.looks()) {
            pen.disc(days.px(look.on()), y, 1.8, pen.plain(Ink.OCHRE), null);
        }
    }

    private String rim(Width look, String how, int side, double widestMm, double y) {
        double half = widestMm > 0 ? WEDGE_PX / 2 * look.mm() / widestMm : 0;
        return how + Pen.path("# #", days.px(look.on()), y + side * half);
    }

    private double trunk(double y) {
        var all = drawing.trunk();
        if (all.isEmpty()) {
            return y;
        }
        name(y + TRUNK_PX / 2, "Trunk, " + pen.sheet().units().word());
        double most = all.stream().mapToDouble(Width::mm).max().orElse(1);
        double least = all.stream().mapToDouble(Width::mm).min().orElse(0);
        var scale = new Scale(Math.min(least, most - 1), most, y + TRUNK_PX - 10, y + 16);
        var line = new StringBuilder();
        for (var width : all) {
            line.append(line.isEmpty() ? "M" : "L")
                    .append(Pen.path("# #", days.px(width.on()), scale.px(width.mm())));
        }
        pen.shape(line.toString(), null, Stroke.of(Ink.INK, 1.8));
        for (var width : all) {
            pen.disc(days.px(width.on()), scale.px(width.mm()), 3, pen.plain(Ink.INK), null);
        }
        thickness(all.get(0), scale);
        if (all.size() > 1) {
            thickness(all.get(all.size() - 1), scale);
        }
        return y + TRUNK_PX;
    }

    private void thickness(Width width, Scale scale) {
        double x = days.px(width.on());
        pen.writeOver(
                x,
                scale.px(width.mm()) - 7,
                x < left + 14 ? Pen.Anchor.START : days.anchorAt(x),
                Ink.INK,
                pen.sheet().units().bare(width.mm()));
    }

    private void ahead(double y) {
        double next = y;
        for (var one : drawing.ahead()) {
            double middle = next + ROW_PX / 2;
            var title = one.goal() ? "Stage: " + one.title() : one.title();
            var fitted = XmlText.fitted(title, BOLD_PX, left - 16);
            if (one.goal()) {
                pen.writeBold(4, middle + 4, Pen.Anchor.START, Ink.INK, fitted);
            } else {
                pen.write(4, middle + 4, Pen.Anchor.START, Ink.INK, fitted);
            }
            if (one.when() instanceof Outlook.Expected expected) {
                expected(expected, middle);
            } else if (one.when() instanceof Outlook.Unsaid) {
                unsaid(middle);
            }
            next += ROW_PX;
        }
    }

    private void expected(Outlook.Expected expected, double y) {
        double from = days.px(expected.earliest());
        var latest = expected.latest();
        double to = latest == null ? days.endPx() : days.px(latest);
        bar(from, Math.max(2, to - from), y);
        double likely = days.px(expected.likely());
        pen.line(likely, y - 8, likely, y + 8, Stroke.of(Ink.SHEET, 5));
        pen.line(likely, y - 7, likely, y + 7, Stroke.of(Ink.INK, 2.5));
    }

    private void bar(double x, double width, double y) {
        pen.box(x, y - 5, width, 10, pen.plain(Ink.SHEET), null);
        pen.box(x, y - 5, width, 10, pen.hatched(Hatch.RISING, Ink.MOSS), Stroke.of(Ink.MOSS, 1));
    }

    private void unsaid(double y) {
        double from = days.px(drawing.until());
        pen.line(from + 8, y, days.endPx() - 20, y, Stroke.of(Ink.EDGE, 1.5).dashed("3 5"));
        pen.writeOver(days.endPx() - 8, y + 5, Pen.Anchor.MIDDLE, Ink.INK, "?");
    }

    private void today(double end) {
        var today = drawing.today();
        if (today == null) {
            return;
        }
        double x = days.px(today);
        pen.line(x, TOP - 8, x, end, Stroke.of(Ink.SLATE, 1.5).dashed("2 3"));
        pen.writeBold(x, TOP - 14, days.anchorAt(x), Ink.SLATE, "today");
    }

    private double legend(double top) {
        var legend = new Legend(pen);
        if (has(Dot::signedOff)) {
            legend.add("signed off", (x, y) -> step(x, y, true));
        }
        if (has(dot -> !dot.signedOff())) {
            legend.add("done, not signed off", (x, y) -> step(x, y, false));
        }
        if (!drawing.wounds().isEmpty()) {
            legend.add(
                    "a wound, as thick as it is open",
                    (x, y) ->
                            pen.shape(
                                    Pen.path("M# #v10l18 -5z", x - 9, y - 5),
                                    pen.plain(Ink.OCHRE_WASH),
                                    Stroke.of(Ink.OCHRE, 1.2)));
        }
        if (drawing.ahead().stream().anyMatch(one -> one.when() instanceof Outlook.Expected)) {
            legend.add(
                    "8 cases in 10, and the likeliest day",
                    (x, y) -> {
                        bar(x - 9, 18, y);
                        pen.line(x, y - 7, x, y + 7, Stroke.of(Ink.INK, 2.5));
                    });
        }
        return legend.draw(4, top);
    }

    private boolean has(Predicate<Dot> which) {
        return drawing.steps().stream().anyMatch(which);
    }

    private String title() {
        return "Life of " + drawing.tree();
    }

    private String description() {
        var past =
                "From %s to %s: steps and work %d, photos %d, containers %d, wounds %d, trunk measured %d times."
                        .formatted(
                                Wording.day(drawing.from()),
                                Wording.day(drawing.until()),
                                drawing.steps().size(),
                                drawing.photos().size(),
                                drawing.containers().size(),
                                drawing.wounds().size(),
                                drawing.trunk().size());
        return drawing.ahead().isEmpty() ? past : past + " Right of today stands what is ahead.";
    }

    private record Row(LocalDate on, String kind, String what) {}

    private TextTable table() {
        var rows = new ArrayList<List<String>>();
        past().sorted(Comparator.comparing(Row::on))
                .forEach(row -> rows.add(List.of(Wording.day(row.on()), row.kind(), row.what())));
        drawing.ahead()
                .forEach(
                        one ->
                                rows.add(
                                        List.of(
                                                Wording.outlook(one.when()),
                                                one.goal() ? "Stage" : "Ahead",
                                                one.title())));
        return TextTable.ofSeries(title(), List.of("Day", "Kind", "What"), rows);
    }

    private Stream<Row> past() {
        return Stream.of(
                        drawing.stages().stream()
                                .map(since -> new Row(since.on(), "Stage", since.title())),
                        drawing.containers().stream()
                                .map(since -> new Row(since.on(), "Container", since.title())),
                        drawing.steps().stream()
                                .map(
                                        dot ->
                                                new Row(
                                                        dot.on(),
                                                        dot.signedOff() ? "Signed off" : "Done",
                                                        dot.title())),
                        drawing.photos().stream().map(on -> new Row(on, "Photo", "")),
                        drawing.wounds().stream()
                                .flatMap(
                                        wound ->
                                                wound.looks().stream()
                                                        .map(
                                                                look ->
                                                                        new Row(
                                                                                look.on(),
                                                                                "Wound",
                                                                                wound.place()
                                                                                        + ", "
                                                                                        + width(
                                                                                                look)))),
                        drawing.trunk().stream()
                                .map(width -> new Row(width.on(), "Trunk", width(width))))
                .flatMap(rows -> rows);
    }

    private String width(Width width) {
        return pen.sheet().units().length(width.mm());
    }
}
