package org.ripewood.pictures;

import org.ripewood.core.growth.TaperProfile;

/** A trunk as it stands before one: its outline, and what is on it. */
final class FrontView {

    private static final double MARKS_PX = 86;
    private static final double LABELS_PX = 104;

    private final TrunkDrawing drawing;
    private final Pen pen;
    private final double right;
    private final double middle;
    private final double ground;
    private final double top;
    private final double pxPerMm;
    private final SideLabels labels = new SideLabels();

    FrontView(TrunkDrawing drawing, Pen pen, double widthPx, double top, double heightPx) {
        this.drawing = drawing;
        this.pen = pen;
        this.right = widthPx;
        this.top = top;
        this.ground = top + heightPx;
        double room = widthPx - MARKS_PX - LABELS_PX;
        this.middle = MARKS_PX + room / 2;
        double forHeight = (heightPx - 8) / drawing.topMm();
        this.pxPerMm = Math.min(forHeight, room * 0.5 / drawing.widestMm());
    }

    /** Draws it and tells where it ends. */
    double draw() {
        branches(true);
        trunk();
        marks();
        branches(false);
        wounds();
        bulges();
        soil();
        double end = labels.draw(pen, right - LABELS_PX + 10, LABELS_PX - 12, top, ground - 4);
        return Math.max(end, ground + 14);
    }

    private double y(double heightMm) {
        return ground - Math.min(heightMm, drawing.topMm()) * pxPerMm;
    }

    private double radius(double heightMm) {
        return drawing.radiusMm(heightMm) * pxPerMm;
    }

    private void trunk() {
        var readings = drawing.profile().readings();
        double low = readings.isEmpty() ? 0 : readings.get(0).heightMm();
        double high = readings.isEmpty() ? 0 : readings.get(readings.size() - 1).heightMm();
        var guess = Stroke.of(Ink.EDGE, 1.2).dashed("4 3");
        piece(0, low, guess);
        piece(high, drawing.topMm(), guess);
        for (int i = 1; i < readings.size(); i++) {
            piece(
                    readings.get(i - 1).heightMm(),
                    readings.get(i).heightMm(),
                    Stroke.of(Ink.INK, 1.6));
        }
    }

    private void piece(double fromMm, double toMm, Stroke edge) {
        double a = radius(fromMm);
        double b = radius(toMm);
        double y1 = y(fromMm);
        double y2 = y(toMm);
        if (y1 - y2 < 0.05) {
            return;
        }
        var fill = edge.dashes().isEmpty() ? pen.plain(Ink.SHADE) : pen.plain(Ink.SHEET);
        pen.shape(
                Pen.path(
                        "M# #L# #L# #L# #z",
                        middle - a,
                        y1,
                        middle - b,
                        y2,
                        middle + b,
                        y2,
                        middle + a,
                        y1),
                fill,
                null);
        pen.line(middle - a, y1, middle - b, y2, edge);
        pen.line(middle + a, y1, middle + b, y2, edge);
    }

    /** Where it was measured: a stroke across, and height and diameter in the left margin. */
    private void marks() {
        var units = pen.sheet().units();
        double last = ground + 20;
        for (var reading : drawing.profile().readings()) {
            double y = y(reading.heightMm());
            double half = radius(reading.heightMm());
            pen.line(middle - half, y, middle + half, y, Stroke.of(Ink.EDGE, 0.8));
            if (last - y >= 15) {
                pen.line(MARKS_PX - 12, y, middle - half - 2, y, tick());
                pen.write(MARKS_PX - 14, y + 4, Pen.Anchor.END, Ink.SOFT, told(reading, units));
                last = y;
            }
        }
    }

    private static Stroke tick() {
        return Stroke.of(Ink.RULE, 0.8);
    }

    private static String told(TaperProfile.Reading reading, Units units) {
        return "%s: ⌀ %s"
                .formatted(units.bare(reading.heightMm()), units.bare(reading.diameterMm()));
    }

    private void branches(boolean behind) {
        for (int i = 0; i < drawing.branches().size(); i++) {
            var branch = drawing.branches().get(i);
            var heightMm = branch.heightMm();
            var degrees = branch.bearingDegrees();
            if (heightMm == null || degrees == null) {
                continue;
            }
            boolean back = Math.cos(Math.toRadians(degrees)) < -0.01;
            if (back == behind) {
                var end = branch(branch, heightMm, -Math.sin(Math.toRadians(degrees)), back);
                labels.add(
                        end[0],
                        end[1],
                        TrunkDrawing.letter(i) + " " + branch.girth(pen.sheet().units()));
            }
        }
    }

    /** Draws one and tells where its end lies. */
    private double[] branch(BranchPlace branch, double heightMm, double aside, boolean back) {
        double y = y(heightMm);
        double x = middle + aside * radius(heightMm);
        var measured = branch.diameterMm();
        double thick = Math.max(3, Math.min(40, (measured == null ? 0 : measured) * pxPerMm));
        var edge = back ? Stroke.of(Ink.EDGE, 1).dashed("3 2") : Stroke.of(Ink.INK, 1.3);
        var fill = pen.plain(back ? Ink.SHEET : Ink.SHADE);
        double length = 46 * Math.abs(aside);
        if (length < 14) {
            pen.disc(x, y, thick / 2 + 2, fill, edge);
            pen.disc(x, y, thick / 4, "none", edge);
            return new double[] {x, y};
        }
        double tip = x + Math.signum(aside) * length;
        double rise = length * 0.45;
        var outline =
                Pen.path(
                        "M# #L# #L# #L# #z",
                        x - Math.signum(aside) * 2,
                        y - thick / 2,
                        tip,
                        y - rise - thick / 3,
                        tip,
                        y - rise + thick / 3,
                        x - Math.signum(aside) * 2,
                        y + thick / 2);
        pen.shape(outline, fill, edge);
        if (branch.temporary()) {
            pen.shape(outline, pen.hatched(Hatch.FALLING, Ink.SOFT), edge);
        }
        return new double[] {tip, y - rise};
    }

    private void wounds() {
        for (int i = 0; i < drawing.wounds().size(); i++) {
            var wound = drawing.wounds().get(i);
            var heightMm = wound.heightMm();
            var degrees = wound.bearingDegrees();
            if (heightMm == null || degrees == null) {
                continue;
            }
            double radians = Math.toRadians(degrees);
            double x = middle - Math.sin(radians) * radius(heightMm);
            double seen = Math.max(0.25, Math.abs(Math.cos(radians)));
            WoundSign.draw(
                    pen,
                    wound,
                    x,
                    y(heightMm),
                    held(wound.widthMm() * seen, radius(heightMm) * 2),
                    held(wound.lengthMm(), 120),
                    Math.cos(radians) < -0.01);
            labels.add(x, y(heightMm), (i + 1) + " " + wound.state(pen.sheet().units()));
        }
    }

    /** Half a length on the sheet, not too small to be seen and not beyond what is there. */
    private double held(double mm, double mostPx) {
        return Math.max(2.5, Math.min(mm * pxPerMm, Math.max(5, mostPx)) / 2);
    }

    private void bulges() {
        for (var bulge : drawing.profile().bulges()) {
            double y = y(bulge.wide().heightMm());
            double half = radius(bulge.wide().heightMm());
            pen.shape(Pen.path("M# #l-7 -4v8z", middle - half - 2, y), pen.plain(Ink.OCHRE), null);
            pen.shape(Pen.path("M# #l7 -4v8z", middle + half + 2, y), pen.plain(Ink.OCHRE), null);
            labels.add(middle + half + 8, y, "bulge");
        }
    }

    private void soil() {
        double from = MARKS_PX - 4;
        double wide = right - LABELS_PX - from;
        pen.line(from, ground, from + wide, ground, Stroke.of(Ink.INK, 1.4));
        pen.box(from, ground + 1, wide, 9, pen.hatched(Hatch.DOTTED, Ink.SOFT), null);
    }
}
