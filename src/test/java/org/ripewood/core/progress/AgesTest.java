package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Criterion.Ages;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.StageDays;
import org.ripewood.core.season.TypicalYear;

/** A look grows old as the tree grows, and not while it rests. */
@Tag("fast")
class AgesTest {

    private static final GrowingDays NORTH = new StageDays(TypicalYear.of(Habit.DECIDUOUS, 47));
    private static final GrowingDays SOUTH = new StageDays(TypicalYear.of(Habit.DECIDUOUS, -47));

    private static Reason.Look look(
            GrowingDays growing, Ages ages, LocalDate seen, LocalDate on, int fresh) {
        var criterion =
                new Criterion(
                        Fact.VIGOUR_INDEX,
                        new Requirement.AtLeast(62),
                        fresh,
                        Strength.MUST,
                        false,
                        false,
                        List.of(),
                        "why",
                        ages);
        var rule = new Bench.RuleOf("repot");
        rule.criteria = List.of(criterion);
        var tree = new Bench.TreeOf();
        tree.growing = growing;
        tree.saw(Fact.VIGOUR_INDEX, Value.of(84), seen, Source.INSTRUCTOR);
        var standing = Bench.rulebook(rule).standing(tree.make(), "repot", on);
        return standing.reasons().stream()
                .filter(Reason.OfCriterion.class::isInstance)
                .map(reason -> ((Reason.OfCriterion) reason).look())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatWasJudgedBeforeLeafFallHoldsUntilTheTreeHasGrownAgain() {
        var october = LocalDate.of(2025, 10, 20);
        var march = LocalDate.of(2026, 3, 15);
        assertThat(look(NORTH, Ages.DAYS, october, march, 120)).isEqualTo(Reason.Look.STALE);
        assertThat(look(NORTH, Ages.GROWTH, october, march, 120)).isEqualTo(Reason.Look.MET);
        assertThat(look(NORTH, Ages.GROWTH, october, LocalDate.of(2026, 8, 1), 120))
                .isEqualTo(Reason.Look.STALE);
    }

    @Test
    void whatWasJudgedASpringAgoIsTooOldForThisOne() {
        var leafing = LocalDate.of(2025, 4, 19);
        assertThat(look(NORTH, Ages.GROWTH, leafing, LocalDate.of(2026, 3, 15), 120))
                .isEqualTo(Reason.Look.STALE);
    }

    @Test
    void whatDoesNotAgeIsNeverTooOld() {
        var longAgo = LocalDate.of(1999, 1, 1);
        assertThat(look(NORTH, Ages.NEVER, longAgo, Bench.DAY, 1)).isEqualTo(Reason.Look.MET);
    }

    @Test
    void ageingNeverMakesOlderEvidenceFresherAndTheLastGoodDayIsTheLast() {
        var dice = new Random(20261130);
        for (int i = 0; i < 400; i++) {
            var growing = dice.nextBoolean() ? NORTH : SOUTH;
            var ages = List.of(Ages.GROWTH, Ages.DAYS).get(dice.nextInt(2));
            int fresh = 1 + dice.nextInt(300);
            var seen = Bench.DAY.minusDays(dice.nextInt(900));
            var older = seen.minusDays(1 + dice.nextInt(300));
            var on = Bench.DAY;
            if (look(growing, ages, older, on, fresh) == Reason.Look.MET) {
                assertThat(look(growing, ages, seen, on, fresh)).isEqualTo(Reason.Look.MET);
            }
            var criterion =
                    new Criterion(
                            Fact.VIGOUR_INDEX,
                            new Requirement.AtLeast(62),
                            fresh,
                            Strength.MUST,
                            false,
                            false,
                            List.of(),
                            "why",
                            ages);
            var last = criterion.goodUntil(seen, growing);
            assertThat(last).isNotNull();
            assertThat(look(growing, ages, seen, last, fresh)).isEqualTo(Reason.Look.MET);
            assertThat(look(growing, ages, seen, last.plusDays(1), fresh))
                    .isEqualTo(Reason.Look.STALE);
        }
    }

    @Test
    void southOfTheEquatorALookAgesAsHalfAYearEarlierInTheNorth() {
        for (int days = 0; days < 500; days += 10) {
            var seen = LocalDate.of(2025, 9, 1);
            var south = seen.plusDays(182);
            assertThat(look(SOUTH, Ages.GROWTH, south, south.plusDays(days), 120))
                    .isEqualTo(look(NORTH, Ages.GROWTH, seen, seen.plusDays(days), 120));
        }
    }
}
