package org.ripewood.pictures;

import java.util.ArrayList;
import java.util.List;

/**
 * How far a tree is on its way through the stages: lengths of one line, growing shorter to the tip
 * as the internodes of a shoot do, and filled as far as the tree is.
 */
public final class StageBandPicture {

    /** Each length is so much of the one before. */
    private static final double SHORTER = 0.82;

    private static final double LINE_Y = 40;
    private static final double SHOOT_PX = 7;
    private static final double NODE_PX = 5.5;
    private static final double EDGE_PX = 8;

    /**
     * What is drawn.
     *
     * @param titles of all stages, the first one first
     * @param here the stage the tree is in, from 1
     * @param howFar how much of what this stage asks for the tree has, 0 to 1; what is not a number
     *     counts as nothing
     */
    public record Band(List<String> titles, int here, double howFar) {

        /**
         * @throws IllegalArgumentException when there is no stage, or none with the number {@code
         *     here}
         */
        public Band {
            titles = List.copyOf(titles);
            if (here < 1 || here > titles.size()) {
                throw new IllegalArgumentException(
                        "a stage is 1 to %d, found %d".formatted(titles.size(), here));
            }
            howFar = Double.isNaN(howFar) ? 0 : Math.max(0, Math.min(1, howFar));
        }

        String title() {
            return titles.get(here - 1);
        }

        /** Downwards, so that nothing missing is told as everything there only when it is so. */
        long percent() {
            return (long) Math.floor(100 * howFar);
        }
    }

    private final Band band;
    private final Pen pen;
    private final boolean narrow;
    private final double[] nodes;

    private StageBandPicture(Band band, Sheet sheet) {
        this.band = band;
        this.pen = new Pen(sheet);
        this.narrow = sheet.narrow();
        this.nodes = nodes(band.titles().size(), EDGE_PX, sheet.widthPx() - 2 * EDGE_PX);
    }

    /**
     * Draws it. On a narrow sheet the lengths bear their numbers, on a wide one their titles too.
     */
    public static Picture of(Band band, Sheet sheet) {
        return new StageBandPicture(band, sheet).draw();
    }

    /** Where the lengths begin, and where the last one ends. */
    private static double[] nodes(int count, double start, double room) {
        double whole = (1 - Math.pow(SHORTER, count)) / (1 - SHORTER);
        var nodes = new double[count + 1];
        nodes[0] = start;
        for (int i = 0; i < count; i++) {
            nodes[i + 1] = nodes[i] + room * Math.pow(SHORTER, i) / whole;
        }
        return nodes;
    }

    private double tip() {
        double from = nodes[band.here() - 1];
        return from + (nodes[band.here()] - from) * band.howFar();
    }

    private Picture draw() {
        double last = nodes[nodes.length - 1];
        pen.line(nodes[0], LINE_Y, last, LINE_Y, Stroke.of(Ink.EDGE, SHOOT_PX));
        pen.line(nodes[0], LINE_Y, last, LINE_Y, Stroke.of(Ink.SHEET, SHOOT_PX - 2));
        pen.line(nodes[0], LINE_Y, tip(), LINE_Y, Stroke.of(Ink.MOSS, SHOOT_PX));
        for (int i = 0; i < nodes.length; i++) {
            node(i);
        }
        double end = LINE_Y;
        for (int i = 0; i < band.titles().size(); i++) {
            end = Math.max(end, label(i));
        }
        here();
        return pen.finish(end + 4, title(), description(), table());
    }

    /** A node with a leaf where the tree has been, an empty one where it is still to come. */
    private void node(int i) {
        boolean reached = i < band.here();
        double x = nodes[i];
        if (reached && i > 0) {
            pen.shape(
                    Pen.path("M# #c4 -12 14 -14 20 -12c-2 8 -10 13 -20 12z", x, LINE_Y - 3),
                    pen.plain(Ink.MOSS_WASH),
                    Stroke.of(Ink.MOSS, 1.2));
        }
        pen.disc(
                x,
                LINE_Y,
                NODE_PX,
                pen.plain(reached ? Ink.MOSS : Ink.SHEET),
                Stroke.of(reached ? Ink.MOSS : Ink.EDGE, 1.5));
    }

    private double label(int i) {
        boolean now = i == band.here() - 1;
        double middle = (nodes[i] + nodes[i + 1]) / 2;
        var number = Integer.toString(i + 1);
        double y = LINE_Y + 24;
        if (narrow) {
            write(middle, y, now, number);
            return y + 6;
        }
        double room = nodes[i + 1] - nodes[i] - 6;
        for (var line :
                XmlText.lines(number + " " + band.titles().get(i), Pen.LETTER_PX * 1.04, room)) {
            write(middle, y, now, line);
            y += Pen.LINE_PX;
        }
        return y - Pen.LINE_PX + 6;
    }

    private void write(double x, double y, boolean now, String text) {
        if (now) {
            pen.writeBold(x, y, Pen.Anchor.MIDDLE, Ink.INK, text);
        } else {
            pen.write(x, y, Pen.Anchor.MIDDLE, Ink.SOFT, text);
        }
    }

    /** A pointer to where the tree is, with the word inside the sheet. */
    private void here() {
        double x = tip();
        pen.shape(
                Pen.path("M# #l-6 -9h12z", x, LINE_Y - SHOOT_PX),
                pen.plain(Ink.INK),
                Stroke.of(Ink.SHEET, 1));
        double right = nodes[nodes.length - 1];
        var anchor =
                x < EDGE_PX + 20
                        ? Pen.Anchor.START
                        : x > right - 20 ? Pen.Anchor.END : Pen.Anchor.MIDDLE;
        pen.writeBold(x, LINE_Y - SHOOT_PX - 13, anchor, Ink.INK, "here");
    }

    private String title() {
        return "Stage %d of %d: %s".formatted(band.here(), band.titles().size(), band.title());
    }

    private String description() {
        return "The tree has %d %% of what this stage asks for.".formatted(band.percent());
    }

    private TextTable table() {
        var rows = new ArrayList<List<String>>();
        for (int i = 1; i <= band.titles().size(); i++) {
            rows.add(List.of(band.titles().get(i - 1), state(i)));
        }
        return new TextTable("The stages", List.of("Stage", "How far"), rows);
    }

    private String state(int stage) {
        if (stage == band.here()) {
            return "here, %d %%".formatted(band.percent());
        }
        return stage < band.here() ? "passed" : "to come";
    }
}
