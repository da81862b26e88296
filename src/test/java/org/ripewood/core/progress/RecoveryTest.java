package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.WorkClocks;

@Tag("fast")
class RecoveryTest {

    private static final int LAW_CASES = 2_000;

    private static Work work(LocalDate on, double stress, int recoveryDays) {
        return new Work("any", on, stress, recoveryDays, 0, 0);
    }

    private static WorkLedger ledger(GrowthDays time, double pace, Work... works) {
        return new WorkLedger(List.of(works), 50, new Recovery(time, pace));
    }

    private static Traits species(Recovery.Pace pace) {
        return new Traits("any", Habit.DECIDUOUS, Set.of(), 0.3, pace, WorkClocks.NONE);
    }

    /**
     * Reckoned by hand at {@link SummerGrowth}: 182 days of recovery are 182 / 365.25 of 183
     * growing days, 91.187; after 30 of them 6 (1 − 30 / 91.187) is left. Common practice, no
     * source, as the rule itself.
     */
    @ParameterizedTest
    @CsvSource({
        "2024-04-01, 2024-04-01, 1, 6",
        // 30 of 91.19 growing days gone
        "2024-04-01, 2024-05-01, 1, 4.0260",
        "2024-04-01, 2024-07-01, 1, 0.0123",
        "2024-04-01, 2024-07-02, 1, 0",
        // half as fast: 60 days count as 30
        "2024-04-01, 2024-05-31, 0.5, 4.0260",
        // all of winter rest recovers nothing
        "2023-10-01, 2024-04-01, 1, 6",
        "2023-10-01, 2024-05-01, 1, 4.0260",
        // begun in September: 30 growing days before the winter, 30 after it
        "2023-09-01, 2024-05-01, 1, 2.0521"
    })
    void aLoadFallsWithGrowth(LocalDate done, LocalDate on, double pace, double left) {
        var ledger = ledger(SummerGrowth.NORTH, pace, work(done, 6, 182));
        assertThat(ledger.loadLeft(on)).isCloseTo(left, within(5e-4));
    }

    @Test
    void aYearsRecoveryIsOverAfterAYearWheneverItBegan() {
        for (int month = 1; month <= 12; month++) {
            var done = LocalDate.of(2024, month, 10);
            var ledger = ledger(SummerGrowth.NORTH, 1, work(done, 8, 365));
            assertThat(ledger.loadLeft(done.plusYears(1))).as("month %d", month).isZero();
        }
    }

    @Test
    void withoutTemperaturesDaysOfTheCalendarCount() {
        var done = LocalDate.of(2023, 10, 1);
        var ledger = new WorkLedger(List.of(work(done, 6, 180)), 50);
        assertThat(ledger.loadLeft(done.plusDays(45))).isCloseTo(4.5, within(1e-9));
        assertThat(ledger.dayWithLoadAtMost(4.5, done)).contains(done.plusDays(45));
    }

    /** Common practice, no source; 75 is the strong tree of {@link LoadBudget}. */
    @ParameterizedTest
    @CsvSource({
        "75, USUAL, 1",
        "100, USUAL, 1.3333",
        "50, USUAL, 0.6667",
        "10, USUAL, 0.3333",
        "NaN, USUAL, 1",
        "75, FAST, 1.2",
        "75, SLOW, 0.8"
    })
    void theWeakAndTheSlowRecoverLater(double vigour, Recovery.Pace kind, double pace) {
        var recovery = Recovery.of(SummerGrowth.NORTH, vigour, species(kind));
        assertThat(recovery.pace()).isCloseTo(pace, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"0", "-1", "NaN", "Infinity"})
    void aPaceThatCannotBeIsRefused(double pace) {
        assertThatThrownBy(() -> new Recovery(GrowthDays.plain(), pace))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(pace));
    }

    @Test
    void whereNothingGrowsNothingIsRecovered() {
        var done = LocalDate.of(2024, 5, 1);
        var ledger = ledger(SummerGrowth.POLE, 1, work(done, 6, 90));
        assertThat(ledger.loadLeft(done.plusYears(20))).isEqualTo(6);
        assertThat(ledger.dayWithLoadAtMost(5, done)).isEmpty();
        assertThat(ledger.dayWithLoadAtMost(6, done)).contains(done);
    }

    @Test
    void lessThanNothingIsNeverReached() {
        var done = LocalDate.of(2024, 5, 1);
        var ledger = ledger(SummerGrowth.NORTH, 1, work(done, 6, 90));
        assertThat(ledger.dayWithLoadAtMost(-0.1, done)).isEmpty();
        assertThat(ledger.dayWithLoadAtMost(Double.NaN, done)).isEmpty();
        assertThat(ledger.dayWithLoadAtMost(0, done)).contains(LocalDate.of(2024, 6, 16));
    }

    @Test
    void theDayIsTheOneADayByDaySearchFinds() {
        for (long seed = 0; seed < LAW_CASES; seed++) {
            var random = new SplittableRandom(seed);
            var from = LocalDate.of(2024, 1, 1).plusDays(random.nextInt(366));
            var ledger = random(random, from);
            double load = random.nextInt(9);
            assertThat(ledger.dayWithLoadAtMost(load, from))
                    .as("seed %d", seed)
                    .isEqualTo(search(ledger, load, from));
        }
    }

    private static WorkLedger random(SplittableRandom random, LocalDate from) {
        var works = new ArrayList<Work>();
        for (int i = random.nextInt(5); i > 0; i--) {
            var done = from.minusDays(random.nextInt(500));
            works.add(work(done, random.nextInt(11), random.nextInt(400)));
        }
        var time = random.nextBoolean() ? SummerGrowth.NORTH : GrowthDays.plain();
        return new WorkLedger(works, 50, new Recovery(time, 0.3 + random.nextDouble()));
    }

    private static Optional<LocalDate> search(WorkLedger ledger, double load, LocalDate from) {
        return from.datesUntil(from.plusYears(8))
                .filter(day -> ledger.loadLeft(day) <= load)
                .findFirst();
    }

    @Test
    void aStrongerTreeNeverRecoversLater() {
        for (long seed = 0; seed < LAW_CASES; seed++) {
            var random = new SplittableRandom(seed);
            var from = LocalDate.of(2024, 1, 1).plusDays(random.nextInt(366));
            var works = random(random, from).works();
            double weak = random.nextDouble() * 100;
            double strong = weak + random.nextDouble() * (100 - weak);
            assertThat(recovered(works, strong, from))
                    .as("seed %d", seed)
                    .isBeforeOrEqualTo(recovered(works, weak, from));
        }
    }

    private static LocalDate recovered(List<Work> works, double vigour, LocalDate from) {
        var recovery = Recovery.of(SummerGrowth.NORTH, vigour, species(Recovery.Pace.USUAL));
        return new WorkLedger(works, 50, recovery).dayWithLoadAtMost(1, from).orElseThrow();
    }
}
