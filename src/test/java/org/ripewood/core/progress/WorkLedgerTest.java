package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class WorkLedgerTest {

    private static final LocalDate DAY = LocalDate.of(2024, 3, 1);

    private static Work work(LocalDate on, double stress, int recoveryDays, double foliage) {
        return new Work("any", on, stress, recoveryDays, foliage, 0);
    }

    /** A straight line from the stress to nothing: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"-1, 0", "0, 6", "45, 4.5", "90, 3", "179, 0.0333", "180, 0", "400, 0"})
    void aLoadFallsInAStraightLine(int daysAfter, double left) {
        var ledger = new WorkLedger(List.of(work(DAY, 6, 180, 0)), 50);
        assertThat(ledger.loadLeft(DAY.plusDays(daysAfter))).isCloseTo(left, within(1e-3));
    }

    @Test
    void loadsAddUp() {
        var ledger = new WorkLedger(List.of(work(DAY, 6, 180, 0), work(DAY, 2, 20, 0)), 50);
        assertThat(ledger.loadLeft(DAY.plusDays(10))).isCloseTo(6 * 17 / 18.0 + 1, within(1e-12));
    }

    @Test
    void workWithoutRecoveryLeavesNoLoad() {
        assertThat(new WorkLedger(List.of(work(DAY, 0, 0, 0)), 50).loadLeft(DAY)).isZero();
    }

    @Test
    void dosesAddUpOverTheSeasonOfTheHemisphere() {
        var works =
                List.of(
                        work(LocalDate.of(2023, 12, 30), 2, 30, 0.1),
                        work(LocalDate.of(2024, 2, 1), 2, 30, 0.2),
                        work(LocalDate.of(2024, 7, 2), 2, 30, 0.05));
        var asked = LocalDate.of(2024, 6, 30);
        var north = new WorkLedger(works, 50);
        var south = new WorkLedger(works, -35);
        assertThat(north.takenThisSeason(DoseRule.Kind.FOLIAGE, asked))
                .isCloseTo(0.2, within(1e-9));
        assertThat(south.takenThisSeason(DoseRule.Kind.FOLIAGE, asked))
                .isCloseTo(0.3, within(1e-9));
        assertThat(north.takenThisSeason(DoseRule.Kind.ROOT, asked)).isZero();
    }

    @Test
    void onlyHeavyWorkAsksForQuiet() {
        var ledger =
                new WorkLedger(
                        List.of(work(DAY, 6, 180, 0), work(DAY.plusDays(50), 5.9, 9, 0)), 50);
        assertThat(ledger.daysSinceHeavy(DAY.plusDays(100))).isEqualTo(100);
        assertThat(ledger.heavyThisSeason(DAY.plusDays(100))).isEqualTo(1);
        assertThat(ledger.daysSinceHeavy(DAY.minusDays(1))).isEqualTo(WorkLedger.NEVER_DAYS);
    }

    @ParameterizedTest
    @CsvSource({"25, 2", "0, 2", "50, 5", "62.5, 6.5", "75, 8", "100, 8"})
    void theBudgetGrowsWithVigour(double vigour, double budget) {
        assertThat(LoadBudget.of(vigour)).isCloseTo(budget, within(1e-9));
    }

    @Test
    void anUnknownVigourHasNoBudget() {
        assertThat(LoadBudget.of(Double.NaN)).isNaN();
    }

    @ParameterizedTest
    @CsvSource({"NaN, 0.1, 0", "11, 0.1, 0", "-1, 0, 0", "5, NaN, 0", "5, 1.1, 0", "5, 0, -0.1"})
    void aWorkThatCannotBeIsRefused(double stress, double foliage, double root) {
        assertThatThrownBy(() -> new Work("any", DAY, stress, 10, foliage, root))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
