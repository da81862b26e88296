package org.ripewood.cases;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.Content;
import org.ripewood.course.JudgementCase;

/**
 * A tree drawn by dice: strong, rested, watered, with everything entered and signed off that could
 * be asked for, and developed in all points but one, or in all.
 */
public final class DrawnTree {

    /** In what a tree is not developed. */
    public enum Point {
        BASE_SHARE,
        TAPER,
        FLARE,
        CIRCLING_ROOTS,
        FRONT,
        OPEN_WOUND,
        LEADER_AFTER_A_CHOP,
        NONE
    }

    /** A sign that a tree is dead or dying, perfect as it may be in all others. */
    enum Sign {
        DEAD_TWIGS,
        FOLIAGE_MISSING,
        LEAVES_BROWN,
        NO_GROWTH
    }

    /** Long enough ago for every load to have gone. */
    private static final int LONG_AGO = 1_600;

    private static final List<Integer> STAGES =
            List.of(0, 1, 3, 7, 9, 11, 13, 15, 19, 31, 33, 35, 37, 39, 91, 92, 93, 95, 97, 99);

    private final SplittableRandom dice;
    private final Content content;
    private final Point point;
    private final Map<Fact, Value> seen = new EnumMap<>(Fact.class);
    private final List<JudgementCase.Known> known = new ArrayList<>();
    private @Nullable Sign sign;
    private double measured = 1;
    private final double baseMm;
    private final double heightMm;

    private DrawnTree(SplittableRandom dice, Content content, String species, Point point) {
        this.dice = dice;
        this.content = content;
        this.point = point;
        double targetMm = between(40, 120);
        // Conifers may be bent at a base of six tenths, since they thicken on while they bend.
        double thin = content.species(species).traits().groups().contains("conifer") ? 0.55 : 0.85;
        this.baseMm = targetMm * (point == Point.BASE_SHARE ? between(0.1, thin) : between(1, 1.2));
        this.heightMm = baseMm * between(4.5, 6.5);
        put(Fact.TRUNK_BASE_MM, baseMm);
        put(Fact.TRUNK_TARGET_MM, targetMm);
        put(Fact.HEIGHT_MM, heightMm);
    }

    public static JudgementCase draw(
            SplittableRandom dice, Content content, String species, Point point) {
        return new DrawnTree(dice, content, species, point).drawn(species);
    }

    /** Developed in all points, and judged strong by an instructor who saw one sign of death. */
    static JudgementCase dying(SplittableRandom dice, Content content, String species, Sign sign) {
        var tree = new DrawnTree(dice, content, species, Point.NONE);
        tree.sign = sign;
        return tree.drawn(species);
    }

    /** Developed in all points, but nobody has measured half of what could be known of it. */
    public static JudgementCase halfMeasured(
            SplittableRandom dice, Content content, String species) {
        var tree = new DrawnTree(dice, content, species, Point.NONE);
        tree.measured = 0.5;
        return tree.drawn(species);
    }

    private void signOfDeath() {
        if (sign == Sign.DEAD_TWIGS) {
            put(Fact.DIEBACK_PERCENT, between(85, 100));
        } else if (sign == Sign.FOLIAGE_MISSING) {
            put(Fact.FOLIAGE_LOSS_PERCENT, 100);
        } else if (sign == Sign.LEAVES_BROWN) {
            put(Fact.LEAF_COLOUR_GRADE, 0);
        } else if (sign == Sign.NO_GROWTH) {
            known.removeIf(entry -> entry.fact() == Fact.SHOOT_EXTENSION_MM);
            put(Fact.SHOOT_EXTENSION_RATIO, 0);
        }
    }

    private JudgementCase drawn(String species) {
        health();
        signOfDeath();
        roots();
        branches();
        design();
        if (measured < 1) {
            seen.keySet().removeIf(fact -> dice.nextDouble() >= measured);
        }
        seen.forEach(
                (fact, value) ->
                        known.add(new JudgementCase.Known(fact, value, 1, Source.INSTRUCTOR)));
        var climates = content.cases().stream().map(JudgementCase::climate).distinct().toList();
        return new JudgementCase(
                "drawn",
                "drawn",
                "A drawn tree",
                "",
                0,
                species,
                climates.get(dice.nextInt(climates.size())),
                MonthDay.of(dice.nextInt(1, 13), dice.nextInt(1, 29)),
                new JudgementCase.Tree(
                        known,
                        profile(),
                        wounds(),
                        primaries(),
                        new JudgementCase.Stay(oneOf(List.of("training", "show")), 700),
                        signedOff(),
                        List.of()),
                null,
                "wiring_primary",
                Set.of(Verdict.HELD),
                List.of(),
                List.of(),
                null,
                Set.of(),
                "",
                "");
    }

    private void health() {
        put(Fact.VIGOUR_INDEX, between(92, 100));
        put(Fact.SHOOT_EXTENSION_RATIO, between(1, 1.3));
        put(Fact.LEAF_COLOUR_GRADE, 4);
        put(Fact.FOLIAGE_LOSS_PERCENT, 0);
        put(Fact.DIEBACK_PERCENT, 0);
        put(Fact.PEST_LEVEL, 0);
        put(Fact.SOIL_MOIST, true);
        put(Fact.SUBSTRATE_DRAINS, true);
        put(Fact.GROWTH_STAGE, oneOf(STAGES));
        put(Fact.FLOWER_STAGE, oneOf(List.of(69, 89)));
        double shootMm = between(300, 500);
        for (int year = 0; year < 4; year++) {
            known.add(
                    new JudgementCase.Known(
                            Fact.SHOOT_EXTENSION_MM,
                            Value.of(shootMm),
                            1 + 365 * year,
                            Source.INSTRUCTOR));
        }
    }

    private void roots() {
        put(Fact.FIRM_IN_CONTAINER, true);
        put(Fact.ROOT_FILL_SHARE, between(0.5, 0.8));
        put(Fact.ROOT_SPREAD_DEG, between(300, 360));
        put(Fact.ROOT_GAP_DEG, between(0, 50));
        put(Fact.MATTED_ROOTS, false);
        put(Fact.SACRIFICE_ROOTS_LEFT, 0);
        put(Fact.ROOT_FLARE_EXPOSED, point != Point.FLARE);
        put(Fact.CIRCLING_TURN, point == Point.CIRCLING_ROOTS ? between(0.4, 2) : between(0, 0.2));
    }

    private void branches() {
        put(Fact.BRANCHES_HOLD, dice.nextBoolean());
        put(Fact.RAMIFICATION_ORDERS, oneOf(List.of(2, 3, 5)));
        put(Fact.INTERNODE_MM, oneOf(List.of(5, 35)));
        put(Fact.INTERIOR_BUDS, dice.nextInt(4, 9));
        put(Fact.BRANCH_FLEXIBLE, true);
        put(Fact.THICKEST_BEND_MM, oneOf(List.of(3, 10, 15)));
        put(Fact.CANDIDATE_BRANCHES, dice.nextInt(2, 5));
        put(Fact.BRANCH_MISSING, false);
        put(Fact.SURPLUS_BRANCH, false);
        put(Fact.ANCHOR_FOUND, true);
        put(Fact.WIRE_ON, false);
        put(Fact.WIRE_MARK_MM, 0);
        put(Fact.LOW_BUD_BELOW_CUT, true);
        if (point == Point.LEADER_AFTER_A_CHOP) {
            put(Fact.LEADER_SHARE, between(0.1, 0.55));
        } else {
            put(Fact.LEADER_SHARE, between(0.75, 1));
        }
    }

    private void design() {
        var front = point == Point.FRONT ? "none" : "settled";
        seen.put(Fact.FRONT_MARK, Value.of(front));
        put(Fact.BRANCH_PLAN, true);
        put(Fact.SHOW_PLANNED, true);
        put(Fact.DEADWOOD_PLAN, false);
        put(Fact.DEADWOOD_PRESENT, false);
        put(Fact.LAYER_WANTED, false);
        put(Fact.SOIL_BELOW_RIM_MM, 1);
    }

    /** Thinner upwards; where taper fails one mark is a quarter thicker than the one below it. */
    private List<JudgementCase.Mark> profile() {
        var marks = new ArrayList<JudgementCase.Mark>();
        double below = baseMm;
        int bulge = point == Point.TAPER ? dice.nextInt(1, 4) : -1;
        for (int mark = 0; mark < 5; mark++) {
            double mm = mark == bulge ? below * 1.25 : below * 0.82;
            marks.add(new JudgementCase.Mark(heightMm * (0.06 + 0.2 * mark), mm, 1));
            below = mark == bulge ? below * 0.7 : mm;
        }
        return marks;
    }

    private List<JudgementCase.Cut> wounds() {
        if (point != Point.OPEN_WOUND) {
            return List.of();
        }
        double width = between(26, 40);
        double open = width * between(0.65, 0.9);
        return List.of(
                new JudgementCase.Cut(
                        dice.nextInt(300, 900),
                        width,
                        width,
                        false,
                        List.of(
                                new JudgementCase.Look(200, open + 1, Source.INSTRUCTOR),
                                new JudgementCase.Look(1, open, Source.INSTRUCTOR))));
    }

    private List<JudgementCase.Grown> primaries() {
        var branches = new ArrayList<JudgementCase.Grown>();
        int many = dice.nextInt(3, 7);
        for (int i = 0; i < many; i++) {
            double trunk = baseMm * between(0.5, 0.8);
            branches.add(
                    new JudgementCase.Grown(
                            "branch " + i, "primary", trunk * between(0.2, 0.4), trunk, 1));
        }
        return branches;
    }

    /**
     * All that could be asked for first, long ago, and in half of the trees a chop. In every third
     * tree a part of it was never signed off, as where branches were entered and nobody chose them;
     * in every other nor was the work whose point is not developed.
     */
    private List<JudgementCase.Done> signedOff() {
        boolean chopped = point == Point.LEADER_AFTER_A_CHOP || dice.nextBoolean();
        boolean unworked = dice.nextBoolean();
        double unsigned = dice.nextInt(3) == 0 ? 0.3 : 0;
        var done = new ArrayList<JudgementCase.Done>();
        for (var code : content.techniques().keySet()) {
            boolean left = dice.nextDouble() < unsigned || (unworked && code.equals(work()));
            if (code.equals("trunk_chop") ? chopped : !left) {
                done.add(new JudgementCase.Done(code, ago(code), null, null));
            }
        }
        return done;
    }

    /** The work that would have put the point right. */
    private String work() {
        return switch (point) {
            case FLARE -> "root_flare_exposure";
            case CIRCLING_ROOTS -> "circling_root_removal";
            case FRONT -> "front_marking";
            case TAPER -> "bulge_thinning";
            case LEADER_AFTER_A_CHOP -> "leader_regrowth";
            case BASE_SHARE, OPEN_WOUND, NONE -> "";
        };
    }

    private int ago(String technique) {
        return technique.equals("feed_up") ? 20 : LONG_AGO + dice.nextInt(400);
    }

    private void put(Fact fact, double amount) {
        seen.put(fact, Value.of(amount));
    }

    private void put(Fact fact, boolean flag) {
        seen.put(fact, Value.of(flag));
    }

    private double between(double least, double most) {
        return least + (most - least) * dice.nextDouble();
    }

    private <T> T oneOf(List<T> values) {
        return values.get(dice.nextInt(values.size()));
    }
}
