package org.ripewood.sessions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sessions.SeriesDates.Unit;

/** The days of a series, the clocks between them, and numbers for benches: pure rules. */
@Tag("fast")
class SeriesDatesTest {

    /** A Saturday. */
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 14);

    @Test
    void weeksAreCountedFromTheFirstDay() {
        assertThat(SeriesDates.of(FIRST, Unit.WEEKS, 2, 3))
                .containsExactly(FIRST, FIRST.plusDays(14), FIRST.plusDays(28));
        assertThat(SeriesDates.of(FIRST, Unit.WEEKS, 1, 1)).containsExactly(FIRST);
    }

    @Test
    void monthsKeepTheWeekdayAndItsPlaceInTheMonth() {
        // second Saturdays, read off a calendar of 2026
        assertThat(SeriesDates.of(FIRST, Unit.MONTHS, 1, 4))
                .containsExactly(
                        FIRST,
                        LocalDate.of(2026, 4, 11),
                        LocalDate.of(2026, 5, 9),
                        LocalDate.of(2026, 6, 13));
        assertThat(SeriesDates.of(FIRST, Unit.MONTHS, 10, 2).get(1))
                .isEqualTo(LocalDate.of(2027, 1, 9));
    }

    @Test
    void aFifthWeekdayGoesOnAsTheLastOfEachMonth() {
        var fifth = LocalDate.of(2026, 1, 31);
        assertThat(fifth.getDayOfWeek()).isEqualTo(DayOfWeek.SATURDAY);
        assertThat(SeriesDates.of(fifth, Unit.MONTHS, 1, 4))
                .containsExactly(
                        fifth,
                        LocalDate.of(2026, 2, 28),
                        LocalDate.of(2026, 3, 28),
                        LocalDate.of(2026, 4, 25));
    }

    @Test
    void everySeriesRisesAndKeepsItsWeekday() {
        for (var day = FIRST; day.isBefore(FIRST.plusDays(40)); day = day.plusDays(1)) {
            for (var unit : Unit.values()) {
                var days = SeriesDates.of(day, unit, 3, SeriesDates.MOST);
                assertThat(days).isSorted().doesNotHaveDuplicates().hasSize(SeriesDates.MOST);
                var weekday = day.getDayOfWeek();
                assertThat(days).allMatch(one -> one.getDayOfWeek() == weekday);
                assertThat(days.get(0)).isEqualTo(day);
            }
        }
        assertThat(
                        ChronoUnit.WEEKS.between(
                                FIRST, SeriesDates.of(FIRST, Unit.WEEKS, 26, 60).get(59)))
                .isEqualTo(26 * 59);
    }

    @Test
    void whatIsOutOfBoundsIsRefusedAtItsField() {
        for (int wrong : List.of(0, -1, 27, Integer.MAX_VALUE)) {
            assertThatThrownBy(() -> SeriesDates.of(FIRST, Unit.WEEKS, wrong, 3))
                    .isInstanceOfSatisfying(
                            Refused.class,
                            refused ->
                                    assertThat(refused.problem().faults().get(0).field())
                                            .isEqualTo("every"));
        }
        assertThatThrownBy(() -> SeriesDates.of(FIRST, Unit.MONTHS, 1, 61))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> SeriesDates.of(FIRST, Unit.MONTHS, 1, 0))
                .isInstanceOf(Refused.class);
    }

    /**
     * Days from the time zone database (tzdata): clocks go forward 29 March and back 25 October.
     */
    @Test
    void daysOnWhichClocksChangeAreNamed() {
        var zone = ZoneId.of("Europe/Berlin");
        var forward = LocalDate.of(2026, 3, 29);
        var back = LocalDate.of(2026, 10, 25);
        assertThat(ClockChanges.between(zone, FIRST, FIRST.plusYears(1)))
                .containsExactly(forward, back);
        assertThat(ClockChanges.between(zone, forward, forward)).containsExactly(forward);
        assertThat(ClockChanges.between(zone, forward.plusDays(1), back.minusDays(1))).isEmpty();
        assertThat(ClockChanges.between(ZoneId.of("Asia/Tokyo"), FIRST, FIRST.plusYears(1)))
                .isEmpty();
        // tzdata: Cuba changes at midnight itself, 8 March 2026
        assertThat(
                        ClockChanges.between(
                                ZoneId.of("America/Havana"),
                                LocalDate.of(2026, 3, 8),
                                LocalDate.of(2026, 3, 8)))
                .containsExactly(LocalDate.of(2026, 3, 8));
    }

    @Test
    void anHourThatClocksLeaveOutIsKnown() {
        var zone = ZoneId.of("Europe/Berlin");
        var forward = LocalDate.of(2026, 3, 29);
        assertThat(ClockChanges.skips(zone, forward, LocalTime.of(2, 30))).isTrue();
        assertThat(ClockChanges.skips(zone, forward, LocalTime.of(3, 0))).isFalse();
        assertThat(ClockChanges.skips(zone, forward, LocalTime.of(10, 0))).isFalse();
        // an hour that comes twice is there
        assertThat(ClockChanges.skips(zone, LocalDate.of(2026, 10, 25), LocalTime.of(2, 30)))
                .isFalse();
    }

    @Test
    void benchesAreNumberedByTheLowestFreeNumber() {
        assertThat(BenchNumbers.free(List.of())).isEqualTo("1");
        assertThat(BenchNumbers.free(List.of("1", "3", " 2 "))).isEqualTo("4");
        assertThat(BenchNumbers.free(List.of("2", "A1"))).isEqualTo("1");
        assertThat(BenchNumbers.free(Set.of("1", "2", "4"))).isEqualTo("3");
    }
}
