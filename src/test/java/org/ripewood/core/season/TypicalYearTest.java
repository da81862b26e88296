package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class TypicalYearTest {

    private static final LocalDate ANY_DAY = LocalDate.of(2023, 3, 20);

    @ParameterizedTest
    @EnumSource(Habit.class)
    void theSouthIsHalfAYearBehind(Habit habit) {
        var north = TypicalYear.of(habit, 50);
        var south = TypicalYear.of(habit, -50);
        for (int ahead = 0; ahead < 366; ahead++) {
            var day = ANY_DAY.plusDays(ahead);
            assertThat(south.stageOn(day)).isEqualTo(north.stageOn(day.minusDays(182)));
        }
    }

    @ParameterizedTest
    @EnumSource(Habit.class)
    void stagesOnlyGoForwardWithinAYear(Habit habit) {
        var clock = TypicalYear.of(habit, 50);
        var lastDay = LocalDate.of(2024, 12, 31);
        for (var day = LocalDate.of(2024, 1, 1); day.isBefore(lastDay); day = day.plusDays(1)) {
            assertThat(clock.stageOn(day.plusDays(1))).isGreaterThanOrEqualTo(clock.stageOn(day));
        }
    }

    @ParameterizedTest
    @EnumSource(Habit.class)
    void betweenTheTropicsEverythingGrows(Habit habit) {
        assertThat(TypicalYear.of(habit, -5).stageOn(ANY_DAY)).isEqualTo(35);
    }

    @Test
    void whatWasSeenStandsAndTheModelMovesOnFromIt() {
        var typical = TypicalYear.of(Habit.DECIDUOUS, 50);
        // leaves separate (10) three weeks before the first half of April, when they usually do
        var seenOn = LocalDate.of(2024, 3, 11);
        var clock = typical.from(10, seenOn);
        assertThat(clock.stageOn(seenOn)).isEqualTo(10);
        assertThat(clock.stageOn(seenOn.plusDays(10))).isEqualTo(10);
        assertThat(clock.stageOn(seenOn.plusDays(30)))
                .isGreaterThan(typical.stageOn(seenOn.plusDays(30)));
        assertThat(clock.stageOn(seenOn.plusDays(121)))
                .isEqualTo(typical.stageOn(seenOn.plusDays(121)));
        assertThat(clock.stageOn(seenOn.minusDays(1)))
                .isEqualTo(typical.stageOn(seenOn.minusDays(1)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 90.5, -91, Double.POSITIVE_INFINITY})
    void aLatitudeOffTheGlobeIsRefused(double latitude) {
        assertThatThrownBy(() -> TypicalYear.of(Habit.DECIDUOUS, latitude))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
