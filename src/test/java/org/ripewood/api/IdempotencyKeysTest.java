package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.photos.Pictures;
import org.ripewood.platform.Role;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.steps.Step;

/** A write sent again under its key counts once and is answered as at first. */
@QuarkusTest
class IdempotencyKeysTest {

    private static final String KEY = "Idempotency-Key";
    private static final int SENDERS = 8;

    @Inject School opening;
    @Inject DataSource database;
    @Inject Tables tables;

    private School school;

    @BeforeEach
    void open() {
        school = opening.open();
    }

    @Test
    void theSameObservationSentTwiceIsOneAndAnsweredAlike() {
        var tree = school.tree().id();
        var address = "/api/v1/trees/" + tree + "/observations";
        var key = fresh();
        var first = post(Who.STUDENT, address, key, seen("2"));
        var before = tables.rows();
        var again = post(Who.STUDENT, address, key, seen("2"));
        assertThat(first.statusCode()).isEqualTo(201);
        assertThat(again.statusCode()).isEqualTo(201);
        assertThat(again.asString()).isEqualTo(first.asString());
        assertThat(again.header("Location")).isEqualTo(first.header("Location")).isNotBlank();
        assertThat(again.contentType()).startsWith("application/json");
        assertThat(tables.rows()).isEqualTo(before);
        // in quotes, as the draft writes texts, it is the same key
        assertThat(post(Who.STUDENT, address, '"' + key + '"', seen("2")).asString())
                .isEqualTo(first.asString());
        // and without a key each counts
        post(Who.STUDENT, address, null, seen("2"));
        assertThat(tables.rows()).isNotEqualTo(before);
    }

    @Test
    void theReportOfAStepIsAnsweredWithItsVersionAgain() {
        var step = school.assignedStep();
        var key = fresh();
        var first = report(step, key);
        assertThat(first.statusCode()).as(first.asString()).isEqualTo(200);
        var again = report(step, key);
        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(again.header("ETag")).isEqualTo(first.header("ETag")).isNotBlank();
        assertThat(again.asString()).isEqualTo(first.asString());
    }

    @Test
    void theSameReportSentByEightAtOnceIsOneReport() throws Exception {
        var step = school.assignedStep();
        var key = fresh();
        school.cookie(Who.STUDENT);
        var start = new CountDownLatch(1);
        var senders = Executors.newFixedThreadPool(SENDERS);
        try {
            var sent = new ArrayList<Future<Response>>();
            for (int i = 0; i < SENDERS; i++) {
                sent.add(
                        senders.submit(
                                () -> {
                                    start.await();
                                    return report(step, key);
                                }));
            }
            start.countDown();
            var done = new ArrayList<String>();
            for (var answer : sent) {
                var heard = answer.get();
                // who waited too long for the first may be told to try once more
                assertThat(heard.statusCode()).as(heard.asString()).isIn(200, 409);
                if (heard.statusCode() == 200) {
                    done.add(heard.asString());
                }
            }
            assertThat(done).isNotEmpty();
            assertThat(done.stream().distinct()).hasSize(1);
        } finally {
            senders.shutdownNow();
        }
        assertThat(count("select count(*) from step_report where step_id = ?", step.id())).isOne();
        assertThat(report(step, key).statusCode()).isEqualTo(200);
    }

    @Test
    void aKeyUsedForSomethingElseIsRefused() {
        var tree = school.tree().id();
        var address = "/api/v1/trees/" + tree + "/observations";
        var key = fresh();
        post(Who.STUDENT, address, key, seen("2")).then().statusCode(201);
        var before = tables.rows();
        var other = post(Who.STUDENT, address, key, seen("3"));
        assertThat(other.statusCode()).isEqualTo(422);
        assertThat(other.jsonPath().getString("type")).isEqualTo("urn:ripewood:problem:key-used");
        var elsewhere = "/api/v1/trees/" + school.tree().id() + "/observations";
        var rows = tables.rows();
        assertThat(post(Who.STUDENT, elsewhere, key, seen("2")).statusCode()).isEqualTo(422);
        assertThat(tables.rows()).isEqualTo(rows);
        assertThat(before.get("observation")).isEqualTo(rows.get("observation"));
        // somebody else's key is another key
        assertThat(post(Who.INSTRUCTOR, address, key, seen("3")).statusCode()).isEqualTo(201);
    }

    @Test
    void whatIsRefusedKeepsNoKeyAndMayBePutRight() {
        var address = "/api/v1/trees/" + school.tree().id() + "/observations";
        var key = fresh();
        var before = tables.rows();
        assertThat(post(Who.STUDENT, address, key, seen("many")).statusCode()).isEqualTo(400);
        assertThat(tables.rows()).isEqualTo(before);
        assertThat(post(Who.STUDENT, address, key, seen("2")).statusCode()).isEqualTo(201);
    }

    @Test
    void anOddSeriesIsAskedAboutAndItsKeyStaysFree() {
        var tree = school.tree();
        var cut = school.freshCut(tree);
        var address = "/api/v1/trees/" + tree.id() + "/series";
        var day = school.today().date().toString();
        Map<String, Object> odd =
                Map.of(
                        "observedOn",
                        day,
                        "wounds",
                        List.of(Map.of("woundId", cut, "openMm", 90.0)));
        var key = fresh();
        var before = tables.rows();
        assertThat(post(Who.STUDENT, address, key, odd).statusCode()).isEqualTo(409);
        assertThat(tables.rows()).isEqualTo(before);
        Map<String, Object> right =
                Map.of(
                        "observedOn",
                        day,
                        "wounds",
                        List.of(Map.of("woundId", cut, "openMm", 22.0)));
        var first = post(Who.STUDENT, address, key, right);
        assertThat(first.statusCode()).as(first.asString()).isEqualTo(201);
        var rows = tables.rows();
        assertThat(post(Who.STUDENT, address, key, right).asString()).isEqualTo(first.asString());
        assertThat(tables.rows()).isEqualTo(rows);
    }

    @Test
    void aPhotoSentTwiceIsOnePhoto() {
        var address = "/api/v1/trees/" + school.tree().id() + "/photos";
        var key = fresh();
        var first = photo(address, key);
        assertThat(first.statusCode()).as(first.asString()).isEqualTo(201);
        var rows = tables.rows();
        assertThat(photo(address, key).asString()).isEqualTo(first.asString());
        assertThat(tables.rows()).isEqualTo(rows);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "a key with blanks",
                "clé",
                "01234567890123456789012345678901234567890123456789012345678901234"
            })
    void aKeyOfAnotherFormIsAFault(String key) {
        var address = "/api/v1/trees/" + school.tree().id() + "/observations";
        var before = tables.rows();
        var answer = post(Who.STUDENT, address, key, seen("2"));
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(400);
        assertThat(answer.jsonPath().getString("faults[0].field")).isEqualTo(KEY);
        assertThat(tables.rows()).isEqualTo(before);
    }

    @Test
    void aKeyOlderThanTwoDaysIsFreeAgain() throws SQLException {
        var address = "/api/v1/trees/" + school.tree().id() + "/observations";
        var key = fresh();
        post(Who.STUDENT, address, key, seen("2")).then().statusCode(201);
        try (var connection = database.getConnection();
                var older =
                        connection.prepareStatement(
                                "update answered_request set begun_at = begun_at - interval '49'"
                                        + " hour where request_key = ?")) {
            older.setString(1, key);
            assertThat(older.executeUpdate()).isOne();
        }
        assertThat(post(Who.STUDENT, address, key, seen("3")).statusCode()).isEqualTo(201);
    }

    /**
     * Every door that keeps keys: sent again it answers as at first, and to who no longer reaches
     * what it is about as the same without a key.
     */
    @Test
    void whoLostReachIsNotToldTheFirstAnswerAgain() {
        var calls = new Calls(school);
        var doors =
                Endpoint.all().stream()
                        .filter(door -> door.method().isAnnotationPresent(Idempotent.class))
                        .toList();
        assertThat(doors).hasSizeGreaterThan(15);
        var teacher = school.teacher(Role.INSTRUCTOR);
        var mine = new ArrayList<Sent>();
        for (var door : doors) {
            // a keeper alone reports, and says what became of care
            var call = calls.of(door);
            var key = fresh();
            var sent = new Sent(call, key, call.send(school.lineOf(teacher).header(KEY, key)));
            if (sent.first().statusCode() < 300) {
                assertThat(sent.again(school.lineOf(teacher)))
                        .as(call.url())
                        .extracting(Heard::statusCode, Heard::text)
                        .containsExactly(sent.first().statusCode(), sent.first().text());
                mine.add(sent);
            }
        }
        assertThat(mine).hasSizeGreaterThan(12);
        school.endMembership(teacher);
        var before = tables.rows();
        int refused = 0;
        for (var sent : mine) {
            var again = sent.again(school.lineOf(teacher));
            var plain = school.lineOf(teacher).send("GET", sent.readAt());
            var as = sent.call().url() + " after reading answers " + plain.statusCode();
            if (plain.statusCode() == 404) {
                refused++;
                assertThat(again.statusCode()).as(as).isEqualTo(404);
                assertThat(again.contentType()).as(as).startsWith("application/problem+json");
            } else {
                assertThat(again.statusCode()).as(as).isLessThan(300);
            }
        }
        assertThat(refused).isGreaterThan(10);
        assertThat(tables.rows()).isEqualTo(before);
    }

    /** A call, the key it is sent under each time, and what was answered first. */
    private record Sent(Call call, String key, Heard first) {

        Heard again(Line line) {
            return call.send(line.header(KEY, key));
        }

        /** Where what the call is about is read. */
        String readAt() {
            var named = Pattern.compile("/api/v1/([a-z]+)/(\\d+).*").matcher(call.url());
            if (!named.matches()) {
                return call.url() + "/" + first.json().path("id").asLong();
            }
            return "/api/v1/%s/%s%s"
                    .formatted(
                            named.group(1),
                            named.group(2),
                            named.group(1).equals("people") ? "/judgements" : "");
        }
    }

    @Test
    void theFormerKeeperIsNotToldTheFirstAnswerAgain() {
        var tree = school.tree();
        var key = fresh();
        var entered = calls().of(door("POST /api/v1/trees"));
        var made = entered.send(school.lineOf(Who.STUDENT).header(KEY, key));
        assertThat(made.statusCode()).isEqualTo(201);
        var address = "/api/v1/trees/" + tree.id() + "/observations";
        var other = fresh();
        assertThat(post(Who.STUDENT, address, other, seen("2")).statusCode()).isEqualTo(201);
        school.handOn(tree.id());
        school.handOn(made.json().path("id").asLong());
        for (var again :
                List.of(
                        post(Who.STUDENT, address, other, seen("2")).asString(),
                        entered.send(school.lineOf(Who.STUDENT).header(KEY, key)).text())) {
            assertThat(again)
                    .contains("\"status\":404")
                    .doesNotContain("pest_level", "acer_palmatum");
        }
    }

    private Calls calls() {
        return new Calls(school);
    }

    private static Endpoint door(String address) {
        return Endpoint.all().stream()
                .filter(door -> door.toString().equals(address))
                .findFirst()
                .orElseThrow();
    }

    private Response report(Step step, String key) {
        return school.as(Who.STUDENT)
                .header("If-Match", "\"" + step.version() + "\"")
                .header(KEY, key)
                .contentType("application/json")
                .body(
                        Map.of(
                                "doneOn",
                                school.today().date().toString(),
                                "evidence",
                                "2 scales on 20 shoots."))
                .post("/api/v1/steps/" + step.id() + "/report");
    }

    /** Over a plain line, since it has to announce its length. */
    private Heard photo(String address, String key) {
        var parts = new ByteArrayOutputStream();
        var view = "--cut\r\nContent-Disposition: form-data; name=\"view\"\r\n\r\nFRONT\r\n";
        var file =
                "--cut\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"t\"\r\n\r\n";
        parts.writeBytes((view + file).getBytes(StandardCharsets.UTF_8));
        parts.writeBytes(Pictures.jpeg());
        parts.writeBytes("\r\n--cut--\r\n".getBytes(StandardCharsets.UTF_8));
        return school.lineOf(Who.STUDENT)
                .header(KEY, key)
                .body("multipart/form-data; boundary=cut", parts.toByteArray())
                .send("POST", address);
    }

    private Response post(Who who, String address, String key, Map<String, Object> body) {
        var request = school.as(who).contentType("application/json").body(body);
        if (key != null) {
            request.header(KEY, key);
        }
        return request.post(address);
    }

    private Map<String, Object> seen(String pests) {
        return Map.of(
                "fact",
                "pest_level",
                "value",
                pests,
                "observedOn",
                school.today().date().toString());
    }

    private long count(String query, long id) throws SQLException {
        try (var connection = database.getConnection();
                var counting = connection.prepareStatement(query)) {
            counting.setLong(1, id);
            try (var rows = counting.executeQuery()) {
                rows.next();
                return rows.getLong(1);
            }
        }
    }

    private static String fresh() {
        return UUID.randomUUID().toString();
    }
}
