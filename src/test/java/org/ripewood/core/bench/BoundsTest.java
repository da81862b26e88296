package org.ripewood.core.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.core.bench.WorkPhase.alone;
import static org.ripewood.core.bench.WorkPhase.handsOn;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Bounds on small days, worked by hand. */
@Tag("fast")
class BoundsTest {

    private static final Span HOURS = new Span(540, 720);

    private static DayModel model(int instructors, Job... jobs) {
        var teachers =
                List.of("A", "B", "C").subList(0, instructors).stream()
                        .map(id -> new Instructor(id, List.of(HOURS), List.of()))
                        .toList();
        var day = new ClassDay(HOURS, List.of(), teachers, Map.of("jack", 1), Arrays.asList(jobs));
        return new DayModel(day, Underway.notBegun());
    }

    private static Job job(String id, String student, WorkPhase... phases) {
        return new Job(id, student, 1, 540, List.of(phases));
    }

    private static int finish(DayModel model) {
        return FinishBound.of(model, model.todo());
    }

    /** 5 minutes before, 20 + 20 with the one instructor, 7 after. */
    @Test
    void theDayIsAsLongAsTheInstructorsLoadWithItsHeadAndTail() {
        var elm = job("elm", "Ann", alone(5), handsOn(20), alone(7));
        var oak = job("oak", "Ben", alone(6), handsOn(20), alone(9));
        assertThat(finish(model(1, elm, oak))).isEqualTo(52);
        assertThat(finish(model(2, elm, oak))).isEqualTo(35);
    }

    @Test
    void theDayIsAsLongAsAStudentsOwnWork() {
        var elm = job("elm", "Ann", alone(50));
        var oak = job("oak", "Ann", alone(60));
        assertThat(finish(model(1, elm, oak))).isEqualTo(110);
    }

    @Test
    void theDayIsAsLongAsTheOnlyToolIsInUse() {
        var elm = job("elm", "Ann", alone(40).with("jack"), alone(3));
        var oak = job("oak", "Ben", alone(50).with("jack"), alone(4));
        assertThat(finish(model(1, elm, oak))).isEqualTo(93);
    }

    /** A long head on one tree and a long tail on another do not add up. */
    @Test
    void headAndTailOfDifferentWorkAreNotAdded() {
        var elm = job("elm", "Ann", alone(100), handsOn(5));
        var oak = job("oak", "Ben", handsOn(5), alone(100));
        assertThat(finish(model(1, elm, oak))).isEqualTo(105);
    }

    /** The shorter first: 10 and 40 minutes in class, the day 40 long: 10 x 50 + 40. */
    @Test
    void theCostIsBoundedByWhatOneInstructorCanDo() {
        var model = model(1, job("elm", "Ann", handsOn(30)), job("oak", "Ben", handsOn(10)));
        // told a dearer plan, so that the bound finds its way alone
        long bound = PriceBound.leastCost(model, model.todo(), 700, 200, Timetabler.NEVER);
        assertThat(bound).isGreaterThan(10 * 40 + 40).isLessThanOrEqualTo(540);
    }

    @Test
    void whereNobodyWaitsTheBoundIsTheCost() {
        var model = model(2, job("elm", "Ann", handsOn(30)), job("oak", "Ben", handsOn(10)));
        long cost = 10 * 40 + 30;
        assertThat(PriceBound.leastCost(model, model.todo(), 700, 200, Timetabler.NEVER))
                .isEqualTo(cost);
    }

    /** 180 minutes hold one piece of 100, or three of 50. */
    @Test
    void noMoreJobsAreDoneThanInstructorsHaveTimeFor() {
        var model =
                model(
                        1,
                        job("ash", "Ann", handsOn(100)),
                        job("elm", "Ben", handsOn(50)),
                        job("oak", "Cid", handsOn(50)),
                        job("yew", "Dan", handsOn(50)));
        assertThat(PriceBound.mostJobs(model, model.todo(), 200, Timetabler.NEVER)).isEqualTo(3);
    }
}
