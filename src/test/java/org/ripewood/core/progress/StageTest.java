package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.core.progress.Bench.DAY;
import static org.ripewood.core.progress.Bench.atLeast;
import static org.ripewood.core.progress.Bench.atMost;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Bench.RuleOf;
import org.ripewood.core.progress.Bench.TreeOf;

/** A tree is in the first stage of which it has not all. */
@Tag("fast")
class StageTest {

    private static final StageRule ESTABLISH =
            new StageRule("establish", 1, List.of(asked(atLeast(Fact.VIGOUR_INDEX, 62))));

    private static final StageRule DEVELOP =
            new StageRule(
                    "develop",
                    2,
                    List.of(
                            new StageRule.Asked(
                                    new Criterion(
                                            Fact.TRUNK_BASE_SHARE,
                                            new Requirement.AtLeast(0.9),
                                            null,
                                            Strength.SHOULD,
                                            false,
                                            false,
                                            List.of(
                                                    new Criterion.Variant(
                                                            Set.of(),
                                                            Set.of("conifer"),
                                                            new Requirement.AtLeast(0.6))),
                                            "why"),
                                    null),
                            new StageRule.Asked(
                                    atLeast(Fact.LEADER_SHARE, 0.66),
                                    new Condition.Test(
                                            Fact.DAYS_SINCE_CHOP, new Requirement.AtMost(3650)))));

    private static final StageRule STRUCTURE =
            new StageRule("structure", 3, List.of(asked(atMost(Fact.GIRTH_RATIO_MAX, 0.6))));

    @Test
    void theFirstStageNotPassedIsTheTrees() {
        assertThat(stageOf(tree(40, 0.2))).isEqualTo("establish");
        assertThat(stageOf(tree(80, 0.2))).isEqualTo("develop");
        assertThat(stageOf(tree(80, 0.95))).isEqualTo("structure");
    }

    @Test
    void theLastStageIsKeptOnceAllIsPassed() {
        assertThat(stageOf(tree(80, 0.95).saw(Fact.GIRTH_RATIO_MAX, 0.4))).isEqualTo("structure");
    }

    @Test
    void whatIsNotKnownIsNotPassed() {
        var stages = judge(new TreeOf(), thinning());
        assertThat(StageStanding.current(stages).stage()).isEqualTo("establish");
        assertThat(stages.get(0).missing()).extracting(Reason::truth).containsOnly(Truth.UNKNOWN);
    }

    @Test
    void anOldLookSendsNoTreeBack() {
        var tree =
                new TreeOf()
                        .saw(Fact.VIGOUR_INDEX, Value.of(80), DAY.minusYears(3), Source.INSTRUCTOR);
        assertThat(stageOf(tree)).isEqualTo("develop");
    }

    @Test
    void aTreeOfAnotherGroupMayPassEarlier() {
        var pine = tree(80, 0.7);
        pine.traits = Bench.PINE;
        assertThat(stageOf(pine)).isEqualTo("structure");
    }

    @Test
    void aLeaderIsAskedForOnlyAfterAChop() {
        var never = tree(80, 0.95).saw(Fact.LEADER_SHARE, 0.3);
        assertThat(stageOf(never)).isEqualTo("structure");
        assertThat(stageOf(never.saw(Fact.DAYS_SINCE_CHOP, 200))).isEqualTo("develop");
    }

    @Test
    void workOnTheMaterialThatIsStillNeededKeepsTheTreeInItsStage() {
        var tree = tree(80, 0.95).saw(Fact.REVERSE_TAPER, Value.of(true));
        var stages = judge(tree, thinning());
        assertThat(StageStanding.current(stages).stage()).isEqualTo("develop");
        assertThat(stages.get(1).missing()).containsExactly(new Reason.OfDevelopment("thinning"));
        assertThat(stages.get(1).howFar()).isBetween(0.4, 0.6);
    }

    private static StageRule.Asked asked(Criterion criterion) {
        return new StageRule.Asked(criterion, null);
    }

    private static TreeOf tree(double vigour, double baseShare) {
        return new TreeOf().saw(Fact.VIGOUR_INDEX, vigour).saw(Fact.TRUNK_BASE_SHARE, baseShare);
    }

    private static RuleOf thinning() {
        var thinning = new RuleOf("thinning");
        thinning.stageOrder = 2;
        thinning.purpose = TechniqueRule.Purpose.DEVELOPMENT;
        thinning.neededWhen =
                new Condition.Test(Fact.REVERSE_TAPER, new Requirement.Is(Value.of(true)));
        return thinning;
    }

    private static String stageOf(TreeOf tree) {
        return StageStanding.current(judge(tree, thinning())).stage();
    }

    private static List<StageStanding> judge(TreeOf tree, RuleOf rule) {
        return Rulebook.compile(
                        List.of(rule.make()),
                        List.of(ESTABLISH, DEVELOP, STRUCTURE),
                        List.of(Bench.MAPLE, Bench.PINE))
                .stages(tree.make(), DAY);
    }
}
