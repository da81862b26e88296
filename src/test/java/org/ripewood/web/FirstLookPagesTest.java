package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.records.Containers;
import org.ripewood.records.Observation;
import org.ripewood.records.Observations;
import org.ripewood.records.Wounds;
import org.ripewood.trees.Tree;

/** The first look on the phone: one question a screen, kept at once, and what it changed said. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class FirstLookPagesTest {

    private static final Pattern KEY = Pattern.compile("name=\"confirmed\" value=\"([^\"]+)\"");
    private static final Pattern UNKNOWN = Pattern.compile("href=\"([^\"]+)\">I do not know</a>");

    @Inject School school;
    @Inject People people;
    @Inject Observations observing;
    @Inject Wounds wounds;
    @Inject Containers containers;

    private Actor student;
    private Tree tree;
    private Visitor pupil;
    private String page;

    @BeforeEach
    void openTheSchool() {
        var group = school.newGroup();
        student = group.student();
        tree = school.tree(group.instructor(), student, "ulmus_parvifolia");
        pupil = Visitor.of(people, student);
        page = "/trees/" + tree.id() + "/first-look";
    }

    private Response send(String question, Object... more) {
        var fields = new HashMap<String, Object>();
        fields.put("question", question);
        for (int i = 0; i < more.length; i += 2) {
            fields.put(more[i].toString(), more[i + 1]);
        }
        return pupil.send(page, page, fields);
    }

    private List<Observation> record() {
        return observing.list(student, tree.id(), new PageRequest(0, 100)).items();
    }

    private static String path(Response answer) {
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(303);
        return Objects.requireNonNull(answer.header("Location"))
                .replaceFirst("^https?://[^/]+", "")
                .replaceFirst("#.*", "");
    }

    @Test
    void theFirstScreenAsksOneQuestionWithDrawnAnswers() {
        var html = pupil.get(page).asString();
        assertThat(html)
                .contains("Question 1 of ")
                .contains("<h1>Is it alive to the tips?</h1>")
                .contains("name=\"answer\" value=\"tenth\"")
                .contains("I do not know")
                .contains("So far: ")
                .doesNotContain("Back:");
        assertThat(html.split("<svg xmlns", -1)).hasSizeGreaterThan(4);
    }

    @Test
    void anAnswerIsKeptAtOnceAndToldWithWhatItChanged() {
        var next = path(send("pests", "answer", "heavy"));
        assertThat(record())
                .extracting(Observation::fact, Observation::value)
                .containsExactly(tuple(Fact.PEST_LEVEL, Value.of(3)));
        assertThat(next).contains("answered=pests").contains("told=pests");
        assertThat(pupil.get(next).asString())
                .contains("Recorded: pests and disease 3.")
                .contains(" is held now: ")
                .contains("Question 2 of ");
        assertThat(pupil.get(page).asString()).as("later").doesNotContain("Do you find pests");
    }

    @Test
    void whoKnowsNothingComesToTheLastScreen() {
        var seen = new HashSet<String>();
        var at = page;
        var html = pupil.get(at).asString();
        for (Matcher unknown = UNKNOWN.matcher(html);
                unknown.find();
                unknown = UNKNOWN.matcher(html)) {
            at = unknown.group(1).replace("&amp;", "&");
            assertThat(seen.add(at)).as("walked in a circle at %s", at).isTrue();
            html = pupil.get(at).asString();
        }
        assertThat(seen).hasSizeBetween(8, 12);
        assertThat(html)
                .contains("First look: what it shows")
                .contains("“Check the roots” is ready now.")
                .contains("Measure next")
                .contains("skipped once more");
        assertThat(html.split("observations\\?fact=|first-look\\?at=|/measure\"", -1).length - 1)
                .isBetween(1, 3);
        assertThat(record()).as("nobody knew anything").isEmpty();
    }

    @Test
    void whatCannotBeIsRefusedAndComesBackFilledIn() {
        var answer = send("trunk", "baseMm", "32,5", "heightMm", "tall", "skipped", "twigs");
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString())
                .contains("value=\"32,5\"")
                .contains("value=\"tall\"")
                .contains("id=\"look-heightMm-fault\"")
                .contains("name=\"skipped\" value=\"twigs\"");
        assertThat(send("twigs", "answer", "most").asString()).contains("expected one of");
        assertThat(send("moon", "answer", "full").statusCode()).isEqualTo(400);
        assertThat(send("twigs").statusCode()).isEqualTo(400);
        assertThat(record()).isEmpty();
    }

    @Test
    void anOddValueIsAskedAboutBeforeItCounts() {
        var odd = send("trunk", "baseMm", "320", "heightMm", "210");
        assertThat(odd.statusCode()).isEqualTo(409);
        assertThat(odd.asString())
                .contains("thicker than the tree is tall")
                .contains("I looked once more, it is so")
                .contains("value=\"320\"");
        assertThat(record()).isEmpty();
        path(send("trunk", "baseMm", "320", "heightMm", "210", "confirmed", key(odd)));
        assertThat(record()).hasSize(2);
        var next = pupil.get(page + "?at=line").asString();
        assertThat(next).contains("Does the trunk grow thinner");
        path(send("line", "lowMm", "30", "highMm", "20"));
        assertThat(record())
                .filteredOn(seen -> seen.fact() == Fact.TRUNK_DIAMETER_MM)
                .extracting(Observation::heightMm)
                .containsExactlyInAnyOrder(70.0, 140.0);
    }

    private static String key(Response asked) {
        var key = KEY.matcher(asked.asString());
        assertThat(key.find()).isTrue();
        return key.group(1);
    }

    @Test
    void aCutIsEnteredAsAWoundWithItsReadingOrNotAtAll() {
        assertThat(send("cuts", "scarMm", "10", "openMm", "12").statusCode()).isEqualTo(400);
        var odd = send("cuts", "scarMm", "20", "openMm", "2", "age", "year");
        assertThat(odd.statusCode()).isEqualTo(409);
        assertThat(wounds.of(student, tree.id())).as("nothing half written").isEmpty();
        path(send("cuts", "scarMm", "20", "openMm", "2", "age", "year", "confirmed", key(odd)));
        var wound = wounds.of(student, tree.id()).get(0);
        assertThat(wound.openMm()).isEqualTo(2);
        assertThat(wound.firstWidthMm()).isEqualTo(20);
        assertThat(wound.madeOn()).isEqualTo(School.TODAY.minusDays(365));
        assertThat(path(send("cuts", "answer", "none"))).contains("answered=cuts");
        assertThat(wounds.of(student, tree.id())).hasSize(1);
    }

    @Test
    void aContainerNobodyKnowsTheAgeOfIsKnownSinceTheTreeCame() {
        path(send("container", "answer", "nursery", "age", ""));
        var stay = containers.of(student, tree.id()).get(0);
        assertThat(stay.kind()).isEqualTo("nursery");
        assertThat(stay.since()).isEqualTo(tree.cameOn());
        assertThat(send("container", "answer", "nursery", "age", "ages").statusCode())
                .isEqualTo(400);
    }

    @Test
    void shootsOfTwoSeasonsMakeTheirRatio() {
        path(send("shoots", "shootMm", "120", "shootBeforeMm", "150"));
        assertThat(record())
                .extracting(Observation::fact, Observation::value)
                .contains(tuple(Fact.SHOOT_EXTENSION_RATIO, Value.of(0.8)));
    }

    @Test
    void addressesNobodyMadeLeadNowhereStrange() {
        var bent =
                "?answered=%3Cscript%3E,twigs&skipped=,,,&at=..%2F&told=%22%3E&before=%3Cb%3E.AAAA";
        var answer = pupil.get(page + bent);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.asString()).doesNotContain("<script>").doesNotContain("<b>.AAAA");
        var stranger = Visitor.of(people, school.newGroup().student());
        assertThat(stranger.get(page).statusCode()).isEqualTo(404);
        assertThat(
                        stranger.send("/home", page, Map.of("question", "twigs", "answer", "all"))
                                .statusCode())
                .isEqualTo(404);
    }

    @Test
    void treeAndChecklistLeadToItAndSoDoesANewTree() {
        var link = "href=\"" + page + "\"";
        assertThat(pupil.get("/trees/" + tree.id()).asString()).contains(link);
        var list = pupil.get("/trees/" + tree.id() + "/checklist").asString();
        assertThat(list).contains(link);
        assertThat(list.split("class=\"sheet unknown measure\"", -1)).hasSizeLessThan(5);
        var waiting = list.substring(list.indexOf("id=\"waiting\""));
        var unfolded = waiting.substring(0, waiting.indexOf("<details"));
        assertThat(unfolded.split("class=\"tag\"", -1)).as("three and the rest").hasSize(4);
    }

    @Test
    void programsReadTheSameQuestions() {
        var told = pupil.get("/api/v1/trees/" + tree.id() + "/first-look?skipped=twigs");
        assertThat(told.statusCode()).as(told.asString()).isEqualTo(200);
        var json = told.jsonPath();
        assertThat(json.getList("questions.code"))
                .contains("trunk", "flare")
                .doesNotContain("twigs");
        assertThat(
                        json.getString(
                                "questions.find { it.code == 'flare' }.answers[0].values.root_flare_exposed"))
                .isEqualTo("yes");
        assertThat(json.getBoolean("verdict.ready")).isTrue();
        assertThat(json.getList("measureNext")).hasSizeBetween(1, 3);
        assertThat(
                        pupil.get("/api/v1/trees/" + tree.id() + "/first-look?skipped=moon")
                                .statusCode())
                .isEqualTo(400);
    }
}
