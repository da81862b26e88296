package org.ripewood.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class TodayTest {

    private static final LocalDate FIXED = LocalDate.of(2031, 5, 2);
    private static final LocalDate EARLIER = LocalDate.of(2029, 2, 28);

    private final Today today = new Today(Optional.of(FIXED));

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
}
