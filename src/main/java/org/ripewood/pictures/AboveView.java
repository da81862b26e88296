package org.ripewood.pictures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** A trunk as it is seen from above, its front below. */
final class AboveView {

    private static final double TAG_PX = 15;

    private record Tag(double x, double y) {}

    private final TrunkDrawing drawing;
    private final Pen pen;
    private final double x;
    private final double y;
    private final double reach;
    private final double pxPerMm;
    private final List<Tag> tags = new ArrayList<>();

    /** Around a middle, as far as {@code reach} on every side. */
    AboveView(TrunkDrawing drawing, Pen pen, double x, double y, double reach) {
        this.drawing = drawing;
        this.pen = pen;
        this.x = x;
        this.y = y;
        this.reach = reach;
        this.pxPerMm = reach * 0.72 / drawing.widestMm();
    }

    void draw() {
        directions();
        double base = drawing.radiusMm(0) * pxPerMm;
        boolean measured = !drawing.profile().readings().isEmpty();
        var edge = measured ? Stroke.of(Ink.INK, 1.6) : Stroke.of(Ink.EDGE, 1.2).dashed("4 3");
        branches();
        pen.disc(x, y, base, pen.plain(measured ? Ink.SHADE : Ink.SHEET), edge);
        for (var reading : drawing.profile().readings()) {
            pen.disc(x, y, reading.diameterMm() / 2 * pxPerMm, "none", Stroke.of(Ink.EDGE, 0.7));
        }
        wounds(base);
    }

    private void directions() {
        pen.write(x, y + reach + 24, Pen.Anchor.MIDDLE, Ink.INK, "front");
        pen.shape(Pen.path("M# #l6 -8l6 8z", x - 6, y + reach + 12), pen.plain(Ink.INK), null);
        pen.write(x, y - reach - 4, Pen.Anchor.MIDDLE, Ink.SOFT, "back");
        pen.disc(x, y, reach, "none", Stroke.of(Ink.RULE, 0.8));
    }

    private void branches() {
        var order =
                IntStream.range(0, drawing.branches().size())
                        .boxed()
                        .sorted(Comparator.comparingDouble(this::heightOf))
                        .toList();
        for (int i : order) {
            var branch = drawing.branches().get(i);
            var degrees = branch.bearingDegrees();
            if (degrees != null && branch.heightMm() != null) {
                branch(branch, degrees, heightOf(i) / drawing.topMm(), TrunkDrawing.letter(i));
            }
        }
    }

    private double heightOf(int index) {
        var heightMm = drawing.branches().get(index).heightMm();
        return heightMm == null ? 0 : heightMm;
    }

    /** The lower it grows, the farther it reaches. */
    private void branch(BranchPlace branch, double degrees, double share, String letter) {
        double length = reach * (0.86 - 0.3 * share);
        double wide = branch.diameterMm() == null ? 0 : branch.diameterMm() * pxPerMm;
        double half = Math.max(2, Math.min(reach / 4, wide / 2));
        double radians = Math.toRadians(degrees);
        double dx = -Math.sin(radians);
        double dy = Math.cos(radians);
        double thin = half * 0.6;
        var outline =
                Pen.path(
                        "M# #L# #L# #L# #z",
                        x - dy * half,
                        y + dx * half,
                        x + dx * length - dy * thin,
                        y + dy * length + dx * thin,
                        x + dx * length + dy * thin,
                        y + dy * length - dx * thin,
                        x + dy * half,
                        y - dx * half);
        pen.shape(outline, pen.plain(Ink.SHADE), Stroke.of(Ink.INK, 1));
        if (branch.temporary()) {
            pen.shape(outline, pen.hatched(Hatch.FALLING, Ink.SOFT), Stroke.of(Ink.INK, 1));
        }
        tag(dx, dy, length + 9, letter);
    }

    private void wounds(double base) {
        for (int i = 0; i < drawing.wounds().size(); i++) {
            var wound = drawing.wounds().get(i);
            var degrees = wound.bearingDegrees();
            if (degrees == null || wound.heightMm() == null) {
                continue;
            }
            double radians = Math.toRadians(degrees);
            double radius = Math.max(3, drawing.radiusMm(wound.heightMm()) * pxPerMm);
            double dx = -Math.sin(radians);
            double dy = Math.cos(radians);
            pen.line(
                    x + dx * radius,
                    y + dy * radius,
                    x + dx * (base + 5),
                    y + dy * (base + 5),
                    Stroke.of(Ink.EDGE, 0.8));
            double size = Math.max(3.5, Math.min(radius / 2, wound.widthMm() * pxPerMm / 2));
            WoundSign.draw(pen, wound, x + dx * radius, y + dy * radius, size, size, false);
            tag(dx, dy, Math.max(base, radius + size) + 12, Integer.toString(i + 1));
        }
    }

    /** Farther out where there is one already. */
    private void tag(double dx, double dy, double radius, String words) {
        double out = radius;
        while (taken(x + dx * out, y + dy * out) && out < reach * 2) {
            out += 4;
        }
        double held = Math.min(out, reach + 4);
        tags.add(new Tag(x + dx * held, y + dy * held));
        pen.writeOver(x + dx * held, y + dy * held + 4, Pen.Anchor.MIDDLE, Ink.INK, words);
    }

    private boolean taken(double tagX, double tagY) {
        return tags.stream().anyMatch(tag -> Math.hypot(tag.x() - tagX, tag.y() - tagY) < TAG_PX);
    }
}
