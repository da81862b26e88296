package org.ripewood.pictures;

/** How a wound is drawn: hatched while open, a ring once closed, grained where it is to stay. */
final class WoundSign {

    private WoundSign() {}

    /**
     * @param rx half its width on the sheet
     * @param ry half its length on the sheet
     * @param behind whether it lies on the far side: then only a dashed outline is seen
     */
    static void draw(
            Pen pen, WoundPlace wound, double x, double y, double rx, double ry, boolean behind) {
        if (behind) {
            pen.oval(x, y, rx, ry, "none", Stroke.of(Ink.INK, 1.2).dashed("3 2"));
        } else if (wound.deadwood()) {
            pen.oval(x, y, rx, ry, pen.plain(Ink.SHEET), null);
            pen.oval(x, y, rx, ry, pen.hatched(Hatch.UPRIGHT, Ink.SOFT), Stroke.of(Ink.INK, 1));
        } else if (wound.openMm() == 0) {
            pen.oval(x, y, rx, ry, pen.plain(Ink.MOSS_WASH), Stroke.of(Ink.MOSS, 2.5));
            pen.disc(x, y, 1.8, pen.plain(Ink.MOSS), null);
        } else {
            open(pen, wound, x, y, rx, ry);
        }
    }

    private static void open(Pen pen, WoundPlace wound, double x, double y, double rx, double ry) {
        double share = Math.max(0.2, Math.min(1, wound.openMm() / wound.widthMm()));
        pen.oval(x, y, rx, ry, pen.plain(Ink.OCHRE_WASH), Stroke.of(Ink.OCHRE, 1.5));
        double lip = rx * (1 - share);
        double length = Math.max(1, ry - lip);
        pen.oval(x, y, rx * share, length, pen.plain(Ink.SHEET), null);
        pen.oval(
                x,
                y,
                rx * share,
                length,
                pen.hatched(Hatch.CROSSED, Ink.INK),
                Stroke.of(Ink.INK, 1.2));
    }
}
