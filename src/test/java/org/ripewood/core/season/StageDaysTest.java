package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class StageDaysTest {

    private static final LocalDate FIRST = LocalDate.of(2020, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2030, 12, 31);

    /** Buds swell on 16 February (common practice, no source: the table of {@link TypicalYear}). */
    private static StageDays deciduous(double latitude) {
        return StageDays.over(TypicalYear.of(Habit.DECIDUOUS, latitude), FIRST, LAST);
    }

    @Test
    void aTreeAtRestDoesNotMakeALookOlder() {
        var growing = deciduous(50);
        var rest = LocalDate.of(2024, 11, 20);
        assertThat(growing.between(rest, LocalDate.of(2025, 2, 16))).isZero();
        assertThat(growing.between(rest, LocalDate.of(2025, 2, 26))).isEqualTo(10);
        assertThat(growing.lastWithin(rest, 10)).isEqualTo(LocalDate.of(2025, 2, 26));
        assertThat(growing.lastWithin(rest, 0)).isEqualTo(LocalDate.of(2025, 2, 16));
    }

    @Test
    void withOrWithoutSumsItCountsAlike() {
        var year = TypicalYear.of(Habit.EVERGREEN_CONIFER, 47);
        var kept = StageDays.over(year, FIRST, LAST);
        var asked = new StageDays(year);
        var dice = new Random(20261130);
        for (int i = 0; i < 300; i++) {
            var from = FIRST.minusDays(200).plusDays(dice.nextInt(4000));
            var to = from.plusDays(dice.nextInt(900));
            assertThat(kept.between(from, to)).isEqualTo(asked.between(from, to));
        }
    }

    @Test
    void olderLooksAreNeverFresherAndTheLastDayIsTheLast() {
        var growing = deciduous(50);
        var dice = new Random(7);
        for (int i = 0; i < 300; i++) {
            var seen = FIRST.plusDays(dice.nextInt(2500));
            var on = seen.plusDays(dice.nextInt(1000));
            long age = growing.between(seen, on);
            assertThat(age).isBetween(0L, seen.until(on, java.time.temporal.ChronoUnit.DAYS));
            assertThat(growing.between(seen.minusDays(1 + dice.nextInt(300)), on))
                    .isGreaterThanOrEqualTo(age);
            int days = dice.nextInt(400);
            var last = growing.lastWithin(seen, days);
            assertThat(growing.between(seen, last)).isLessThanOrEqualTo(days);
            assertThat(growing.between(seen, last.plusDays(1))).isGreaterThan(days);
        }
    }

    @Test
    void southOfTheEquatorItIsTheSameHalfAYearLater() {
        var north = deciduous(40);
        var south = deciduous(-40);
        var seen = LocalDate.of(2024, 10, 3);
        for (int days = 0; days < 700; days += 7) {
            assertThat(south.between(seen.plusDays(182), seen.plusDays(182 + days)))
                    .isEqualTo(north.between(seen, seen.plusDays(days)));
        }
    }

    @Test
    void whereNothingGrowsTheSearchEnds() {
        var pole = new StageDays(day -> 0);
        assertThat(pole.lastWithin(FIRST, 5))
                .isEqualTo(FIRST.plusDays(5 + GrowingDays.NOTHING_GROWS_DAYS));
        assertThat(GrowingDays.EVERY_DAY.between(FIRST, FIRST.plusDays(99))).isEqualTo(99);
        assertThat(GrowingDays.EVERY_DAY.between(FIRST, FIRST.minusDays(9))).isZero();
    }
}
