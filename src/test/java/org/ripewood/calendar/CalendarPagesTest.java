package org.ripewood.calendar;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.accounts.CalendarLinks;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.core.progress.Work;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.records.WorksDone;
import org.ripewood.sessions.NewCancellation;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.trees.Tree;

/** The calendar behind a private link. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class CalendarPagesTest {

    @Inject School school;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject PersonRegistration register;
    @Inject CalendarLinks links;
    @Inject Sessions sessions;
    @Inject WorksDone worksDone;
    @Inject DataSource database;

    private School.Group group;
    private Actor instructor;
    private Actor student;
    private Tree tree;
    private Session session;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        instructor = group.instructor();
        student = group.student();
        tree = school.tree(instructor, student, "acer_palmatum");
        session =
                sessions.set(
                        instructor,
                        new NewSession(
                                group.course().id(),
                                School.TODAY.plusDays(3),
                                LocalTime.of(9, 30),
                                LocalTime.of(12, 30),
                                "wiring-branches",
                                "Long table",
                                List.of(instructor.personId())));
        sessions.enrol(
                instructor, session.id(), new NewEnrolment(student.personId(), tree.id(), "A1"));
        worksDone.record(
                instructor,
                tree.id(),
                new Work("root_pruning_repot", School.TODAY.minusDays(10), 0, 0, 0, 0),
                null,
                null);
        school.wound(instructor, tree, "left", 20, School.TODAY.minusDays(200));
    }

    @Test
    void aStudentsCalendarHoldsTheirDatesCareAndMeasuringDays() {
        var answer = get(links.make(student));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.contentType()).isEqualToIgnoringCase("text/calendar;charset=UTF-8");
        assertThat(answer.header("Cache-Control")).contains("private").doesNotContain("public");
        var read = Reading.of(answer.asString());
        assertThat(read.uids())
                .anyMatch(uid -> uid.startsWith("session-" + session.id() + "-"))
                .anyMatch(uid -> uid.contains("-shade-1-"))
                .anyMatch(uid -> uid.startsWith("measure-" + tree.id() + "-wounds-"));
        assertThat(Reading.value(read.event("session-"), "DESCRIPTION"))
                .isEqualTo("You bring: " + tree.label() + ".");
    }

    @Test
    void anInstructorsCalendarNamesNobody() {
        var text = get(links.make(instructor)).asString();
        var event = Reading.of(text).event("session-");
        assertThat(Reading.value(event, "DESCRIPTION")).isEqualTo("You teach. Trees that come: 1.");
        assertThat(text).doesNotContain("Stan").doesNotContain("Ines").doesNotContain("Tree ");
    }

    @Test
    void whatIsCalledOffOrWithdrawnIsCancelledWithAHigherSequence() {
        var secret = links.make(student);
        var first = Reading.of(get(secret).asString()).event("session-");
        var enrolment = sessions.get(instructor, session.id()).enrolments().get(0);
        sessions.withdraw(instructor, session.id(), enrolment.id());
        var withdrawn = Reading.of(get(secret).asString()).event("session-");
        assertThat(Reading.value(withdrawn, "STATUS")).isEqualTo("CANCELLED");
        assertThat(Reading.value(withdrawn, "UID")).isEqualTo(Reading.value(first, "UID"));
        assertThat(sequence(withdrawn)).isGreaterThan(sequence(first));

        sessions.enrol(
                instructor, session.id(), new NewEnrolment(student.personId(), tree.id(), "A1"));
        var again = Reading.of(get(secret).asString()).event("session-");
        assertThat(Reading.value(again, "STATUS")).isEqualTo("CONFIRMED");
        sessions.cancel(
                instructor,
                session.id(),
                sessions.get(instructor, session.id()).version(),
                new NewCancellation("Heavy snow."));
        var off = Reading.of(get(secret).asString()).event("session-");
        assertThat(Reading.value(off, "STATUS")).isEqualTo("CANCELLED");
        assertThat(sequence(off)).isGreaterThan(sequence(again));
    }

    private static int sequence(net.fortuna.ical4j.model.component.VEvent event) {
        return Integer.parseInt(Reading.value(event, "SEQUENCE"));
    }

    @Test
    void aProgramThatHasItIsToldThatNothingChanged() {
        var secret = links.make(student);
        var tag = get(secret).header("ETag");
        assertThat(tag).matches("\"[0-9a-f-]{36}\"");
        var unchanged = given().header("If-None-Match", tag).get("/calendar/" + secret + ".ics");
        assertThat(unchanged.statusCode()).isEqualTo(304);
        assertThat(unchanged.asString()).isEmpty();
        assertThat(unchanged.header("Cache-Control")).contains("private");

        sessions.cancel(
                instructor,
                session.id(),
                sessions.get(instructor, session.id()).version(),
                new NewCancellation("Heavy snow."));
        var changed = given().header("If-None-Match", tag).get("/calendar/" + secret + ".ics");
        assertThat(changed.statusCode()).isEqualTo(200);
        assertThat(changed.header("ETag")).isNotEqualTo(tag);
    }

    @Test
    void aRenewedLinkEndsTheOldOneAndKeepsTheNamesOfEvents() {
        var old = links.make(student);
        var before = Reading.of(get(old).asString()).uids();
        var renewed = links.make(student);
        assertThat(renewed).isNotEqualTo(old).matches("[A-Za-z0-9_-]{43}");
        assertThat(get(old).statusCode()).isEqualTo(404);
        assertThat(Reading.of(get(renewed).asString()).uids()).isEqualTo(before);
        links.revoke(student);
        assertThat(get(renewed).statusCode()).isEqualTo(404);
        assertThat(links.madeAt(student)).isEmpty();
        assertThat(Reading.of(get(links.make(student)).asString()).uids()).isEqualTo(before);
    }

    @Test
    void whatNoLinkLeadsToIsNotThereAndIsNotSaidAgain() {
        var unknown = "x".repeat(43);
        var answer = get(unknown);
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.asString()).doesNotContain(unknown);
        for (var path :
                List.of(
                        "/calendar/" + "x".repeat(42) + ".ics",
                        "/calendar/" + links.make(student),
                        "/calendar/.ics",
                        "/calendar/..%2f" + "x".repeat(43) + ".ics",
                        "/calendar/'%20or%201=1.ics")) {
            assertThat(given().urlEncodingEnabled(false).get(path).statusCode())
                    .as(path)
                    .isBetween(400, 404);
        }
    }

    @Test
    void whoIsNoLongerActiveHasNoCalendar() {
        var secret = links.make(student);
        var person = peopleUnchecked.get(student.personId());
        var office = new Actor(0, Set.of(Role.REGISTRAR));
        register.setActive(office, person.id(), person.version(), false);
        assertThat(get(secret).statusCode()).isEqualTo(404);
    }

    @Test
    void onlyTheHashOfASecretIsKept() throws SQLException {
        var secret = links.make(student);
        try (var connection = database.getConnection();
                var found =
                        connection
                                .createStatement()
                                .executeQuery(
                                        "select token_hash, seed from calendar_link where"
                                                + " person_id = "
                                                + student.personId())) {
            assertThat(found.next()).isTrue();
            assertThat(found.getString(1)).hasSize(64).doesNotContain(secret);
            assertThat(found.getString(2)).doesNotContain(secret);
        }
    }

    @Test
    void aSecretIsNotWrittenIntoTheLog() {
        var told = new ArrayList<String>();
        var listener =
                new Handler() {
                    @Override
                    public void publish(LogRecord entry) {
                        told.add(String.valueOf(entry.getMessage()));
                        told.add(java.util.Arrays.toString(entry.getParameters()));
                    }

                    @Override
                    public void flush() {}

                    @Override
                    public void close() {}
                };
        var root = Logger.getLogger("");
        root.addHandler(listener);
        try {
            var secret = links.make(student);
            get(secret);
            get("y".repeat(43));
            assertThat(String.join("\n", told))
                    .doesNotContain(secret)
                    .doesNotContain("y".repeat(43));
        } finally {
            root.removeHandler(listener);
        }
    }

    private static Response get(String secret) {
        return given().redirects().follow(false).get("/calendar/" + secret + ".ics");
    }
}
