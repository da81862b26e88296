package org.ripewood.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ripewood.condition.RecordOf.look;
import static org.ripewood.condition.RecordOf.treeOn;
import static org.ripewood.core.progress.Source.INSTRUCTOR;
import static org.ripewood.core.progress.Source.STUDENT;

import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.records.Wound;

@Tag("fast")
class WoundFactsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 15);
    private static final LocalDate MADE = DAY.minusDays(400);

    /** A tree nobody has spoken of goes on as one without cuts, and is told so. */
    @Test
    void whoLooksForCutsIsBelievedUntilWoundsAreEntered() {
        var tree = treeOn(DAY);
        assertThat(tree.evidence(Fact.LARGEST_OPENING_MM).by())
                .isEqualTo("nobody has said; none in the record");
        assertThat(tree.facts().number(Fact.LARGEST_OPENING_MM)).isZero();
        tree.seen(Fact.WIDEST_OPEN_CUT_MM, 0, DAY.minusDays(300));
        assertThat(tree.evidence(Fact.LARGEST_OPENING_MM).observedOn()).isEqualTo(DAY);
        assertThat(tree.evidence(Fact.LARGEST_OPENING_MM).by()).startsWith("what was seen");
        tree.seen(Fact.WIDEST_OPEN_CUT_MM, Value.of(8), DAY.minusDays(30), Source.STUDENT);
        var seen = tree.evidence(Fact.LARGEST_OPENING_MM);
        assertThat(seen.value()).isEqualTo(Value.of(8));
        assertThat(seen.observedOn()).isEqualTo(DAY.minusDays(30));
        assertThat(seen.source()).isEqualTo(Source.STUDENT);
        assertThat(tree.facts().number(Fact.OPEN_WOUNDS)).isEqualTo(1);
        tree.wound(1, DAY.minusDays(400), 20, Source.INSTRUCTOR, RecordOf.look(DAY, 12));
        assertThat(tree.facts().number(Fact.LARGEST_OPENING_MM)).isEqualTo(12);
    }

    @Test
    void aTreeWithoutWoundsHasNothingOpen() {
        var facts = treeOn(DAY).facts();
        assertThat(facts.number(Fact.OPEN_WOUNDS)).isZero();
        assertThat(facts.number(Fact.LARGEST_OPENING_MM)).isZero();
        assertThat(facts.number(Fact.SMALLEST_CLOSURE_PERCENT)).isEqualTo(100);
        assertThat(facts.find(Fact.WOUND_STALLED).value()).isEqualTo(Value.of(false));
        assertThat(facts.number(Fact.FRESH_WOUNDS)).isZero();
        assertThat(facts.find(Fact.OPEN_WOUNDS).observedOn()).isEqualTo(DAY);
        assertThat(facts.find(Fact.OPEN_WOUNDS).source()).isEqualTo(Source.DERIVED);
    }

    @Test
    void openWoundsAreCountedFromFiveMillimetres() {
        var facts =
                treeOn(DAY)
                        .wound(1, MADE, 20, INSTRUCTOR, look(DAY, 5))
                        .wound(2, MADE, 20, INSTRUCTOR, look(DAY, 4.9))
                        .wound(3, MADE, 30, INSTRUCTOR, look(DAY.minusDays(200), 18), look(DAY, 12))
                        .facts();
        assertThat(facts.number(Fact.OPEN_WOUNDS)).isEqualTo(2);
        assertThat(facts.number(Fact.LARGEST_OPENING_MM)).isEqualTo(12);
        assertThat(facts.number(Fact.SMALLEST_CLOSURE_PERCENT)).isEqualTo(60);
    }

    /** From 8 mm, and 5 mm on kinds that close slowly: common practice, no source. */
    @Test
    void smallCutsAreNoWoundsAndNeedNoLook() {
        var tree =
                treeOn(DAY)
                        .wound(1, DAY.minusDays(170), 4, INSTRUCTOR)
                        .wound(2, DAY.minusDays(2), 7.9, INSTRUCTOR);
        var facts = tree.facts();
        assertThat(facts.number(Fact.OPEN_WOUNDS)).isZero();
        assertThat(facts.number(Fact.LARGEST_OPENING_MM)).isZero();
        assertThat(facts.number(Fact.SMALLEST_CLOSURE_PERCENT)).isEqualTo(100);
        assertThat(facts.find(Fact.LARGEST_OPENING_MM).observedOn()).isEqualTo(DAY);
        var slow = new TreeKind(RecordOf.KIND.shoots(), RecordOf.KIND.growing(), 5, Map.of());
        assertThat(tree.facts(slow).number(Fact.LARGEST_OPENING_MM)).isEqualTo(7.9);
    }

    /** A small cut is dressed like any other: common practice, no source. */
    @Test
    void aSmallCutIsFreshAllTheSame() {
        var facts =
                treeOn(DAY)
                        .wound(1, DAY.minusDays(170), 4, INSTRUCTOR)
                        .wound(2, DAY.minusDays(2), 3, INSTRUCTOR)
                        .facts();
        assertThat(facts.number(Fact.FRESH_WOUNDS)).isEqualTo(1);
    }

    @Test
    void howFarACutHasClosedIsAskedOfRealOnes() {
        var facts =
                treeOn(DAY)
                        .wound(1, MADE, 9, INSTRUCTOR, look(DAY, 4))
                        .wound(2, MADE, 20, INSTRUCTOR, look(DAY, 4))
                        .facts();
        assertThat(facts.number(Fact.SMALLEST_CLOSURE_PERCENT)).isEqualTo(80);
        var open = treeOn(DAY).wound(1, MADE, 9, INSTRUCTOR, look(DAY, 6.3)).facts();
        assertThat(open.number(Fact.SMALLEST_CLOSURE_PERCENT)).isCloseTo(30, within(1e-9));
    }

    @Test
    void deadwoodByDesignNeedNotClose() {
        var facts = treeOn(DAY).deadwood(1, DAY.minusDays(2), 60).facts();
        assertThat(facts.number(Fact.OPEN_WOUNDS)).isZero();
        assertThat(facts.number(Fact.LARGEST_OPENING_MM)).isZero();
        assertThat(facts.number(Fact.FRESH_WOUNDS)).isZero();
    }

    @Test
    void woundsOfTheLastSevenDaysAreFresh() {
        var facts =
                treeOn(DAY)
                        .wound(1, DAY, 20, INSTRUCTOR)
                        .wound(2, DAY.minusDays(7), 20, INSTRUCTOR)
                        .wound(3, DAY.minusDays(8), 20, INSTRUCTOR)
                        .facts();
        assertThat(facts.number(Fact.FRESH_WOUNDS)).isEqualTo(2);
        assertThat(facts.find(Fact.FRESH_WOUNDS).observedOn()).isEqualTo(DAY);
    }

    @Test
    void oneStalledWoundIsEnough() {
        var made = DAY.minusYears(3);
        var before = look(DAY.minusDays(740), 16);
        var then = look(DAY.minusDays(370), 12);
        var stalled =
                treeOn(DAY)
                        .wound(1, made, 20, INSTRUCTOR, before, then, look(DAY, 12))
                        .wound(2, made, 20, INSTRUCTOR, before, then, look(DAY, 8));
        assertThat(stalled.evidence(Fact.WOUND_STALLED).value()).isEqualTo(Value.of(true));
    }

    @Test
    void theWoundLookedAtLongestAgoDatesThemAll() {
        var tree =
                treeOn(DAY)
                        .wound(1, MADE, 20, INSTRUCTOR, look(DAY.minusDays(90), 12), look(DAY, 8))
                        .wound(2, MADE, 20, INSTRUCTOR, look(DAY.minusDays(150), 12));
        assertThat(tree.evidence(Fact.OPEN_WOUNDS).observedOn()).isEqualTo(DAY.minusDays(150));
    }

    @Test
    void aWoundNobodyHasReadIsAsOldAsItsCut() {
        var tree = treeOn(DAY).wound(1, MADE, 20, INSTRUCTOR);
        assertThat(tree.evidence(Fact.OPEN_WOUNDS).observedOn()).isEqualTo(MADE);
    }

    @Test
    void aWoundFullyClosedDoesNotAge() {
        var closed = treeOn(DAY).wound(1, MADE, 20, INSTRUCTOR, look(DAY.minusDays(300), 0));
        assertThat(closed.evidence(Fact.OPEN_WOUNDS).observedOn()).isEqualTo(DAY);
        assertThat(closed.facts().number(Fact.SMALLEST_CLOSURE_PERCENT)).isEqualTo(100);
    }

    @Test
    void theWeakestReaderWeighs() {
        var mixed =
                treeOn(DAY)
                        .wound(1, MADE, 20, INSTRUCTOR, look(DAY, 0))
                        .wound(2, MADE, 20, INSTRUCTOR, new RecordOf.Look(DAY, 0, STUDENT));
        assertThat(mixed.evidence(Fact.OPEN_WOUNDS).source()).isEqualTo(STUDENT);
        var read = treeOn(DAY).wound(1, MADE, 20, STUDENT, look(DAY, 0));
        assertThat(read.evidence(Fact.OPEN_WOUNDS).source()).isEqualTo(INSTRUCTOR);
        var unread = treeOn(DAY).wound(1, MADE, 20, STUDENT);
        assertThat(unread.evidence(Fact.OPEN_WOUNDS).source()).isEqualTo(STUDENT);
    }

    @Test
    void aWoundThatOpenedWiderThanItWasMadeHasClosedByNothing() {
        var tree = treeOn(DAY).wound(1, MADE, 20, INSTRUCTOR, look(DAY, 26));
        assertThat(tree.facts().number(Fact.SMALLEST_CLOSURE_PERCENT)).isZero();
        assertThat(tree.facts().number(Fact.LARGEST_OPENING_MM)).isEqualTo(26);
    }

    /** (30 − 2·6)(40 − 2·6) / (30·40) = 0.42, worked by hand. */
    @Test
    void theOpenShareOfItsAreaFollowsFromTheWidth() {
        var wound =
                new Wound(
                        1,
                        1,
                        "left",
                        MADE,
                        30,
                        40,
                        null,
                        null,
                        false,
                        1,
                        INSTRUCTOR,
                        treeOn(DAY)
                                .wound(1, MADE, 30, INSTRUCTOR, look(DAY, 18))
                                .record()
                                .observations());
        assertThat(wound.openMm()).isEqualTo(18);
        assertThat(wound.openAreaShare()).isEqualTo(0.42);
    }
}
