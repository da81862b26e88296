package org.ripewood.core.supply;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which containers of the stock a tree could step to.
 *
 * @param fitting those its root ball fits into, best first
 * @param tooSmall all others, the one that would cost the root ball least first
 */
public record NextContainer(List<Fitting> fitting, List<Unfit> tooSmall) {

    /** Below this the sides are soon full of roots (common practice, no source). */
    public static final double ROOM_MM = 15;

    /** A step down by more than this share of the depth is too much at once (common practice). */
    public static final double DEEPEST_STEP = 1.0 / 3;

    public NextContainer {
        fitting = List.copyOf(fitting);
        tooSmall = List.copyOf(tooSmall);
    }

    /**
     * A container the root ball fits into.
     *
     * @param misfit how far it is from what is wanted; 0 is exactly that
     * @param roomMm left at each side where it is narrowest
     * @param litresAround substrate it takes around the root ball
     * @param reasons why it stands where it stands, in words
     */
    public record Fitting(
            OfferedContainer offered,
            double misfit,
            double roomMm,
            double litresAround,
            List<String> reasons) {
        public Fitting {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * A container that does not do.
     *
     * @param left the root ball cut so that it fits
     * @param offShare share of the root ball's volume that would have to come off, 0 to 1; 0 when
     *     there is only none of it left
     */
    public record Unfit(
            OfferedContainer offered, RootBall left, double offShare, List<String> reasons) {
        public Unfit {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Looks at every container offered.
     *
     * <p>Formula: the root ball stands with its surface at the height of the substrate's, centred,
     * its longer side along the container's. It fits when it is no deeper than the roots may be and
     * lies inside the walls from its underside to the rim. Those it fits into are ordered by {@code
     * |ln(depth/wanted)| + |ln(length/wanted)| + max(0, 1 − room/15 mm)}, where a wish left open
     * counts 0; then by the volume of substrate, the smaller first, by name and by id. The
     * logarithm weighs twice too deep like half as deep.
     *
     * <p>Edge cases: none left in stock, unfit; nothing offered, both lists empty. Limits: a root
     * ball that is narrower below is taken as straight. Source of wishes and bounds: common
     * practice, no source; of the fitting: plane geometry.
     *
     * @throws IllegalArgumentException when two have one id
     */
    public static NextContainer of(
            RootBall ball, WantedContainer wanted, List<OfferedContainer> offered) {
        if (offered.stream().map(OfferedContainer::id).distinct().count() < offered.size()) {
            throw new IllegalArgumentException("two containers with one id in " + offered);
        }
        var fitting = new ArrayList<Fitting>();
        var tooSmall = new ArrayList<Unfit>();
        for (var one : offered) {
            var unfit = unfit(ball, one);
            if (unfit == null) {
                fitting.add(fitting(ball, wanted, one));
            } else {
                tooSmall.add(unfit);
            }
        }
        fitting.sort(
                Comparator.comparingDouble((Fitting one) -> one.misfit)
                        .thenComparingDouble(one -> one.offered.container().substrateLitres())
                        .thenComparing(one -> one.offered.name())
                        .thenComparingLong(one -> one.offered.id()));
        tooSmall.sort(
                Comparator.comparingDouble((Unfit one) -> one.offShare)
                        .thenComparing(one -> one.offered.name())
                        .thenComparingLong(one -> one.offered.id()));
        return new NextContainer(fitting, tooSmall);
    }

    private static @Nullable Unfit unfit(RootBall ball, OfferedContainer offered) {
        var left = cut(ball, offered.container());
        var reasons = new ArrayList<String>();
        if (left.depthMm() < ball.depthMm()) {
            reasons.add(
                    "There are %s mm for roots, and the root ball is %s mm deep: %s mm would have to come off below."
                            .formatted(
                                    Plain.mm(left.depthMm()),
                                    Plain.mm(ball.depthMm()),
                                    Plain.mm(ball.depthMm() - left.depthMm())));
        }
        if (!left.footprint().equals(ball.footprint())) {
            reasons.add(
                    "Where the root ball would stand there is room for %s of its %s: %s would have to come off."
                            .formatted(
                                    left.footprint().words(),
                                    ball.footprint().words(),
                                    off(ball.footprint(), left.footprint())));
        }
        double offShare = reasons.isEmpty() ? 0 : 1 - left.litres() / ball.litres();
        if (offered.count() == 0) {
            reasons.add("None of it is left in stock.");
        }
        return reasons.isEmpty() ? null : new Unfit(offered, left, offShare, reasons);
    }

    private static String off(Footprint ball, Footprint left) {
        double length = ball.longerMm() - left.longerMm();
        double width = ball.shorterMm() - left.shorterMm();
        if (!(length > 0)) {
            return Plain.mm(width) + " mm of the width";
        }
        return width > 0
                ? "%s mm of the length and %s mm of the width"
                        .formatted(Plain.mm(length), Plain.mm(width))
                : Plain.mm(length) + " mm of the length";
    }

    /** The root ball as large as it may stay to fit. */
    private static RootBall cut(RootBall ball, Container container) {
        double depth = Math.min(ball.depthMm(), container.rootDepthMm());
        return new RootBall(
                ball.footprint()
                        .cutTo(container.shape().at(container.rootDepthMm() - depth))
                        .cutTo(container.shape().top()),
                depth);
    }

    private static Fitting fitting(
            RootBall ball, WantedContainer wanted, OfferedContainer offered) {
        var container = offered.container();
        var shape = container.shape();
        double room =
                Math.min(
                        ball.footprint().roomIn(shape.at(container.rootDepthMm() - ball.depthMm())),
                        ball.footprint().roomIn(shape.top()));
        double length = shape.top().longerMm();
        var reasons = new ArrayList<String>();
        reasons.add(against("Depth", shape.depthMm(), wanted.depthMm()));
        reasons.add(against("Length", length, wanted.lengthMm()));
        reasons.add(
                "%s mm of room at the sides%s."
                        .formatted(
                                Plain.mm(room), room < ROOM_MM ? ", which roots soon fill" : ""));
        if (wanted.presentDepthMm() != null
                && 1 - shape.depthMm() / wanted.presentDepthMm() > DEEPEST_STEP + 1e-12) {
            reasons.add(
                    "More than a third shallower than the %s mm it stands in now. Maybe take a step between."
                            .formatted(Plain.mm(wanted.presentDepthMm())));
        }
        double misfit =
                apart(shape.depthMm(), wanted.depthMm())
                        + apart(length, wanted.lengthMm())
                        + Math.max(0, 1 - room / ROOM_MM);
        return new Fitting(offered, misfit, room, container.litresAround(ball), reasons);
    }

    private static double apart(double mm, @Nullable Double wantedMm) {
        return wantedMm == null ? 0 : Math.abs(Math.log(mm / wantedMm));
    }

    private static String against(String what, double mm, @Nullable Double wantedMm) {
        if (wantedMm == null) {
            return "%s %s mm.".formatted(what, Plain.mm(mm));
        }
        double more = Math.rint(mm - wantedMm);
        if (more == 0) {
            return "%s %s mm, as wanted.".formatted(what, Plain.mm(mm));
        }
        return "%s %s mm, %s mm %s than wanted."
                .formatted(
                        what, Plain.mm(mm), Plain.mm(Math.abs(more)), more > 0 ? "more" : "less");
    }
}
