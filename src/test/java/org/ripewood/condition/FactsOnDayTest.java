package org.ripewood.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ripewood.condition.RecordOf.treeOn;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Work;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.records.BranchRole;
import org.ripewood.records.Clocks;

@Tag("fast")
class FactsOnDayTest {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 15);

    @Test
    void whatWasSeenLastCounts() {
        var pests =
                treeOn(DAY)
                        .seen(Fact.PEST_LEVEL, 1, DAY.minusDays(3))
                        .seen(Fact.PEST_LEVEL, 3, DAY.minusDays(30))
                        .evidence(Fact.PEST_LEVEL);
        assertThat(pests.value()).isEqualTo(Value.of(1.0));
        assertThat(pests.by()).isEqualTo("Ada Reed");
    }

    @Test
    void anInstructorOutweighsAStudentOnTheSameDayOnly() {
        var tree =
                treeOn(DAY)
                        .seen(Fact.PEST_LEVEL, Value.of(2.0), DAY, Source.INSTRUCTOR)
                        .seen(Fact.PEST_LEVEL, Value.of(0.0), DAY, Source.STUDENT);
        assertThat(tree.facts().number(Fact.PEST_LEVEL)).isEqualTo(2);
    }

    @Test
    void vigourFollowsFromItsGradesAndIsAsOldAsTheOldestButForTheShoots() {
        // dead twigs and colour 4, foliage 3, shoots as long as before 3.33: 77.5 is what 3 allows
        var vigour = strong(DAY).evidence(Fact.VIGOUR_INDEX);
        assertThat(((Value.Number) vigour.value()).amount()).isCloseTo(77.5, within(1e-9));
        assertThat(vigour.observedOn()).isEqualTo(DAY.minusDays(5));
        assertThat(vigour.source()).isEqualTo(Source.DERIVED);
    }

    @Test
    void vigourIsUnknownWhileTwoGradesAreMissing() {
        assertThat(
                        treeOn(DAY)
                                .seen(Fact.SHOOT_EXTENSION_RATIO, 1, DAY)
                                .seen(Fact.LEAF_COLOUR_GRADE, 4, DAY)
                                .evidence(Fact.VIGOUR_INDEX))
                .isNull();
    }

    @Test
    void ofJudgedAndWorkedOutVigourTheLaterCounts() {
        assertThat(
                        strong(DAY)
                                .seen(Fact.VIGOUR_INDEX, 40, DAY.minusDays(4))
                                .facts()
                                .number(Fact.VIGOUR_INDEX))
                .isEqualTo(40);
        assertThat(
                        strong(DAY)
                                .seen(Fact.VIGOUR_INDEX, 40, DAY.minusDays(6))
                                .facts()
                                .number(Fact.VIGOUR_INDEX))
                .isCloseTo(77.5, within(1e-9));
    }

    @Test
    void whatWasSeenBeforeWorkThatChangesItNoLongerCounts() {
        var kind =
                new TreeKind(
                        RecordOf.KIND.shoots(),
                        RecordOf.KIND.growing(),
                        8,
                        Map.of("selection", Set.of(Fact.CANDIDATE_BRANCHES)));
        var tree =
                treeOn(DAY)
                        .seen(Fact.CANDIDATE_BRANCHES, 4, DAY.minusDays(50))
                        .seen(Fact.CANDIDATE_BRANCHES, 4, DAY.minusDays(20))
                        .seen(Fact.RAMIFICATION_ORDERS, 2, DAY.minusDays(50))
                        .work("selection", DAY.minusDays(20), 4, null);
        assertThat(tree.facts(kind).find(Fact.CANDIDATE_BRANCHES)).isNull();
        assertThat(tree.facts(kind).number(Fact.RAMIFICATION_ORDERS)).isEqualTo(2);
        tree.seen(Fact.CANDIDATE_BRANCHES, 2, DAY.minusDays(19));
        assertThat(tree.facts(kind).number(Fact.CANDIDATE_BRANCHES)).isEqualTo(2);
        assertThat(tree.facts().number(Fact.CANDIDATE_BRANCHES)).isEqualTo(2);
    }

    @Test
    void whatFollowsFromAStudentsReadingStaysAStudents() {
        var share =
                treeOn(DAY)
                        .seen(Fact.TRUNK_BASE_MM, Value.of(36.0), DAY, Source.STUDENT)
                        .seen(Fact.TRUNK_TARGET_MM, 60, DAY.minusDays(200))
                        .evidence(Fact.TRUNK_BASE_SHARE);
        assertThat(share.value()).isEqualTo(Value.of(0.6));
        assertThat(share.source()).isEqualTo(Source.STUDENT);
        assertThat(share.observedOn()).isEqualTo(DAY.minusDays(200));
    }

    @Test
    void aProportionToNothingIsUnknown() {
        var tree =
                treeOn(DAY)
                        .seen(Fact.TRUNK_BASE_MM, 36, DAY)
                        .seen(Fact.TRUNK_TARGET_MM, 0, DAY)
                        .seen(Fact.HEIGHT_MM, 5000, DAY);
        assertThat(tree.evidence(Fact.TRUNK_BASE_SHARE)).isNull();
        assertThat(tree.facts().number(Fact.HEIGHT_TO_BASE)).isCloseTo(138.9, within(0.05));
    }

    @Test
    void aProportionBeyondItsRangeIsToldAtTheEnd() {
        var thin = treeOn(DAY).seen(Fact.TRUNK_BASE_MM, 1, DAY).seen(Fact.HEIGHT_MM, 900, DAY);
        assertThat(thin.facts().number(Fact.HEIGHT_TO_BASE)).isEqualTo(200);
    }

    @Test
    void reverseTaperIsToldWithItsHeight() {
        var trunk =
                treeOn(DAY)
                        .diameter(0, 60, DAY.minusDays(90))
                        .diameter(50, 52, DAY)
                        .diameter(100, 55, DAY)
                        .diameter(150, 40, DAY);
        assertThat(trunk.evidence(Fact.REVERSE_TAPER).value()).isEqualTo(Value.of(true));
        assertThat(trunk.evidence(Fact.REVERSE_TAPER).observedOn()).isEqualTo(DAY.minusDays(90));
        assertThat(trunk.facts().number(Fact.REVERSE_TAPER_HEIGHT_MM)).isEqualTo(100);
    }

    @Test
    void theLatestDiameterAtAHeightCounts() {
        var trunk =
                treeOn(DAY)
                        .diameter(0, 60, DAY)
                        .diameter(50, 52, DAY)
                        .diameter(100, 55, DAY.minusDays(400))
                        .diameter(100, 50, DAY);
        assertThat(trunk.evidence(Fact.REVERSE_TAPER).value()).isEqualTo(Value.of(false));
        assertThat(trunk.evidence(Fact.REVERSE_TAPER_HEIGHT_MM)).isNull();
    }

    @Test
    void aDiameterThatWasCutOffWithTheTrunkIsForgotten() {
        var chopped =
                treeOn(DAY)
                        .diameter(0, 60, DAY.minusDays(10))
                        .diameter(50, 52, DAY.minusDays(10))
                        .diameter(300, 58, DAY.minusDays(10))
                        .seen(Fact.HEIGHT_MM, 120, DAY.minusDays(5));
        assertThat(chopped.evidence(Fact.REVERSE_TAPER).value()).isEqualTo(Value.of(false));
    }

    @Test
    void oneDiameterTellsNoTaper() {
        assertThat(treeOn(DAY).diameter(0, 60, DAY).evidence(Fact.REVERSE_TAPER)).isNull();
    }

    @Test
    void thickestDesignBranchAgainstItsTrunkCounts() {
        var tree =
                treeOn(DAY)
                        .branch(1, BranchRole.PRIMARY)
                        .branchRead(1, 9, 30, DAY.minusDays(20), Source.INSTRUCTOR)
                        .branch(2, BranchRole.PRIMARY)
                        .branchRead(2, 12, 24, DAY, Source.STUDENT)
                        .branch(3, BranchRole.SACRIFICE)
                        .branchRead(3, 28, 30, DAY, Source.INSTRUCTOR);
        var girth = tree.evidence(Fact.GIRTH_RATIO_MAX);
        assertThat(girth.value()).isEqualTo(Value.of(0.5));
        assertThat(girth.observedOn()).isEqualTo(DAY.minusDays(20));
        assertThat(girth.source()).isEqualTo(Source.STUDENT);
        assertThat(tree.facts().number(Fact.PRIMARY_BRANCHES)).isEqualTo(2);
    }

    @Test
    void theThickestBranchIsUnknownWhileOneIsNotMeasured() {
        var tree =
                treeOn(DAY)
                        .branch(1, BranchRole.PRIMARY)
                        .branchRead(1, 9, 30, DAY, Source.INSTRUCTOR)
                        .branch(2, BranchRole.PRIMARY);
        assertThat(tree.evidence(Fact.GIRTH_RATIO_MAX)).isNull();
        assertThat(tree.facts().number(Fact.PRIMARY_BRANCHES)).isEqualTo(2);
    }

    @Test
    void theLastContainerCountsFromTheDayItCame() {
        var tree =
                treeOn(DAY)
                        .container("training", DAY.minusMonths(14))
                        .container("nursery", DAY.minusMonths(40));
        assertThat(tree.evidence(Fact.CONTAINER_KIND).value()).isEqualTo(Value.of("training"));
        assertThat(tree.facts().number(Fact.MONTHS_IN_CONTAINER)).isEqualTo(14);
        assertThat(treeOn(DAY).evidence(Fact.CONTAINER_KIND)).isNull();
    }

    @Test
    void wireIsAsOldAsTheFirstThatIsStillOn() {
        var wired =
                treeOn(DAY)
                        .seen(Fact.WIRE_ON, Value.of(true), DAY.minusDays(300), Source.STUDENT)
                        .seen(Fact.WIRE_ON, Value.of(false), DAY.minusDays(200), Source.STUDENT)
                        .seen(Fact.WIRE_ON, Value.of(true), DAY.minusDays(90), Source.STUDENT)
                        .seen(Fact.WIRE_ON, Value.of(true), DAY.minusDays(10), Source.STUDENT);
        assertThat(wired.facts().number(Fact.WIRE_DAYS)).isEqualTo(90);
        var bare = wired.seen(Fact.WIRE_ON, Value.of(false), DAY.minusDays(1), Source.INSTRUCTOR);
        assertThat(bare.facts().number(Fact.WIRE_DAYS)).isZero();
        assertThat(treeOn(DAY).evidence(Fact.WIRE_DAYS)).isNull();
    }

    @Test
    void ledgersAndClocksFollowFromWork() {
        var facts =
                treeOn(DAY)
                        .work("root_pruning_repot", DAY.minusDays(50), 6, "root_work")
                        .work("feed_up", DAY.minusDays(20), 0, "feeding")
                        .work("feed_up", DAY.minusDays(48), 0, "feeding")
                        .facts();
        assertThat(facts.number(Fact.RECOVERY_LOAD)).isEqualTo(3);
        assertThat(facts.number(Fact.DAYS_SINCE_HEAVY_WORK)).isEqualTo(50);
        assertThat(facts.number(Fact.HEAVY_WORKS_THIS_SEASON)).isEqualTo(1);
        assertThat(facts.number(Fact.FOLIAGE_REMOVED_SHARE)).isCloseTo(0.6, within(1e-12));
        assertThat(facts.number(Fact.ROOT_REMOVED_SHARE)).isCloseTo(0.3, within(1e-12));
        assertThat(facts.number(Fact.DAYS_SINCE_ROOT_WORK)).isEqualTo(50);
        assertThat(facts.number(Fact.DAYS_SINCE_FEEDING)).isEqualTo(20);
        assertThat(facts.number(Fact.DAYS_SINCE_CHOP)).isEqualTo(WorkLedger.NEVER_DAYS);
    }

    @Test
    void inTheSouthTheSeasonsDosesBeginInJuly() {
        var may = LocalDate.of(2026, 5, 20);
        var august = LocalDate.of(2026, 8, 20);
        var work = new Work("defoliation_partial", may, 4, 60, 0.3, 0);
        assertThat(foliageTaken(treeOn(august).atLatitude(-35).work(work, "defoliation"))).isZero();
        assertThat(foliageTaken(treeOn(august).atLatitude(50).work(work, "defoliation")))
                .isEqualTo(0.3);
    }

    /** A new clock among the facts has to be looked at here. */
    @Test
    void everyClockOfTheTradeHasItsFact() {
        assertThat(Clocks.CODES)
                .containsExactlyInAnyOrder(
                        "root_work",
                        "chop",
                        "wiring",
                        "carving",
                        "defoliation",
                        "feeding",
                        "show_container");
    }

    @Test
    void wishesCountAsNotWishedUntilSomebodySaysSo() {
        var silent = treeOn(DAY).facts();
        var front = silent.find(Fact.FRONT_MARK);
        assertThat(front.value()).isEqualTo(Value.of("none"));
        assertThat(front.source()).isEqualTo(Source.DERIVED);
        assertThat(front.observedOn()).isEqualTo(RecordOf.CAME);
        var marked =
                treeOn(DAY)
                        .seen(
                                Fact.FRONT_MARK,
                                Value.of("settled"),
                                RecordOf.CAME.minusYears(1),
                                Source.INSTRUCTOR);
        assertThat(marked.evidence(Fact.FRONT_MARK).value()).isEqualTo(Value.of("settled"));
    }

    /** Every derived fact but the place of a bulge is known of a tree with a full record. */
    @Test
    void everyDerivedFactIsWorkedOut() {
        var derived =
                Arrays.stream(Fact.values()).filter(Fact::derived).collect(Collectors.toSet());
        assertThat(full(1).facts().all()).extracting(Evidence::fact).containsAll(derived);
    }

    @Test
    void theOrderOfEntriesDoesNotMatter() {
        long seed = 41_507;
        var dice = new SplittableRandom(seed);
        for (int round = 0; round < 100; round++) {
            long tree = dice.nextLong();
            assertThat(told(full(tree).shuffled(dice.nextLong()).facts()))
                    .as("seed %d, round %d", seed, round)
                    .isEqualTo(told(full(tree).facts()));
        }
    }

    private static String told(Facts facts) {
        return facts.all().stream().map(Objects::toString).collect(Collectors.joining("\n"));
    }

    private static double foliageTaken(RecordOf tree) {
        return tree.facts().number(Fact.FOLIAGE_REMOVED_SHARE);
    }

    private static RecordOf strong(LocalDate on) {
        return treeOn(on)
                .seen(Fact.SHOOT_EXTENSION_RATIO, 1, on.minusDays(40))
                .seen(Fact.FOLIAGE_LOSS_PERCENT, 20, on.minusDays(5))
                .seen(Fact.LEAF_COLOUR_GRADE, 4, on.minusDays(5))
                .seen(Fact.DIEBACK_PERCENT, 0, on.minusDays(5));
    }

    private static RecordOf full(long seed) {
        var dice = new SplittableRandom(seed);
        var tree =
                strong(DAY)
                        .container("nursery", DAY.minusMonths(30))
                        .container("training", DAY.minusMonths(dice.nextInt(1, 29)))
                        .seen(Fact.TRUNK_BASE_MM, dice.nextDouble(20, 80), DAY.minusDays(60))
                        .seen(Fact.TRUNK_TARGET_MM, 70, DAY.minusDays(300))
                        .seen(Fact.HEIGHT_MM, 600, DAY.minusDays(60))
                        .diameter(0, 40, DAY.minusDays(60))
                        .diameter(60, 30, DAY.minusDays(60))
                        .diameter(120, 36, DAY.minusDays(60));
        for (int i = 0; i < 6; i++) {
            var day = DAY.minusDays(dice.nextInt(0, 400));
            tree.seen(Fact.WIRE_ON, Value.of(dice.nextBoolean()), day, source(dice))
                    .seen(Fact.PEST_LEVEL, Value.of(i / 2.0), day, source(dice))
                    .work("wiring_primary", day, dice.nextInt(0, 9), "wiring")
                    .branch(i, BranchRole.PRIMARY)
                    .branchRead(i, dice.nextDouble(2, 20), 30, day, source(dice))
                    .wound(
                            i,
                            DAY.minusDays(500),
                            dice.nextDouble(5, 40),
                            source(dice),
                            new RecordOf.Look(day, dice.nextDouble(0, 30), source(dice)),
                            new RecordOf.Look(DAY, dice.nextDouble(0, 30), source(dice)));
        }
        return tree;
    }

    private static Source source(SplittableRandom dice) {
        return dice.nextBoolean() ? Source.STUDENT : Source.INSTRUCTOR;
    }
}
