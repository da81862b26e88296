package org.ripewood.pictures;

import java.util.List;
import java.util.Optional;

/**
 * Drawn answers of the first look at a tree, each the same tree or pot in another state, so that
 * the difference is what is seen. Without letters: the words stand beside them.
 */
public final class AnswerPicture {

    /** Narrower than sheets are otherwise, since nothing is written on it. */
    private static final Sheet SMALL = new Sheet(300, false, Units.METRIC);

    private static final double HEIGHT = 200;
    private static final Stroke LINE = Stroke.of(Ink.INK, 5);
    private static final Stroke FINE = Stroke.of(Ink.INK, 3);
    private static final Stroke LIVE = Stroke.of(Ink.MOSS, 5);
    private static final Stroke GONE = Stroke.of(Ink.EDGE, 3).dashed("6 6");

    private final Pen pen = new Pen(SMALL);

    private AnswerPicture() {}

    /**
     * The picture of an answer.
     *
     * @param question and {@code answer} as the first look codes them
     * @param label what the answer says; the picture's title
     * @return empty for an answer nobody has drawn
     */
    public static Optional<Picture> of(String question, String answer, String label) {
        var drawing = new AnswerPicture();
        return drawing.draw(question, answer)
                ? Optional.of(
                        drawing.pen.finish(
                                HEIGHT, label, label, new TextTable(label, List.of(), List.of())))
                : Optional.empty();
    }

    private boolean draw(String question, String answer) {
        switch (question + " " + answer) {
            case "twigs all" -> twigs(0);
            case "twigs tenth" -> twigs(1);
            case "twigs quarter" -> twigs(3);
            case "twigs half" -> twigs(6);
            case "leaves full" -> crown(Ink.MOSS, 0);
            case "leaves thin" -> crown(Ink.MOSS, 2);
            case "leaves pale" -> crown(Ink.MOSS_WASH, 0);
            case "leaves poor" -> crown(Ink.OCHRE_WASH, 4);
            case "container nursery" ->
                    potted("M95 95L205 95L190 185L110 185z", "M88 82h124v14h-124z");
            case "container training" ->
                    potted(
                            "M50 130L250 130L250 175L50 175z",
                            "M65 175h24v10h-24zM211 175h24v10h-24z");
            case "container show" ->
                    potted(
                            "M45 145Q150 152 255 145Q245 178 200 178L100 178Q55 178 45 145z",
                            "M85 178l6 10h18l4 -10zM187 178l4 10h18l6 -10z");
            case "container ground" -> ground();
            case "firm firm" -> firm();
            case "firm rocks" -> rocks();
            case "roots none" -> roots(0);
            case "roots quarter" -> roots(90);
            case "roots half" -> roots(180);
            case "roots whole" -> roots(350);
            case "flare round" ->
                    flare("M125 20C128 90 122 112 60 140L240 140C178 112 172 90 175 20z");
            case "flare partly" ->
                    flare("M125 20C127 90 125 120 122 140L240 140C178 112 172 90 175 20z");
            case "flare buried" -> flare("M125 20L125 140L175 140L175 20z");
            case "pests none" -> leaf(0);
            case "pests traces" -> leaf(2);
            case "pests some" -> leaf(6);
            case "pests heavy" -> leaf(14);
            case "water runs" -> waterRuns();
            case "water dry" -> waterDry();
            case "water stands" -> waterStands();
            case "wire none" -> branch(false);
            case "wire on" -> branch(true);
            case "branches one" -> node(1);
            case "branches two" -> node(2);
            case "branches more" -> node(4);
            case "front none" -> front(false);
            case "front tentative" -> front(true);
            case "cuts none" -> trunk(false);
            case "cuts narrow" -> trunk(true);
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Ten side twigs, so many of them dead. */
    private void twigs(int dead) {
        pen.shape("M150 195C146 135 156 80 150 26", null, Stroke.of(Ink.INK, 8));
        for (int i = 0; i < 10; i++) {
            double y = 178 - 15 * i;
            double x = i % 2 == 0 ? 240 - 5 * i : 60 + 5 * i;
            boolean gone = (i * 7) % 10 < dead;
            pen.shape(Pen.path("M150 #L# #", y, x, y - 24), null, gone ? GONE : LIVE);
            if (!gone) {
                pen.disc(x, y - 26, 9, pen.plain(Ink.MOSS), null);
            }
        }
    }

    /** Nine clouds of leaves, so many of them gone. */
    private void crown(Ink colour, int gone) {
        pen.shape(
                "M135 190C145 150 142 130 150 105C158 130 156 150 168 190z",
                pen.plain(Ink.INK),
                null);
        double[][] places = {
            {150, 40},
            {100, 62},
            {200, 62},
            {150, 80},
            {60, 95},
            {240, 95},
            {110, 105},
            {190, 105},
            {150, 118}
        };
        int[] first = {1, 5, 7, 3, 0, 2, 4, 6, 8};
        for (int i = 0; i < places.length; i++) {
            var place = places[first[i]];
            boolean missing = i < gone;
            pen.oval(
                    place[0],
                    place[1],
                    36,
                    24,
                    missing ? "none" : pen.plain(colour),
                    missing ? GONE : Stroke.of(Ink.INK, 2));
        }
    }

    private void tree(double foot) {
        pen.shape(
                Pen.path("M150 #C140 # 160 # 150 #", foot, foot - 20, foot - 36, foot - 50),
                null,
                Stroke.of(Ink.INK, 9));
        pen.oval(150, foot - 56, 46, 19, pen.plain(Ink.MOSS_WASH), Stroke.of(Ink.MOSS, 3));
    }

    private void potted(String body, String rim) {
        tree(body.startsWith("M95") ? 84 : body.startsWith("M50") ? 130 : 146);
        pen.shape(body, pen.plain(Ink.SHADE), LINE);
        pen.shape(rim, pen.plain(Ink.SHADE), FINE);
    }

    private void ground() {
        tree(120);
        pen.shape("M10 120H290", null, LINE);
        pen.shape(
                "M150 122C120 140 80 140 50 165M150 122C155 150 145 165 150 190M150 122C185 138 220 145 255 170",
                null,
                FINE);
        pen.shape(
                "M20 140h14M60 130h10M240 134h16M270 152h10M100 178h12M200 182h12",
                null,
                Stroke.of(Ink.EDGE, 3));
    }

    private void pot() {
        pen.shape("M60 120L240 120L225 185L75 185z", pen.plain(Ink.SHADE), LINE);
    }

    private void firm() {
        pen.shape(
                "M138 120C142 80 140 50 146 20L156 20C158 50 158 80 164 120z",
                pen.plain(Ink.INK),
                null);
        pot();
    }

    private void rocks() {
        pen.shape(
                "M142 122C156 84 166 52 184 22L195 26C182 58 174 88 166 122z",
                pen.plain(Ink.INK),
                null);
        pen.shape("M134 118C130 84 126 56 112 28", null, GONE);
        pot();
        pen.shape("M118 120l10 12l10 -12z", pen.plain(Ink.SHEET), FINE);
        pen.shape("M120 20Q150 4 178 12M170 4l9 8l-11 6", null, Stroke.of(Ink.OCHRE, 4));
    }

    /** Seen from above: a thick root follows the wall for so many degrees. */
    private void roots(double degrees) {
        pen.disc(150, 100, 92, pen.plain(Ink.SHADE), LINE);
        for (int i = 0; i < 7; i++) {
            double angle = Math.toRadians(25 + 51 * i);
            pen.line(
                    150 + 26 * Math.cos(angle),
                    100 + 26 * Math.sin(angle),
                    150 + 60 * Math.cos(angle),
                    100 + 60 * Math.sin(angle),
                    Stroke.of(Ink.EDGE, 5));
        }
        if (degrees > 0) {
            double end = Math.toRadians(degrees);
            pen.shape(
                    Pen.path(
                            "M176 100L226 100A76 76 0 # 1 # #",
                            degrees > 180 ? 1 : 0,
                            150 + 76 * Math.cos(end),
                            100 + 76 * Math.sin(end)),
                    null,
                    Stroke.of(Ink.OCHRE, 12));
        }
        pen.disc(150, 100, 28, pen.plain(Ink.INK), null);
    }

    private void flare(String trunk) {
        pen.shape(trunk, pen.plain(Ink.SHADE), LINE);
        pen.shape("M15 140H285V190H15z", pen.plain(Ink.RULE), null);
        pen.shape("M15 140H285", null, LINE);
    }

    private void leaf(int pests) {
        pen.shape(
                "M40 150C60 60 150 20 260 40C250 130 170 190 40 150z",
                pen.plain(Ink.MOSS_WASH),
                Stroke.of(Ink.MOSS, 4));
        pen.shape("M20 165C90 140 170 95 245 52", null, Stroke.of(Ink.MOSS, 4));
        for (int i = 0; i < pests; i++) {
            double x = 95 + (i * 37) % 130;
            double y = 78 + (i * 23) % 60;
            pen.oval(x, y, 8, 6, pen.plain(Ink.INK), null);
        }
    }

    private void waterRuns() {
        tree(80);
        pen.shape("M70 80L230 80L215 145L85 145z", pen.plain(Ink.EDGE), LINE);
        for (int i = 0; i < 4; i++) {
            pen.shape(
                    Pen.path("M# 155c-8 14 -8 22 0 22c8 0 8 -8 0 -22z", 105 + 30 * i),
                    pen.plain(Ink.SLATE),
                    null);
        }
    }

    private void waterDry() {
        tree(90);
        pen.shape("M70 90L230 90L215 180L85 180z", pen.plain(Ink.SHADE), LINE);
        pen.shape("M205 20L195 140", null, Stroke.of(Ink.OCHRE, 8));
        pen.shape(
                "M95 110l14 10M120 130l16 -6M100 155l18 6M150 150l14 -10M160 115l12 12",
                null,
                FINE);
    }

    private void waterStands() {
        tree(84);
        pen.shape("M70 70L230 70L215 180L85 180z", pen.plain(Ink.EDGE), LINE);
        pen.shape(
                "M73 84q13 -10 26 0t26 0t26 0t26 0t26 0t24 0L223 112L79 112z",
                pen.plain(Ink.SLATE_WASH),
                Stroke.of(Ink.SLATE, 4));
    }

    private void branch(boolean wired) {
        pen.shape(
                "M20 160C90 150 150 100 280 70L276 50C150 70 80 120 20 118z",
                pen.plain(Ink.SHADE),
                LINE);
        if (wired) {
            for (int i = 0; i < 7; i++) {
                double x = 45 + 32 * i;
                double y = 158 - 12.6 * i;
                pen.shape(
                        Pen.path(
                                "M# #C# # # # # #",
                                x,
                                y,
                                x - 6,
                                y - 20,
                                x + 6,
                                y - 34,
                                x + 20,
                                y - 46 + 3 * i),
                        null,
                        Stroke.of(Ink.OCHRE, 6));
            }
        }
    }

    /** So many shoots grow from one place of the trunk. */
    private void node(int shoots) {
        pen.shape("M140 195L144 10L158 10L164 195z", pen.plain(Ink.SHADE), LINE);
        double[][] tips = {{250, 60}, {50, 60}, {265, 125}, {35, 125}};
        for (int i = 0; i < shoots; i++) {
            pen.shape(
                    Pen.path(
                            "M152 110Q# # # #",
                            (152 + tips[i][0]) / 2,
                            105,
                            tips[i][0],
                            tips[i][1]),
                    null,
                    Stroke.of(Ink.INK, 7));
            pen.disc(tips[i][0], tips[i][1], 12, pen.plain(Ink.MOSS), null);
        }
        pen.disc(152, 110, 10, pen.plain(Ink.OCHRE), FINE);
    }

    /** Seen from above, with the eye below. */
    private void front(boolean marked) {
        pen.disc(150, 80, 66, pen.plain(Ink.SHADE), LINE);
        pen.disc(150, 80, 22, pen.plain(Ink.INK), null);
        pen.shape("M150 58L135 34M170 90L196 104M130 90L104 104", null, LINE);
        if (marked) {
            pen.shape("M138 128h24v34h-24z", pen.plain(Ink.OCHRE_WASH), Stroke.of(Ink.OCHRE, 4));
            pen.shape("M112 186Q150 160 188 186Q150 204 112 186z", pen.plain(Ink.SHEET), FINE);
            pen.disc(150, 185, 7, pen.plain(Ink.INK), null);
        } else {
            pen.shape(
                    "M60 130A95 62 0 0 0 240 130M230 144l11 -14l12 12",
                    null,
                    Stroke.of(Ink.OCHRE, 4));
        }
    }

    /** A scar on a trunk, closed to a line or with a strip of bare wood left in it. */
    private void trunk(boolean open) {
        pen.shape(
                "M100 195C112 130 108 70 120 10L180 10C190 70 190 130 204 195z",
                pen.plain(Ink.SHADE),
                LINE);
        pen.oval(150, 100, 22, 30, pen.plain(Ink.RULE), FINE);
        if (open) {
            pen.oval(150, 100, 7, 20, pen.plain(Ink.OCHRE_WASH), FINE);
        } else {
            pen.shape("M150 76L150 124", null, FINE);
        }
    }
}
