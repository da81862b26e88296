package org.ripewood.firstlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;
import org.ripewood.standing.Changes;
import org.ripewood.standing.WhatChanged;

/** What an entry changed, told by the verdicts before and after it. */
@Tag("fast")
class WhatChangedTest {

    private static String told(Map<Fact, Value> before, Map<Fact, Value> after) {
        var marks = WhatChanged.marks(LookTree.maple(before));
        return WhatChanged.since(marks, LookTree.maple(after)).sentence();
    }

    @Test
    void aStepThatBecameReadyIsToldFirst() {
        var dry = Map.of(Fact.SOIL_MOIST, Value.of(false));
        var moist = Map.of(Fact.SOIL_MOIST, Value.of(true));
        assertThat(told(dry, moist)).startsWith("“Check the roots” is ready now.");
    }

    @Test
    void aStepThatIsHeldNowIsToldWithItsNumber() {
        var dry = Map.of(Fact.SOIL_MOIST, Value.of(false));
        assertThat(told(Map.of(), dry))
                .startsWith("“Check the roots” is held now: soil moist no, asked for is yes");
    }

    @Test
    void pestsMakeTheirStepReadyAndHoldOthers() {
        var heavy = Map.of(Fact.PEST_LEVEL, Value.of(3));
        assertThat(told(Map.of(), heavy))
                .contains("“Deal with pests and disease” is ready now.")
                .contains(" is held now: pests and disease 3, asked for is at most ");
    }

    @Test
    void whereNothingChangedTheNearestStepIsTold() {
        var seen = Map.of(Fact.SHOW_PLANNED, Value.of(false));
        assertThat(told(Map.of(), seen))
                .matches("Nothing is freed or held by it yet; .*looks? decides? “.*”\\.");
    }

    @Test
    void whereNothingChangedThereIsNoNews() {
        var marks = WhatChanged.marks(LookTree.maple(Map.of()));
        assertThat(WhatChanged.since(marks, LookTree.maple(Map.of())).news()).isEmpty();
        assertThat(WhatChanged.since(marks, LookTree.maple(Map.of())).sentence()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ".", "x", "00000000.AAAA", "<script>", "%s.%s", "AAAA", "a.\nB"})
    void marksThatDoNotFitTellNothing(String marks) {
        var changes = WhatChanged.since(marks, LookTree.maple(Map.of()));
        assertThat(changes.known()).isFalse();
        assertThat(changes.sentence()).isEmpty();
    }

    @Test
    void marksAreFitForAnAddress() {
        assertThat(WhatChanged.marks(LookTree.maple(Map.of())))
                .matches("[0-9a-f]{8}\\.[DHLMNRS]{40,80}");
    }

    @Test
    void severalStepsAreCounted() {
        var changes =
                new Changes(
                        true,
                        List.of(
                                step("a", Verdict.READY),
                                step("b", Verdict.READY),
                                step("c", Verdict.READY),
                                step("d", Verdict.HELD),
                                step("e", Verdict.HELD)),
                        List.of());
        assertThat(changes.sentence())
                .isEqualTo(
                        "“a”, “b” and 1 more are ready now. “d” is held now: base 12 of 60; so is"
                                + " 1 more step.");
    }

    private static Changes.Step step(String title, Verdict now) {
        return new Changes.Step(title, title, Verdict.MEASURE, now, "base 12 of 60");
    }
}
