package org.ripewood.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A trunk's outline with its wounds and branches, from the front and from above. */
public final class TrunkPicture {

    private final TrunkDrawing drawing;
    private final Pen pen;
    private final Units units;

    private TrunkPicture(TrunkDrawing drawing, Sheet sheet) {
        this.drawing = drawing;
        this.pen = new Pen(sheet);
        this.units = sheet.units();
    }

    /**
     * Draws it, in true proportion.
     *
     * <p>What lies on the far side is dashed, and so is an outline nobody measured. A bearing of 90
     * degrees is at the left hand of who stands before the tree. Edge cases: what has no height or
     * no bearing is not drawn but counted below, and stands in the table. Limits: a trunk is drawn
     * upright and round, as its movement is not measured.
     */
    public static Picture of(TrunkDrawing drawing, Sheet sheet) {
        return new TrunkPicture(drawing, sheet).draw();
    }

    /** The same from the front alone, where there is little room: no signs are explained. */
    public static Picture front(TrunkDrawing drawing, Sheet sheet) {
        return new TrunkPicture(drawing, sheet).drawFront();
    }

    private Picture drawFront() {
        double end = new FrontView(drawing, pen, pen.sheet().widthPx(), 24, 310).draw();
        return pen.finish(end + 8, title(), description(), table());
    }

    private Picture draw() {
        boolean narrow = pen.sheet().narrow();
        double front = narrow ? pen.sheet().widthPx() : pen.sheet().widthPx() * 0.56;
        pen.write(4, 14, Pen.Anchor.START, Ink.SOFT, "from the front");
        pen.write(4, 31, Pen.Anchor.START, Ink.SOFT, "height: ⌀, " + units.word());
        double end = new FrontView(drawing, pen, front, 44, narrow ? 280 : 310).draw();
        double reach = narrow ? 92 : 104;
        double top = narrow ? end + 8 : 0;
        double middle = narrow ? front / 2 : (front + pen.sheet().widthPx()) / 2;
        pen.write(narrow ? 4 : front + 16, top + 14, Pen.Anchor.START, Ink.SOFT, "from above");
        double centre = narrow ? top + reach + 24 : 44 + 150;
        new AboveView(drawing, pen, middle, centre, reach).draw();
        end = Math.max(end, centre + reach + 32);
        return pen.finish(below(legend(end)), title(), description(), table());
    }

    private double legend(double top) {
        var legend = new Legend(pen);
        sign(legend, "open wound", new WoundPlace("", 0.0, 0.0, 2, 2, 1, false));
        sign(legend, "closed wound", new WoundPlace("", 0.0, 0.0, 2, 2, 0, false));
        sign(legend, "deadwood, to stay", new WoundPlace("", 0.0, 0.0, 2, 2, 2, true));
        legend.add(
                "branch for a while only",
                (x, y) ->
                        pen.box(
                                x - 9,
                                y - 4,
                                18,
                                8,
                                pen.hatched(Hatch.FALLING, Ink.SOFT),
                                Stroke.of(Ink.INK, 1)));
        legend.add(
                "far side",
                (x, y) -> pen.oval(x, y, 8, 5, "none", Stroke.of(Ink.INK, 1.2).dashed("3 2")));
        return legend.draw(4, top);
    }

    private void sign(Legend legend, String words, WoundPlace wound) {
        legend.add(words, (x, y) -> WoundSign.draw(pen, wound, x, y, 6, 6, false));
    }

    /** Tells what could not be drawn. */
    private double below(double end) {
        double room = pen.sheet().widthPx() - 8.0;
        double next = end;
        if (drawing.profile().readings().isEmpty()) {
            next = pen.writeLines(4, next + 14, room, Ink.INK, "No diameter measured yet.") - 12;
        }
        long unplaced = unplaced();
        if (unplaced > 0) {
            var words =
                    "Not drawn, as height or bearing is missing: %d; see the table."
                            .formatted(unplaced);
            next = pen.writeLines(4, next + 14, room, Ink.INK, words) - 12;
        }
        return next + 6;
    }

    private long unplaced() {
        return Stream.concat(
                        drawing.wounds().stream()
                                .filter(w -> w.heightMm() == null || w.bearingDegrees() == null),
                        drawing.branches().stream()
                                .filter(b -> b.heightMm() == null || b.bearingDegrees() == null))
                .count();
    }

    private String title() {
        return "Trunk of " + drawing.tree();
    }

    private String description() {
        var open = drawing.wounds().stream().filter(w -> !w.deadwood() && w.openMm() > 0).count();
        return "Trunk measured at %s; %s, %d open; %s; %s."
                .formatted(
                        counted(drawing.profile().readings().size(), "height"),
                        counted(drawing.wounds().size(), "wound"),
                        open,
                        counted(drawing.branches().size(), "branch"),
                        bulges());
    }

    private static String counted(int number, String one) {
        var many = one.endsWith("ch") ? one + "es" : one + "s";
        return number + " " + (number == 1 ? one : many);
    }

    private String bulges() {
        var bulges = drawing.profile().bulges();
        if (bulges.isEmpty()) {
            return "no reverse taper seen";
        }
        var heights = bulges.stream().map(each -> units.length(each.wide().heightMm())).toList();
        return "thicker than below at " + String.join(", ", heights);
    }

    private TextTable table() {
        var rows = new ArrayList<List<String>>();
        for (var reading : drawing.profile().readings()) {
            rows.add(
                    row(
                            "trunk",
                            "diameter",
                            reading.heightMm(),
                            null,
                            units.length(reading.diameterMm())));
        }
        for (int i = 0; i < drawing.wounds().size(); i++) {
            var wound = drawing.wounds().get(i);
            rows.add(
                    row(
                            (i + 1) + " " + wound.name(),
                            "wound",
                            wound.heightMm(),
                            wound.bearingDegrees(),
                            wound.state(units)));
        }
        for (int i = 0; i < drawing.branches().size(); i++) {
            var branch = drawing.branches().get(i);
            rows.add(
                    row(
                            TrunkDrawing.letter(i) + " " + branch.name(),
                            branch.role(),
                            branch.heightMm(),
                            branch.bearingDegrees(),
                            branch.girth(units)));
        }
        return new TextTable(title(), List.of("Mark", "Kind", "Height", "Bearing", "State"), rows);
    }

    private List<String> row(
            String mark,
            String kind,
            @Nullable Double heightMm,
            @Nullable Double degrees,
            String state) {
        return List.of(
                mark,
                kind,
                heightMm == null ? "not noted" : units.length(heightMm),
                bearing(kind, degrees),
                state);
    }

    private static String bearing(String kind, @Nullable Double degrees) {
        if (degrees == null) {
            return kind.equals("diameter") ? "all round" : "not noted";
        }
        return String.format(Locale.ROOT, "%s (%.0f°)", Wording.bearing(degrees), degrees);
    }
}
