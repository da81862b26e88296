package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.Statements;
import org.ripewood.people.People;
import org.ripewood.platform.PageRequest;
import org.ripewood.records.Wound;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Tree;

/**
 * Each form of a tree's record says on the next page, once, what was recorded and what it freed.
 */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class RecordSaidTest {

    @Inject @PersistenceUnitExtension Statements statements;
    @Inject School school;
    @Inject People people;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject Steps steps;

    private School.Group group;
    private Tree tree;
    private Visitor teacher;
    private Visitor pupil;
    private String page;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        teacher = Visitor.of(people, group.instructor());
        pupil = Visitor.of(people, group.student());
        page = "/trees/" + tree.id();
    }

    /** What the page a form leads to says at its top; the page is read once. */
    private String said(Visitor who, String action, Map<String, ?> fields) {
        return note(read(who, action, fields));
    }

    private static String note(String html) {
        var from = html.indexOf("<p class=\"notice\" role=\"status\">");
        return from < 0 ? "" : html.substring(from, html.indexOf("</p>", from));
    }

    private String read(Visitor who, String action, Map<String, ?> fields) {
        return who.get(sent(who, action, fields)).asString();
    }

    private String sent(Visitor who, String action, Map<String, ?> fields) {
        var answer = who.send(page + "/record", action, fields);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(303);
        return Objects.requireNonNull(answer.header("Location"))
                .replaceFirst("^https?://[^/]+", "")
                .replaceFirst("#.*", "");
    }

    private Map<String, String> seen(String fact, String value) {
        var fields = new HashMap<String, String>();
        fields.put("fact", fact);
        fields.put("value", value);
        fields.put("observedOn", School.TODAY.toString());
        return fields;
    }

    private String seen(Visitor who, String fact, String value) {
        return said(who, page + "/observations", seen(fact, value));
    }

    private String read(Wound wound, String value) {
        var fields = seen("wound_open_mm", value);
        fields.put("woundId", "" + wound.id());
        fields.put("form", "reading");
        return said(pupil, page + "/observations", fields);
    }

    @Test
    void anObservationTellsWhatItFreed() {
        seen(pupil, "soil_moist", "no");
        assertThat(seen(teacher, "soil_moist", "yes"))
                .contains("Recorded “Soil moist”: yes. “Check the roots” is ready now.")
                .contains("href=\"" + page + "/techniques/root_check\"")
                .contains("Assign “Check the roots”");
        assertThat(note(teacher.get(page + "/record").asString())).as("once").isEmpty();
    }

    @Test
    void anObservationTellsWhatItHolds() {
        seen(pupil, "soil_moist", "yes");
        assertThat(seen(pupil, "soil_moist", "no"))
                .contains("“Check the roots” is held now: soil moist no, asked for is yes; so are ")
                .doesNotContain("href");
        assertThat(seen(pupil, "soil_moist", "yes")).contains("About “Check the roots”");
    }

    @Test
    void aSignOffTellsWhatItFreed() {
        var technique = "root_check";
        seen(teacher, "soil_moist", "yes");
        var given = new NewAssignment(technique, null, null, null, Map.of());
        var step = assigner.assign(group.instructor(), tree.id(), given);
        var report =
                new NewReport(
                        School.TODAY,
                        "Roots fill 60 % of the ball.",
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null);
        step = reports.report(group.student(), step.id(), step.version(), report);
        var told =
                said(
                        teacher,
                        "/steps/" + step.id() + "/sign-off",
                        Map.of("version", step.version(), "note", ""));
        assertThat(told)
                .contains("Signed off “Check the roots”. “Uncover the root flare”")
                .contains("are held no more.");
    }

    @Test
    void whatFreesNothingSaysSo() {
        assertThat(seen(pupil, "show_planned", "no"))
                .contains("Recorded “A showing is planned”: no. Nothing is freed or held by it");
    }

    @Test
    void anotherTreesPageTellsNothingOfIt() {
        var other = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        sent(pupil, page + "/observations", seen("soil_moist", "yes"));
        assertThat(note(pupil.get("/trees/" + other.id() + "/record").asString()))
                .contains("Recorded “Soil moist”: yes.")
                .doesNotContain("ready now");
    }

    @Test
    void marksOfACookieThatWasTamperedWithTellNothing() {
        var to = sent(pupil, page + "/observations", seen("soil_moist", "yes"));
        pupil.alter("ripewood-said", kept -> kept.replaceFirst("~[^~]*$", "~x.<b>"));
        assertThat(note(pupil.get(to).asString()))
                .contains("Recorded “Soil moist”: yes.")
                .doesNotContain("<b>", "ready now");
    }

    @Test
    void aWoundIsNewMeasuredAndClosed() {
        var entered =
                said(
                        pupil,
                        page + "/wounds",
                        Map.of(
                                "place", "low, left",
                                "madeOn", School.TODAY.minusDays(300).toString(),
                                "firstWidthMm", "12,50",
                                "firstLengthMm", "30"));
        assertThat(entered).contains("Entered the wound “low, left”, 12,50 mm wide. ");
        var wound = school.wound(group.instructor(), tree, "high, right", 20);
        assertThat(read(wound, "9.50")).contains("Recorded “Open width of a wound”: 9.50 mm. ");
        var closed = school.wound(group.instructor(), tree, "back", 6);
        assertThat(read(closed, "0")).contains("0 mm. The wound is closed. ");
    }

    @Test
    void aBranchAContainerAndEarlierWork() {
        assertThat(said(pupil, page + "/branches", Map.of("name", "first left", "role", "PRIMARY")))
                .contains("Entered the branch “first left”. ");
        assertThat(
                        said(
                                pupil,
                                page + "/containers",
                                Map.of(
                                        "kind", "training",
                                        "litres", "3,50",
                                        "since", School.TODAY.minusDays(3).toString())))
                .contains(
                        "Entered: in a training container of 3,50 litres since 17 February 2026. ");
        assertThat(
                        said(
                                teacher,
                                page + "/works",
                                Map.of(
                                        "technique",
                                        "root_check",
                                        "doneOn",
                                        School.TODAY.minusDays(3).toString())))
                .contains("Entered “Check the roots”, done on 17 February 2026. ");
    }

    @Test
    void aSeriesOfMeasures() {
        assertThat(
                        said(
                                pupil,
                                page + "/measure",
                                Map.of(
                                        "newHeight.1", "40",
                                        "newDiameter.1", "32,5",
                                        "whole.height_mm", "310",
                                        "observedOn", School.TODAY.toString())))
                .contains("Recorded 2 values: the trunk at 40 mm: 32,5 mm and “")
                .contains("310 mm. ");
    }

    @Test
    void theStageAndWhatWasFoundDone() {
        var stage = seen("training_stage", "develop");
        stage.put("form", "stage");
        stage.put("note", "The trunk thickens well.");
        assertThat(said(teacher, page + "/observations", stage))
                .contains("Recorded: the tree is in the stage “Develop the trunk”.");
        assertThat(
                        said(
                                teacher,
                                page + "/found-done",
                                Map.of(
                                        "technique",
                                        "root_check",
                                        "doneOn",
                                        School.TODAY.minusDays(3).toString())))
                .contains("Noted “Check the roots” as done. ");
    }

    @Test
    void aReport() {
        teacher.send(
                page + "/techniques/root_check",
                page + "/steps",
                Map.of("technique", "root_check"));
        var step = steps.of(group.instructor(), tree.id(), new PageRequest(0, 1)).items().get(0);
        var at = "/steps/" + step.id();
        assertThat(
                        said(
                                pupil,
                                at + "/report",
                                Map.of(
                                        "version",
                                        "" + step.version(),
                                        "doneOn",
                                        School.TODAY.toString(),
                                        "evidence",
                                        "White tips all round, 12 roots at the flare, none circling.")))
                .contains(
                        "Reported “Check the roots”. Your instructor looks at it. Steps that wait");
    }

    /** The page after a form reads the tree once, note and all. */
    @Test
    void theTreeIsNotReadOnceMoreForIt() {
        seen(pupil, "soil_moist", "no");
        var to = sent(pupil, page + "/observations", seen("soil_moist", "yes"));
        assertThat(
                        statements.of(
                                () -> assertThat(note(pupil.get(to).asString())).contains("ready")))
                .hasSizeLessThanOrEqualTo(17)
                .filteredOn(sql -> sql.contains("from observation "))
                .hasSize(1);
    }
}
