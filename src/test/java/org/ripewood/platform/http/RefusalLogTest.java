package org.ripewood.platform.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.PeopleUnchecked;

/**
 * What is refused for the sake of safety is written down, briefly (ASVS 5.0, 16.3.2; from memory).
 */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class RefusalLogTest {

    private static final Logger LOGGER = Logger.getLogger(RefusalLog.class.getName());

    @Inject School school;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject RefusalLog log;

    private final List<String> lines = new ArrayList<>();

    private final Handler handler =
            new Handler() {
                @Override
                public void publish(LogRecord written) {
                    lines.add(written.getMessage());
                }

                @Override
                public void flush() {
                    // nothing is kept back
                }

                @Override
                public void close() {
                    // nothing is open
                }
            };

    @BeforeEach
    void listen() {
        log.beginMinute();
        LOGGER.addHandler(handler);
    }

    @AfterEach
    void stop() {
        LOGGER.removeHandler(handler);
    }

    @Test
    void aRefusalTellsWhoAskedAndByWhichDoorAndNothingElse() {
        var group = school.newGroup();
        var cookies =
                given().redirects()
                        .follow(false)
                        .formParam(
                                "j_username",
                                peopleUnchecked.get(group.student().personId()).login())
                        .formParam("j_password", "long enough a password")
                        .post("/j_security_check")
                        .cookies();
        given().cookies(cookies).get("/api/v1/audit?thing=secret-words").then().statusCode(403);
        assertThat(lines)
                .containsExactly(
                        "Refused (status 403): person %d at GET /api/v1/audit"
                                .formatted(group.student().personId()));
        lines.clear();
        given().cookies(cookies).get("/api/v1/trees").then().statusCode(200);
        assertThat(lines).isEmpty();
    }

    @Test
    void addressesInTheLogAreHarmless() {
        get("/password/a-secret%0A2026-01-01%20INFO%20forged", 400);
        get("/calendar/another-secret/nothing", 404);
        get("/nothing%20here", 404);
        assertThat(lines)
                .containsExactly(
                        "Refused (status 400): nobody known at GET /password/…",
                        "Refused (status 404): nobody known at GET /calendar/…",
                        "Refused (status 404): nobody known at GET /nothing%20here");
    }

    @Test
    void aFormWithoutItsTokenIsOne() {
        given().redirects()
                .follow(false)
                .formParam("login", "secret-words")
                .post("/password/forgotten")
                .then()
                .statusCode(400);
        assertThat(lines).containsExactly("Refused (status 400): nobody known at POST /password/…");
    }

    private static void get(String path, int status) {
        given().redirects()
                .follow(false)
                .urlEncodingEnabled(false)
                .get(path)
                .then()
                .statusCode(status);
    }

    @Test
    void aStrangerDoesNotFillTheLog() {
        for (int i = 0; i < 2 * RefusalLog.MOST_A_MINUTE + 20; i++) {
            get("/nothing/" + i, 404);
        }
        // two minutes, should one begin meanwhile
        assertThat(lines).hasSizeBetween(1, 2 * RefusalLog.MOST_A_MINUTE + 1);
    }
}
