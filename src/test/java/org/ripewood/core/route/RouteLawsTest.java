package org.ripewood.core.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ripewood.core.route.Ways.DAY;
import static org.ripewood.core.route.Ways.start;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Work;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.route.Ways.StepOf;
import org.ripewood.core.season.Outlook;

/** Laws that hold whatever the steps; each case can be repeated from its seed. */
@Tag("fast")
class RouteLawsTest {

    private static final int CASES = 150;
    private static final int DRAWS = 20;

    private static Route route(List<StepOf> steps, int draws, long seed) {
        return Route.simulate(start(), steps.stream().map(StepOf::make).toList(), 5, draws, seed);
    }

    /** Days of the three tenths, beyond all days where nothing is told. */
    private static List<LocalDate> tenths(Outlook outlook) {
        return outlook instanceof Outlook.Expected expected
                ? List.of(
                        expected.earliest(),
                        expected.likely(),
                        expected.latest() == null ? LocalDate.MAX : expected.latest())
                : List.of(LocalDate.MAX, LocalDate.MAX, LocalDate.MAX);
    }

    private static void assertNotEarlier(Outlook later, Outlook than, String where) {
        for (int i = 0; i < 3; i++) {
            assertThat(tenths(later).get(i)).as(where).isAfterOrEqualTo(tenths(than).get(i));
        }
    }

    private static Outlook when(Route route, String code) {
        return route.find(code).orElseThrow().when();
    }

    @Test
    void aStepIsNeverDoneBeforeWhatComesFirst() {
        for (long seed = 0; seed < CASES; seed++) {
            var steps = new RandomWays(seed).steps(20, true);
            var route = route(steps, DRAWS, seed);
            for (var step : steps) {
                for (var before : step.after) {
                    assertNotEarlier(
                            when(route, step.code),
                            when(route, before),
                            "seed %d: %s after %s".formatted(seed, step.code, before));
                }
            }
        }
    }

    @Test
    void noStepInTurnIsDoneBeforeOneOfAnEarlierStage() {
        for (long seed = 0; seed < CASES; seed++) {
            var random = new RandomWays(seed);
            var steps = random.steps(20, true);
            steps.forEach(step -> step.inTurn = random.random.nextInt(4) > 0);
            var route = route(steps, DRAWS, seed);
            for (var late : steps) {
                for (var early : steps) {
                    if (early.inTurn && late.inTurn && early.stageOrder < late.stageOrder) {
                        assertNotEarlier(
                                when(route, late.code),
                                when(route, early.code),
                                "seed %d: %s before %s".formatted(seed, late.code, early.code));
                    }
                }
            }
        }
    }

    @Test
    void oneWaitMoreNeverMakesAStepEarlier() {
        for (long seed = 0; seed < CASES; seed++) {
            var random = new RandomWays(seed);
            var steps = random.steps(20, true);
            var before = route(steps, DRAWS, seed);
            var changed = steps.get(random.random.nextInt(steps.size()));
            changed.waits("another", random.outlook());
            assertNotEarlier(
                    when(route(steps, DRAWS, seed), changed.code),
                    when(before, changed.code),
                    "seed %d: %s".formatted(seed, changed.code));
        }
    }

    /** With heavy works one step's delay may let another one in sooner; without, never. */
    @Test
    void oneWaitMoreNeverMakesARouteWithoutWorkEarlier() {
        for (long seed = 0; seed < CASES; seed++) {
            var random = new RandomWays(seed);
            var steps = random.steps(20, false);
            var before = route(steps, DRAWS, seed);
            steps.get(random.random.nextInt(steps.size())).waits("another", random.outlook());
            var after = route(steps, DRAWS, seed);
            assertNotEarlier(after.goal(), before.goal(), "seed " + seed);
            for (var step : steps) {
                assertNotEarlier(when(after, step.code), when(before, step.code), "seed " + seed);
            }
        }
    }

    @Test
    void theOrderStepsAreHandedOverInDoesNotMatter() {
        for (long seed = 0; seed < CASES; seed++) {
            var steps = new RandomWays(seed).steps(20, true);
            var route = route(steps, DRAWS, seed);
            var shuffled = new ArrayList<>(steps);
            Collections.shuffle(shuffled, new Random(seed));
            assertThat(route(shuffled, DRAWS, seed)).as("seed %d", seed).isEqualTo(route);
        }
    }

    /** One draw has sure days: the ledger, which knows nothing of routes, must let each pass. */
    @Test
    void everyDrawKeepsTheLedgersRules() {
        int heavy = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var steps = new RandomWays(seed).steps(25, true);
            var route = route(steps, 1, seed);
            Map<String, LocalDate> days = new HashMap<>();
            for (var step : route.steps()) {
                if (step.when() instanceof Outlook.Expected sure) {
                    days.put(step.code(), sure.likely());
                }
            }
            for (var step : steps) {
                var day = days.get(step.code);
                if (day != null) {
                    assertAllowed(step, day, steps, days, "seed %d: %s".formatted(seed, step.code));
                    heavy += step.stress >= 6 ? 1 : 0;
                }
            }
        }
        assertThat(heavy).as("heavy works that were looked at").isGreaterThan(CASES);
    }

    private static void assertAllowed(
            StepOf step,
            LocalDate day,
            List<StepOf> steps,
            Map<String, LocalDate> days,
            String where) {
        var works = new ArrayList<Work>();
        for (var other : steps) {
            var on = days.get(other.code);
            if (on != null && on.isBefore(day)) {
                works.add(work(other, on));
            }
        }
        var ledger = new WorkLedger(works, 50);
        assertThat(step.open).as(where).contains(Ways.MONTHS.stageOn(day));
        assertThat(ledger.quietFrom(step.quietDaysBefore, day)).as(where).isBeforeOrEqualTo(day);
        if (step.stress > 0) {
            assertThat(ledger.loadLeft(day) + step.stress)
                    .as(where)
                    .isLessThanOrEqualTo(Math.max(8, step.stress) + 1e-6);
        }
        if (step.stress >= 6) {
            assertThat(ledger.heavyThisSeason(day)).as(where).isZero();
        }
        if (step.dose != null) {
            assertThat(ledger.takenThisSeason(step.dose.kind(), day) + step.dose.typicalShare())
                    .as(where)
                    .isLessThanOrEqualTo(step.dose.limitShare() + 1e-3);
        }
    }

    private static Work work(StepOf step, LocalDate on) {
        var dose = step.dose;
        double share = dose == null ? 0 : dose.typicalShare();
        boolean root = dose != null && dose.kind() == DoseRule.Kind.ROOT;
        return new Work(
                step.code, on, step.stress, step.recoveryDays, root ? 0 : share, root ? share : 0);
    }

    @Test
    void everyDayToTheGoalIsPutDownToOneThing() {
        for (long seed = 0; seed < CASES; seed++) {
            var route = route(new RandomWays(seed).steps(20, true), 1, seed);
            if (route.goal() instanceof Outlook.Expected goal) {
                double days = route.waitings().stream().mapToDouble(Route.Waiting::meanDays).sum();
                assertThat(days)
                        .as("seed %d", seed)
                        .isCloseTo(
                                (double) ChronoUnit.DAYS.between(DAY, goal.likely()), within(1e-6));
            }
        }
    }

    /** Sixteen times the draws, a quarter of the error; a ratio of 60 pairs is good to a fifth. */
    @Test
    void moreDrawsShrinkTheErrorByTheirRoot() {
        double few = spreadOfTheMedian(100);
        double many = spreadOfTheMedian(1600);
        assertThat(few / many).isCloseTo(4, within(1.2));
    }

    private static double spreadOfTheMedian(int draws) {
        var steps = new ArrayList<StepOf>();
        for (int i = 0; i < 4; i++) {
            var likely = DAY.plusDays(2000);
            steps.add(
                    new StepOf("s" + i)
                            .waits(
                                    "fact" + i,
                                    new Outlook.Expected(
                                            likely.minusDays(900), likely, likely.plusDays(900))));
        }
        int cases = 60;
        double sum = 0;
        double squares = 0;
        for (int seed = 0; seed < cases; seed++) {
            double median = Ways.likely(route(steps, draws, seed).goal()).toEpochDay();
            double off = median - DAY.toEpochDay() - 2700;
            sum += off;
            squares += off * off;
        }
        return Math.sqrt((squares - sum * sum / cases) / (cases - 1));
    }

    /** Facts must not lean on each other: of 4,000 draws |r| stays below 0.065 (four errors). */
    @Test
    void numbersOfTwoFactsAreIndependentAndEven() {
        var names = List.of("girth", "girth2", "wound", "a", "b", "largest_opening_mm");
        int draws = 4_000;
        for (var one : names) {
            long first = Chance.stream(1, one);
            double mean = 0;
            for (int d = 0; d < draws; d++) {
                mean += Chance.uniform(first, d) / draws;
            }
            assertThat(mean).as(one).isCloseTo(0.5, within(4 * Math.sqrt(1 / 12.0 / draws)));
            for (var other : names) {
                long second = Chance.stream(1, other);
                double product = 0;
                for (int d = 0; d < draws; d++) {
                    product +=
                            (Chance.uniform(first, d) - 0.5)
                                    * (Chance.uniform(second, d) - 0.5)
                                    * 12
                                    / draws;
                }
                assertThat(product)
                        .as("%s and %s", one, other)
                        .isCloseTo(one.equals(other) ? 1 : 0, within(0.065));
            }
        }
    }
}
