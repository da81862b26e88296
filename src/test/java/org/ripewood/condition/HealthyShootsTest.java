package org.ripewood.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.condition.RecordOf.treeOn;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.growth.ShootSample;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.GrowingDays;

/** Which measured shoots tell how a kind grows. Bounds are those of the grades; days by hand. */
@Tag("fast")
class HealthyShootsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 10, 20);
    private static final LocalDate LONG_AGO = LocalDate.of(2010, 1, 1);

    private static RecordOf potted() {
        return treeOn(DAY).container("training", LocalDate.of(2022, 4, 1));
    }

    private static List<ShootSample> of(RecordOf tree) {
        return new HealthyShoots(tree.record(), GrowingDays.EVERY_DAY).since(LONG_AGO);
    }

    private static RecordOf measured(RecordOf tree) {
        return tree.seen(Fact.SHOOT_EXTENSION_MM, 120, DAY);
    }

    @Test
    void anInstructorsReadingOfATreeThatIsWellCounts() {
        assertThat(of(measured(potted())))
                .containsExactly(new ShootSample(1, RecordOf.STUDENT, 2026, 120, false));
    }

    @Test
    void aStudentsReadingDoesNot() {
        assertThat(of(potted().seen(Fact.SHOOT_EXTENSION_MM, Value.of(120.0), DAY, Source.STUDENT)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "FOLIAGE_LOSS_PERCENT, 25, 26",
        "DIEBACK_PERCENT, 14, 15",
        "LEAF_COLOUR_GRADE, 2, 1",
        "PEST_LEVEL, 1, 2"
    })
    void aTreeSeenToBeUnwellInThatSeasonDoesNot(Fact fact, double well, double unwell) {
        var june = LocalDate.of(2026, 6, 10);
        assertThat(of(measured(potted()).seen(fact, well, june))).hasSize(1);
        assertThat(of(measured(potted()).seen(fact, unwell, june))).isEmpty();
        assertThat(of(measured(potted()).seen(fact, unwell, june.minusYears(1)))).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"2026-05-01, 0", "2025-07-01, 0", "2024-07-01, 1"})
    void heavyWorkOfThatSeasonOrTheOneBeforeRulesItOut(LocalDate day, int counting) {
        assertThat(of(measured(potted()).work("chop", day, 8, null))).hasSize(counting);
        assertThat(of(measured(potted()).work("wire", day, 1, null))).hasSize(1);
    }

    @Test
    void shootsOfASeasonInPotAndGroundTellOfNeither() {
        var planted = measured(potted()).container("ground", LocalDate.of(2026, 5, 1));
        assertThat(of(planted)).isEmpty();
        var before = measured(potted()).container("ground", LocalDate.of(2025, 5, 1));
        assertThat(of(before)).extracting(ShootSample::inGround).containsExactly(true);
        var there =
                measured(potted())
                        .container("ground", LocalDate.of(2026, 5, 1))
                        .container("training", LocalDate.of(2026, 6, 1));
        assertThat(of(there)).isEmpty();
        assertThat(of(measured(potted()).container("show", LocalDate.of(2026, 5, 1)))).hasSize(1);
    }

    @Test
    void whereNobodySaidWhatItStandsInNothingIsKnown() {
        assertThat(of(measured(treeOn(DAY)))).isEmpty();
    }

    /** It came on 1 April 2022, when the season of that year had begun. */
    @Test
    void seasonsBeforeItCameOrLongAgoDoNotCount() {
        var tree =
                treeOn(DAY)
                        .container("training", LocalDate.of(2018, 1, 1))
                        .seen(Fact.SHOOT_EXTENSION_MM, 90, LocalDate.of(2022, 10, 1))
                        .seen(Fact.SHOOT_EXTENSION_MM, 100, LocalDate.of(2023, 10, 1));
        assertThat(of(measured(tree))).extracting(ShootSample::season).containsExactly(2026, 2023);
        assertThat(
                        new HealthyShoots(tree.record(), GrowingDays.EVERY_DAY)
                                .since(LocalDate.of(2024, 1, 1)))
                .extracting(ShootSample::season)
                .containsExactly(2026);
    }
}
