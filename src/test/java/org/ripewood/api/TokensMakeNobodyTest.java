package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A token may do what its owner may, but for who is at the school: a registrar's program enters,
 * invites, lets in and forgets nobody, by whatever door. A token that is found by a stranger would
 * otherwise be good for an account of their own.
 */
@Tag("one-database")
@QuarkusTest
class TokensMakeNobodyTest {

    /** The doors that make, invite or forget persons; all others are asked below. */
    private static final String DOORS =
            """
            POST /api/v1/people
            POST /api/v1/people/invitations
            POST /api/v1/people/{id}/password-link
            PUT  /api/v1/people/{id}/roles
            POST /api/v1/people/{id}/forget
            POST /api/v1/lists/people?choice=DRY_RUN
            POST /api/v1/lists/people?choice=GOOD_ROWS
            POST /api/v1/lists/people?choice=ALL_OR_NOTHING
            POST /api/v1/lists/PEOPLE
            POST /api/v1/record
            """;

    private static final String PERSONS =
            "select cast(p.id as varchar) || ' ' || p.login || ' ' || p.name || ' ' || p.active"
                    + " || ' ' || p.password_hash, coalesce((select string_agg(r.role, ' ' order by"
                    + " r.role) from person_role r where r.person_id = p.id), '') || ' ' ||"
                    + " coalesce((select max(l.token_hash) from password_link l where l.person_id ="
                    + " p.id), '') from person p";

    @Inject School opening;
    @Inject DataSource database;

    private School school;
    private String token;

    @BeforeEach
    void open() {
        school = opening.open();
        token = school.token(Who.REGISTRAR);
    }

    @Test
    void noDoorThatMakesInvitesOrForgetsPersonsOpensToAToken() throws SQLException {
        var newcomer = school.newcomer();
        var before = persons();
        for (var door : DOORS.lines().toList()) {
            var path = door.substring(door.indexOf('/')).replace("{id}", "" + newcomer.id());
            var answer = line(path, newcomer.version()).send(door.substring(0, 4).strip(), path);
            assertThat(answer.statusCode()).as(door).isEqualTo(403);
            assertThat(answer.text()).as(door).contains("A token may not");
        }
        assertThat(persons()).isEqualTo(before);
    }

    /** The same calls by who is signed in are taken, so that it is the token that is refused. */
    @Test
    void whoIsSignedInMayDoAllOfIt() {
        for (var door : DOORS.lines().toList()) {
            var newcomer = school.newcomer();
            var path = door.substring(door.indexOf('/')).replace("{id}", "" + newcomer.id());
            var line = write(school.lineOf(Who.REGISTRAR), path, newcomer.version());
            assertThat(line.send(door.substring(0, 4).strip(), path).statusCode())
                    .as(door)
                    .isIn(200, 201);
        }
    }

    /** Whatever else writes leaves the persons as they are, whom they may let in by it included. */
    @Test
    void noOtherDoorMakesOrForgetsAnybody() throws SQLException {
        var calls = new Calls(school);
        var wrong = new ArrayList<String>();
        int taken = 0;
        for (var endpoint : Endpoint.all()) {
            if (!endpoint.api() || !endpoint.writes()) {
                continue;
            }
            var call = calls.of(endpoint);
            var before = persons();
            int status =
                    call.send(new Line().header("Authorization", "Bearer " + token)).statusCode();
            taken += status < 300 ? 1 : 0;
            if (!persons().equals(before)) {
                wrong.add(endpoint + " answered " + status);
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(taken).as("doors a registrar's program may use").isGreaterThan(20);
    }

    private Line line(String path, long version) {
        return write(new Line().header("Authorization", "Bearer " + token), path, version);
    }

    private static Line write(Line line, String path, long version) {
        var login = School.unique("by.token").replace(' ', '.');
        if (path.contains("/lists/")) {
            return line.body("text/csv", "name,login,roles\nSomebody," + login + ",registrar\n");
        }
        if (path.endsWith("/record")) {
            return line.body("application/json", Calls.RECORD);
        }
        if (path.endsWith("/forget")) {
            return line.header("If-Match", "\"" + version + "\"");
        }
        if (path.endsWith("/roles")) {
            return line.header("If-Match", "\"" + version + "\"")
                    .body("application/json", "{\"roles\": [\"REGISTRAR\"]}");
        }
        var guest = "{\"name\": \"Somebody\", \"login\": \"%s\", \"roles\": [\"REGISTRAR\"]%s}";
        var password = ", \"password\": \"" + School.PASSWORD + "\"";
        return line.body(
                "application/json",
                guest.formatted(login, path.endsWith("people") ? password : ""));
    }

    private Map<String, String> persons() throws SQLException {
        var persons = new TreeMap<String, String>();
        try (var connection = database.getConnection();
                var statement = connection.createStatement();
                var rows = statement.executeQuery(PERSONS)) {
            while (rows.next()) {
                persons.put(rows.getString(1), rows.getString(2));
            }
        }
        return persons;
    }
}
