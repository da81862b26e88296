package org.ripewood.platform.problems;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers as RFC 9457, 3 describes them, whatever goes wrong. */
@QuarkusTest
class ProblemsTest {

    private static final String API = "/api/v1/rehearsal/";

    @ParameterizedTest(name = "{0} is {1} {2}")
    @CsvSource({
        "trees/abc, 404, not-found",
        "trees/99999999999999999999, 404, not-found",
        "nothing-here, 404, not-found",
        "hidden, 404, not-found",
        "days?on=2023-02-29, 400, invalid",
        "days?page=many, 400, invalid",
        "days?shape=SQUARE, 400, invalid",
        "broken, 500, our-fault",
        "stale, 412, stale",
        "twice, 409, conflict",
        "too-long, 400, invalid",
        "office, 401, sign-in-needed",
        "who, 401, sign-in-needed",
    })
    void everyFailureIsAProblem(String path, int status, String kind) {
        problem(given().get(API + path).then(), status, kind)
                .body("instance", equalTo((API + path).replaceAll("\\?.*", "")));
    }

    @Test
    void whatIsUnderNoDoorIsAProblemToo() {
        problem(given().get("/api/nothing").then(), 404, "not-found");
        problem(given().get("/api").then(), 404, "not-found");
        problem(given().delete(API + "broken").then(), 405, "method-not-allowed");
        problem(given().accept("image/png").get(API + "trees/1").then(), 406, "not-acceptable");
        problem(
                given().contentType("text/plain").body("x").post(API + "pots").then(),
                415,
                "unsupported-media-type");
    }

    @Test
    void aQueryFaultNamesTheParameter() {
        given().get(API + "days?on=2023-02-29")
                .then()
                .body("faults[0].field", equalTo("on"))
                .body(
                        "faults[0].message",
                        equalTo("expected a day such as 2024-03-31, found \"2023-02-29\""));
        given().get(API + "days?page=1&on=2024-02-29").then().statusCode(200);
    }

    @Test
    void ourOwnFaultTellsALogIdAndNothingElse() {
        var answer =
                given().get(API + "broken")
                        .then()
                        .body("detail", containsString("The log has it under "))
                        .extract()
                        .asString();
        assertThat(answer).doesNotContain("words nobody", "Exception", "org.ripewood", "\tat ");
    }

    @ParameterizedTest(name = "{0} -> {1}: {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"name\": 5}                        | name        | a text",
                "{\"name\": \"a\", \"since\": \"soon\"}   | since       | a day such as 2024-03-31",
                "{\"name\": \"a\", \"since\": [2024,1,1]} | since       | a day such as 2024-03-31",
                "{\"name\": \"a\", \"since\": 19000}      | since       | a day such as 2024-03-31",
                "{\"name\": \"a\", \"widthMm\": \"wide\"} | widthMm     | a number such as 12.5",
                "{\"name\": \"a\", \"widthMm\": \"12\"}   | widthMm     | a number such as 12.5",
                "{\"name\": \"a\", \"widthMm\": {}}       | widthMm     | a number such as 12.5",
                "{\"name\": \"a\", \"widthMm\": 0.5}      | widthMm     | at least 1, found 0.5",
                "{\"name\": \"a\", \"widthMm\": 1e999}    | widthMm     | a number such as 12.5",
                "{\"name\": \"a\", \"widthMm\": \"NaN\"}  | widthMm     | a number such as 12.5",
                "{\"name\": \"a\", \"feet\": 1.5}         | feet        | a whole number",
                "{\"name\": \"a\", \"feet\": 99999999999} | feet        | a whole number",
                "{\"name\": \"a\", \"glazed\": \"yes\"}   | glazed      | true or false",
                "{\"name\": \"a\", \"shape\": \"SQUARE\"} | shape       | one of round, oval",
                "{\"name\": \"a\", \"shape\": 0}          | shape       | one of round, oval",
                "{\"name\": \"a\", \"readings\": [1,\"x\"]} | readings[1] | a number such as 12.5",
                "{\"name\": \"a\", \"readings\": 1}       | readings    | a JSON array",
                "{\"name\": \"a\", \"notes\": {\"k\": []}}  | notes.k     | a text",
                "{\"name\": \"a\", \"colour\": \"blue\"}  | colour      | one of feet, glazed",
                "{\"name\": \"a\", \"name\": \"b\"}       | name        | once",
                "{\"name\": \"a\\u0000\"}               | name        | without control characters",
                "{\"name\": \"  \"}                     | name        | a value",
                "{}                                 | name        | a value",
                "[]                                 | ``          | a JSON object",
                "null                               | ``          | a JSON object",
                "``                                 | ``          | a JSON object",
                "{\"name\":                           | name        | JSON",
                "{} {}                              | ``          | JSON",
                "nonsense                           | ``          | JSON",
            })
    void aFaultyBodyNamesTheField(String body, String field, String expected) {
        problem(post(body), 400, "invalid")
                .body("faults.field", hasItem(field))
                .body("faults.message", hasItem(containsString(expected)));
    }

    @Test
    void aSoundBodyIsTaken() {
        post("{\"name\": \"Tray\", \"since\": \"2024-02-29\", \"widthMm\": 120, \"shape\":"
                        + " \"OVAL\"}")
                .statusCode(200)
                .body("since", equalTo("2024-02-29"))
                .body("glazed", equalTo(false));
    }

    @Test
    void aBodyTooLargeIsRefused() {
        var large = "{\"name\": \"" + "x".repeat(1_100_000) + "\"}";
        problem(post(large), 413, "too-large");
    }

    @Test
    void deepNestingIsRefused() {
        problem(post("[".repeat(5_000)), 400, "invalid");
        problem(post("{\"notes\":".repeat(2_000)), 400, "invalid");
    }

    private static ValidatableResponse post(String body) {
        return given().contentType("application/json").body(body).post(API + "pots").then();
    }

    private static ValidatableResponse problem(
            ValidatableResponse answer, int status, String kind) {
        return answer.statusCode(status)
                .contentType("application/problem+json")
                .header("Cache-Control", "no-store")
                .body("type", equalTo("urn:ripewood:problem:" + kind))
                .body("status", equalTo(status))
                .body("title", not(nullValue()))
                .body("detail", not(nullValue()));
    }

    @Test
    void peopleAreToldOnAPage() {
        given().get("/rehearsal/faults/wrong")
                .then()
                .statusCode(400)
                .contentType(startsWith("text/html"))
                .body(containsString("<html lang=\"en\">"))
                .body(containsString("found wrong"))
                .body(containsString("expected &lt;b&gt;something else&lt;/b&gt;"));
        given().get("/no-such-page")
                .then()
                .statusCode(404)
                .contentType(startsWith("text/html"))
                .body(containsString("Not found"));
    }

    @Test
    void nobodyReadsAPageThatNamesNoReader() {
        given().redirects()
                .follow(false)
                .get("/rehearsal/forgotten")
                .then()
                .statusCode(303)
                .header("Location", containsString("/sign-in"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/rehearsal/open",
                "/no-such-page",
                "/api/v1/rehearsal/trees/1",
                "/api/v1/rehearsal/broken",
                "/q/health/live"
            })
    void everyAnswerCarriesTheSafetyHeaders(String path) {
        given().get(path)
                .then()
                .header("Content-Security-Policy", containsString("default-src 'none'"))
                .header("Content-Security-Policy", not(containsString("unsafe")))
                .header("Content-Security-Policy", containsString("frame-ancestors 'none'"))
                .header("X-Content-Type-Options", "nosniff")
                .header("Referrer-Policy", "same-origin")
                .header("Cache-Control", "no-store");
    }

    @Test
    void severalFaultsAreToldTogether() {
        problem(post("{\"name\": \"\", \"widthMm\": 0}"), 400, "invalid")
                .body("faults.field", hasItems("name", "widthMm"));
    }
}
