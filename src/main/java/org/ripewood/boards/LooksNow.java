package org.ripewood.boards;

import java.util.List;
import java.util.stream.Stream;
import org.ripewood.core.progress.Fact;
import org.ripewood.standing.TreeOnDay;

/**
 * What a person has to record so that the service can work a fact out, and what of it can be looked
 * at today: leaves only while the tree bears them, roots and soil only while they are not frozen.
 */
public final class LooksNow {

    /** What strength is worked out from; three of the four are enough. */
    private static final List<Fact> STRENGTH =
            List.of(
                    Fact.DIEBACK_PERCENT,
                    Fact.FOLIAGE_LOSS_PERCENT,
                    Fact.LEAF_COLOUR_GRADE,
                    Fact.SHOOT_EXTENSION_MM);

    private LooksNow() {}

    /**
     * What is to be recorded for a fact, as far as it is not known and can be looked at today; a
     * fact that is seen by itself is its own. Empty when nothing can be done today, and for what
     * only time or an instructor's word tells.
     */
    public static List<Fact> toRecord(Fact asked, TreeOnDay tree) {
        return sources(asked, tree).filter(fact -> possible(fact, tree)).toList();
    }

    private static Stream<Fact> sources(Fact asked, TreeOnDay tree) {
        return switch (asked) {
            case VIGOUR_INDEX -> STRENGTH.stream().filter(fact -> unknown(fact, tree));
            case TRUNK_BASE_SHARE -> parts(tree, Fact.TRUNK_BASE_MM, Fact.TRUNK_TARGET_MM);
            case HEIGHT_TO_BASE -> parts(tree, Fact.TRUNK_BASE_MM, Fact.HEIGHT_MM);
            case REVERSE_TAPER, REVERSE_TAPER_HEIGHT_MM -> Stream.of(Fact.TRUNK_DIAMETER_MM);
            case OPEN_WOUNDS, LARGEST_OPENING_MM, SMALLEST_CLOSURE_PERCENT, WOUND_STALLED ->
                    Stream.of(
                            tree.state().record().wounds().isEmpty()
                                    ? Fact.WIDEST_OPEN_CUT_MM
                                    : Fact.WOUND_OPEN_MM);
            case CONTAINER_KIND, MONTHS_IN_CONTAINER -> Stream.of(Fact.CONTAINER_KIND);
            case GIRTH_RATIO_MAX -> Stream.of(Fact.BRANCH_DIAMETER_MM, Fact.TRUNK_AT_BRANCH_MM);
            case TRAINING_STAGE -> Stream.empty();
            default -> asked.recordable() ? Stream.of(asked) : Stream.empty();
        };
    }

    /** Those nobody has measured; all when a share of known ones is only too old. */
    private static Stream<Fact> parts(TreeOnDay tree, Fact... parts) {
        var unknown = Stream.of(parts).filter(fact -> unknown(fact, tree)).toList();
        return unknown.isEmpty() ? Stream.of(parts) : unknown.stream();
    }

    private static boolean unknown(Fact fact, TreeOnDay tree) {
        return tree.subject().facts().find(fact) == null;
    }

    /** Whether a fact can be looked at on the day of the tree. */
    public static boolean possible(Fact fact, TreeOnDay tree) {
        return switch (fact) {
            case LEAF_COLOUR_GRADE, FOLIAGE_LOSS_PERCENT, INTERNODE_MM ->
                    !tree.state().bareOn(tree.on());
            case ROOT_FILL_SHARE,
                    ROOT_SPREAD_DEG,
                    ROOT_GAP_DEG,
                    CIRCLING_TURN,
                    MATTED_ROOTS,
                    ROOT_FLARE_EXPOSED,
                    FIRM_IN_CONTAINER,
                    SUBSTRATE_DRAINS,
                    SOIL_MOIST ->
                    !tree.state().place().ballFrozen(tree.on());
            default -> true;
        };
    }
}
