package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.Statements;
import org.ripewood.asks.AskKind;
import org.ripewood.asks.Asks;
import org.ripewood.asks.NewAnswer;
import org.ripewood.asks.NewAsk;
import org.ripewood.people.People;
import org.ripewood.platform.Role;
import org.ripewood.sessions.NewCancellation;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.NewMove;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.SessionPlanning;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.SignOffs;
import org.ripewood.steps.Step;
import org.ripewood.trees.Tree;

/** A home page tells what others did since one's last visit, and to nobody else. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class NewsHomeTest {

    private static final String STEP = "pest_control";
    private static final String HEADING = "Since your last visit";

    @Inject @PersistenceUnitExtension Statements statements;
    @Inject EntityManager database;
    @Inject School school;
    @Inject People people;
    @Inject Asks asks;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject SignOffs signOffs;
    @Inject Sessions sessions;
    @Inject SessionPlanning planning;

    private School.Group group;
    private Visitor pupil;
    private Visitor teacher;
    private Tree tree;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        pupil = Visitor.of(people, group.student());
        teacher = Visitor.of(people, group.instructor());
        tree = school.tree(group.instructor(), group.student(), "acer_palmatum");
        school.see(group.instructor(), tree, "pest_level", "3");
        school.see(group.instructor(), tree, "vigour_index", "80");
        school.see(group.instructor(), tree, "soil_moist", "yes", School.TODAY);
        pupil.get("/home");
        teacher.get("/home");
    }

    /** What a home page tells of news; empty for nothing. */
    private static String news(Visitor who) {
        var html = who.get("/home").asString();
        var from = html.indexOf(HEADING);
        return from < 0 ? "" : html.substring(from, html.indexOf("</section>", from));
    }

    private String name() {
        return people.get(group.instructor(), group.instructor().personId()).name();
    }

    private String pupilsName() {
        return people.get(group.student(), group.student().personId()).name();
    }

    private Step assigned() {
        return assigner.assign(
                group.instructor(), tree.id(), new NewAssignment(STEP, null, null, null, null));
    }

    private Step reported(Step step) {
        return reports.report(
                group.student(),
                step.id(),
                step.version(),
                new NewReport(
                        School.TODAY,
                        "Washed off; 2 scales on 20 shoots are left.",
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null));
    }

    @Test
    void nothingIsToldOnAFirstVisitOrOfOnesOwnDeeds() {
        assertThat(news(pupil)).isEmpty();
        assigned();
        assertThat(news(teacher)).as("their own deed").isEmpty();
        var late = school.person("Nora New", Role.STUDENT);
        school.join(group, late, Role.STUDENT);
        assertThat(news(Visitor.of(people, late))).isEmpty();
    }

    @Test
    void aStepIsToldToBothSidesAndAReloadTellsItAgain() {
        var step = assigned();
        assertThat(news(pupil))
                .contains(
                        "%s assigned “Deal with pests and disease” for %s."
                                .formatted(name(), tree.label()))
                .contains("href=\"/steps/" + step.id() + "\"");
        step = reported(step);
        assertThat(news(pupil)).doesNotContain("reported");
        assertThat(news(teacher))
                .contains(
                        "%s reported “Deal with pests and disease” on %s."
                                .formatted(pupilsName(), tree.label()))
                .doesNotContain("assigned");
        signOffs.signOff(group.instructor(), step.id(), step.version(), null);
        assertThat(news(pupil)).contains(" signed off “", " assigned “");
        assertThat(news(pupil)).as("after a reload").contains(" signed off “", " assigned “");
    }

    @Test
    void theNextVisitBeginsAfterAnHourOrByAnotherSignIn() {
        assigned();
        var anew = Visitor.of(people, group.student());
        assertThat(news(anew)).contains(" assigned “");
        assertThat(news(anew)).as("a reload").contains(" assigned “");
        assertThat(news(pupil)).as("a browser that was signed in before").contains(" assigned “");
        assertThat(news(Visitor.of(people, group.student()))).as("signed in once more").isEmpty();
        assertThat(news(pupil)).as("what was told is not told again").isEmpty();
    }

    @Test
    void afterAnHourWhatWasToldIsGone() {
        assigned();
        assertThat(news(pupil)).contains(" assigned “");
        anHourLater();
        assertThat(news(pupil)).as("it happened after the last visit began").contains("assigned");
        anHourLater();
        assertThat(news(pupil)).isEmpty();
    }

    /** Everything that was noted so far was an hour earlier. */
    private void anHourLater() {
        QuarkusTransaction.requiringNew()
                .run(
                        () -> {
                            earlier("person_visit", "since");
                            earlier("person_visit", "moved_at");
                            earlier("step_event", "happened_at");
                        });
    }

    private void earlier(String table, String column) {
        database.createNativeQuery(
                        "update %s set %s = %s - interval '1' hour"
                                .formatted(table, column, column))
                .executeUpdate();
    }

    @Test
    void othersHearNothingOfIt() {
        var other = school.newGroup();
        var fellow = school.person("Fay Fellow", Role.STUDENT);
        school.join(group, fellow, Role.STUDENT);
        var visitors =
                List.of(
                        Visitor.of(people, fellow),
                        Visitor.of(people, other.student()),
                        Visitor.of(people, other.instructor()),
                        Visitor.of(people, school.person("Rika Registrar", Role.REGISTRAR)));
        visitors.forEach(visitor -> visitor.get("/home"));
        var step = reported(assigned());
        signOffs.sendBack(group.instructor(), step.id(), step.version(), "Count once more.");
        asks.ask(group.student(), tree.id(), new NewAsk("root_check", AskKind.QUESTION, "When?"));
        var observations = "/trees/" + tree.id() + "/observations";
        teacher.send(
                observations,
                observations,
                Map.of(
                        "fact", "training_stage",
                        "value", "develop",
                        "observedOn", School.TODAY.toString(),
                        "note", "The trunk thickens well."));
        assertThat(visitors).allSatisfy(visitor -> assertThat(news(visitor)).isEmpty());
        assertThat(news(pupil))
                .contains(" sent back “", "confirmed the stage “Develop the trunk” for");
        assertThat(news(teacher)).contains(" asks about “Check the roots” on");
    }

    @Test
    void onlyInstructorsOfTheStudentsCoursesHearOfReports() {
        var step = assigned();
        var guest = school.person("Gil Guest", Role.INSTRUCTOR);
        var visitor = Visitor.of(people, guest);
        visitor.get("/home");
        reported(step);
        assertThat(news(visitor)).as("teaches nobody here").isEmpty();
        school.join(group, guest, Role.INSTRUCTOR);
        assertThat(news(visitor)).contains(" reported “");
    }

    @Test
    void anAnswerIsTold() {
        var ask =
                asks.ask(
                        group.student(),
                        tree.id(),
                        new NewAsk("root_check", AskKind.QUESTION, "When?"));
        asks.answer(group.instructor(), tree.id(), ask.id(), new NewAnswer("In March."));
        assertThat(news(pupil))
                .contains(" answered about “Check the roots” on ")
                .contains("/trees/%d/asks#ask-%d".formatted(tree.id(), ask.id()));
        assertThat(news(teacher)).isEmpty();
    }

    private Session session() {
        return sessions.set(
                group.instructor(),
                new NewSession(
                        group.course().id(),
                        School.TODAY.plusDays(12),
                        LocalTime.of(10, 0),
                        LocalTime.of(12, 0),
                        null,
                        "Long table",
                        List.of(group.instructor().personId())));
    }

    @Test
    void datesThatMovedAndWereCancelledAreToldToTheCourse() {
        var colleague = school.person("Cleo Colleague", Role.INSTRUCTOR);
        school.join(group, colleague, Role.INSTRUCTOR);
        var other = Visitor.of(people, colleague);
        other.get("/home");
        var session = session();
        var moved =
                planning.move(
                        group.instructor(),
                        session.id(),
                        session.version(),
                        new NewMove(
                                School.TODAY.plusDays(19),
                                LocalTime.of(10, 0),
                                LocalTime.of(12, 0),
                                "Long table",
                                null,
                                null));
        for (var visitor : List.of(pupil, other)) {
            assertThat(news(visitor))
                    .contains(" moved the class of 4 March 2026 to 11 March 2026, ")
                    .contains("href=\"/sessions/" + session.id() + "\"");
        }
        assertThat(news(teacher)).isEmpty();
        sessions.cancel(
                group.instructor(), moved.id(), moved.version(), new NewCancellation("Snow"));
        assertThat(news(pupil))
                .contains(" cancelled the class of 11 March 2026, ")
                .doesNotContain(" moved ");
    }

    @Test
    void aPlaceThatWasGivenUpIsToldToOtherInstructors() {
        var colleague = school.person("Cleo Colleague", Role.INSTRUCTOR);
        school.join(group, colleague, Role.INSTRUCTOR);
        var other = Visitor.of(people, colleague);
        other.get("/home");
        var session = session();
        var coming =
                sessions.enrol(
                        group.instructor(),
                        session.id(),
                        new NewEnrolment(group.student().personId(), tree.id(), "4"));
        var at = "/sessions/" + session.id();
        var place = coming.enrolments().get(0).id();
        teacher.send(at, at + "/enrolments/" + place + "/withdraw", Map.of());
        assertThat(news(other))
                .contains(
                        "%s gave up the place of %s in the class of 4 March 2026."
                                .formatted(name(), tree.label()));
        assertThat(news(teacher)).isEmpty();
        assertThat(news(pupil)).isEmpty();
    }

    @Test
    void atMostFiveAreToldAndTheRestCounted() {
        for (int i = 0; i < 8; i++) {
            var ask =
                    asks.ask(
                            group.student(),
                            tree.id(),
                            new NewAsk("root_check", AskKind.QUESTION, "When, " + i + "?"));
            asks.answer(group.instructor(), tree.id(), ask.id(), new NewAnswer("In March."));
        }
        var told = news(pupil);
        assertThat(told.split("<li>", -1)).hasSize(1 + 5);
        assertThat(told).contains("And 3 more since ");
    }

    /** One statement, however much happened; coming anew is one more. */
    @Test
    void itIsReadInOneStatement() {
        assigned();
        assertThat(news(pupil)).isNotEmpty();
        assertThat(statements.of(() -> pupil.get("/home")))
                .filteredOn(sql -> sql.contains("person_visit"))
                .hasSize(1);
        var anew = Visitor.of(people, group.student());
        assertThat(statements.of(() -> anew.get("/home")))
                .filteredOn(sql -> sql.contains("person_visit"))
                .hasSize(2);
    }
}
