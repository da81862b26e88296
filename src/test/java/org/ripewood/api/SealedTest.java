package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.CalendarLinks;
import org.ripewood.assess.Judged;
import org.ripewood.assess.Judgement;
import org.ripewood.assess.Judgements;
import org.ripewood.assess.NewJudgement;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.trees.Tree;

/**
 * A draft, and a judgement that waits for a second judge, are nobody's but their judge's. Every
 * address that reads is asked as everybody before they are there and afterwards, and answers the
 * same; where it may not (who did what), neither a note nor a level is in the answer.
 */
@Tag("one-database")
@QuarkusTest
class SealedTest {

    private static final int MOST_TRIES = 1_200;
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Those whose answer changes with every request or every change, whatever was changed. */
    private static final Set<String> ON_THE_MOVE =
            Set.of(
                    "GET /account",
                    "GET /audit",
                    "GET /api/v1/audit",
                    "GET /api/v1/people/{id}/forgetting",
                    "GET /people/{id}/forget",
                    "GET /record",
                    "GET /openapi");

    @Inject School opening;
    @Inject Judgements judgements;
    @Inject CalendarLinks links;

    private School school;
    private String mark;
    private Person judge;
    private Person second;
    private Person student;
    private Tree tree;
    private Map<String, String> doors;
    private Map<String, Person> readers;
    private final Map<String, Judgement> sealed = new LinkedHashMap<>();

    @BeforeEach
    void open() {
        school = opening.open();
        mark = School.unique("quincewort") + ".";
        student = school.fellow();
        judge = school.teacher(Role.INSTRUCTOR);
        second = school.teacher(Role.INSTRUCTOR);
        readers = new LinkedHashMap<>();
        readers.put("the second judge", second);
        readers.put("another instructor of the course", school.teacher(Role.INSTRUCTOR));
        readers.put("an instructor of another course", school.person(Who.OTHER_INSTRUCTOR));
        readers.put("the keeper, who is judged", student);
        readers.put("another student of the course", school.fellow());
        readers.put("a student of another course", school.person(Who.OTHER_STUDENT));
        // what a registrar asked for in other tests may still be counted, of the school as it was
        readers.put("a registrar", school.freshRegistrar());
        readers.put(
                "a registrar who teaches the course",
                school.teacher(Role.REGISTRAR, Role.INSTRUCTOR));
        tree = school.infestedTree(student);
        doors = Doors.about(school, tree, student.id(), school.course().id());
        assertThat(doors).hasSizeGreaterThan(80);
    }

    @Test
    void nobodyButTheirJudgeIsToldOfDraftsAndOfWhatWaits() {
        var before = new LinkedHashMap<String, Map<String, String>>();
        readers.forEach((who, reader) -> before.put(who, answers(reader)));
        judge();
        var told = new ArrayList<String>();
        readers.forEach(
                (who, reader) ->
                        answers(reader)
                                .forEach(
                                        (path, answer) ->
                                                compare(
                                                        told,
                                                        who + ": " + path,
                                                        before.get(who).getOrDefault(path, ""),
                                                        answer)));
        assertThat(told).isEmpty();
    }

    @Test
    void theDoorsOfASealedJudgementAreOpenToItsJudgeAlone() {
        judge();
        sealed.forEach(
                (note, judgement) -> {
                    var own = "/api/v1/judgements/" + judgement.id();
                    assertThat(
                                    school.as(judge)
                                            .get(own)
                                            .then()
                                            .statusCode(200)
                                            .extract()
                                            .asString())
                            .contains(note);
                    readers.forEach(
                            (who, reader) -> refused(who, reader, own, judgement.version()));
                });
    }

    private void refused(String who, Person reader, String path, long version) {
        var asked =
                List.of(
                        school.as(reader).get(path),
                        school.as(reader).header("If-None-Match", "*").get(path),
                        writing(reader, version).body(BODY).put(path),
                        writing(reader, version).delete(path),
                        writing(reader, version).post(path + "/signature"),
                        writing(reader, version).post(path + "/opening"));
        for (var answer : asked) {
            assertThat(answer.statusCode()).as("%s: %s", who, path).isIn(403, 404);
            assertThat(answer.asString()).as("%s: %s", who, path).doesNotContain(mark);
        }
    }

    private static final String BODY =
            """
            {"rubric": "vigour", "level": 2, "judgedOn": "2026-01-02"}
            """;

    private io.restassured.specification.RequestSpecification writing(Person as, long version) {
        return school.as(as)
                .header("If-Match", "\"" + version + "\"")
                .contentType("application/json");
    }

    @Test
    void filesHaveSealedJudgementsOnlyOfWhoTakesTheirOwnRecordOut() {
        judge();
        var files =
                List.of(
                        "/api/v1/trees/" + tree.id() + "/record",
                        "/api/v1/courses/" + school.course().id() + "/record",
                        "/api/v1/people/" + student.id() + "/record",
                        "/api/v1/people/" + judge.id() + "/record",
                        "/api/v1/record");
        var everybody = new LinkedHashMap<>(readers);
        everybody.put("the judge", judge);
        int taken = 0;
        for (var reader : everybody.entrySet()) {
            for (var path : files) {
                for (var form : List.of("JSON", "ZIP")) {
                    var answer = school.as(reader.getValue()).get(path + "?form=" + form);
                    var where = "%s: %s %s".formatted(reader.getKey(), path, form);
                    boolean own =
                            reader.getValue().equals(judge)
                                    && path.equals("/api/v1/people/" + judge.id() + "/record");
                    if (answer.statusCode() == 200) {
                        taken++;
                        check(where, Doors.text(answer), own);
                    } else {
                        assertThat(answer.statusCode()).as(where).isIn(403, 404);
                    }
                }
            }
        }
        // two forms each of: the tree and the course for three who teach it, the judge and the
        // registrar, the tree for its keeper, two persons and the school for two registrars, and
        // the two own records
        assertThat(taken).isEqualTo(2 * (5 + 5 + 1 + 2 * 3 + 2));
    }

    private void check(String where, String file, boolean own) {
        var rows = rows(file, "rubricJudgement");
        if (own) {
            assertThat(rows).as(where).hasSize(4);
            assertThat(file).as(where).contains(mark);
        } else {
            assertThat(rows).as(where).allMatch(row -> row.has("openedAt"));
            assertThat(file).as(where).doesNotContain(mark);
        }
    }

    /** What would stay hidden for good could be seen by no test. */
    @Test
    void onceOpenTheyAreToldToAllWhoReachThem() {
        judge();
        var of = Judged.tree(tree.id());
        var level = new NewJudgement("pests", 3, school.today().date(), null, false, null);
        judgements.sign(actor(second), of, level, null);
        var waited = mark + " waiting tree";
        for (var who : List.of("the second judge", "the keeper, who is judged", "a registrar")) {
            var reader = readers.get(who);
            assertThat(school.as(reader).get("/api/v1/trees/%d/judgements".formatted(tree.id())))
                    .as(who)
                    .satisfies(answer -> assertThat(answer.asString()).contains(waited));
        }
        var own = school.as(student).get("/api/v1/people/" + student.id() + "/record?form=JSON");
        assertThat(own.asString()).contains(waited);
        assertThat(rows(own.asString(), "rubricJudgement")).allMatch(row -> row.has("openedAt"));
        // that of one tree has what they became of it, and no judgements
        var ofTree = school.as(student).get("/api/v1/trees/" + tree.id() + "/record?form=JSON");
        assertThat(rows(ofTree.asString(), "rubricJudgement")).isEmpty();
        assertThat(rows(ofTree.asString(), "observation"))
                .anyMatch(row -> row.path("note").asText().startsWith("Pests"));
    }

    @Test
    void theSchoolsFileSaysHowManyStayBehind() {
        var registrar = school.person(Who.REGISTRAR);
        int before = leftBehind(registrar);
        judge();
        assertThat(leftBehind(registrar)).isEqualTo(before + 4);
        assertThat(school.as(registrar).get("/record").asString())
                .contains("%d judgements".formatted(before + 4));
    }

    private int leftBehind(Person registrar) {
        return Integer.parseInt(
                school.as(registrar).get("/api/v1/record").header("Ripewood-Left-Behind"));
    }

    /** Of the tree and of the student a draft each, and one each that waits. */
    private void judge() {
        keep("vigour", 0, "draft tree", Judged.tree(tree.id()));
        sign(keep("pests", 4, "waiting tree", Judged.tree(tree.id())));
        keep("wiring-skill", 4, "draft student", Judged.student(student.id()));
        sign(keep("pruning-skill", 4, "waiting student", Judged.student(student.id())));
    }

    private Judgement keep(String rubric, int level, String note, Judged of) {
        var said = mark + " " + note;
        var judgement = new NewJudgement(rubric, level, school.today().date(), said, true, null);
        var kept = judgements.begin(actor(judge), of, judgement);
        sealed.put(said, kept);
        return kept;
    }

    private void sign(Judgement draft) {
        var signed = judgements.sign(actor(judge), draft.id(), draft.version());
        assertThat(signed.waitsForSecond()).isTrue();
        sealed.put(String.valueOf(signed.note()), signed);
    }

    private static Actor actor(Person person) {
        return new Actor(person.id(), person.roles());
    }

    private void compare(List<String> told, String where, String before, String afterwards) {
        if (afterwards.contains(mark)) {
            told.add(where + " tells a note");
        }
        boolean moves = ON_THE_MOVE.stream().anyMatch(one -> where.endsWith(one));
        if (!moves && !before.equals(afterwards)) {
            told.add(where + " is another than before: " + difference(before, afterwards));
        }
    }

    private static String difference(String before, String afterwards) {
        int at = 0;
        while (at < Math.min(before.length(), afterwards.length())
                && before.charAt(at) == afterwards.charAt(at)) {
            at++;
        }
        return "…%s | %s…".formatted(around(before, at), around(afterwards, at));
    }

    private static String around(String text, int at) {
        return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 60));
    }

    /** What everything that reads answers to somebody, by address. */
    private Map<String, String> answers(Person reader) {
        var answers = new TreeMap<String, String>();
        doors.forEach(
                (address, url) -> {
                    var answer = worked(reader, url);
                    assertThat(answer.statusCode()).as(url).isLessThan(500);
                    answers.put(address, answer.statusCode() + " " + steady(Doors.text(answer)));
                });
        var calendar = links.make(actor(reader)) + ".ics";
        answers.put(
                "the calendar",
                steady(school.as(reader).get("/calendar/" + calendar).asString())
                        .replaceAll("DTSTAMP:\\S+", ""));
        return answers;
    }

    /** A page that is still being worked out asks to be read again. */
    private Response worked(Person reader, String url) {
        var answer = school.as(reader).get(url);
        for (int tries = 0; tries < MOST_TRIES && isUnderWay(answer); tries++) {
            try {
                Thread.sleep(50);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            answer = school.as(reader).get(url);
        }
        assertThat(isUnderWay(answer)).as(url).isFalse();
        return answer;
    }

    private static boolean isUnderWay(Response answer) {
        return Doors.text(answer).contains("http-equiv=\"refresh\"");
    }

    /** Without what is another each time: moments, and the keys of forms. */
    private static String steady(String text) {
        return text.replaceAll("\"exportedAt\":\"[^\"]*\"", "")
                .replaceAll("<input type=\"hidden\"[^>]*>", "")
                .replaceAll("value=\"[A-Za-z0-9_-]{20,}\"", "");
    }

    private static List<JsonNode> rows(String file, String table) {
        try {
            var rows = new ArrayList<JsonNode>();
            for (var told : JSON.readTree(file).path("tables")) {
                if (told.path("table").asText().equals(table)) {
                    told.path("rows").forEach(rows::add);
                }
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
