package org.ripewood.firstlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.MonthDay;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.MeasureNext;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.course.JudgementCase;
import org.ripewood.standing.AliveDoubt;
import org.ripewood.standing.TreeOnDay;

/** Whether a tree lives is asked before every step. Bounds are common practice, no source. */
@Tag("fast")
class AliveFirstTest {

    private static final MonthDay IN_LEAF = MonthDay.of(6, 15);
    private static final MonthDay AT_REST = MonthDay.of(12, 15);

    private static TreeOnDay tree(String species, MonthDay day, Map<Fact, Value> seen) {
        var stay = new JudgementCase.Stay("training", 700);
        return LookTree.on(species, LookTree.climate("inland-45n"), day, seen, stay);
    }

    private static void isDoubted(TreeOnDay tree, String sign) {
        assertThat(AliveDoubt.of(tree).orElse(""))
                .startsWith("Is it alive? " + sign)
                .contains("Scratch the bark", "call your instructor");
        assertThat(tree.free()).isEmpty();
        assertThat(MeasureNext.of(tree))
                .extracting(Checklist.Measure::factCode)
                .containsExactly("dieback_percent");
        assertThat(LookVerdict.of(tree).sentence()).startsWith("Is it alive?");
        assertThat(LookVerdict.of(tree).technique()).isNull();
    }

    @Test
    void nearlyAllTwigsDeadAreASignInEverySeason() {
        for (var day : new MonthDay[] {IN_LEAF, AT_REST}) {
            isDoubted(hornbeam(day, Fact.DIEBACK_PERCENT, 90), "Dead twigs: 90 %, seen on 15 ");
            assertThat(AliveDoubt.of(hornbeam(day, Fact.DIEBACK_PERCENT, 89))).isEmpty();
        }
    }

    @Test
    void allFoliageMissingIsASignOnlyWhileTheTreeShouldBearSome() {
        isDoubted(hornbeam(IN_LEAF, Fact.FOLIAGE_LOSS_PERCENT, 100), "Missing foliage: 100 %");
        assertThat(AliveDoubt.of(hornbeam(AT_REST, Fact.FOLIAGE_LOSS_PERCENT, 100))).isEmpty();
        var bare = Map.of(Fact.FOLIAGE_LOSS_PERCENT, Value.of(100));
        isDoubted(tree("pinus_sylvestris", AT_REST, bare), "Missing foliage: 100 %");
    }

    @Test
    void aSeasonWithoutGrowthIsASign() {
        isDoubted(hornbeam(IN_LEAF, Fact.SHOOT_EXTENSION_MM, 0), "Growth of the season: none");
        isDoubted(hornbeam(IN_LEAF, Fact.SHOOT_EXTENSION_RATIO, 0), "Growth of the season: none");
        assertThat(AliveDoubt.of(hornbeam(IN_LEAF, Fact.SHOOT_EXTENSION_MM, 1))).isEmpty();
    }

    @Test
    void whoScratchesTheBarkAndFindsGreenHasAnsweredIt() {
        var scratched =
                Map.of(
                        Fact.FOLIAGE_LOSS_PERCENT, Value.of(100),
                        Fact.DIEBACK_PERCENT, Value.of(20));
        assertThat(AliveDoubt.of(tree("carpinus_betulus", IN_LEAF, scratched))).isEmpty();
    }

    private static TreeOnDay hornbeam(MonthDay day, Fact fact, double amount) {
        return tree("carpinus_betulus", day, Map.of(fact, Value.of(amount)));
    }
}
