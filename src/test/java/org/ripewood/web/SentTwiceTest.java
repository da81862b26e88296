package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.web.Visitor.fields;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.trees.Tree;

/** A form sent twice, by a double tap or on a bad line, counts once and leads on as at first. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class SentTwiceTest {

    private static final String TODAY = School.TODAY.toString();

    @Inject School school;
    @Inject People people;
    @Inject Sessions sessions;
    @Inject Assigner assigner;
    @Inject DataSource database;

    private School.Group group;
    private Actor instructor;
    private Tree tree;
    private Visitor teacher;
    private Visitor pupil;
    private String page;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        instructor = group.instructor();
        tree = school.tree(instructor, group.student(), "ulmus_parvifolia");
        teacher = Visitor.of(people, instructor);
        pupil = Visitor.of(people, group.student());
        page = "/trees/" + tree.id();
    }

    @Test
    void whatIsWrittenDownAboutATree() throws SQLException {
        counts(
                pupil,
                page + "/record",
                page + "/observations",
                "observation",
                fields(
                        "form",
                        "observation",
                        "fact",
                        "pest_level",
                        "value",
                        "1",
                        "observedOn",
                        TODAY));
        counts(
                pupil,
                page + "/record",
                page + "/wounds",
                "wound",
                fields(
                        "place",
                        "left of the leader",
                        "madeOn",
                        TODAY,
                        "firstWidthMm",
                        "20",
                        "firstLengthMm",
                        "25"));
        counts(
                pupil,
                page + "/record",
                page + "/branches",
                "branch",
                fields("name", "lowest right", "role", "PRIMARY"));
        counts(
                pupil,
                page + "/record",
                page + "/containers",
                "container_stay",
                fields("kind", "training", "litres", "6.5", "since", TODAY));
        counts(
                pupil,
                page + "/measure",
                page + "/measure",
                "observation",
                fields("observedOn", TODAY, "newHeight.1", "40", "newDiameter.1", "32,5"));
    }

    @Test
    void theReportOfAStep() throws SQLException {
        school.see(instructor, tree, "pest_level", "3");
        school.see(instructor, tree, "vigour_index", "80");
        school.see(instructor, tree, "soil_moist", "yes", School.TODAY);
        var pests = new NewAssignment("pest_control", null, null, null, null);
        var step = assigner.assign(instructor, tree.id(), pests);
        counts(
                pupil,
                "/steps/" + step.id(),
                "/steps/" + step.id() + "/report",
                "step_report",
                fields(
                        "version",
                        "" + step.version(),
                        "doneOn",
                        TODAY,
                        "evidence",
                        "2 scales on 20 shoots"));
    }

    @Test
    void aTreeThatComesToASession() throws SQLException {
        var session =
                sessions.set(
                        instructor,
                        new NewSession(
                                group.course().id(),
                                School.TODAY.plusDays(5),
                                LocalTime.of(9, 0),
                                LocalTime.of(12, 0),
                                null,
                                "long table",
                                List.of(instructor.personId())));
        var at = "/sessions/" + session.id();
        counts(
                teacher,
                at,
                at + "/enrolments",
                "enrolment",
                fields("treeId", "" + tree.id(), "bench", "4"));
    }

    @Test
    void aJudgementSignedAtOnce() throws SQLException {
        var at = page + "/judgements/root-flare";
        counts(
                teacher,
                at,
                at,
                "rubric_judgement",
                fields("level", "2", "judgedOn", TODAY, "note", "even", "then", "sign"));
    }

    @Test
    void otherWordsUnderTheSameKeyComeBackAsTheyWereTyped() throws SQLException {
        var action = page + "/wounds";
        var fields =
                fields(
                        "place",
                        "left of the leader",
                        "madeOn",
                        TODAY,
                        "firstWidthMm",
                        "20",
                        "firstLengthMm",
                        "25");
        fields.put("once", key(pupil.get(page + "/record").asString(), action));
        assertThat(pupil.send(page + "/record", action, fields).statusCode()).isEqualTo(303);
        fields.put("place", "another, right of it");
        long before = rows("wound");
        var refused = pupil.send(page + "/record", action, fields);
        assertThat(refused.statusCode()).isEqualTo(422);
        var html = refused.asString();
        assertThat(html).contains("value=\"another, right of it\"");
        assertThat(rows("wound")).isEqualTo(before);
        fields.put("once", key(html, action));
        assertThat(pupil.send(page + "/record", action, fields).statusCode()).isEqualTo(303);
        assertThat(rows("wound")).isEqualTo(before + 1);
    }

    private void counts(
            Visitor visitor, String at, String action, String table, Map<String, String> fields)
            throws SQLException {
        var html = visitor.get(at).asString();
        fields.put("once", key(html, action));
        long before = rows(table);
        var first = visitor.send(at, action, fields);
        assertThat(first.statusCode()).as(action).isEqualTo(303);
        long after = rows(table);
        assertThat(after).as(action).isGreaterThan(before);
        var again = visitor.send(at, action, fields);
        assertThat(again.statusCode()).as(action + " again").isEqualTo(303);
        assertThat(again.header("Location")).as(action).isEqualTo(first.header("Location"));
        assertThat(rows(table)).as(action).isEqualTo(after);
    }

    /** Where a form begins; that of a report sends its photos along. */
    private static int at(String html, String action) {
        int alone = html.indexOf("action=\"" + action + "\" method=\"post\"");
        return alone >= 0
                ? alone
                : html.indexOf("action=\"" + action + "-with-photos\" method=\"post\"");
    }

    /** The key of a form on a page. */
    private static String key(String html, String action) {
        var form = html.substring(at(html, action));
        var whole = form.substring(0, form.indexOf("</form>"));
        var found = Pattern.compile("name=\"once\" value=\"([^\"]+)\"").matcher(whole);
        assertThat(found.find()).as("a key in the form of " + action).isTrue();
        return found.group(1);
    }

    private long rows(String table) throws SQLException {
        try (var connection = database.getConnection();
                var counting = connection.createStatement();
                var found = counting.executeQuery("select count(*) from " + table)) {
            found.next();
            return found.getLong(1);
        }
    }
}
