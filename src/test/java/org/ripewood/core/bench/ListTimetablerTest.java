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
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.bench.Timetable.Slot;

/** Small days laid out by hand; minutes count from midnight, the day begins at 540 (9 o'clock). */
@Tag("fast")
class ListTimetablerTest {

    private static final Span NINE_TO_TWELVE = new Span(540, 720);

    private static Instructor teacher(String id) {
        return new Instructor(id, List.of(NINE_TO_TWELVE), List.of());
    }

    private static Job job(String id, String student, WorkPhase... phases) {
        return new Job(id, student, 10, 540, List.of(phases));
    }

    private static ClassDay day(List<Span> breaks, List<Instructor> teachers, Job... jobs) {
        return new ClassDay(
                NINE_TO_TWELVE, breaks, teachers, Map.of("jack", 1), Arrays.asList(jobs));
    }

    private static ClassDay day(Job... jobs) {
        return day(List.of(), List.of(teacher("A")), jobs);
    }

    private static Timetable plan(ClassDay day) {
        var plan = new ListTimetabler().plan(day, Timetabler.NEVER);
        Checker.check(day, plan, "by hand");
        return plan;
    }

    private static Span span(Timetable plan, String job, int phase) {
        return plan.find(job, phase).map(Slot::span).orElseThrow();
    }

    @Test
    void anInstructorHelpsTheShorterWorkFirst() {
        var plan = plan(day(job("elm", "Ann", handsOn(30)), job("oak", "Ben", handsOn(10))));
        assertThat(span(plan, "oak", 0)).isEqualTo(new Span(540, 550));
        assertThat(span(plan, "elm", 0)).isEqualTo(new Span(550, 580));
        assertThat(plan.waitingMinutes()).isEqualTo(Map.of("Ann", 10, "Ben", 0));
        assertThat(plan.finishMinute()).isEqualTo(580);
        // 10 for each of 10 + 40 minutes in class, and 40 minutes of the day
        assertThat(plan.worth().cost()).isEqualTo(540);
    }

    @Test
    void twoInstructorsHelpTwoStudentsAtOnce() {
        var day =
                day(
                        List.of(),
                        List.of(teacher("A"), teacher("B")),
                        job("elm", "Ann", handsOn(30)),
                        job("oak", "Ben", handsOn(10)));
        assertThat(plan(day).totalWaitingMinutes()).isZero();
    }

    @Test
    void workAloneGoesOnAfterTheBreak() {
        var lunch = List.of(new Span(600, 630));
        var plan = plan(day(lunch, List.of(teacher("A")), job("elm", "Ann", alone(80))));
        assertThat(span(plan, "elm", 0)).isEqualTo(new Span(540, 650));
        assertThat(plan.waitingMinutes().get("Ann")).isZero();
    }

    /** Ten minutes would be left for after the break at the least. */
    @Test
    void aBreakLeavesNoCrumbOfWork() {
        var lunch = List.of(new Span(600, 630));
        var plan = plan(day(lunch, List.of(teacher("A")), job("elm", "Ann", alone(65))));
        assertThat(span(plan, "elm", 0)).isEqualTo(new Span(545, 640));
        var whole = plan(day(lunch, List.of(teacher("A")), job("elm", "Ann", alone(15))));
        assertThat(span(whole, "elm", 0)).isEqualTo(new Span(540, 555));
    }

    @Test
    void nobodyWorksInTheLesson() {
        var day =
                new ClassDay(
                        NINE_TO_TWELVE,
                        List.of(),
                        List.of(new Span(540, 600), new Span(630, 640)),
                        List.of(teacher("A")),
                        Map.of(),
                        List.of(
                                job("elm", "Ann", alone(20), handsOn(15)),
                                job("oak", "Ben", handsOn(15))));
        var plan = plan(day);
        assertThat(span(plan, "elm", 0)).isEqualTo(new Span(600, 620));
        assertThat(span(plan, "oak", 0)).isEqualTo(new Span(600, 615));
        assertThat(span(plan, "elm", 1)).isEqualTo(new Span(640, 655));
        assertThat(plan.waitingMinutes()).isEqualTo(Map.of("Ann", 10, "Ben", 0));
    }

    /** What follows an instructor's visit is done before anything else. */
    @Test
    void aStudentGoesOnWithTheTreeTheInstructorLeft() {
        var plan =
                plan(
                        day(
                                job("elm", "Ann", handsOn(10), alone(30)),
                                job("oak", "Ann", handsOn(10), alone(30))));
        assertThat(plan.slots()).extracting(Slot::job).containsExactly("elm", "elm", "oak", "oak");
        assertThat(plan.totalWaitingMinutes()).isZero();
    }

    @Test
    void workWithAnInstructorWaitsForTheEndOfABreak() {
        var lunch = List.of(new Span(600, 630));
        var day = day(lunch, List.of(teacher("A")), job("elm", "Ann", alone(50), handsOn(15)));
        assertThat(span(plan(day), "elm", 1)).isEqualTo(new Span(630, 645));
        assertThat(plan(day).waitingMinutes().get("Ann")).isEqualTo(10);
    }

    @Test
    void anInstructorsOwnBreakIsKept() {
        var tired = new Instructor("A", List.of(NINE_TO_TWELVE), List.of(new Span(545, 560)));
        var day = day(List.of(), List.of(tired), job("elm", "Ann", handsOn(10)));
        assertThat(span(plan(day), "elm", 0)).isEqualTo(new Span(560, 570));
    }

    @Test
    void aCutFollowsItsInspectionAtOnceAndUnderTheSameEyes() {
        var elm = job("elm", "Ann", alone(10), inspection(5), handsOn(20).cutting(), alone(5));
        var day =
                day(
                        List.of(),
                        List.of(teacher("A"), teacher("B")),
                        elm,
                        job("oak", "Ben", handsOn(12)));
        var plan = plan(day);
        assertThat(span(plan, "elm", 2).fromMinute()).isEqualTo(span(plan, "elm", 1).toMinute());
        assertThat(plan.find("elm", 1).orElseThrow().instructor())
                .isEqualTo(plan.find("elm", 2).orElseThrow().instructor());
    }

    /**
     * The inspection could end right at the break; the cut would then follow half an hour later.
     */
    @Test
    void noBreakComesBetweenAnInspectionAndItsCut() {
        var lunch = List.of(new Span(600, 630));
        var elm = job("elm", "Ann", alone(55), inspection(5), alone(20).cutting());
        var plan = plan(day(lunch, List.of(teacher("A")), elm));
        assertThat(span(plan, "elm", 1)).isEqualTo(new Span(630, 635));
        assertThat(span(plan, "elm", 2)).isEqualTo(new Span(635, 655));
    }

    @Test
    void aToolOfWhichThereIsOneIsUsedByOneAtATime() {
        var plan =
                plan(
                        day(
                                job("elm", "Ann", alone(30).with("jack")),
                                job("oak", "Ben", alone(20).with("jack"))));
        assertThat(span(plan, "oak", 0)).isEqualTo(new Span(540, 560));
        assertThat(span(plan, "elm", 0)).isEqualTo(new Span(560, 590));
    }

    @Test
    void aStudentOfTwoTreesGoesOnWithOneWhileTheOtherWaits() {
        var plan =
                plan(
                        day(
                                job("ash", "Ben", handsOn(30)),
                                job("elm", "Ann", handsOn(40)),
                                job("oak", "Ann", alone(30))));
        assertThat(span(plan, "oak", 0)).isEqualTo(new Span(540, 570));
        assertThat(span(plan, "elm", 0)).isEqualTo(new Span(570, 610));
        assertThat(plan.totalWaitingMinutes()).isZero();
    }

    @Test
    void whoComesLateDoesNotWaitBefore() {
        var late = new Job("elm", "Ann", 10, 600, List.of(alone(10)));
        var plan = plan(day(late));
        assertThat(span(plan, "elm", 0)).isEqualTo(new Span(600, 610));
        assertThat(plan.waitingMinutes().get("Ann")).isZero();
    }

    @Test
    void onlyWhoIsAskedForStandsBy() {
        var day =
                day(
                        List.of(),
                        List.of(teacher("A"), teacher("B")),
                        job("elm", "Ann", handsOn(30).by("B")),
                        job("oak", "Ben", handsOn(30).by("B")));
        assertThat(plan(day).slots()).extracting(Slot::instructor).containsExactly("B", "B");
    }

    @Test
    void theLeastUsefulOfEquallyManyIsLeftOut() {
        var elm = new Job("elm", "Ann", 5, 540, List.of(handsOn(100)));
        var oak = new Job("oak", "Ben", 7, 540, List.of(handsOn(100)));
        var plan = plan(day(elm, oak));
        assertThat(plan.leftOut())
                .containsExactly(new LeftOut("elm", new LeftOut.NoRoom(true, 100, 80)));
        assertThat(plan.worth().jobs()).isEqualTo(1);
        assertThat(plan.worth().mostJobs()).isEqualTo(1);
    }

    @Test
    void whatCannotBeDoneAtAllIsToldWithItsReason() {
        var plan =
                plan(
                        day(
                                job("ash", "Ann", alone(10).with("crane")),
                                job("elm", "Ben", handsOn(10).by("C")),
                                job("oak", "Cid", alone(200)),
                                job("yew", "Dan", alone(20))));
        assertThat(plan.leftOut())
                .containsExactly(
                        new LeftOut("ash", new LeftOut.NoTool("crane")),
                        new LeftOut("elm", new LeftOut.NoInstructor(Set.of("C"))),
                        new LeftOut("oak", new LeftOut.DayTooShort(200, 540, 720)));
        assertThat(plan.slots()).hasSize(1);
    }

    @Test
    void aDayWithoutJobsOrInstructorsIsEmpty() {
        var plan = plan(day(List.of(), List.of()));
        assertThat(plan.slots()).isEmpty();
        assertThat(plan.finishMinute()).isEqualTo(540);
        assertThat(plan.worth().gap()).isZero();
    }

    @Test
    void aDayThatIsAllBreakHasNoRoom() {
        var plan =
                plan(
                        day(
                                List.of(NINE_TO_TWELVE),
                                List.of(teacher("A")),
                                job("elm", "Ann", alone(5))));
        assertThat(plan.leftOut()).extracting(LeftOut::job).containsExactly("elm");
    }

    @Test
    void aCutWithoutInspectionIsRefused() {
        assertThatThrownBy(() -> job("elm", "Ann", alone(5), handsOn(5).cutting()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("elm")
                .hasMessageContaining("phase 2");
    }

    @Test
    void aCutUnderOtherEyesThanItsInspectionIsRefused() {
        assertThatThrownBy(
                        () ->
                                job(
                                        "elm",
                                        "Ann",
                                        inspection(5).by("A"),
                                        handsOn(5).by("B").cutting()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[A] and [B]");
    }

    @Test
    void twoJobsOfOneNameAreRefused() {
        var elm = job("elm", "Ann", alone(5));
        assertThatThrownBy(() -> day(elm, elm))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("elm");
    }

    /**
     * By hand: steps of 5 minutes; a third of the student's own time first, unless that is less
     * than 10; 5 minutes of inspection before a cut; an instructor's 5 minutes are a look in
     * passing.
     */
    @ParameterizedTest
    @CsvSource({
        "60, 15, false, 'ALONE 15, HANDS_ON 15, ALONE 30'",
        "60, 15, true, 'ALONE 15, INSPECTION 5, HANDS_ON 10!, ALONE 30'",
        "60, 3, true, 'ALONE 15, INSPECTION 5, HANDS_ON 5!, ALONE 35'",
        "60, 5, false, 'ALONE 60'",
        "40, 15, true, 'INSPECTION 5, HANDS_ON 10!, ALONE 25'",
        "20, 12, false, 'HANDS_ON 15, ALONE 10'",
        "18, 0, false, 'ALONE 20'",
        "10, 10, false, 'HANDS_ON 10'",
        "5, 5, true, 'INSPECTION 5, HANDS_ON 5!'",
    })
    void aPieceOfWorkUsuallyRunsLikeThis(
            int student, int instructor, boolean irreversible, String phases) {
        var told =
                Job.usualPhases(student, instructor, irreversible).stream()
                        .map(p -> p.kind() + " " + p.minutes() + (p.cuts() ? "!" : ""))
                        .toList();
        assertThat(String.join(", ", told)).isEqualTo(phases);
    }
}
