package org.ripewood.classday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.standing.RefusalAssert.refusalOf;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.bench.Span;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.materials.Materials;
import org.ripewood.materials.NewStockTool;
import org.ripewood.platform.problems.Fault;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Elm;
import org.ripewood.steps.Reports;
import org.ripewood.trees.Tree;

/** A day is laid out, and laid out again while it goes on. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class TimetableTest {

    private static final String WIRING_LESSON = "wiring-branches";
    private static final LocalDate DAY = School.TODAY.plusDays(8);
    private static final NewTimetable ANEW = new NewTimetable(null, null, null, null, null, null);

    @Inject Assigner assigner;
    @Inject School school;
    @Inject Sessions sessions;
    @Inject ClassDays days;
    @Inject Materials materials;
    @Inject Reports reports;

    School.Group group;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
    }

    private Session session(Tree... trees) {
        return session(LocalTime.of(9, 0), LocalTime.of(16, 0), trees);
    }

    private Session session(LocalTime from, LocalTime until, Tree... trees) {
        return session(from, until, null, trees);
    }

    private Session session(
            LocalTime from, LocalTime until, @Nullable String lesson, Tree... trees) {
        var session =
                sessions.set(
                        group.instructor(),
                        new NewSession(
                                group.course().id(),
                                DAY,
                                from,
                                until,
                                lesson,
                                "long table",
                                List.of(group.instructor().personId())));
        int bench = 1;
        for (var tree : trees) {
            session =
                    sessions.enrol(
                            group.instructor(),
                            session.id(),
                            new NewEnrolment(
                                    tree.keeperId(), tree.id(), Integer.toString(bench++)));
        }
        return session;
    }

    private Tree elm() {
        return Elm.readyForWiring(school, group, assigner);
    }

    private DayTimetable layOut(Session session, NewTimetable asked) {
        return days.layOut(group.instructor(), session.id(), asked);
    }

    private static NewTimetable at(int hour, int minute) {
        return new NewTimetable(LocalTime.of(hour, minute), null, null, null, null, null);
    }

    @Test
    void aDayLaidOutKeepsHoursBreakAndTheInstructorsTwoHands() {
        var session = session(elm(), elm());
        var plan = layOut(session, ANEW);
        assertThat(plan.revision()).isEqualTo(1);
        assertThat(plan.leftOut()).isEmpty();
        var taught = new ArrayList<DayTimetable.Slot>();
        for (var slot : plan.slots()) {
            assertThat(slot.fromMinute()).isGreaterThanOrEqualTo(9 * 60);
            assertThat(slot.toMinute()).isLessThanOrEqualTo(16 * 60);
            if (slot.instructorId() != null) {
                assertThat(slot.instructorId()).isEqualTo(group.instructor().personId());
                taught.add(slot);
            }
        }
        assertThat(taught).hasSize(2);
        assertThat(taught.get(0).toMinute()).isLessThanOrEqualTo(taught.get(1).fromMinute());
        // of a day from 9 to 16 the usual break is from 12:00 to 12:45
        assertThat(taught)
                .noneMatch(slot -> slot.fromMinute() < 12 * 60 + 45 && slot.toMinute() > 12 * 60);
        var shown = days.plan(group.instructor(), session.id()).timetable();
        assertThat(shown).isNotNull();
        assertThat(shown.stale()).isFalse();
        assertThat(shown.lines()).hasSizeGreaterThanOrEqualTo(plan.slots().size());
        assertThat(shown.waits().stream().mapToInt(TimetableShown.Wait::minutes).sum())
                .isEqualTo(plan.waitingMinutes());
    }

    /** A lesson of 120 minutes, by its content; the usual break from 12:00 to 12:45. */
    @Test
    void theLessonHasItsPlaceAndNobodyWorksInIt() {
        var session = session(LocalTime.of(9, 0), LocalTime.of(16, 0), WIRING_LESSON, elm(), elm());
        var plan = layOut(session, ANEW);
        assertThat(plan.slots())
                .isNotEmpty()
                .allSatisfy(slot -> assertThat(slot.fromMinute()).isGreaterThanOrEqualTo(11 * 60));
        assertThat(days.plan(group.instructor(), session.id()).lessonAt())
                .containsExactly(new Span(9 * 60, 11 * 60));
        layOut(session, lesson(LocalTime.of(11, 0), null));
        assertThat(days.plan(group.instructor(), session.id()).lessonAt())
                .containsExactly(new Span(11 * 60, 12 * 60), new Span(12 * 60 + 45, 13 * 60 + 45));
        var late = layOut(session, ANEW);
        assertThat(late.slots())
                .anySatisfy(slot -> assertThat(slot.fromMinute()).isEqualTo(9 * 60))
                .noneMatch(slot -> slot.fromMinute() >= 11 * 60 && slot.fromMinute() < 13 * 60 + 45)
                .noneMatch(slot -> slot.toMinute() > 11 * 60 && slot.toMinute() <= 13 * 60 + 45);
        layOut(session, lesson(null, 0));
        assertThat(days.plan(group.instructor(), session.id()).lessonAt()).isEmpty();
    }

    /** What is shown of a day has no break and no lesson in a row, and no row below ten minutes. */
    @Test
    void noRowHidesABreakOrIsACrumb() {
        var session = session(LocalTime.of(9, 0), LocalTime.of(16, 0), WIRING_LESSON, elm(), elm());
        layOut(session, lesson(LocalTime.of(9, 30), 45));
        var shown = days.plan(group.instructor(), session.id()).timetable();
        assertThat(shown).isNotNull();
        assertThat(shown.lines())
                .isNotEmpty()
                .allSatisfy(
                        line -> {
                            int from = Minutes.of(line.from());
                            int until = Minutes.of(line.until());
                            assertThat(until - from).isGreaterThanOrEqualTo(10);
                            assertThat(from % 5).isZero();
                            assertThat(from < 10 * 60 + 15 && until > 9 * 60 + 30).isFalse();
                            assertThat(from < 12 * 60 + 45 && until > 12 * 60).isFalse();
                        });
    }

    @Test
    void aLessonTakesAsMuchOfTheDayAsItAsksFor() {
        var session = session(LocalTime.of(9, 0), LocalTime.of(11, 0), WIRING_LESSON, elm());
        var evening = session(LocalTime.of(17, 0), LocalTime.of(19, 0), elm());
        assertThat(refusalOf(() -> layOut(session, ANEW)).detail()).contains("None of the trees");
        assertThat(faulty(evening, lesson(null, 30))).containsExactly("lesson");
        assertThat(faulty(session, lesson(LocalTime.of(11, 0), 30))).containsExactly("lesson.at");
        assertThat(layOut(session, lesson(null, 30)).slots()).isNotEmpty();
    }

    private static NewTimetable lesson(@Nullable LocalTime at, @Nullable Integer minutes) {
        return new NewTimetable(null, null, null, null, null, new NewTimetable.Lesson(at, minutes));
    }

    /** Winter protection is no bench work, unless an instructor wishes it. */
    @Test
    void standingCareIsNotChosenUnlessItIsWished() {
        var tree = elm();
        var session = session(tree);
        var row = days.plan(group.instructor(), session.id()).rows().get(0);
        assertThat(row.technique()).isNotNull();
        assertThat(row.technique().rule().purpose()).isNotEqualTo(TechniqueRule.Purpose.CARE);
        var care =
                row.others().stream()
                        .filter(other -> other.why().contains("Care where the tree stands"))
                        .findFirst()
                        .orElseThrow();
        days.wish(
                group.instructor(),
                session.id(),
                new NewDayWish(tree.id(), care.technique(), DayWish.PIN));
        assertThat(days.plan(group.instructor(), session.id()).rows())
                .anySatisfy(
                        one ->
                                assertThat(one.technique() == null ? "" : one.technique().code())
                                        .isEqualTo(care.technique()));
    }

    /** What an instructor has not seen yet nobody builds on. */
    @Test
    void whatIsReportedWaitsForItsSignOff() {
        var tree = elm();
        var step = assigner.assign(group.instructor(), tree.id(), Elm.wire());
        reports.report(group.student(), step.id(), step.version(), Elm.wired());
        var row = days.plan(group.instructor(), session(tree).id()).rows().get(0);
        assertThat(row.technique()).isNull();
        assertThat(row.why())
                .contains("is reported as done on 20 February 2026 and not signed off yet.")
                .contains("What comes next is planned after that.");
    }

    @Test
    void theSameDayGivesTheSamePlan() {
        var session = session(elm(), elm(), elm());
        var first = layOut(session, ANEW);
        var second = layOut(session, ANEW);
        assertThat(second.revision()).isEqualTo(2);
        assertThat(second.slots()).isEqualTo(first.slots());
    }

    /** An elm's wiring takes a student 90 of the 105 minutes there are. */
    @Test
    void whatAStudentHasNoTimeForIsNotChosen() {
        var session = session(LocalTime.of(9, 0), LocalTime.of(10, 45), elm(), elm());
        var rows = days.plan(group.instructor(), session.id()).rows();
        assertThat(rows).filteredOn(row -> row.technique() != null).hasSize(1);
        assertThat(rows)
                .filteredOn(row -> row.technique() == null)
                .singleElement()
                .satisfies(
                        row ->
                                assertThat(row.why())
                                        .contains("The student has 15 minutes left")
                                        .contains("it takes 90"));
        assertThat(layOut(session, ANEW).leftOut()).isEmpty();
    }

    /** A pin is as much time as anything else. */
    @Test
    void aPinThatDoesNotFitIsTold() {
        var first = elm();
        var second = elm();
        var session = session(LocalTime.of(9, 0), LocalTime.of(10, 0), first, second);
        days.wish(
                group.instructor(),
                session.id(),
                new NewDayWish(second.id(), Elm.WIRING, DayWish.PIN));
        assertThat(days.plan(group.instructor(), session.id()).rows())
                .allSatisfy(
                        row -> {
                            assertThat(row.technique()).isNull();
                            assertThat(row.others()).isNotEmpty();
                        });
    }

    @Test
    void fivePinsOnATreeAreEnough() {
        var tree = elm();
        var session = session(tree);
        for (var code : List.of("jin", "shari", "pinching", "air_layer", "grow_on")) {
            days.wish(
                    group.instructor(), session.id(), new NewDayWish(tree.id(), code, DayWish.PIN));
        }
        var sixth = new NewDayWish(tree.id(), "moss_laying", DayWish.PIN);
        assertThat(refusalOf(() -> days.wish(group.instructor(), session.id(), sixth)).status())
                .isEqualTo(409);
    }

    @Test
    void whatHasBegunIsKeptAndTheRestMoves() {
        var session = session(elm(), elm());
        var before = layOut(session, ANEW);
        var after =
                layOut(
                        session,
                        new NewTimetable(
                                LocalTime.of(9, 10),
                                null,
                                null,
                                List.of(
                                        new NewTimetable.Overrun(
                                                before.slots().get(0).treeId(),
                                                LocalTime.of(10, 30))),
                                null,
                                null));
        assertThat(after.revision()).isEqualTo(2);
        assertThat(after.fromMinute()).isEqualTo(9 * 60 + 10);
        var first = before.slots().get(0);
        assertThat(after.slots())
                .anySatisfy(
                        slot -> {
                            assertThat(slot.treeId()).isEqualTo(first.treeId());
                            assertThat(slot.fromMinute()).isEqualTo(first.fromMinute());
                            assertThat(slot.toMinute()).isEqualTo(10 * 60 + 30);
                        });
    }

    @Test
    void whoIsNotThereIsLeftOutUntilTheyCome() {
        var session = session(elm(), elm());
        layOut(session, ANEW);
        var student = group.student().personId();
        var without =
                layOut(
                        session,
                        new NewTimetable(
                                LocalTime.of(9, 0), List.of(student), null, null, null, null));
        assertThat(without.slots()).isEmpty();
        assertThat(without.leftOut()).hasSize(2);
        assertThat(without.leftOut())
                .allSatisfy(
                        left -> assertThat(left.because()).isEqualTo("The student is not there."));
        var with =
                layOut(
                        session,
                        new NewTimetable(
                                LocalTime.of(9, 30),
                                null,
                                List.of(new NewTimetable.Late(student, LocalTime.of(10, 0))),
                                null,
                                null,
                                null));
        assertThat(with.slots())
                .isNotEmpty()
                .allSatisfy(slot -> assertThat(slot.fromMinute()).isGreaterThanOrEqualTo(10 * 60));
    }

    @Test
    void aPinOutranksAndADropIsKept() {
        var tree = elm();
        var session = session(tree);
        var other =
                days.plan(group.instructor(), session.id()).rows().get(0).others().stream()
                        .findFirst();
        days.wish(
                group.instructor(),
                session.id(),
                new NewDayWish(tree.id(), Elm.WIRING, DayWish.DROP));
        var dropped = days.plan(group.instructor(), session.id()).rows().get(0);
        assertThat(dropped.others())
                .anySatisfy(
                        one -> {
                            assertThat(one.technique()).isEqualTo(Elm.WIRING);
                            assertThat(one.why()).isEqualTo("Dropped by an instructor.");
                        });
        days.wish(
                group.instructor(),
                session.id(),
                new NewDayWish(tree.id(), Elm.WIRING, DayWish.PIN));
        var pinned = days.plan(group.instructor(), session.id()).rows().get(0);
        assertThat(pinned.technique()).isNotNull();
        assertThat(pinned.technique().code()).isEqualTo(Elm.WIRING);
        assertThat(pinned.why()).startsWith("Pinned.");
        assertThat(other).isNotNull();
    }

    @Test
    void aPlanIsStaleOnceOtherWorkIsChosen() {
        var tree = elm();
        var session = session(tree);
        layOut(session, ANEW);
        days.wish(
                group.instructor(),
                session.id(),
                new NewDayWish(tree.id(), Elm.WIRING, DayWish.DROP));
        var shown = days.plan(group.instructor(), session.id()).timetable();
        assertThat(shown).isNotNull();
        assertThat(shown.stale()).isTrue();
    }

    /** The tree has gone home; its work is in the plan before, and in none to come. */
    @Test
    void workOfATreeTakenOffTheSessionCannotRunOn() {
        var gone = elm();
        var session = session(elm(), gone);
        layOut(session, ANEW);
        var enrolment =
                session.enrolments().stream()
                        .filter(one -> one.treeId() == gone.id())
                        .findFirst()
                        .orElseThrow();
        sessions.withdraw(group.instructor(), session.id(), enrolment.id());
        var overrun = new NewTimetable.Overrun(gone.id(), LocalTime.of(15, 0));
        var asked = new NewTimetable(LocalTime.of(14, 0), null, null, List.of(overrun), null, null);
        assertThat(faulty(session, asked)).containsExactly("overruns[0].treeId");
        assertThat(layOut(session, at(14, 0)).slots())
                .noneMatch(slot -> slot.treeId() == gone.id());
    }

    /** However many the school has counted, a day is planned, and the count is told. */
    @Test
    void toolsInAnyNumberAreNoHindrance() {
        var session = session(elm());
        materials.enter(group.instructor(), new NewStockTool("Spare pliers"), 20_000.0);
        assertThat(days.plan(group.instructor(), session.id()).rows()).hasSize(1);
    }

    @Test
    void breaksAreKeptUntilTheyAreChanged() {
        var session = session(elm());
        var early = List.of(new NewTimetable.Break(LocalTime.of(9, 0), LocalTime.of(9, 30)));
        layOut(session, new NewTimetable(null, null, null, null, early, null));
        assertThat(layOut(session, ANEW).slots().get(0).fromMinute()).isEqualTo(9 * 60 + 30);
        layOut(session, new NewTimetable(null, null, null, null, List.of(), null));
        assertThat(layOut(session, ANEW).slots().get(0).fromMinute()).isEqualTo(9 * 60);
        assertThat(days.plan(group.instructor(), session.id()).breaks()).isEmpty();
    }

    @Test
    void onlyThoseWhoRunTheCourseLayItOut() {
        var session = session(elm());
        assertThat(refusalOf(() -> days.layOut(group.student(), session.id(), ANEW)).status())
                .isEqualTo(403);
        var stranger = school.newGroup().instructor();
        assertThat(refusalOf(() -> days.layOut(stranger, session.id(), ANEW)).status())
                .isEqualTo(404);
    }

    @Test
    void aDayWithNothingToLayOutSaysSo() {
        assertThat(refusalOf(() -> layOut(session(), ANEW)).status()).isEqualTo(409);
        var unseen = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        assigner.noteFoundDone(group.instructor(), unseen.id(), "root_check", School.TODAY, null);
        var refusal =
                refusalOf(
                        () ->
                                layOut(
                                        session(LocalTime.of(17, 0), LocalTime.of(19, 0), unseen),
                                        ANEW));
        assertThat(refusal.status()).isEqualTo(409);
        assertThat(refusal.detail()).contains("None of the trees has work");
    }

    @Test
    void whatCannotBeIsNamedFieldByField() {
        var session = session(elm());
        assertThat(faulty(session, at(10, 0))).containsExactly("now");
        layOut(session, ANEW);
        assertThat(faulty(session, at(8, 59))).containsExactly("now");
        assertThat(faulty(session, at(16, 0))).containsExactly("now");
        var stranger = school.newGroup().student().personId();
        assertThat(
                        faulty(
                                session,
                                new NewTimetable(
                                        LocalTime.of(10, 0),
                                        List.of(stranger),
                                        List.of(
                                                new NewTimetable.Late(
                                                        stranger, LocalTime.of(17, 0))),
                                        List.of(
                                                new NewTimetable.Overrun(
                                                        Long.MAX_VALUE, LocalTime.of(11, 0))),
                                        List.of(
                                                new NewTimetable.Break(
                                                        LocalTime.of(13, 0), LocalTime.of(12, 0))),
                                        null)))
                .contains(
                        "absent[0]",
                        "late[0].personId",
                        "late[0].at",
                        "overruns[0].treeId",
                        "breaks[0]");
    }

    private List<String> faulty(Session session, NewTimetable asked) {
        var refusal = refusalOf(() -> layOut(session, asked));
        assertThat(refusal.status()).isEqualTo(400);
        return refusal.faults().stream().map(Fault::field).toList();
    }
}
