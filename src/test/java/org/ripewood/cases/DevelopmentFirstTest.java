package org.ripewood.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.cases.ShippedContent.CONTENT;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.JudgementCase;

/**
 * The law of the school: while one point of a tree's development is missing, no work that shapes or
 * shows it is READY, however perfect all else is and whatever was entered or signed off.
 */
@Tag("fast")
class DevelopmentFirstTest {

    private static final long SEED = 20_261_130;
    private static final int TREES_OF_A_SPECIES = 24;

    private static final List<String> STYLING =
            List.of(
                    "wiring_primary",
                    "wiring_secondary",
                    "guy_wiring",
                    "heavy_bending",
                    "hard_cut_back",
                    "defoliation_partial",
                    "defoliation_full",
                    "twig_thinning",
                    "pinching",
                    "needle_plucking",
                    "candle_cutting",
                    "show_container",
                    "show_preparation");

    private static final CaseRun RUN = new CaseRun(CONTENT, CaseRun.UP_TO);

    private interface Ready {
        void found(Standing standing, JudgementCase tree);
    }

    /** Draws trees of every species, and tells every styling that is READY on one. */
    private static int drawTrees(DrawnTree.Point point, Ready ready) {
        var dice = new SplittableRandom(SEED + List.of(DrawnTree.Point.values()).indexOf(point));
        int trees = 0;
        for (var species : CONTENT.species().keySet()) {
            for (int i = 0; i < TREES_OF_A_SPECIES; i++) {
                var tree = DrawnTree.draw(dice, CONTENT, species, point);
                trees++;
                for (var standing : RUN.tree(tree).standings()) {
                    if (STYLING.contains(standing.technique())
                            && standing.verdict() == Verdict.READY) {
                        ready.found(standing, tree);
                    }
                }
            }
        }
        return trees;
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void noStylingIsReadyWhileOnePointIsNotDeveloped(DrawnTree.Point point) {
        Map<String, Integer> counts = new TreeMap<>();
        Map<String, String> examples = new HashMap<>();
        int trees =
                drawTrees(
                        point,
                        (standing, tree) -> {
                            counts.merge(standing.technique(), 1, Integer::sum);
                            examples.putIfAbsent(standing.technique(), told(tree));
                        });
        assertThat(counts)
                .as(
                        "%s not developed, seed %d: READY on so many of %d trees; examples %s",
                        point, SEED, trees, examples)
                .isEmpty();
    }

    /** Without this the law would hold of rules that hold everything. */
    @Test
    void everyStylingIsReadyOnDevelopedTrees() {
        var missing = new HashSet<>(STYLING);
        drawTrees(DrawnTree.Point.NONE, (standing, tree) -> missing.remove(standing.technique()));
        assertThat(missing).as("READY on no developed tree").isEmpty();
    }

    /** What an instructor judges does not lift a tree above what was seen of it. */
    @ParameterizedTest
    @EnumSource
    void noStylingIsReadyOnATreeThatIsDeadOrDyingInOneSign(DrawnTree.Sign sign) {
        var dice = new SplittableRandom(SEED + List.of(DrawnTree.Sign.values()).indexOf(sign));
        Map<String, Integer> counts = new TreeMap<>();
        for (var species : CONTENT.species().keySet()) {
            for (int i = 0; i < TREES_OF_A_SPECIES; i++) {
                var tree = DrawnTree.dying(dice, CONTENT, species, sign);
                RUN.tree(tree).standings().stream()
                        .filter(standing -> standing.verdict() == Verdict.READY)
                        .map(Standing::technique)
                        .filter(DevelopmentFirstTest::isStyling)
                        .forEach(code -> counts.merge(code, 1, Integer::sum));
            }
        }
        assertThat(counts).as("%s, seed %d: READY", sign, SEED).isEmpty();
    }

    private static boolean isStyling(String code) {
        return STYLING.contains(code)
                || CONTENT.technique(code).rule().purpose() == TechniqueRule.Purpose.STYLING;
    }

    private static String told(JudgementCase tree) {
        return "%s on %s in %s".formatted(tree.species(), RUN.dayOf(tree), tree.climate().code());
    }
}
