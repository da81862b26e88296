package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.trees.Tree;

/**
 * Records that name what the content does not have, as after a start with another folder. Here it
 * is the other way round, with the same result: the content stays and the records name something
 * else. Every address that reads answers as before, and renewing the content tells of it.
 */
@Tag("one-database")
@QuarkusTest
class GoneFromContentTest {

    private static final String GONE = "gone_";

    /** Each table and column that names something of the content. */
    private static final Map<String, String> NAMING =
            Map.of(
                    "tree", "species",
                    "step", "technique",
                    "work_done", "technique",
                    "day_wish", "technique",
                    "day_slot", "technique",
                    "day_left_out", "technique",
                    "class_session", "lesson",
                    "skill_judgement", "lesson",
                    "rubric_judgement", "rubric");

    /** A technique's page at a tree tells how it stands there, and nothing stands for this tree. */
    private static final String OF_A_TECHNIQUE = "GET /trees/{id}/techniques/{code}";

    @Inject School opening;
    @Inject DataSource database;

    private School school;
    private Tree tree;
    private Map<String, String> doors;

    @BeforeEach
    void open() {
        school = opening.open();
        tree = school.infestedTree();
        school.freshCut(tree);
        school.workingSession();
        school.signed(school.draft());
        doors = Doors.about(school, tree, school.id(Who.STUDENT), school.course().id());
        doors.remove(OF_A_TECHNIQUE);
        for (var paper : List.of("passport.pdf", "checklist.pdf", "route.pdf")) {
            doors.put("GET /trees/{id}/" + paper, "/trees/%d/%s".formatted(tree.id(), paper));
        }
        assertThat(doors).hasSizeGreaterThan(80);
    }

    @AfterEach
    void putBack() throws SQLException {
        for (var naming : NAMING.entrySet()) {
            update(
                    "update %1$s set %2$s = substring(%2$s, 6) where %2$s like 'gone\\_%%'"
                            .formatted(naming.getKey(), naming.getValue()));
        }
    }

    private void lose() throws SQLException {
        for (var naming : NAMING.entrySet()) {
            update(
                    "update %1$s set %2$s = '%3$s' || %2$s"
                            .formatted(naming.getKey(), naming.getValue(), GONE));
        }
    }

    private void update(String sql) throws SQLException {
        try (var connection = database.getConnection();
                var statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    @Test
    void everythingThatReadsGoesOn() throws SQLException {
        for (var reader : List.of(Who.STUDENT, Who.INSTRUCTOR, Who.REGISTRAR)) {
            var before = statuses(reader);
            lose();
            assertThat(statuses(reader).entrySet())
                    .as("%s", reader)
                    .containsExactlyElementsOf(before.entrySet());
            putBack();
        }
    }

    @Test
    void theTreeIsShownAsItIs() throws SQLException {
        lose();
        var said = "kind not in the content: " + GONE + tree.species();
        for (var address :
                List.of(
                        "/trees/%d",
                        "/trees/%d/passport", "/trees/%d/route", "/api/v1/trees/%d/route")) {
            assertThat(Doors.text(school.as(Who.STUDENT).get(address.formatted(tree.id()))))
                    .as(address)
                    .contains(said);
        }
        school.as(Who.INSTRUCTOR)
                .get("/api/v1/trees/%d/standing".formatted(tree.id()))
                .then()
                .statusCode(200)
                .body("techniques", empty());
        school.as(Who.INSTRUCTOR)
                .get("/api/v1/courses/%d/board?size=200".formatted(school.course().id()))
                .then()
                .statusCode(200)
                .body(
                        "rows.items.find { it.treeId == %d }.species".formatted(tree.id()),
                        equalTo(said));
    }

    @Test
    void renewingTheContentTellsOfIt() throws SQLException {
        var revision =
                school.as(Who.REGISTRAR).get("/api/v1/content").jsonPath().getString("revision");
        lose();
        school.as(Who.REGISTRAR)
                .header("Idempotency-Key", School.unique("renew"))
                .contentType("application/json")
                .post("/api/v1/content/renew")
                .then()
                .statusCode(200)
                .body("revision", equalTo(revision))
                .body("faults.file", hasItems("species/gone_%s.yaml".formatted(tree.species())))
                .body(
                        "faults.found",
                        hasItems(
                                startsWith(
                                        "no species “gone_%s”, which ".formatted(tree.species()))));
        putBack();
        school.as(Who.REGISTRAR)
                .header("Idempotency-Key", School.unique("renew"))
                .contentType("application/json")
                .post("/api/v1/content/renew")
                .then()
                .statusCode(200)
                .body("faults.file", not(hasItems(startsWith("species/gone_"))));
    }

    /** What each address answers. */
    private Map<String, Integer> statuses(Who reader) {
        var statuses = new TreeMap<String, Integer>();
        doors.forEach(
                (address, url) -> statuses.put(address, school.as(reader).get(url).statusCode()));
        return statuses;
    }
}
