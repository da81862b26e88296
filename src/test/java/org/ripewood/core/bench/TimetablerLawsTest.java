package org.ripewood.core.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Laws that hold on any day; each case can be repeated from its seed. */
@Tag("fast")
class TimetablerLawsTest {

    private static final int CASES = 60;

    /** Laws hold however short the search. */
    private static final ChocoTimetabler.Effort SHORT =
            new ChocoTimetabler.Effort(2, 1_000, 2_000_000, 30, 20, 25);

    private static final List<Timetabler> BOTH =
            List.of(new ListTimetabler(), new ChocoTimetabler(1, SHORT));

    /** Days from easy to hopeless, small and middling. */
    static ClassDay day(long seed) {
        var dice = new SplittableRandom(seed);
        int trees = 4 + dice.nextInt(12);
        return new RandomDays(seed).day(trees, 1 + dice.nextInt(3), 0.3 + dice.nextDouble());
    }

    @Test
    void everyPlanKeepsEveryRule() {
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed);
            for (var timetabler : BOTH) {
                var plan = timetabler.plan(day, Timetabler.NEVER);
                Checker.check(day, plan, "seed " + seed);
            }
        }
    }

    private static ClassDay with(ClassDay day, Span hours, List<Instructor> instructors) {
        return new ClassDay(
                hours, day.breaks(), day.lesson(), instructors, day.tools(), day.jobs());
    }

    /** Whole steps, and an instructor comes for no less than ten minutes. */
    @Test
    void workIsLaidInStepsAndNoVisitIsShort() {
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed);
            for (var timetabler : BOTH) {
                var slots = timetabler.plan(day, Timetabler.NEVER).slots();
                for (var slot : slots) {
                    var said = "seed %d: %s".formatted(seed, slot);
                    assertThat(slot.span().fromMinute() % 5).as(said).isZero();
                    assertThat(slot.span().toMinute() % 5).as(said).isZero();
                    int visit =
                            slots.stream()
                                    .filter(one -> one.job().equals(slot.job()))
                                    .filter(one -> one.instructor() != null)
                                    .filter(one -> Math.abs(one.phase() - slot.phase()) <= 1)
                                    .mapToInt(one -> one.span().minutes())
                                    .sum();
                    assertThat(slot.instructor() == null ? slot.span().minutes() : visit)
                            .as(said)
                            .isGreaterThanOrEqualTo(10);
                }
            }
        }
    }

    /** Nobody works, and no instructor stands by, while all are taught. */
    @Test
    void nothingBeginsOrEndsInTheLesson() {
        int lessons = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed);
            for (var lesson : day.lesson()) {
                lessons++;
                for (var timetabler : BOTH) {
                    assertThat(timetabler.plan(day, Timetabler.NEVER).slots())
                            .as("seed " + seed)
                            .noneMatch(slot -> lesson.holds(slot.span().fromMinute()))
                            .noneMatch(slot -> lesson.holds(slot.span().toMinute() - 1))
                            .noneMatch(
                                    slot ->
                                            slot.instructor() != null
                                                    && slot.span().holds(lesson.fromMinute()));
                }
            }
        }
        assertThat(lessons).isGreaterThan(CASES / 3);
    }

    /** A student leaves a tree for another only where the tree waits for an instructor. */
    @Test
    void aTreeIsLeftOnlyWhereItWaits() {
        int comesBack = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed);
            var jobs = RandomDays.byId(day);
            for (var timetabler : BOTH) {
                var last = new HashMap<String, String>();
                for (var slot : timetabler.plan(day, Timetabler.NEVER).slots()) {
                    var job = jobs.get(slot.job());
                    var before = last.put(job.student(), slot.job());
                    if (before != null && !before.equals(slot.job()) && slot.phase() > 0) {
                        comesBack++;
                        assertThat(slot.instructor()).as("seed %d: %s", seed, slot).isNotNull();
                    }
                }
            }
        }
        assertThat(comesBack).isPositive();
    }

    @Test
    void daysWithManyTreesKeepEveryRule() {
        for (long seed = 0; seed < 6; seed++) {
            var day = new RandomDays(seed).day(30, 1 + (int) seed % 3, 0.4 + 0.15 * seed);
            for (var timetabler : BOTH) {
                Checker.check(day, timetabler.plan(day, Timetabler.NEVER), "seed " + seed);
            }
        }
    }

    @Test
    void theSameDayGivesTheSamePlan() {
        var whole = new ChocoTimetabler(7);
        var small = new RandomDays(3).day(7, 2, 0.7);
        assertThat(whole.plan(small, Timetabler.NEVER))
                .isEqualTo(whole.plan(small, Timetabler.NEVER));
        for (long seed = 0; seed < 20; seed++) {
            var day = day(seed);
            var jobs = new ArrayList<>(day.jobs());
            Collections.shuffle(jobs, new Random(seed));
            var shuffled =
                    new ClassDay(
                            day.hours(),
                            day.breaks(),
                            day.lesson(),
                            day.instructors(),
                            day.tools(),
                            jobs);
            for (var timetabler : BOTH) {
                var plan = timetabler.plan(day, Timetabler.NEVER);
                assertThat(timetabler.plan(day, Timetabler.NEVER)).isEqualTo(plan);
                assertThat(timetabler.plan(shuffled, Timetabler.NEVER))
                        .as("seed %d in another order", seed)
                        .isEqualTo(plan);
            }
        }
    }

    @Test
    void theSearchIsNeverWorseThanTheList() {
        for (long seed = 0; seed < CASES; seed++) {
            var listed = BOTH.get(0).plan(day(seed), Timetabler.NEVER).worth();
            var searched = BOTH.get(1).plan(day(seed), Timetabler.NEVER).worth();
            assertThat(searched.jobs()).as("seed " + seed).isGreaterThanOrEqualTo(listed.jobs());
            if (searched.jobs() == listed.jobs() && listed.jobs() == day(seed).jobs().size()) {
                assertThat(searched.cost())
                        .as("seed " + seed)
                        .isLessThanOrEqualTo(listed.cost())
                        .isGreaterThanOrEqualTo(listed.leastCost());
            }
            assertThat(searched.jobs()).as("seed " + seed).isLessThanOrEqualTo(listed.mostJobs());
        }
    }

    @Test
    void aGuardThatSaysStopAtOnceStillGetsAPlan() {
        for (long seed = 0; seed < 20; seed++) {
            var day = day(seed);
            for (var timetabler : BOTH) {
                Checker.check(day, timetabler.plan(day, () -> true), "seed " + seed);
            }
        }
    }

    private static Underway inForce(Timetable plan) {
        return new Underway(0, List.of(), Set.of(), Map.of(), plan.slots());
    }

    private static void assertNoFewer(ClassDay better, Timetable before, String where) {
        for (var timetabler : BOTH) {
            var after = timetabler.plan(better, inForce(before), Timetabler.NEVER);
            Checker.check(better, inForce(before), after, where);
            assertThat(after.worth().jobs())
                    .as(where)
                    .isGreaterThanOrEqualTo(before.worth().jobs());
        }
    }

    @Test
    void oneInstructorMoreNeverLosesAJobOfThePlanInForce() {
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed);
            var more = new ArrayList<>(day.instructors());
            more.add(new Instructor("another", List.of(day.hours()), List.of()));
            var better = with(day, day.hours(), more);
            for (var timetabler : BOTH) {
                assertNoFewer(better, timetabler.plan(day, Timetabler.NEVER), "seed " + seed);
            }
        }
    }

    @Test
    void aLongerDayNeverLosesAJobOfThePlanInForce() {
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed);
            var hours = new Span(day.hours().fromMinute(), day.hours().toMinute() + 60);
            var better = with(day, hours, day.instructors());
            for (var timetabler : BOTH) {
                assertNoFewer(better, timetabler.plan(day, Timetabler.NEVER), "seed " + seed);
            }
        }
    }

    /** The bounds may not know it, but where they are met it holds from scratch as well. */
    @Test
    void oneInstructorMoreNeverProvesFewerJobs() {
        int met = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed);
            var more = new ArrayList<>(day.instructors());
            more.add(new Instructor("another", List.of(day.hours()), List.of()));
            var better = with(day, day.hours(), more);
            var before = BOTH.get(1).plan(day, Timetabler.NEVER).worth();
            var after = BOTH.get(1).plan(better, Timetabler.NEVER).worth();
            assertThat(after.mostJobs()).as("seed " + seed).isGreaterThanOrEqualTo(before.jobs());
            if (after.jobs() == after.mostJobs()) {
                met++;
                assertThat(after.jobs()).as("seed " + seed).isGreaterThanOrEqualTo(before.jobs());
            }
        }
        assertThat(met).isGreaterThan(CASES / 2);
    }
}
