package org.ripewood.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class TodayTest {

    private static final LocalDate FIXED = LocalDate.of(2031, 5, 2);
    private static final LocalDate EARLIER = LocalDate.of(2029, 2, 28);

    private final Today today = new Today(Clock.systemUTC(), Optional.of(FIXED), List::of);

    @Test
    void workIsDoneAsOfTheDayItIsEnteredFor() {
        var seen = new ArrayList<LocalDate>();
        today.asOf(
                EARLIER,
                () -> {
                    seen.add(today.date());
                    seen.add(today.now().atZone(ZoneId.systemDefault()).toLocalDate());
                });
        assertThat(seen).containsExactly(EARLIER, EARLIER);
    }

    @Test
    void theDayIsThereAgainAfterwardsEvenWhenTheWorkFails() {
        assertThatThrownBy(
                        () ->
                                today.asOf(
                                        EARLIER,
                                        () -> {
                                            throw new IllegalStateException("failed");
                                        }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(today.date()).isEqualTo(FIXED);
    }

    @Test
    void anOuterDayIsThereAgainAfterAnInnerOne() {
        var seen = new ArrayList<LocalDate>();
        today.asOf(
                FIXED.plusDays(9),
                () -> {
                    today.asOf(EARLIER, () -> seen.add(today.date()));
                    seen.add(today.date());
                });
        assertThat(seen).containsExactly(EARLIER, FIXED.plusDays(9));
    }

    private static final ZoneId AUCKLAND = ZoneId.of("Pacific/Auckland");
    private static final ZoneId PAGO_PAGO = ZoneId.of("Pacific/Pago_Pago");

    @Test
    void theLastDayIsTheLaterOfTheServersAndThatOfAZone() {
        // 08:50 on 30 November in UTC: 21:50 of the day before there, 21:50 of the same day here
        var west = TodayAt.moment("2026-11-29T21:50-11:00");
        assertThat(west.date()).isEqualTo("2026-11-29");
        assertThat(west.in(AUCKLAND)).isEqualTo("2026-11-30");
        assertThat(west.last(List.of(AUCKLAND))).isEqualTo("2026-11-30");
        assertThat(west.last(List.of(PAGO_PAGO))).isEqualTo("2026-11-29");
        assertThat(west.last(List.of())).isEqualTo("2026-11-29");
        var east = TodayAt.moment("2026-11-30T21:50+13:00");
        assertThat(east.in(PAGO_PAGO)).isEqualTo("2026-11-29");
        assertThat(east.last(List.of(PAGO_PAGO, AUCKLAND))).isEqualTo("2026-11-30");
    }

    @Test
    void theSchoolsOwnGroundHasItsDay() {
        var clock = Clock.fixed(Instant.parse("2026-11-30T08:50:00Z"), PAGO_PAGO);
        assertThat(new Today(clock, Optional.empty(), () -> List.of(AUCKLAND)).last())
                .isEqualTo("2026-11-30");
        assertThat(new Today(clock, Optional.empty(), List::of).last()).isEqualTo("2026-11-29");
    }

    @Test
    void aFixedDayAndOneToldAgainAreTheSameEverywhere() {
        assertThat(today.in(AUCKLAND)).isEqualTo(today.in(PAGO_PAGO)).isEqualTo(FIXED);
        today.asOf(
                EARLIER,
                () -> assertThat(today.last(List.of(AUCKLAND, PAGO_PAGO))).isEqualTo(EARLIER));
    }
}
