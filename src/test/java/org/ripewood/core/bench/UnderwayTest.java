package org.ripewood.core.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.ripewood.core.bench.WorkPhase.alone;
import static org.ripewood.core.bench.WorkPhase.handsOn;
import static org.ripewood.core.bench.WorkPhase.inspection;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.bench.ChocoTimetabler.Effort;
import org.ripewood.core.bench.Timetable.Slot;

/** A day that has begun is laid out again from now on. */
@Tag("fast")
class UnderwayTest {

    private static final Span HOURS = new Span(540, 780);
    private static final List<Timetabler> BOTH =
            List.of(
                    new ListTimetabler(),
                    new ChocoTimetabler(1, new Effort(2, 1_000, 2_000_000, 30, 20, 25)));

    private static Instructor teacher(String id) {
        return new Instructor(id, List.of(HOURS), List.of());
    }

    private static Job job(String id, String student, WorkPhase... phases) {
        return new Job(id, student, 10, 540, List.of(phases));
    }

    private static ClassDay day(Job... jobs) {
        return new ClassDay(
                HOURS,
                List.of(),
                List.of(teacher("A"), teacher("B")),
                Map.of("jack", 1),
                Arrays.asList(jobs));
    }

    private static Timetable plan(ClassDay day, Underway underway) {
        var plan = new ListTimetabler().plan(day, underway, Timetabler.NEVER);
        Checker.check(day, underway, plan, "by hand");
        return plan;
    }

    private static Underway begun(int now, Slot... slots) {
        return new Underway(now, Arrays.asList(slots), Set.of(), Map.of(), List.of());
    }

    private static Span span(Timetable plan, String job, int phase) {
        return plan.find(job, phase).map(Slot::span).orElseThrow();
    }

    @Test
    void whatHasBegunKeepsItsTimes() {
        var day = day(job("elm", "Ann", alone(30), handsOn(10)));
        var running = new Slot("elm", 0, null, new Span(543, 590));
        var plan = plan(day, begun(550, running));
        assertThat(plan.slots()).contains(running);
        assertThat(span(plan, "elm", 1)).isEqualTo(new Span(590, 600));
    }

    @Test
    void anOverrunMovesOnlyWhatFollows() {
        var day =
                day(
                        job("ash", "Cid", handsOn(20).by("A")),
                        job("elm", "Ann", alone(20), handsOn(10).by("A")),
                        job("oak", "Ben", alone(20), handsOn(10).by("B")));
        var first = plan(day, Underway.notBegun());
        var later = Underway.following(first, 550).ending("ash", 575);
        var plan = plan(day, later);
        assertThat(span(plan, "elm", 1)).isEqualTo(new Span(575, 585));
        assertThat(span(plan, "oak", 1)).isEqualTo(span(first, "oak", 1));
    }

    @Test
    void anAbsentStudentsJobsGoAndTheInstructorIsFree() {
        var day =
                day(
                        job("elm", "Ann", handsOn(60).by("A"), alone(10)),
                        job("oak", "Ben", handsOn(10).by("A")));
        var running = new Slot("elm", 0, "A", new Span(540, 600));
        var plan = plan(day, begun(550, running).without("Ann"));
        assertThat(plan.leftOut()).containsExactly(new LeftOut("elm", new LeftOut.Absent("Ann")));
        assertThat(span(plan, "elm", 0)).isEqualTo(new Span(540, 550));
        assertThat(span(plan, "oak", 0)).isEqualTo(new Span(550, 560));
    }

    @Test
    void whoComesLaterBeginsLater() {
        var day = day(job("elm", "Ann", alone(10)));
        assertThat(span(plan(day, Underway.notBegun().arriving("Ann", 600)), "elm", 0))
                .isEqualTo(new Span(600, 610));
    }

    @Test
    void theCutGoesWithAnInspectionThatRuns() {
        var elm = job("elm", "Ann", inspection(5), handsOn(20).cutting(), alone(5));
        var running = new Slot("elm", 0, "B", new Span(548, 553));
        var plan = plan(day(elm, job("oak", "Ben", handsOn(15).by("B"))), begun(550, running));
        assertThat(plan.find("elm", 1)).contains(new Slot("elm", 1, "B", new Span(553, 573)));
        assertThat(span(plan, "oak", 0)).isEqualTo(new Span(573, 588));
    }

    @Test
    void anInspectionWithoutItsCutIsRepeated() {
        var elm = job("elm", "Ann", inspection(5), handsOn(20).cutting());
        var past = new Slot("elm", 0, "B", new Span(541, 546));
        var plan = plan(day(elm), begun(550, past));
        assertThat(plan.slots()).hasSize(3);
        assertThat(span(plan, "elm", 0)).isEqualTo(new Span(550, 555));
        assertThat(span(plan, "elm", 1)).isEqualTo(new Span(555, 575));
    }

    /** Somebody else still holds the only jack when the inspection ends. */
    @Test
    void anInspectionIsRepeatedWhereATooIsNotThereForTheCut() {
        var elm = job("elm", "Ann", inspection(5), handsOn(20).with("jack").cutting());
        var oak = job("oak", "Ben", alone(30).with("jack"));
        var plan =
                plan(
                        day(elm, oak),
                        begun(
                                550,
                                new Slot("elm", 0, "B", new Span(548, 553)),
                                new Slot("oak", 0, null, new Span(540, 570))));
        assertThat(span(plan, "elm", 0)).isEqualTo(new Span(565, 570));
        assertThat(span(plan, "elm", 1)).isEqualTo(new Span(570, 590));
    }

    @Test
    void aToolStaysWhereItIsInUse() {
        var day =
                day(
                        job("elm", "Ann", alone(40).with("jack")),
                        job("oak", "Ben", alone(10).with("jack")));
        var plan = plan(day, begun(550, new Slot("elm", 0, null, new Span(540, 580))));
        assertThat(span(plan, "oak", 0)).isEqualTo(new Span(580, 590));
    }

    @Test
    void theInstructorOfThePlanInForceIsKeptWhereThatCostsLittle() {
        var day = day(job("elm", "Ann", alone(20), handsOn(10)));
        var before = List.of(new Slot("elm", 1, "B", new Span(565, 575)));
        var underway =
                new Underway(
                        550,
                        List.of(new Slot("elm", 0, null, new Span(540, 560))),
                        Set.of(),
                        Map.of(),
                        before);
        assertThat(plan(day, underway).find("elm", 1))
                .contains(new Slot("elm", 1, "B", new Span(560, 570)));
    }

    @Test
    void whatNoLongerFitsIsToldAndWhatWasDoneOfItStays() {
        var day = day(job("elm", "Ann", alone(100), handsOn(100)));
        var plan = plan(day, begun(600, new Slot("elm", 0, null, new Span(540, 700))));
        assertThat(plan.leftOut())
                .containsExactly(new LeftOut("elm", new LeftOut.DayTooShort(100, 700, 780)));
        assertThat(plan.slots()).hasSize(1);
    }

    @Test
    void aDayThatIsOverHasNothingLeftToPlan() {
        var day = day(job("elm", "Ann", alone(10)), job("oak", "Ben", alone(10)));
        var plan = plan(day, begun(800, new Slot("elm", 0, null, new Span(540, 550))));
        assertThat(plan.slots()).hasSize(1);
        assertThat(plan.leftOut()).extracting(LeftOut::job).containsExactly("oak");
    }

    @Test
    void workThatIsNotOnTheDayIsRefused() {
        var slot = new Slot("yew", 0, null, new Span(540, 550));
        assertThatThrownBy(() -> plan(day(), begun(560, slot)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("yew");
    }

    @Test
    void aPhaseThatBeganBeforeTheOneBeforeItIsRefused() {
        var slot = new Slot("elm", 1, "A", new Span(540, 550));
        assertThatThrownBy(
                        () -> plan(day(job("elm", "Ann", alone(5), handsOn(5))), begun(560, slot)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("phase 1 of elm");
    }

    @Test
    void workThatBeginsAfterNowHasNotBegun() {
        var slot = new Slot("elm", 0, null, new Span(560, 570));
        assertThatThrownBy(() -> begun(550, slot))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("elm");
    }

    /** Random days that go by the plan, with an overrun, a late and an absent student. */
    @Test
    void everyDayLaidOutAgainKeepsEveryRule() {
        for (long seed = 0; seed < 80; seed++) {
            var day = TimetablerLawsTest.day(seed);
            var dice = new SplittableRandom(seed);
            for (var timetabler : BOTH) {
                var plan = timetabler.plan(day, Timetabler.NEVER);
                int now = 545 + dice.nextInt(470);
                var underway = disturbed(day, Underway.following(plan, now), dice);
                var again = timetabler.plan(day, underway, Timetabler.NEVER);
                Checker.check(day, underway, again, "seed %d at %d".formatted(seed, now));
                assertThat(timetabler.plan(day, underway, Timetabler.NEVER)).isEqualTo(again);
            }
        }
    }

    private static Underway disturbed(ClassDay day, Underway underway, SplittableRandom dice) {
        var disturbed = underway;
        int now = underway.nowMinute();
        for (var slot : underway.begun()) {
            boolean runs = slot.span().toMinute() > now;
            if (runs && dice.nextInt(3) == 0) {
                int until = Math.min(1100, slot.span().toMinute() + dice.nextInt(40));
                disturbed = disturbed.ending(slot.job(), until);
            }
        }
        var begun = underway.begun().stream().map(Slot::job).toList();
        var students =
                day.jobs().stream()
                        .filter(job -> begun.contains(job.id()))
                        .map(Job::student)
                        .toList();
        for (var job : day.jobs()) {
            if (!students.contains(job.student()) && dice.nextInt(5) == 0) {
                disturbed = disturbed.arriving(job.student(), now + dice.nextInt(60));
            }
        }
        return dice.nextInt(3) == 0
                ? disturbed.without(day.jobs().get(dice.nextInt(day.jobs().size())).student())
                : disturbed;
    }

    @Test
    void aDayThatGoesByItsPlanNeedsNoOther() {
        for (long seed = 0; seed < 40; seed++) {
            var day = TimetablerLawsTest.day(seed);
            var plan = BOTH.get(1).plan(day, Timetabler.NEVER);
            var underway = Underway.following(plan, 600);
            for (var timetabler : BOTH) {
                var again = timetabler.plan(day, underway, Timetabler.NEVER);
                assertThat(again.worth().jobs())
                        .as("seed " + seed)
                        .isGreaterThanOrEqualTo(plan.worth().jobs());
                if (again.worth().jobs() == plan.worth().jobs()) {
                    assertThat(again.worth().cost())
                            .as("seed " + seed)
                            .isLessThanOrEqualTo(plan.worth().cost());
                }
            }
        }
    }
}
