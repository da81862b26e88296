package org.ripewood.aftercare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.groups.Tuple.tuple;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.hibernate.SessionFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.aftercare.MeasuringDay.Subject;
import org.ripewood.core.progress.Work;
import org.ripewood.core.season.CareState;
import org.ripewood.core.season.Span;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.WorksDone;
import org.ripewood.sites.NewSite;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;

/**
 * A garden at 51° north without temperatures: stages by half months (common practice). Today is 20
 * February 2026, stage 01; figures of aftercare are those of the content.
 */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class AftercareRoomTest {

    private static final LocalDate TODAY = School.TODAY;

    @Inject School school;
    @Inject Trees trees;
    @Inject TreeSites treeSites;
    @Inject WorksDone worksDone;
    @Inject Aftercare aftercare;
    @Inject SessionFactory statistics;

    School.Group group;
    Actor instructor;
    Actor student;
    Tree tree;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        instructor = group.instructor();
        student = group.student();
        tree = school.tree(instructor, student, "acer_palmatum");
    }

    @Test
    void rootWorkStartsItsDatedCare() {
        done("root_pruning_repot", TODAY.minusDays(10));
        var tasks = aftercare.of(student, tree.id(), TODAY).tasks();
        // no feed for 35 days; frost until stage 15 ends, at most 42 days; first feed from stage
        // 19,
        // 1 May; firmness after 5 days at rest (5/60) and 28 of growth (28/30); a ball to be kept
        // from freezing from stage 95, 1 November, to stage 03, 15 March
        assertThat(tasks)
                .extracting(task -> code(task) + " " + task.state() + " " + task.span().from())
                .containsExactly(
                        "shade DUE 2026-02-10",
                        "no_feed DUE 2026-02-10",
                        "frost DUE 2026-02-10",
                        "firm_look WAITING 2026-03-15",
                        "first_feed WAITING 2026-05-01",
                        "winter_storage WAITING 2026-11-01");
        assertThat(tasks.get(0).to()).isEqualTo(LocalDate.of(2026, 3, 2));
        assertThat(tasks.get(1).to()).isEqualTo(LocalDate.of(2026, 3, 16));
        assertThat(tasks.get(2).to()).isEqualTo(LocalDate.of(2026, 3, 23));
        assertThat(tasks.get(5).to()).isEqualTo(LocalDate.of(2027, 3, 15));
        assertThat(tasks).allMatch(task -> task.afterTitle().equals("Repot and prune the roots"));
    }

    @Test
    void nothingOfATropicalTreeIsKeptFromFrost() {
        var site =
                treeSites
                        .enter(instructor, new NewSite("Warm", 4.0, 9.0, "UTC", null, null, null))
                        .id();
        tree =
                trees.enter(
                        instructor,
                        new NewTree(
                                "Fig",
                                "ficus_retusa",
                                student.personId(),
                                site,
                                TODAY.minusYears(1),
                                null,
                                null));
        done("root_pruning_repot", TODAY.minusDays(10));
        assertThat(aftercare.of(student, tree.id(), TODAY).tasks())
                .extracting(AftercareRoomTest::code)
                .containsExactlyInAnyOrder("shade", "no_feed", "first_feed", "firm_look");
    }

    @Test
    void whatIsKeptUpIsOverAndWhatIsLookedAtIsLate() {
        done("wiring_primary", TODAY.minusDays(60));
        var tasks = aftercare.of(student, tree.id(), TODAY).tasks();
        // wired on 22 December: 42 days at rest later is 2 February
        assertThat(tasks.get(0).span().from()).isEqualTo(LocalDate.of(2026, 2, 2));
        assertThat(tasks.get(0).state()).isEqualTo(CareState.LATE);
        assertThat(code(tasks.get(0))).isEqualTo("wire_look");
        assertThat(tasks)
                .filteredOn(task -> code(task).equals("shade"))
                .extracting(CareTask::state)
                .containsExactly(CareState.OVER);
        assertThat(aftercare.of(student, tree.id(), TODAY).now())
                .extracting(AftercareRoomTest::code)
                .containsExactly("wire_look", "no_work");
    }

    /** The pest level is to be recorded again from day 7 to 13 after pest control. */
    @Test
    void aMeasureNobodyTookStaysLateForSixtyDays() {
        done("pest_control", TODAY.minusDays(20));
        assertThat(states(TODAY)).containsExactly("pest_again LATE", "apart DUE");
        assertThat(states(TODAY.plusDays(53))).contains("pest_again LATE", "apart OVER");
        assertThat(states(TODAY.plusDays(54))).containsExactly("apart OVER");
    }

    private List<String> states(LocalDate on) {
        return aftercare.of(student, tree.id(), on).tasks().stream()
                .map(task -> code(task) + " " + task.state())
                .toList();
    }

    @Test
    void aLookTakenIsFollowedByTheNextUntilTheWireIsOff() {
        done("wiring_primary", TODAY.minusDays(60));
        var look = aftercare.of(student, tree.id(), TODAY).tasks().get(0);
        var taken = say(student, look, Saying.DONE, TODAY.minusDays(10));
        assertThat(taken.state()).isEqualTo(CareState.DONE);
        assertThat(taken.said().on()).isEqualTo(TODAY.minusDays(10));
        // looked on 10 February: 5 days at rest (5/42), then 13 of growth make up the rest
        var next = aftercare.of(student, tree.id(), TODAY).ahead().get(0);
        assertThat(next.id()).isEqualTo(look.id().replaceAll("1$", "2"));
        assertThat(next.span().from()).isEqualTo(LocalDate.of(2026, 2, 28));

        var later = refusal(() -> say(student, next, Saying.DONE, TODAY.minusDays(11)));
        assertThat(later.faults().get(0).field()).isEqualTo("on");

        school.see(student, tree, "wire_on", "no", TODAY);
        assertThat(aftercare.of(student, tree.id(), TODAY).tasks())
                .filteredOn(task -> code(task).equals("wire_look"))
                .extracting(CareTask::state)
                .containsExactly(CareState.DONE);
    }

    @Test
    void oneLookServesAllWire() {
        done("wiring_primary", TODAY.minusDays(200));
        done("wiring_secondary", TODAY.minusDays(5));
        assertThat(aftercare.of(student, tree.id(), TODAY).tasks())
                .filteredOn(task -> code(task).equals("wire_look"))
                .extracting(CareTask::workedOn)
                .containsExactly(TODAY.minusDays(5));
    }

    @Test
    void aLookNotNeededEndsItForGood() {
        done("wiring_primary", TODAY.minusDays(60));
        var look = aftercare.of(student, tree.id(), TODAY).tasks().get(0);
        assertThat(say(instructor, look, Saying.NOT_NEEDED, TODAY).state())
                .isEqualTo(CareState.OVER);
        assertThat(aftercare.of(student, tree.id(), TODAY).tasks())
                .filteredOn(task -> code(task).equals("wire_look"))
                .hasSize(1);
    }

    @Test
    void theSameWordTwiceCountsOnceAndAnotherIsAnsweredClearly() {
        done("root_pruning_repot", TODAY.minusDays(10));
        var shade = aftercare.of(student, tree.id(), TODAY).tasks().get(0);
        var first = say(student, shade, Saying.DONE, TODAY.minusDays(2));
        assertThat(say(student, shade, Saying.DONE, TODAY.minusDays(2))).isEqualTo(first);
        var again = refusal(() -> say(student, shade, Saying.DONE, TODAY));
        assertThat(again.status()).isEqualTo(409);
        assertThat(again.detail()).contains("Stan Student").contains("done on 2026-02-18");

        var corrected =
                aftercare.say(
                        instructor,
                        tree.id(),
                        shade.id(),
                        Saying.NOT_NEEDED,
                        new NewWord(TODAY, "stands in the shade anyway", true));
        assertThat(corrected.state()).isEqualTo(CareState.OVER);
        assertThat(corrected.said().note()).isEqualTo("stands in the shade anyway");
        assertThat(say(student, shade, Saying.TAKEN_BACK, TODAY).state()).isEqualTo(CareState.DUE);
        assertThat(say(student, shade, Saying.TAKEN_BACK, TODAY).said()).isNull();
        assertThat(say(student, shade, Saying.DONE, TODAY).state()).isEqualTo(CareState.DONE);
    }

    @Test
    void nobodyTakesBackWhatNobodySaidOrALookAnotherCountsFrom() {
        done("wiring_primary", TODAY.minusDays(100));
        var look = aftercare.of(student, tree.id(), TODAY).tasks().get(0);
        assertThat(refusal(() -> say(student, look, Saying.TAKEN_BACK, TODAY)).status())
                .isEqualTo(409);
        say(student, look, Saying.DONE, TODAY.minusDays(50));
        var second = aftercare.of(student, tree.id(), TODAY).tasks().get(0);
        say(student, second, Saying.DONE, TODAY);
        assertThat(refusal(() -> say(student, look, Saying.TAKEN_BACK, TODAY)).detail())
                .contains("after this one");
    }

    @Test
    void aWordIsForADayFromTheWorkToToday() {
        done("root_pruning_repot", TODAY.minusDays(10));
        var shade = aftercare.of(student, tree.id(), TODAY).tasks().get(0);
        for (var day : List.of(TODAY.minusDays(11), TODAY.plusDays(1))) {
            assertThat(refusal(() -> say(student, shade, Saying.DONE, day)).faults().get(0).field())
                    .isEqualTo("on");
        }
        assertThat(say(student, shade, Saying.DONE, TODAY.minusDays(10)).state())
                .isEqualTo(CareState.DONE);
    }

    @Test
    void onlyTheKeeperAndInstructorsInReachSpeak() {
        done("root_pruning_repot", TODAY.minusDays(10));
        var shade = aftercare.of(student, tree.id(), TODAY).tasks().get(0);
        var others = school.newGroup();
        for (var stranger : List.of(others.student(), others.instructor())) {
            assertThat(refusal(() -> aftercare.of(stranger, tree.id(), TODAY)).status())
                    .isEqualTo(404);
            assertThat(refusal(() -> say(stranger, shade, Saying.DONE, TODAY)).status())
                    .isEqualTo(404);
            assertThat(
                            refusal(() -> aftercare.ofKeeper(stranger, student.personId(), week()))
                                    .status())
                    .isEqualTo(404);
        }
        var registrar = school.person("Rita Registrar", Role.REGISTRAR);
        assertThat(refusal(() -> say(registrar, shade, Saying.DONE, TODAY)).status())
                .isEqualTo(403);
        var unknown =
                refusal(
                        () ->
                                aftercare.say(
                                        student,
                                        tree.id(),
                                        "1-nothing-1",
                                        Saying.DONE,
                                        NewWord.TODAY));
        assertThat(unknown.status()).isEqualTo(404);
    }

    @Test
    void aRecordReadLaterForAnEarlierDayKnowsNoLaterWord() {
        done("root_pruning_repot", TODAY.minusDays(10));
        var shade = aftercare.of(student, tree.id(), TODAY).tasks().get(0);
        say(student, shade, Saying.DONE, TODAY);
        assertThat(aftercare.of(student, tree.id(), TODAY.minusDays(1)).tasks())
                .filteredOn(task -> task.id().equals(shade.id()))
                .extracting(CareTask::state)
                .containsExactly(CareState.DUE);
    }

    /** Openings count 120 days and the trunk's base 400 days in the strictest criteria. */
    @Test
    void aMeasuringDayComesBeforeEvidenceGrowsTooOld() {
        school.see(instructor, tree, "trunk_base_mm", "40", TODAY.minusDays(340));
        assertThat(aftercare.of(student, tree.id(), TODAY).measuring())
                .extracting(MeasuringDay::subject, MeasuringDay::by)
                .containsExactly(tuple(Subject.TRUNK, TODAY.plusDays(60)));
        // a day earlier it was still too far ahead
        assertThat(aftercare.of(student, tree.id(), TODAY.minusDays(1)).measuring()).isEmpty();
        // a look at a wound grows old by growth: one of last summer by early summer
        school.wound(instructor, tree, "left", 20, TODAY.minusDays(200));
        assertThat(aftercare.of(student, tree.id(), TODAY).measuring())
                .filteredOn(day -> day.subject() == Subject.WOUNDS)
                .singleElement()
                .satisfies(
                        day ->
                                assertThat(day.by())
                                        .isBetween(TODAY.plusDays(20), TODAY.plusDays(110)));
    }

    @Test
    void aNarrowWoundIsMeasuredUntilItHasClosed() {
        var open = school.wound(instructor, tree, "left", 20, TODAY.minusDays(200));
        school.readWound(instructor, tree, open, 2);
        assertThat(aftercare.of(student, tree.id(), TODAY.plusDays(110)).measuring())
                .extracting(MeasuringDay::subject)
                .containsExactly(Subject.WOUNDS);
        var closed = school.tree(instructor, student, "ulmus_parvifolia");
        var wound = school.wound(instructor, closed, "left", 20, TODAY.minusDays(200));
        school.readWound(instructor, closed, wound, 0);
        assertThat(aftercare.of(student, closed.id(), TODAY.plusDays(110)).measuring()).isEmpty();
    }

    @Test
    void looksThatRepeatAreToldForTheWholeSpan() {
        done("wiring_primary", TODAY.minusDays(1));
        var half = new Span(TODAY, TODAY.plusDays(180));
        assertThat(aftercare.ofKeeper(student, student.personId(), half).tasks())
                .filteredOn(task -> code(task).equals("wire_look"))
                .extracting(CareTask::from)
                // all in growth, two weeks apart
                .startsWith(
                        LocalDate.of(2026, 3, 5),
                        LocalDate.of(2026, 3, 19),
                        LocalDate.of(2026, 4, 2))
                .hasSize(12);
        assertThat(aftercare.ofKeeper(student, student.personId(), week()).tasks())
                .extracting(AftercareRoomTest::code)
                .containsExactlyInAnyOrder("shade", "no_work");
    }

    @Test
    void twentyTreesTakeAsManyQueriesAsTwo() {
        for (int i = 0; i < 2; i++) {
            treeWithCare();
        }
        var few = queries();
        IntStream.range(0, 18).forEach(i -> treeWithCare());
        assertThat(queries()).isEqualTo(few);
    }

    private long queries() {
        var counted = statistics.getStatistics();
        counted.clear();
        var care = aftercare.ofKeeper(student, student.personId(), week());
        long queries = counted.getPrepareStatementCount();
        assertThat(care.tasks()).isNotEmpty();
        return queries;
    }

    private void treeWithCare() {
        tree = school.tree(instructor, student, "acer_palmatum");
        done("root_pruning_repot", TODAY.minusDays(10));
        var tasks = aftercare.of(student, tree.id(), TODAY).tasks();
        say(student, tasks.get(0), Saying.DONE, TODAY);
    }

    private static Span week() {
        return new Span(TODAY, TODAY.plusDays(6));
    }

    private CareTask say(Actor who, CareTask task, Saying what, LocalDate on) {
        return aftercare.say(who, tree.id(), task.id(), what, new NewWord(on, null, null));
    }

    private void done(String technique, LocalDate on) {
        worksDone.record(instructor, tree.id(), new Work(technique, on, 0, 0, 0, 0), null, null);
    }

    private static String code(CareTask task) {
        return task.id().replaceAll("^\\d+-|-\\d+$", "");
    }

    private static Problem refusal(ThrowingCallable call) {
        return catchThrowableOfType(Refused.class, call).problem();
    }
}
