package org.ripewood.boards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.ripewood.standing.RefusalAssert.refusalOf;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManagerFactory;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.hibernate.SessionFactory;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.progress.Verdict;
import org.ripewood.people.Courses;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Elm;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.steps.Reports;
import org.ripewood.steps.SignOffsWaiting;
import org.ripewood.trees.Tree;

/** A course at a glance, in a number of queries that does not grow with its trees. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class BoardTest {

    private static final PageRequest FIRST = new PageRequest(0, 50);

    @Inject School school;
    @Inject Courses courses;
    @Inject Standings standings;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject SignOffsWaiting signOffsWaiting;
    @Inject BoardMaker boardMaker;
    @Inject ChecklistMaker checklistMaker;
    @Inject EntityManagerFactory factory;

    @Test
    void theBoardAsksAsOftenForAHundredTreesAsForTen() {
        var few = courseOf(10);
        var many = courseOf(100);
        // What the school's closed wounds teach is read once an hour, by whoever asks first.
        board(few.instructor(), few, null, FIRST);
        var forFew = queries(() -> board(few.instructor(), few, null, FIRST));
        var forMany = queries(() -> board(many.instructor(), many, null, FIRST));
        assertThat(board(many.instructor(), many, null, FIRST).rows().total()).isEqualTo(100);
        assertThat(forMany).isEqualTo(forFew).isPositive();
    }

    @Test
    void treesOfOtherCoursesCostNothing() {
        var group = courseOf(3);
        board(group.instructor(), group, null, FIRST);
        var before = loaded(() -> board(group.instructor(), group, null, FIRST));
        courseOf(12);
        var after = loaded(() -> board(group.instructor(), group, null, FIRST));
        assertThat(after).isEqualTo(before).isPositive();
    }

    private long loaded(Runnable work) {
        var statistics = factory.unwrap(SessionFactory.class).getStatistics();
        statistics.clear();
        work.run();
        return statistics.getEntityLoadCount();
    }

    @Test
    void whatWaitsForTheInstructorComesFirst() {
        var group = school.newGroup();
        var held = Elm.readyForWiring(school, group, assigner);
        var underWay = Elm.readyForWiring(school, group, assigner);
        var reported = Elm.readyForWiring(school, group, assigner);
        var instructor = group.instructor();
        assigner.assign(instructor, underWay.id(), Elm.wire());
        var step = assigner.assign(instructor, reported.id(), Elm.wire());
        reports.report(group.student(), step.id(), step.version(), Elm.wired());

        var board = board(instructor, group, null, FIRST);
        assertThat(board.rows().items())
                .extracting(Board.Row::treeId)
                .containsExactly(reported.id(), underWay.id(), held.id());
        var first = board.rows().items().get(0);
        assertThat(first.headline()).isEqualTo(Board.Headline.SIGN_OFF);
        assertThat(first.stepId()).isEqualTo(step.id());
        assertThat(first.sentence())
                .isEqualTo(
                        "“Wire the primary branches” was done on 20 February 2026 and waits for a"
                                + " look.");
        assertThat(first.verdicts().get(Verdict.READY)).isPositive();
        assertThat(board.byHeadline())
                .containsEntry(Board.Headline.SIGN_OFF, 1)
                .containsEntry(Board.Headline.UNDER_WAY, 1);
        assertThat(signOffsWaiting.forInstructor(instructor, FIRST).items())
                .singleElement()
                .satisfies(
                        waiting -> {
                            assertThat(waiting.stepId()).isEqualTo(step.id());
                            assertThat(waiting.tree()).isEqualTo(reported.label());
                            assertThat(waiting.student()).startsWith("Stan Student");
                        });
    }

    @Test
    void aFilterNarrowsTheRowsAndNotTheCounts() {
        var group = courseOf(3);
        var step =
                assigner.assign(
                        group.instructor(),
                        Elm.readyForWiring(school, group, assigner).id(),
                        Elm.wire());
        var board = board(group.instructor(), group, Board.Headline.UNDER_WAY, FIRST);
        assertThat(board.rows().items()).extracting(Board.Row::stepId).containsExactly(step.id());
        assertThat(board.byHeadline().values().stream().mapToInt(Integer::intValue).sum())
                .isEqualTo(4);
        var second = board(group.instructor(), group, null, new PageRequest(1, 3));
        assertThat(second.rows().items()).hasSize(1);
        assertThat(second.rows().total()).isEqualTo(4);
    }

    @Test
    void holdsAreCountedByTree() {
        var group = school.newGroup();
        for (int i = 0; i < 2; i++) {
            var tree = Elm.readyForWiring(school, group, assigner);
            school.wound(group.instructor(), tree, "first branch", 24);
        }
        assertThat(board(group.instructor(), group, null, FIRST).holds())
                .contains(new Board.HoldCount("largest_opening_mm", "Largest open wound", 2));
    }

    @Test
    void aReasonNarrowsTheRowsToTheTreesItHolds() {
        var group = school.newGroup();
        var whole = Elm.readyForWiring(school, group, assigner);
        var cut = Elm.readyForWiring(school, group, assigner);
        school.wound(group.instructor(), cut, "first branch", 24);
        var asked = asked("largest_opening_mm", null, null, null, null);
        assertThat(rows(group, asked)).containsExactly(cut.id()).doesNotContain(whole.id());
        assertThat(board(group, asked).holds())
                .contains(new Board.HoldCount("largest_opening_mm", "Largest open wound", 1));
    }

    @Test
    void speciesStudentAndStageNarrowTheRowsTogether() {
        var group = school.newGroup();
        var elm = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        var maple = school.tree(group.instructor(), group.student(), "acer_palmatum");
        var others = school.tree(group.instructor(), newStudent(group), "acer_palmatum");
        var student = group.student().personId();
        assertThat(rows(group, asked(null, null, "acer_palmatum", null, null)))
                .containsExactlyInAnyOrder(maple.id(), others.id());
        assertThat(rows(group, asked(null, null, "acer_palmatum", student, null)))
                .containsExactly(maple.id());
        var stage = board(group, BoardAsked.of(null)).rows().items().get(0).stage();
        assertThat(rows(group, asked(null, null, null, student, stage)))
                .containsExactlyInAnyOrder(elm.id(), maple.id());
        assertThat(rows(group, asked(null, null, null, null, "no-such-stage"))).isEmpty();
    }

    /**
     * Vigour is judged again after 120 days of growth, by the content in force: a look in autumn
     * holds through the rest, one of the autumn before does not.
     */
    @Test
    void evidenceGrowsOldByTheAgesOfTheCriteria() {
        var group = school.newGroup();
        var stale = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        var soon = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        var fresh = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        see(group, stale, 400);
        see(group, soon, 100);
        see(group, fresh, 91);
        var board = board(group, BoardAsked.of(null));
        assertThat(board.ageing())
                .filteredOn(ageing -> ageing.fact().equals("vigour_index"))
                .singleElement()
                .satisfies(
                        ageing -> {
                            assertThat(ageing.trees()).isEqualTo(1);
                            assertThat(ageing.stale()).isEqualTo(1);
                        });
        assertThat(board.oldest()).extracting(Board.Aged::goodUntil).isSorted();
        assertThat(board.oldest())
                .filteredOn(aged -> aged.fact().equals("vigour_index"))
                .extracting(Board.Aged::treeId, Board.Aged::stale)
                .containsExactly(tuple(stale.id(), true));
        assertThat(rows(group, asked(null, "vigour_index", null, null, null)))
                .containsExactly(stale.id());
    }

    @Test
    void aReportWaitsSinceTheDayItWasSent() {
        var group = school.newGroup();
        var tree = Elm.readyForWiring(school, group, assigner);
        var step = assigner.assign(group.instructor(), tree.id(), Elm.wire());
        reports.report(group.student(), step.id(), step.version(), Elm.wired());
        assertThat(board(group, BoardAsked.of(null)).waiting())
                .singleElement()
                .satisfies(
                        report -> {
                            assertThat(report.stepId()).isEqualTo(step.id());
                            assertThat(report.label()).isEqualTo(tree.label());
                            assertThat(report.keeper()).startsWith("Stan Student");
                        });
    }

    @Test
    void whoWasNotSeenForLongIsToldWithTheLastDay() {
        var group = school.newGroup();
        var never = newStudent(group, School.TODAY.minusWeeks(52));
        newStudent(group, School.TODAY.minusWeeks(8));
        var longAgo = newStudent(group, School.TODAY.minusWeeks(52));
        var student = group.student();
        var tree = school.tree(student, student, "ulmus_parvifolia");
        var other = school.tree(group.instructor(), longAgo, "ulmus_parvifolia");
        school.see(student, tree, "pest_level", "0", School.TODAY.minusWeeks(8));
        school.see(longAgo, other, "pest_level", "0", School.TODAY.minusWeeks(8).minusDays(1));
        // what an instructor sees on the tree is no sight of the student
        school.see(group.instructor(), other, "vigour_index", "60");
        var unseen = board(group, BoardAsked.of(null)).unseen();
        assertThat(unseen)
                .extracting(Board.Unseen::personId)
                .containsExactly(never.personId(), longAgo.personId());
        assertThat(unseen.get(0).lastOn()).isNull();
        assertThat(unseen.get(0).weeks()).isEqualTo(52);
        assertThat(unseen.get(1).lastSeen()).isEqualTo(Board.Sight.OBSERVATION);
        assertThat(unseen.get(1).lastOn()).isEqualTo(School.TODAY.minusWeeks(8).minusDays(1));
        school.showSkill(group.instructor(), longAgo, "layering");
        assertThat(board(group, BoardAsked.of(null)).unseen())
                .extracting(Board.Unseen::personId)
                .containsExactly(never.personId());
    }

    @Test
    void theWholeBoardHasEveryRowOfTheFilter() {
        var group = courseOf(7);
        var asked = BoardAsked.of(null);
        var page =
                boardMaker.make(
                        group.instructor(),
                        group.course().id(),
                        School.TODAY,
                        asked,
                        new PageRequest(0, 3));
        assertThat(page.rows().items()).hasSize(3);
        var whole = boardMaker.whole(group.instructor(), group.course().id(), School.TODAY, asked);
        assertThat(whole.rows().items()).hasSize(7).startsWith(page.rows().items().get(0));
    }

    private static BoardAsked asked(
            String reason, String fact, String species, Long student, String stage) {
        return new BoardAsked(null, reason, fact, species, student, stage, 4, 8);
    }

    private Board board(School.Group group, BoardAsked asked) {
        return boardMaker.make(group.instructor(), group.course().id(), School.TODAY, asked, FIRST);
    }

    private List<Long> rows(School.Group group, BoardAsked asked) {
        return board(group, asked).rows().items().stream().map(Board.Row::treeId).toList();
    }

    private void see(School.Group group, Tree tree, int daysAgo) {
        school.see(group.instructor(), tree, "vigour_index", "70", School.TODAY.minusDays(daysAgo));
    }

    @Test
    void theBoardIsForInstructorsOfTheCourseAndRegistrars() {
        var group = courseOf(1);
        var registrar = new Actor(0, Set.of(Role.REGISTRAR));
        assertThat(board(registrar, group, null, FIRST).rows().total()).isEqualTo(1);
        assertThat(refusalOf(() -> board(group.student(), group, null, FIRST)).status())
                .isEqualTo(403);
        var stranger = school.newGroup().instructor();
        assertThat(refusalOf(() -> board(stranger, group, null, FIRST)).status()).isEqualTo(404);
    }

    @Test
    void anEmptyCourseHasAnEmptyBoard() {
        var group = school.newGroup();
        var board = board(group.instructor(), group, null, FIRST);
        assertThat(board.rows().items()).isEmpty();
        assertThat(board.holds()).isEmpty();
    }

    @Test
    void whatWaitsForAnotherSeasonDoesNotLead() {
        var group = school.newGroup();
        var tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        assigner.noteFoundDone(group.instructor(), tree.id(), "root_check", School.TODAY, null);
        var told = standings.of(group.instructor(), tree.id(), School.TODAY);
        var shut = told.with(Verdict.MEASURE).stream().filter(BoardTest::outOfSeason).toList();
        assertThat(shut).as("something else would lead if its season did not count").isNotEmpty();

        var row = board(group.instructor(), group, null, FIRST).rows().items().get(0);
        assertThat(row.headline()).isEqualTo(Board.Headline.MEASURE);
        assertThat(shut).extracting(TechniqueStanding::technique).doesNotContain(row.technique());

        var open =
                told.techniques().stream()
                        .filter(standing -> !outOfSeason(standing))
                        .map(TechniqueStanding::title)
                        .toList();
        var measures = checklistMaker.make(group.student(), tree.id(), School.TODAY).measureNext();
        var waitedForNow =
                measures.stream()
                        .map(measure -> measure.waitingTitles().stream().anyMatch(open::contains))
                        .toList();
        assertThat(waitedForNow).contains(true).isSortedAccordingTo(Comparator.reverseOrder());
    }

    private static boolean outOfSeason(TechniqueStanding standing) {
        return standing.reasons().stream()
                .anyMatch(reason -> reason.key().equals("season") && reason.truth().equals("NO"));
    }

    /** Trees with something of everything that is read in bulk: facts, wounds, steps, skills. */
    private School.Group courseOf(int trees) {
        var group = school.newGroup();
        school.showSkill(group.instructor(), group.student(), "layering");
        for (int i = 0; i < trees; i++) {
            var keeper = i % 2 == 0 ? group.student() : newStudent(group);
            var tree = school.tree(group.instructor(), keeper, "ulmus_parvifolia");
            fill(group, tree);
        }
        return group;
    }

    private void fill(School.Group group, Tree tree) {
        school.see(group.instructor(), tree, "vigour_index", "70");
        school.wound(group.instructor(), tree, "first branch", 24);
        assigner.noteFoundDone(group.instructor(), tree.id(), "root_check", School.TODAY, null);
    }

    private Actor newStudent(School.Group group, LocalDate since) {
        var student = school.person("Sven Student", Role.STUDENT);
        var office = new Actor(0, Set.of(Role.REGISTRAR));
        courses.join(office, group.course().id(), student.personId(), Role.STUDENT, since);
        return student;
    }

    private Actor newStudent(School.Group group) {
        var student = school.person("Sven Student", Role.STUDENT);
        school.join(group, student, Role.STUDENT);
        return student;
    }

    private Board board(
            Actor actor, School.Group group, Board.Headline headline, PageRequest page) {
        return boardMaker.make(
                actor, group.course().id(), School.TODAY, BoardAsked.of(headline), page);
    }

    private long queries(Runnable work) {
        var statistics = factory.unwrap(SessionFactory.class).getStatistics();
        statistics.clear();
        work.run();
        return statistics.getPrepareStatementCount();
    }
}
