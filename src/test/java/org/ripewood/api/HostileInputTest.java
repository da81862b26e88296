package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Whatever is sent, the answer says what is wrong with it, and nothing is written. */
@QuarkusTest
class HostileInputTest {

    private static final String PROBLEM = "application/problem+json";

    @Inject School opening;
    @Inject Tables tables;

    private School school;
    private Calls calls;

    @BeforeEach
    void open() {
        school = opening.open();
        calls = new Calls(school);
    }

    @Test
    void everySpoiltFieldIsNamed() {
        var wrong = new ArrayList<String>();
        int tried = 0;
        for (var endpoint : jsonEndpoints()) {
            var good = calls.of(endpoint);
            var who = whoMay(endpoint);
            var before = tables.rows();
            for (var spoilt : Spoilt.each(good, endpoint.body().orElseThrow()).toList()) {
                tried++;
                refusedUnwritten(
                                before,
                                spoilt.toString(),
                                spoilt.field(),
                                () -> spoilt.call().send(school, who))
                        .ifPresent(wrong::add);
            }
        }
        assertThat(wrong).isEmpty();
        // about 15 endpoints of about 5 fields, each spoilt in about 10 ways
        assertThat(tried).isGreaterThan(700);
    }

    @Test
    void aFieldNobodyKnowsIsNamed() {
        eachJsonEndpoint(
                "administrator",
                Map.of(
                        "an unknown field",
                        (call, who) -> call.with("administrator", true).send(school, who)));
    }

    @Test
    void bodiesThatAreNoObjectAreRefused() {
        var bodies =
                List.of(
                        "",
                        "null",
                        "[]",
                        "5",
                        "\"text\"",
                        "true",
                        "{",
                        "{\"a\":}",
                        "{} {}",
                        "<tree/>",
                        "\u0000",
                        "{\"a\":".repeat(5000) + "1" + "}".repeat(5000),
                        "[".repeat(100_000));
        var sendings = new LinkedHashMap<String, Sending>();
        for (var body : bodies) {
            sendings.put(
                    "the body " + body.substring(0, Math.min(20, body.length())),
                    (call, who) -> raw(call, who, "application/json", body));
        }
        eachJsonEndpoint("", sendings);
    }

    @Test
    void aFieldGivenTwiceIsRefused() {
        eachJsonEndpoint("", Map.of("a field twice", this::twice));
    }

    private Heard twice(Call call, Who who) {
        var first = call.endpoint().body().orElseThrow().getRecordComponents()[0].getName();
        var once = call.json();
        // where the good call leaves the field out there is nothing to repeat
        var body =
                call.fields().contains(first)
                        ? "{\"%s\":null,%s".formatted(first, once.substring(1))
                        : "{\"note\":\"a\",\"note\":\"b\"}";
        return raw(call, who, "application/json", body);
    }

    @Test
    void otherKindsOfContentAreRefused() {
        var sendings = new LinkedHashMap<String, Sending>();
        for (var type : List.of("text/plain", "application/xml", "application/octet-stream")) {
            sendings.put(
                    type,
                    (call, who) -> {
                        var answer = raw(call, who, type, call.json());
                        assertThat(answer.statusCode()).as(call.endpoint() + type).isEqualTo(415);
                        return answer;
                    });
        }
        eachJsonEndpoint("", sendings);
    }

    @Test
    void aBodyBeyondAMegabyteIsRefused() {
        var call = calls.of(endpoint("POST /api/v1/trees"));
        var before = tables.rows();
        var answer = call.with("note", "a".repeat(1_200_000)).send(school, Who.STUDENT);
        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(tables.rows()).isEqualTo(before);
    }

    @Test
    void aFileWithoutAReadingIsRefusedLineByLine() {
        var files = new LinkedHashMap<String, String>();
        files.put("", "line 1");
        files.put("\n\n", "line 2");
        files.put("\u0000\u0007\uFFFF", "line 1");
        files.put("{\"a\": 1}", "line 1");
        files.put("<svg onload=alert(1)>", "line 1");
        files.put("date,tmin,tmax\n2026-02-30,1,2", "line 2");
        files.put("date,tmin,tmax\n2024-05-01,NaN,2", "line 2");
        files.put("date,tmin,tmax\n2024-05-01,1e9,2", "line 2");
        files.put("date,tmin,tmax\n2024-05-01,9,2", "line 2");
        files.put("date,tmin,tmax\n2999-05-01,1,2", "line 2");
        files.put("date,tmin,tmax\n'; drop table site_reading; --", "line 2");
        files.put("date,tmin,tmax\n" + "x\n".repeat(500_000), "line 201");
        var call = calls.of(endpoint("POST /api/v1/sites/{id}/readings"));
        var wrong = new ArrayList<String>();
        var before = tables.rows();
        files.forEach(
                (file, line) ->
                        refusedUnwritten(
                                        before,
                                        file.substring(0, Math.min(40, file.length())),
                                        line,
                                        () -> readings(call, file))
                                .ifPresent(wrong::add));
        assertThat(wrong).isEmpty();
    }

    @Test
    void readingsBeyondFiveMegabytesAreRefused() {
        var call = calls.of(endpoint("POST /api/v1/sites/{id}/readings"));
        var before = tables.rows();
        assertThat(readings(call, "2024-05-01,1,2\n".repeat(350_000)).statusCode()).isEqualTo(413);
        assertThat(tables.rows()).isEqualTo(before);
    }

    private Heard readings(Call call, String file) {
        return raw(call, Who.INSTRUCTOR, "text/csv; charset=UTF-8", file);
    }

    @Test
    void aWriteWithoutItsHeaderIsRefused() {
        var call = calls.of(endpoint("POST /api/v1/trees"));
        var before = tables.rows();
        school.as(Who.STUDENT)
                .header("X-Ripewood", "0")
                .contentType("application/json")
                .body(call.json())
                .post(call.url())
                .then()
                .statusCode(403)
                .contentType(PROBLEM);
        assertThat(tables.rows()).isEqualTo(before);
    }

    @Test
    void aVersionThatIsNotTheCurrentOneIsRefused() {
        var tags = new LinkedHashMap<String, Integer>();
        tags.put("\"99\"", 412);
        tags.put("\"999999999999999999\"", 412);
        tags.put("3", 400);
        tags.put("*", 400);
        tags.put("W/\"1\"", 400);
        tags.put("\"1\", \"2\"", 400);
        tags.put("\"-1\"", 400);
        tags.put("\"99999999999999999999\"", 400);
        tags.put("\"abc\"", 400);
        tags.put("'; drop table tree; --", 400);
        for (var endpoint : Endpoint.all()) {
            if (endpoint.api() && endpoint.versioned()) {
                var call = calls.of(endpoint);
                var before = tables.rows();
                withTag(call, null, 428);
                tags.forEach((tag, status) -> withTag(call, tag, status));
                assertThat(tables.rows()).isEqualTo(before);
                assertThat(call.send(school, whoMay(endpoint)).statusCode())
                        .as("with the current version, %s", endpoint)
                        .isEqualTo(200);
            }
        }
    }

    @Test
    void aSlipInAQueryIsNamed() {
        var tree = school.tree().id();
        var course = school.course().id();
        var slips = new LinkedHashMap<String, String>();
        slips.put("trees?page=-1", "page");
        slips.put("trees?page=abc", "page");
        slips.put("trees?page=99999999999999999999", "page");
        slips.put("trees?page=999999999999", "page");
        slips.put("trees?size=0", "size");
        slips.put("trees?size=201", "size");
        slips.put("trees?size=1.5", "size");
        slips.put("trees?keeper=me", "keeper");
        slips.put("trees?course=1%20or%201=1", "course");
        slips.put("trees/" + tree + "/observations?page=x", "page");
        slips.put("trees/" + tree + "/steps?size=x", "size");
        slips.put("trees/" + tree + "/photos?page=x", "page");
        for (var until : List.of("x", "1066", "9999", "2026.5", "99999999999", "%3Cb%3E")) {
            slips.put("trees/" + tree + "/life?until=" + until, "until");
        }
        for (var on :
                List.of("2026-02-30", "99999-01-01", "+99999-01-01", "tomorrow", "%20", "NaN")) {
            slips.put("trees/" + tree + "/standing?on=" + on, "on");
            slips.put("trees/" + tree + "/proposals?on=" + on, "on");
            slips.put("trees/" + tree + "/checklist?on=" + on, "on");
            slips.put("trees/" + tree + "/aftercare?on=" + on, "on");
            slips.put("courses/" + course + "/board?on=" + on, "on");
            slips.put("courses/" + course + "/readiness?on=" + on, "on");
            slips.put("courses/" + course + "/sessions?from=" + on, "from");
        }
        slips.put("courses/" + course + "/board?headline=LOUDEST", "headline");
        slips.put("courses/" + course + "/board?headline=%3Cscript%3E", "headline");
        var readiness = "courses/" + course + "/readiness?";
        for (var field : List.of("heldFrom", "reason", "stage", "species", "sort", "freeSoon")) {
            slips.put(readiness + field + "=nonsense", field);
            slips.put(readiness + field + "=%3Cscript%3E", field);
        }
        slips.put(readiness + "student=me", "student");
        slips.put(readiness + "student=99999999", "student");
        slips.put(readiness + "size=201", "size");
        var season = "sites/" + school.site().id() + "/season?";
        slips.put(season + "habit=PALM", "habit");
        for (var base : List.of("warm", "NaN", "1e3", "-6", "20.5", "5,5")) {
            slips.put(season + "base=" + base, "base");
        }
        slips.put("stock?kind=POT", "kind");
        slips.put("stock?kind=%3Cscript%3E", "kind");
        slips.put("stock?page=-1", "page");
        slips.put("stock/" + school.tools().id() + "/movements?size=201", "size");
        for (var year : List.of("1066", "9999", "this", "2026.5", "99999999999")) {
            slips.put(season + "year=" + year, "year");
        }
        var wrong = new ArrayList<String>();
        slips.forEach(
                (path, field) -> {
                    var answer = school.lineOf(Who.INSTRUCTOR).send("GET", "/api/v1/" + path);
                    if (answer.statusCode() != 400 || !names(answer, field)) {
                        wrong.add(path + " -> " + answer.statusCode() + " " + answer.asString());
                    }
                });
        assertThat(wrong).isEmpty();
    }

    @Test
    void anAddressThatIsNoneIsNotFound() {
        for (var id : List.of("0", "-1", "abc", "1.5", "99999999999999999999", "%00", "..%2f1")) {
            for (var of :
                    List.of("trees/%s", "steps/%s", "courses/%s", "sessions/%s", "photos/%s")) {
                var path = "/api/v1/" + of.formatted(id);
                var answer = school.as(Who.INSTRUCTOR).urlEncodingEnabled(false).get(path);
                assertThat(answer.statusCode()).as(path).isBetween(400, 404);
            }
        }
        for (var path : List.of("nothing", "content/species/nothing", "content/lessons/%3Cb%3E")) {
            school.as(Who.STUDENT)
                    .urlEncodingEnabled(false)
                    .get("/api/v1/" + path)
                    .then()
                    .statusCode(404)
                    .contentType(PROBLEM);
        }
    }

    /** Words of SQL are no fault in a note; they are kept as the text they are. */
    @Test
    void sqlInFreeTextIsOnlyText() {
        var text = "Robert'); drop table tree; -- \" or \"\"=\"";
        var call = calls.of(endpoint("POST /api/v1/trees/{id}/wounds")).with("place", text);
        var before = tables.rows();
        var answer = call.send(school, Who.STUDENT);
        assertThat(answer.statusCode()).isEqualTo(201);
        assertThat(answer.json().path("place").asText()).isEqualTo(text);
        var kept = school.lineOf(Who.STUDENT).send("GET", call.url());
        assertThat(kept.json().path(0).path("place").asText()).isEqualTo(text);
        assertThat(tables.rows().keySet()).isEqualTo(before.keySet());
    }

    @Test
    void negativeZeroIsZero() {
        var call = calls.of(endpoint("POST /api/v1/trees/{id}/wounds"));
        var answer = call.with("heightMm", -0.0).send(school, Who.STUDENT);
        assertThat(answer.statusCode()).isEqualTo(201);
        assertThat(answer.asString()).contains("\"heightMm\":0.0").doesNotContain("-0.0");
    }

    @Test
    void aTaskThatIsNoneIsNotFound() {
        var tree = school.infestedTree().id();
        school.careTask(tree);
        for (var task :
                List.of("1-settle-1", "0-settle-1", "x", "1-settle", "--", "1-settle-99", "%20")) {
            school.as(Who.STUDENT)
                    .urlEncodingEnabled(false)
                    .contentType("application/json")
                    .body("{}")
                    .post("/api/v1/trees/" + tree + "/aftercare/" + task + "/done")
                    .then()
                    .statusCode(404)
                    .contentType(PROBLEM);
        }
    }

    private interface Sending {
        Heard send(Call call, Who who);
    }

    private void eachJsonEndpoint(String field, Map<String, Sending> sendings) {
        var wrong = new ArrayList<String>();
        for (var endpoint : jsonEndpoints()) {
            // nothing is written, so that one call serves for all
            var call = calls.of(endpoint);
            var who = whoMay(endpoint);
            var before = tables.rows();
            sendings.forEach(
                    (what, sending) ->
                            refusedUnwritten(
                                            before,
                                            endpoint + ": " + what,
                                            field,
                                            () -> sending.send(call, who))
                                    .ifPresent(wrong::add));
        }
        assertThat(wrong).isEmpty();
    }

    /** What is wrong with the answer; nothing when the field is named and nothing was written. */
    private Optional<String> refusedUnwritten(
            Map<String, Long> before, String what, String field, Supplier<Heard> sending) {
        var answer = sending.get();
        var after = tables.rows();
        var told = "%s -> %d %s".formatted(what, answer.statusCode(), answer.asString());
        if (!after.equals(before)) {
            return Optional.of("written: " + told);
        }
        if (answer.statusCode() < 400 || answer.statusCode() >= 500) {
            return Optional.of("not refused: " + told);
        }
        if (!String.valueOf(answer.contentType()).startsWith(PROBLEM)) {
            return Optional.of("no problem+json: " + told);
        }
        return names(answer, field) ? Optional.empty() : Optional.of("field not named: " + told);
    }

    /** Field by field, or, where something was looked for and not found, in words. */
    private static boolean names(Heard answer, String field) {
        if (field.isEmpty()) {
            return true;
        }
        if (answer.statusCode() == 404) {
            // what was looked for and not found is told in words: "no course 0 that you can see"
            var sought = field.startsWith("keeper") ? "person" : field.replaceFirst("Ids?$", "");
            return answer.detail().contains("There is no " + sought + " ");
        }
        return answer.faultyFields().stream()
                .anyMatch(
                        named ->
                                named.equals(field)
                                        || named.startsWith(field + ".")
                                        || named.startsWith(field + "["));
    }

    private Heard raw(Call call, Who who, String type, String body) {
        var line = school.lineOf(who).body(type, body);
        if (call.endpoint().versioned()) {
            line.header("If-Match", "\"" + call.version() + "\"");
        }
        return line.send(call.endpoint().verb(), call.url());
    }

    private void withTag(Call call, @Nullable String tag, int status) {
        var line = school.lineOf(whoMay(call.endpoint())).body("application/json", call.json());
        if (tag != null) {
            line.header("If-Match", tag);
        }
        var answer = line.send(call.endpoint().verb(), call.url());
        assertThat(answer.statusCode()).as("%s %s", call.endpoint(), tag).isEqualTo(status);
        assertThat(answer.contentType()).startsWith(PROBLEM);
    }

    private static List<Endpoint> jsonEndpoints() {
        return Endpoint.all().stream()
                .filter(endpoint -> endpoint.api() && endpoint.body().isPresent())
                .toList();
    }

    private static Endpoint endpoint(String address) {
        return Endpoint.all().stream()
                .filter(found -> found.toString().equals(address))
                .findFirst()
                .orElseThrow();
    }

    /** The first whom the role table lets do it. */
    private static Who whoMay(Endpoint endpoint) {
        return RoleTable.rows().get(endpoint.toString()).entrySet().stream()
                .filter(row -> row.getValue() < 300)
                .findFirst()
                .orElseThrow()
                .getKey();
    }
}
