package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wire: every 2 weeks in growth, every 6 at rest (common practice, no source). */
@Tag("fast")
class LookRhythmTest {

    private static final LookRhythm WIRE = new LookRhythm(14, 42);
    private static final StageClock NORTH = TypicalYear.of(Habit.DECIDUOUS, 50);
    private static final StageClock SOUTH = TypicalYear.of(Habit.DECIDUOUS, -37);
    private static final StageClock TROPICS = TypicalYear.of(Habit.TROPICAL, 10);

    @ParameterizedTest
    @CsvSource({
        // in the middle of growth, and of rest (stage 95 from 1 November, 01 from 16 February)
        "2025-06-01, 2025-06-15",
        "2025-11-20, 2026-01-01",
        // 15 days at rest (5/14) and nine of growth (9/14): due on the ninth, worked by hand
        "2026-01-31, 2026-02-24",
        // 13 days of growth (13/14), then three at rest (3/42 = 1/14)
        "2025-10-18, 2025-11-03",
    })
    void theNextLookComesSoonerInGrowth(LocalDate looked, LocalDate due) {
        assertThat(WIRE.next(looked, NORTH)).contains(due);
    }

    @Test
    void theSouthIsTheNorthMirrored() {
        for (int ahead = 0; ahead < 366; ahead++) {
            var north = LocalDate.of(2025, 1, 1).plusDays(ahead);
            assertThat(WIRE.next(north.plusDays(182), SOUTH))
                    .isEqualTo(WIRE.next(north, NORTH).map(due -> due.plusDays(182)));
        }
    }

    @Test
    void whereTreesNeverRestItIsGrowthAllYear() {
        for (int ahead = 0; ahead < 366; ahead++) {
            var day = LocalDate.of(2025, 1, 1).plusDays(ahead);
            assertThat(WIRE.next(day, TROPICS)).contains(day.plusDays(14));
        }
    }

    @Test
    void aLaterLookIsNeverFollowedSooner() {
        for (int ahead = 0; ahead < 400; ahead++) {
            var day = LocalDate.of(2025, 1, 1).plusDays(ahead);
            assertThat(WIRE.next(day.plusDays(1), NORTH).orElseThrow())
                    .isAfterOrEqualTo(WIRE.next(day, NORTH).orElseThrow());
        }
    }

    @Test
    void aRhythmOfOneHalfWaitsForIt() {
        var inGrowth = new LookRhythm(7, 0);
        // growth begins on 16 February, and the seventh day of it is the 22nd
        assertThat(inGrowth.next(LocalDate.of(2025, 12, 1), NORTH))
                .contains(LocalDate.of(2026, 2, 22));
        assertThat(new LookRhythm(0, 7).next(LocalDate.of(2025, 12, 1), TROPICS)).isEmpty();
    }

    @Test
    void aLookIsInTimeForAWeekAndNotAfterTheCare() {
        var care = new Span(LocalDate.of(2025, 6, 1), LocalDate.of(2025, 7, 2));
        assertThat(WIRE.nextWithin(care, care.from(), NORTH))
                .contains(new Span(LocalDate.of(2025, 6, 15), LocalDate.of(2025, 6, 21)));
        assertThat(WIRE.nextWithin(care, LocalDate.of(2025, 6, 15), NORTH))
                .contains(new Span(LocalDate.of(2025, 6, 29), LocalDate.of(2025, 7, 2)));
        assertThat(WIRE.nextWithin(care, LocalDate.of(2025, 6, 29), NORTH)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"-1, 42", "14, -7", "0, 0"})
    void impossibleRhythmsAreRefused(int inGrowth, int atRest) {
        assertThatThrownBy(() -> new LookRhythm(inGrowth, atRest))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
