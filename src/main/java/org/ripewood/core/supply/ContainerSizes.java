package org.ripewood.core.supply;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A container's inner sizes as somebody measured them, which may be impossible.
 *
 * @param topLengthMm the diameter at the rim where it is round
 * @param topWidthMm not looked at where it is round
 * @param bottomLengthMm the diameter at the bottom where it is round
 * @param bottomWidthMm not looked at where it is round
 * @param depthMm from rim to bottom, inside
 * @param lipMm left free at the rim for watering
 * @param dressingMm thickness of the top dressing; 0 for none
 */
public record ContainerSizes(
        Outline outline,
        double topLengthMm,
        double topWidthMm,
        double bottomLengthMm,
        double bottomWidthMm,
        double depthMm,
        double lipMm,
        double dressingMm) {

    /** Smaller ones hold no tree, larger ones are built beds (common practice, no source). */
    public static final double LEAST_MM = 10;

    public static final double MOST_MM = 3000;

    /** A container whose walls stand upright. */
    public static ContainerSizes straight(
            Outline outline, double lengthMm, double widthMm, double depthMm, double lipMm) {
        return new ContainerSizes(outline, lengthMm, widthMm, lengthMm, widthMm, depthMm, lipMm, 0);
    }

    /**
     * Sizes as people give them, with what goes without saying left out.
     *
     * <p>Edge cases: a round container has no width, and one that is not its diameter is refused;
     * any other has one. Without any size at the bottom the walls stand upright; with a length
     * there a width is asked for as well, and the other way round.
     */
    public static Reckoned<ContainerSizes> of(
            Outline outline,
            double topLengthMm,
            @Nullable Double topWidthMm,
            @Nullable Double bottomLengthMm,
            @Nullable Double bottomWidthMm,
            double depthMm,
            double lipMm,
            double dressingMm) {
        var refusals = new ArrayList<Refusal>();
        boolean upright = bottomLengthMm == null && bottomWidthMm == null;
        double width = width("topWidthMm", outline, topLengthMm, topWidthMm, refusals);
        if (!upright && bottomLengthMm == null) {
            refusals.add(
                    new Refusal(
                            "bottomLengthMm",
                            "expected a length as well as a width, found nothing"));
        }
        double bottomLength = bottomLengthMm == null ? topLengthMm : bottomLengthMm;
        double bottomWidth =
                upright
                        ? width
                        : width("bottomWidthMm", outline, bottomLength, bottomWidthMm, refusals);
        return refusals.isEmpty()
                ? Reckoned.found(
                        new ContainerSizes(
                                outline,
                                topLengthMm,
                                width,
                                bottomLength,
                                bottomWidth,
                                depthMm,
                                lipMm,
                                dressingMm))
                : new Reckoned.Refused<>(refusals);
    }

    private static double width(
            String field,
            Outline outline,
            double length,
            @Nullable Double width,
            List<Refusal> refusals) {
        if (outline == Outline.ROUND && width != null && width != length) {
            refusals.add(Refusal.of(field, "nothing, since what is round has one diameter", width));
        }
        if (outline != Outline.ROUND && width == null) {
            refusals.add(new Refusal(field, "expected a width, found nothing"));
        }
        return width == null ? length : width;
    }

    /**
     * The container these sizes make.
     *
     * <p>Edge cases: a bottom wider than the top and a width above the length are remarks and no
     * refusals, since bag-shaped containers exist; lip and dressing that leave no room for
     * substrate are refused, and so is a size outside {@link #LEAST_MM} to {@link #MOST_MM} (for
     * lip and dressing from 0). All faults are told, not only the first.
     */
    public Reckoned<Container> reckon() {
        var refusals = new ArrayList<Refusal>();
        size("topLengthMm", topLengthMm, refusals);
        size("bottomLengthMm", bottomLengthMm, refusals);
        if (outline != Outline.ROUND) {
            size("topWidthMm", topWidthMm, refusals);
            size("bottomWidthMm", bottomWidthMm, refusals);
        }
        size("depthMm", depthMm, refusals);
        layer("lipMm", lipMm, refusals);
        layer("dressingMm", dressingMm, refusals);
        if (refusals.isEmpty()) {
            room(refusals);
        }
        return refusals.isEmpty()
                ? new Reckoned.Found<>(new Container(shape(), lipMm, dressingMm), remarks())
                : new Reckoned.Refused<>(refusals);
    }

    private ContainerShape shape() {
        return switch (outline) {
            case ROUND -> new ContainerShape.Round(topLengthMm, bottomLengthMm, depthMm);
            case OVAL ->
                    new ContainerShape.Oval(
                            topLengthMm, topWidthMm, bottomLengthMm, bottomWidthMm, depthMm);
            case RECTANGULAR ->
                    new ContainerShape.Rectangular(
                            topLengthMm, topWidthMm, bottomLengthMm, bottomWidthMm, depthMm);
        };
    }

    private static void size(String field, double mm, List<Refusal> refusals) {
        if (!(mm >= LEAST_MM && mm <= MOST_MM)) {
            var expected = "%s to %s mm".formatted(Plain.number(LEAST_MM), Plain.number(MOST_MM));
            refusals.add(
                    mm > 0 && mm < LEAST_MM
                            ? Refusal.of(field, expected, mm, "it was read in centimetres.")
                            : Refusal.of(field, expected, mm));
        }
    }

    private static void layer(String field, double mm, List<Refusal> refusals) {
        if (!(mm >= 0 && mm <= MOST_MM)) {
            refusals.add(Refusal.of(field, "0 to %s mm".formatted(Plain.number(MOST_MM)), mm));
        }
    }

    private void room(List<Refusal> refusals) {
        if (lipMm >= depthMm) {
            refusals.add(
                    Refusal.of(
                            "lipMm",
                            "less than the depth of %s mm".formatted(Plain.number(depthMm)),
                            lipMm,
                            "lip and depth were swapped."));
        } else if (lipMm + dressingMm >= depthMm) {
            refusals.add(
                    Refusal.of(
                            "dressingMm",
                            "less than the %s mm under the lip"
                                    .formatted(Plain.number(depthMm - lipMm)),
                            dressingMm));
        }
    }

    private List<String> remarks() {
        var remarks = new ArrayList<String>();
        wider("length", topLengthMm, bottomLengthMm, remarks);
        if (outline != Outline.ROUND) {
            wider("width", topWidthMm, bottomWidthMm, remarks);
            if (topWidthMm > topLengthMm) {
                remarks.add(
                        "At the rim the width of %s mm is more than the length of %s mm. Maybe swap them."
                                .formatted(Plain.number(topWidthMm), Plain.number(topLengthMm)));
            }
        }
        return remarks;
    }

    private void wider(String what, double topMm, double bottomMm, List<String> remarks) {
        if (bottomMm > topMm) {
            remarks.add(
                    "The bottom is wider than the top: %s of %s mm below, %s mm at the rim. Maybe swap them."
                            .formatted(
                                    outline == Outline.ROUND ? "a diameter" : "a " + what,
                                    Plain.number(bottomMm),
                                    Plain.number(topMm)));
        }
    }
}
