package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.Set;
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

    /** Growth from 1 April to 30 September, as {@link SummerGrowth}: a season is 183 days. */
    private static WorkLedger summers(List<Work> works, String... renewing) {
        return new WorkLedger(works, 50, new Recovery(SummerGrowth.NORTH, 1), Set.of(renewing));
    }

    @Test
    void aYearOfQuietIsOverWithTheGrowingSeason() {
        var repotted = LocalDate.of(2025, 3, 15);
        var ledger = summers(List.of(work(repotted, 6, 180, 0)));
        // 0.95 of the growth of 365 days: 0.95 * 365 / 365.25 * 183 = 173.7 days from 1 April
        assertThat(ledger.quietFrom(365, LocalDate.of(2026, 2, 26)))
                .isEqualTo(LocalDate.of(2025, 4, 1).plusDays(174));
        assertThat(ledger.quietFrom(182, repotted)).isEqualTo(repotted.plusDays(182));
        var summer = LocalDate.of(2025, 7, 1);
        assertThat(summers(List.of(work(summer, 6, 180, 0))).quietFrom(365, summer))
                .isBetween(LocalDate.of(2026, 6, 15), summer.plusYears(1));
    }

    @Test
    void quietNeverTakesLongerThanItsDays() {
        var random = new Random(20261130);
        for (int i = 0; i < 300; i++) {
            var done = DAY.minusDays(random.nextInt(800));
            int days = random.nextInt(500);
            var from = summers(List.of(work(done, 6, 180, 0))).quietFrom(days, DAY);
            assertThat(from).isAfterOrEqualTo(done).isBeforeOrEqualTo(done.plusDays(days));
        }
        assertThat(summers(List.of()).quietFrom(365, DAY)).isEqualTo(DAY);
    }

    @Test
    void inNewLeafAfterAChopTheSeasonsFoliageIsCountedAnew() {
        var chopped = LocalDate.of(2025, 2, 25);
        var chop = new Work("chop", chopped, 8, 730, 0.8, 0);
        var trim = new Work("trim", LocalDate.of(2025, 6, 1), 1, 28, 0.1, 0);
        var ledger = summers(List.of(chop, trim), "chop");
        // 42 days of a mean year's growth: 42 / 365.25 * 183 = 21.04 days from 1 April
        var leaf = LocalDate.of(2025, 4, 23);
        assertThat(ledger.inNewLeafOn(chopped)).contains(leaf);
        assertThat(ledger.takenThisSeason(DoseRule.Kind.FOLIAGE, leaf.minusDays(1))).isEqualTo(0.8);
        assertThat(ledger.takenThisSeason(DoseRule.Kind.FOLIAGE, leaf)).isZero();
        assertThat(ledger.takenThisSeason(DoseRule.Kind.FOLIAGE, LocalDate.of(2025, 7, 5)))
                .isEqualTo(0.1);
        assertThat(ledger.inNewLeafOn(leaf)).isEmpty();
        assertThat(
                        summers(List.of(chop, trim))
                                .takenThisSeason(DoseRule.Kind.FOLIAGE, LocalDate.of(2025, 7, 5)))
                .isCloseTo(0.9, within(1e-12));
    }
}
