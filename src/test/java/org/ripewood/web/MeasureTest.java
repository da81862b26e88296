package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.progress.Value;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.records.Observation;
import org.ripewood.records.Observations;
import org.ripewood.records.Wound;
import org.ripewood.trees.Tree;

/** Measuring at the bench: the form knows what was measured before and asks about what is odd. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class MeasureTest {

    private static final Pattern KEY = Pattern.compile("name=\"confirmed\" value=\"([^\"]+)\"");

    @Inject School school;
    @Inject People people;
    @Inject Observations observing;

    private Actor instructor;
    private Tree tree;
    private Wound wide;
    private Wound narrow;
    private Visitor pupil;
    private String page;

    @BeforeEach
    void openTheSchool() {
        var group = school.newGroup();
        instructor = group.instructor();
        tree = school.tree(instructor, group.student(), "ulmus_parvifolia");
        narrow = school.wound(instructor, tree, "low, right", 12);
        wide = school.wound(instructor, tree, "first branch", 24);
        school.seeTrunk(instructor, tree, 80, 28);
        school.seeTrunk(instructor, tree, 40.5, 32);
        pupil = Visitor.of(people, group.student());
        page = "/trees/" + tree.id() + "/measure";
    }

    @Test
    void theFormKnowsWhatWasMeasuredBefore() {
        var html = pupil.get(page).asString();
        assertThat(html)
                .contains("name=\"observedOn\" type=\"date\" value=\"2026-02-20\"")
                .contains("Last 32 mm, 15 February 2026")
                .contains("Made 24 mm")
                .contains("inputmode=\"decimal\"");
        assertThat(html)
                .containsSubsequence(
                        "name=\"mark.40.5\"",
                        "name=\"mark.80\"",
                        "name=\"newHeight.1\"",
                        "name=\"wound." + wide.id() + "\"",
                        "name=\"wound." + narrow.id() + "\"",
                        "name=\"whole.shoot_extension_mm\"");
    }

    @Test
    void everyPictureIsToldInWordsAsWell() {
        var html = pupil.get(page).asString();
        for (var picture : List.of("how-trunk", "how-wound", "how-shoot")) {
            assertThat(html)
                    .contains(
                            "role=\"img\" aria-labelledby=\"%s-title %s-words\""
                                    .formatted(picture, picture))
                    .containsPattern("<title id=\"" + picture + "-title\">[^<]{10,}</title>")
                    .containsPattern("<desc id=\"" + picture + "-words\">[^<]{40,}</desc>");
        }
    }

    @Test
    void treePageAndChecklistLeadToIt() {
        var link = "href=\"" + page + "\"";
        assertThat(pupil.get("/trees/" + tree.id()).asString()).contains(link);
        assertThat(pupil.get("/trees/" + tree.id() + "/checklist").asString()).contains(link);
    }

    @Test
    void whatIsFilledInIsKeptAndEmptyRowsAreNothing() {
        var answer =
                send(
                        Map.of(
                                "mark.40.5",
                                "32,5",
                                "mark.80",
                                " ",
                                "newHeight.1",
                                "120",
                                "newDiameter.1",
                                "24.25",
                                "newHeight.2",
                                "",
                                "wound." + wide.id(),
                                "20",
                                "wound." + narrow.id(),
                                "",
                                "whole.shoot_extension_mm",
                                "180",
                                "note",
                                "dry"));
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(303);
        assertThat(answer.header("Location")).endsWith("/trees/" + tree.id() + "/record#facts");
        assertThat(today())
                .extracting(Observation::value)
                .containsExactlyInAnyOrder(
                        Value.of(32.5), Value.of(24.25), Value.of(20.0), Value.of(180.0));
        assertThat(today()).allSatisfy(seen -> assertThat(seen.note()).isEqualTo("dry"));
    }

    @Test
    void faultsStandAtTheirFieldsAndWhatWasTypedIsKept() {
        var answer =
                send(
                        Map.of(
                                "mark.40.5",
                                "thick",
                                "mark.80",
                                "2001",
                                "newHeight.1",
                                "120",
                                "newDiameter.2",
                                "12",
                                "wound." + wide.id(),
                                "1,234",
                                "whole.shoot_extension_mm",
                                "200"));
        assertThat(answer.statusCode()).isEqualTo(400);
        var html = answer.asString();
        for (var field :
                List.of(
                        "mark-40-5",
                        "mark-80",
                        "newDiameter-1",
                        "newHeight-2",
                        "wound-" + wide.id())) {
            assertThat(html)
                    .contains("id=\"measure-" + field + "-fault\"")
                    .contains("href=\"#measure-" + field + "\"");
        }
        assertThat(html)
                .contains("value=\"thick\"")
                .contains("value=\"1,234\"")
                .contains("Maybe “1234” or “1.234”.")
                .contains("value=\"200\"")
                .doesNotContain("measure-whole-shoot_extension_mm-fault");
        assertThat(today()).isEmpty();
    }

    @Test
    void anEmptyFormSaysSo() {
        var answer = send(Map.of("note", "nothing done"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString())
                .contains("expected at least one value")
                .contains(">nothing done</textarea>");
    }

    @Test
    void anOddValueIsAskedAboutBesideItAndKeptOnceTicked() {
        var fields = new HashMap<String, Object>();
        fields.put("mark.40.5", "325");
        fields.put("mark.80", "28,5");
        fields.put("wound." + wide.id(), "30");
        var asked = send(fields);
        assertThat(asked.statusCode()).isEqualTo(409);
        var html = asked.asString();
        assertThat(html)
                .contains("id=\"measure-mark-40-5-asked\"")
                .contains("Maybe 32.5 mm")
                .contains("id=\"measure-wound-" + wide.id() + "-asked\"")
                .contains("I measured again, it is so")
                .contains("value=\"28,5\"")
                .doesNotContain("measure-mark-80-asked");
        assertThat(today()).isEmpty();
        var keys = KEY.matcher(html).results().map(found -> found.group(1)).toList();
        assertThat(keys).hasSize(2);

        fields.put("confirmed", keys.get(0));
        var again = send(fields);
        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(again.asString())
                .as("a yes once given stays given")
                .contains("type=\"hidden\" name=\"confirmed\" value=\"" + keys.get(0) + "\"")
                .contains("id=\"measure-wound-" + wide.id() + "-asked\"");
        assertThat(today()).isEmpty();

        fields.put("confirmed", keys);
        assertThat(send(fields).statusCode()).isEqualTo(303);
        assertThat(today()).hasSize(3);
    }

    @Test
    void aWoundOfAnotherTreeAndAStrangeKeyAreRefused() {
        var foreign =
                school.wound(
                        instructor,
                        school.tree(instructor, instructor, "ulmus_parvifolia"),
                        "elsewhere",
                        9);
        for (var fields :
                List.of(
                        Map.of("wound." + foreign.id(), "5"),
                        Map.of("wound.abc", "5"),
                        Map.of("mark.abc", "5"),
                        Map.of("whole.no_such_fact", "5"),
                        Map.of("mark.80", "28", "confirmed", "yes to all"))) {
            assertThat(send(fields).statusCode()).as(fields.toString()).isEqualTo(400);
        }
        assertThat(today()).isEmpty();
    }

    private Response send(Map<String, ?> fields) {
        var all = new HashMap<String, Object>(fields);
        all.put("observedOn", School.TODAY.toString());
        return pupil.send(page, page, all);
    }

    private List<Observation> today() {
        return observing.list(instructor, tree.id(), new PageRequest(0, 100)).items().stream()
                .filter(seen -> seen.observedOn().equals(School.TODAY))
                .toList();
    }
}
