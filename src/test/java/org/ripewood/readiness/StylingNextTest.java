package org.ripewood.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.cases.ShippedContent.CONTENT;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.boards.PortraitMaker;
import org.ripewood.boards.TreePortrait;
import org.ripewood.cases.CaseRun;
import org.ripewood.cases.DrawnTree;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Verdict;
import org.ripewood.readiness.ReadinessSheet.Cell;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.StepState;

/** Sheets, counts and a tree's own page name the same technique of styling, for the same reason. */
@Tag("fast")
class StylingNextTest {

    private static final int TREES_OF_A_SPECIES = 2;

    private static final CaseRun RUN = new CaseRun(CONTENT, CaseRun.UP_TO);
    private static final LeadingTechnique LEADING =
            new LeadingTechnique(new TechniquePriority(CONTENT).byCode());

    private static final List<TreeOnDay> TREES = drawn();

    /** The trees of all cases, and drawn ones; of every third somebody has a step in hand. */
    private static List<TreeOnDay> drawn() {
        var dice = new SplittableRandom(20_261_201);
        var trees = new ArrayList<TreeOnDay>();
        CONTENT.cases().forEach(told -> trees.add(RUN.tree(told)));
        for (var species : new TreeSet<>(CONTENT.species().keySet())) {
            trees.add(RUN.tree(DrawnTree.halfMeasured(dice, CONTENT, species)));
            for (var point : DrawnTree.Point.values()) {
                for (int i = 0; i < TREES_OF_A_SPECIES; i++) {
                    var tree = RUN.tree(DrawnTree.draw(dice, CONTENT, species, point));
                    trees.add(dice.nextInt(3) == 0 ? inHand(dice, tree) : tree);
                }
            }
        }
        return trees;
    }

    private static TreeOnDay inHand(SplittableRandom dice, TreeOnDay tree) {
        var technique = tree.standings().get(dice.nextInt(tree.standings().size())).technique();
        var step =
                new StepBrief(
                        1,
                        0,
                        1,
                        technique,
                        StepState.ASSIGNED,
                        2,
                        tree.on(),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null);
        return new TreeOnDay(
                tree.content(),
                tree.state(),
                tree.subject(),
                tree.openings(),
                Map.of(technique, step));
    }

    @Test
    void theSheetAndTheTreesPageNameTheSameTechniqueAndReason() {
        var verdicts = EnumSet.noneOf(Verdict.class);
        var inHand = new TreeSet<String>();
        int reasons = 0;
        for (var tree : TREES) {
            var read = TreeRead.of(tree, LEADING);
            var portrait = PortraitMaker.of(tree);
            var standing = Optional.ofNullable(read.styling());
            assertThat(Optional.ofNullable(portrait.styling()).map(TechniqueStanding::technique))
                    .isEqualTo(standing.map(Standing::technique));
            standing.ifPresent(
                    one -> {
                        verdicts.add(one.verdict());
                        assertThat(portrait.sentence())
                                .startsWith("“%s” ".formatted(CONTENT.titleOf(one.technique())));
                    });
            var cell = cell(read);
            if (cell.isPresent()) {
                assertThat(firstReason(portrait)).isEqualTo(cell.get().sentence());
                assertThat(portrait.inHand()).isEqualTo(cell.get().stepId() != null);
                reasons += cell.get().sentence() == null ? 0 : 1;
            }
            if (portrait.inHand() && portrait.styling() != null) {
                inHand.add(portrait.styling().technique());
            }
        }
        assertThat(verdicts)
                .as("all that can lead were drawn")
                .contains(Verdict.HELD, Verdict.READY, Verdict.MEASURE, Verdict.SEASON);
        assertThat(inHand).hasSizeGreaterThan(3);
        assertThat(reasons).isGreaterThan(200);
    }

    private static @Nullable String firstReason(TreePortrait portrait) {
        return portrait.holds().stream().findFirst().map(ReasonView::sentence).orElse(null);
    }

    /**
     * The cell that tells of the tree's next styling; none where its group has other work first.
     */
    private static Optional<Cell> cell(TreeRead read) {
        var styling = read.styling();
        return styling == null
                ? Optional.empty()
                : new CellMaker(CONTENT, LEADING, null)
                        .cells(read).stream()
                                .filter(cell -> styling.technique().equals(cell.technique()))
                                .findFirst();
    }

    /** Home counts trees by the same rule. */
    @Test
    void homeCountsAsManyTreesHeldAsPagesTellOf() {
        var byDay = new HashMap<Object, List<TreeOnDay>>();
        TREES.forEach(tree -> byDay.computeIfAbsent(tree.on(), on -> new ArrayList<>()).add(tree));
        for (var day : byDay.values()) {
            var held =
                    day.stream()
                            .map(tree -> PortraitMaker.of(tree).styling())
                            .filter(one -> one != null && one.verdict() == Verdict.HELD)
                            .count();
            assertThat(StylingHeld.of(day, day.get(0).on()).held()).isEqualTo((int) held);
        }
        assertThat(byDay).hasSizeGreaterThan(50);
    }
}
