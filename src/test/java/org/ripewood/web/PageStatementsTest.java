package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.Statements;
import org.ripewood.people.People;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.Assigner;
import org.ripewood.trees.Tree;

/** How many statements a page sends to the database, whatever it shows and however many trees. */
@Tag("one-database")
@QuarkusTest
class PageStatementsTest {

    @Inject @PersistenceUnitExtension Statements statements;
    @Inject School school;
    @Inject People people;
    @Inject Assigner assigner;
    @Inject Sessions sessions;
    @Inject Today today;

    private School.Group group;

    @BeforeEach
    void openSchool() {
        group = school.newGroup();
        school.showSkill(group.instructor(), group.student(), "wiring-branches");
    }

    private Tree treeWithARecord() {
        var tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        school.see(group.instructor(), tree, "vigour_index", "78");
        school.see(group.instructor(), tree, "pest_level", "0");
        school.seeTrunk(group.instructor(), tree, 0, 40);
        school.seeTrunk(group.instructor(), tree, 60, 34);
        var wound = school.wound(group.instructor(), tree, "left", 12);
        school.readWound(group.student(), tree, wound, 9);
        assigner.noteFoundDone(
                group.instructor(), tree.id(), "root_check", School.TODAY.minusDays(90), null);
        return tree;
    }

    /** A tree is read once for a page, and judged once. */
    @Test
    void aTreesPagesReadItOnce() {
        var tree = treeWithARecord();
        for (var who : List.of(group.instructor(), group.student())) {
            var visitor = Visitor.of(people, who);
            var at = "/trees/" + tree.id();
            assertThat(sent(visitor, at)).hasSizeLessThanOrEqualTo(13);
            assertThat(sent(visitor, at + "/techniques")).hasSizeLessThanOrEqualTo(12);
            assertThat(sent(visitor, at + "/record")).hasSizeLessThanOrEqualTo(12);
            assertThat(sent(visitor, at + "/papers")).hasSizeLessThanOrEqualTo(6);
            assertThat(sent(visitor, at + "/photos")).hasSizeLessThanOrEqualTo(8);
            assertThat(sent(visitor, at + "/checklist")).hasSizeLessThanOrEqualTo(12);
            assertThat(sent(visitor, at + "/passport")).hasSizeLessThanOrEqualTo(12);
            assertThat(sent(visitor, at + "/route")).hasSizeLessThanOrEqualTo(12);
            assertThat(sent(visitor, at))
                    .filteredOn(sql -> sql.contains("from observation "))
                    .hasSize(1);
        }
    }

    /** However long a life is. */
    @Test
    void aTreesLifeSendsAsManyStatementsForManyEntriesAsForFew() {
        var tree = treeWithARecord();
        var visitor = Visitor.of(people, group.student());
        var at = "/trees/" + tree.id() + "/life";
        int few = sent(visitor, at).size();
        assertThat(few).isLessThanOrEqualTo(13);
        for (int i = 1; i <= 20; i++) {
            var day = School.TODAY.minusDays(40L * i);
            school.see(group.instructor(), tree, "trunk_base_mm", "" + (60 - i), day);
            school.wound(group.instructor(), tree, "cut " + i, 8 + i, day);
        }
        assertThat(sent(visitor, at)).hasSize(few);
        assertThat(sent(visitor, "/api/v1" + at)).hasSizeLessThanOrEqualTo(few);
    }

    /**
     * First with one tree and one course, then with twenty trees and a second course. Of a home's
     * statements one is for what was asked, more where something waits for an answer, and one for
     * what others did since the last visit.
     */
    @Test
    void listsOfTreesSendAsManyStatementsForTwentyAsForOne() {
        var pupil = Visitor.of(people, group.student());
        var teacher = Visitor.of(people, group.instructor());
        var board = "/courses/" + group.course().id();
        treeWithARecord();
        int pupilsHome = sent(pupil, "/home").size();
        int teachersHome = sent(teacher, "/home").size();
        var readiness = board;
        var next = board + "/next";
        int sheets = sent(teacher, readiness).size();
        int boards = sent(teacher, next).size();
        IntStream.range(0, 19).forEach(i -> treeWithARecord());
        school.join(school.newGroup(), group.instructor(), Role.INSTRUCTOR);
        assertThat(pupilsHome).isLessThanOrEqualTo(18);
        assertThat(teachersHome).isLessThanOrEqualTo(22);
        assertThat(boards).isLessThanOrEqualTo(20);
        assertThat(sheets).isLessThanOrEqualTo(17);
        assertThat(sent(pupil, "/home")).hasSize(pupilsHome);
        assertThat(sent(teacher, "/home")).hasSize(teachersHome);
        assertThat(sent(teacher, readiness)).hasSize(sheets);
        assertThat(sent(teacher, next)).hasSize(boards);
    }

    /** However many trees, people and courses there are to be found. */
    @Test
    void findingAndListingSendAsManyStatementsForTwentyTreesAsForOne() {
        var teacher = Visitor.of(people, group.instructor());
        treeWithARecord();
        var paths =
                List.of(
                        "/search?q=tree",
                        "/search?q=tree&kind=tree",
                        "/trees",
                        "/people/" + group.student().personId(),
                        "/courses/" + group.course().id() + "/about");
        var before = paths.stream().map(path -> sent(teacher, path).size()).toList();
        IntStream.range(0, 19).forEach(i -> treeWithARecord());
        assertThat(before).allSatisfy(count -> assertThat(count).isLessThanOrEqualTo(22));
        assertThat(paths.stream().map(path -> sent(teacher, path).size()).toList())
                .isEqualTo(before);
    }

    /**
     * However many trees come, each of a student of its own. For a day ahead the trees are judged
     * as they stand now as well, and so read for both days.
     */
    @Test
    void aSessionPlanSendsAsManyStatementsForTenTreesAsForOne() {
        var past = planOf(School.TODAY.plusDays(3));
        var ahead = planOf(today.date().plusDays(3));
        var first = List.of(past.enrolled(1).size(), ahead.enrolled(1).size());
        assertThat(first.get(0)).isLessThanOrEqualTo(32);
        assertThat(first.get(1)).isLessThanOrEqualTo(43);
        assertThat(List.of(past.enrolled(9).size(), ahead.enrolled(9).size())).isEqualTo(first);
    }

    private Plan planOf(LocalDate day) {
        var session =
                sessions.set(
                        group.instructor(),
                        new NewSession(
                                group.course().id(),
                                day,
                                LocalTime.of(9, 0),
                                LocalTime.of(12, 0),
                                "wiring-branches",
                                "long table",
                                List.of(group.instructor().personId())));
        return new Plan(session.id());
    }

    /** The plan of a session to which more and more trees come. */
    private final class Plan {

        private final long session;
        private int benches;

        Plan(long session) {
            this.session = session;
        }

        /** What the page sends once so many more are enrolled. */
        List<String> enrolled(int more) {
            for (int i = 0; i < more; i++) {
                var student = school.newGroup().student();
                school.join(group, student, Role.STUDENT);
                var tree = school.tree(group.instructor(), student, "ulmus_parvifolia");
                school.see(group.instructor(), tree, "vigour_index", "78");
                sessions.enrol(
                        group.instructor(),
                        session,
                        new NewEnrolment(student.personId(), tree.id(), "" + ++benches));
            }
            return sent(Visitor.of(people, group.instructor()), "/sessions/" + session + "/plan");
        }
    }

    @Test
    void theListOfPeopleAsksForTheRolesOfAllAtOnce() {
        var office = Visitor.of(people, school.person("Rika Registrar", Role.REGISTRAR));
        IntStream.range(0, 10).forEach(i -> school.newGroup());
        assertThat(sent(office, "/people"))
                .hasSizeLessThanOrEqualTo(9)
                .filteredOn(sql -> sql.contains("from person_role"))
                .as("at most of the one who wishes for a password")
                .hasSizeLessThanOrEqualTo(1);
    }

    /** The first time a page is asked for may fill what is kept in memory; so the second counts. */
    private List<String> sent(Visitor who, String path) {
        who.get(path);
        return statements.of(() -> assertThat(who.get(path).statusCode()).as(path).isEqualTo(200));
    }
}
