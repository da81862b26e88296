package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Days are worked by hand from the half months of {@link TypicalYear} (common practice). */
@Tag("fast")
class CareWindowTest {

    private static final StageClock NORTH = TypicalYear.of(Habit.DECIDUOUS, 50);
    private static final StageClock SOUTH = TypicalYear.of(Habit.DECIDUOUS, -37);
    private static final StageClock TROPICS = TypicalYear.of(Habit.DECIDUOUS, 1);

    private static final CareWindow FROST = window(0, 60, List.of("91-09"), List.of());

    @Test
    void careWithoutStagesIsCountedFromTheWork() {
        var shade = window(2, 21, List.of(), List.of());
        assertThat(shade.after(day("2025-07-10"), NORTH))
                .contains(span("2025-07-12", "2025-08-01"));
    }

    @Test
    void careThatIsOpenAtOnceEndsWithItsStages() {
        // stage 10 begins on 1 April: the leaves open
        assertThat(FROST.after(day("2025-03-10"), NORTH))
                .contains(span("2025-03-10", "2025-03-31"));
    }

    @Test
    void careWaitsForItsStages() {
        // stage 91 begins on 16 August
        assertThat(FROST.after(day("2025-05-20"), NORTH))
                .contains(span("2025-08-16", "2025-10-14"));
    }

    @Test
    void theFirstFeedWaitsForHardenedLeaves() {
        // leaves of full size (19) from 1 May, whether the roots were cut early or late
        var feed = window(35, 28, List.of("19-91"), List.of());
        assertThat(feed.after(day("2025-02-20"), NORTH)).contains(span("2025-05-01", "2025-05-28"));
        assertThat(feed.after(day("2025-03-30"), NORTH)).contains(span("2025-05-04", "2025-05-31"));
    }

    @Test
    void careThatWaitsNoLongerIsNotGiven() {
        var frost = new CareWindow(0, 60, 14, List.of(StageRange.parse("91-09")), List.of());
        assertThat(frost.after(day("2025-08-02"), NORTH))
                .contains(span("2025-08-16", "2025-10-14"));
        assertThat(frost.after(day("2025-08-01"), NORTH)).isEmpty();
    }

    @Test
    void stagesMayBeLeftOut() {
        var shade = window(0, 14, List.of(), List.of("91-07"));
        assertThat(shade.after(day("2025-12-24"), NORTH))
                .contains(span("2026-04-01", "2026-04-14"));
    }

    @Test
    void careThatEndedDoesNotBeginAgain() {
        var unending = window(0, 1000, List.of("91-09"), List.of());
        assertThat(unending.after(day("2025-09-01"), NORTH))
                .contains(span("2025-09-01", "2026-03-31"));
    }

    @ParameterizedTest
    @EnumSource(Habit.class)
    void thereIsNoFrostWhereTreesNeverRest(Habit habit) {
        for (int ahead = 0; ahead < 366; ahead += 5) {
            var worked = day("2025-01-01").plusDays(ahead);
            assertThat(FROST.after(worked, TypicalYear.of(habit, -20))).isEmpty();
        }
        assertThat(FROST.openWhereTreesNeverRest()).isFalse();
        assertThat(window(0, 21, List.of(), List.of()).openWhereTreesNeverRest()).isTrue();
        assertThat(window(0, 21, List.of(), List.of()).after(day("2025-07-10"), TROPICS))
                .isPresent();
    }

    /** The south's typical year is the north's 182 days later. */
    @Test
    void theSouthIsTheNorthMirrored() {
        for (int ahead = 0; ahead < 366; ahead += 3) {
            var north = day("2025-01-01").plusDays(ahead);
            var south = north.plusDays(182);
            assertThat(FROST.after(south, SOUTH))
                    .isEqualTo(
                            FROST.after(north, NORTH)
                                    .map(
                                            found ->
                                                    new Span(
                                                            found.from().plusDays(182),
                                                            found.to().plusDays(182))));
        }
    }

    @Test
    void everyDayOfTheCareIsOpenAndTheDayBeforeIsNot() {
        long seed = 20251103;
        System.out.println("CareWindowTest seed " + seed);
        var random = new SplittableRandom(seed);
        for (int i = 0; i < 2000; i++) {
            var range = new StageRange(random.nextInt(100), random.nextInt(100));
            int fromDay = random.nextInt(60);
            var window =
                    new CareWindow(
                            fromDay,
                            1 + random.nextInt(300),
                            CareWindow.A_YEAR_ROUND,
                            List.of(range),
                            List.of());
            var worked = day("2024-01-01").plusDays(random.nextInt(800));
            var found = window.after(worked, NORTH);
            found.ifPresent(
                    span -> {
                        assertThat(span.from()).isAfterOrEqualTo(worked.plusDays(fromDay));
                        assertThat(span.from().datesUntil(span.to().plusDays(1)))
                                .allMatch(day -> range.holds(NORTH.stageOn(day)))
                                .hasSizeLessThanOrEqualTo(window.days());
                        assertThat(worked.plusDays(fromDay).datesUntil(span.from()))
                                .noneMatch(day -> range.holds(NORTH.stageOn(day)));
                    });
        }
    }

    @ParameterizedTest
    @CsvSource({"-1, 5", "0, 0", "3, -2"})
    void impossibleDaysAreRefused(int fromDay, int days) {
        assertThatThrownBy(() -> window(fromDay, days, List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("" + days);
    }

    private static CareWindow window(int fromDay, int days, List<String> only, List<String> not) {
        return new CareWindow(
                fromDay,
                days,
                CareWindow.A_YEAR_ROUND,
                only.stream().map(StageRange::parse).toList(),
                not.stream().map(StageRange::parse).toList());
    }

    private static LocalDate day(String text) {
        return LocalDate.parse(text);
    }

    private static Span span(String from, String to) {
        return new Span(day(from), day(to));
    }
}
