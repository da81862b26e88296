package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.trees.Tree;

/** A series over the API: kept as a whole, or asked about with a problem of its own kind. */
@QuarkusTest
class SeriesApiTest {

    @Inject School opening;
    @Inject Tables tables;

    private School school;
    private Tree tree;

    @BeforeEach
    void open() {
        school = opening.open();
        tree = school.tree();
    }

    @Test
    void theObservationsMadeAreAnswered() {
        var wound = school.freshCut(tree);
        send(Map.of(
                        "diameters",
                        List.of(Map.of("heightMm", 40, "diameterMm", 32.5)),
                        "wounds",
                        List.of(Map.of("woundId", wound, "openMm", 22))))
                .then()
                .statusCode(201)
                .body("fact", contains("trunk_diameter_mm", "wound_open_mm"))
                .body("value", contains(32.5f, 22.0f))
                .body("[0].heightMm", equalTo(40.0f))
                .body("[1].woundId", equalTo((int) wound));
    }

    @Test
    void anOddValueIsAProblemOfItsOwnKindUntilItsKeyIsSent() {
        school.see(tree.id(), "shoot_extension_mm", "300");
        var odd = Map.of("whole", List.of(Map.of("fact", "shoot_extension_mm", "value", "30")));
        var before = tables.rows();
        var asked = send(odd);
        asked.then()
                .statusCode(409)
                .contentType("application/problem+json")
                .body("type", equalTo("urn:ripewood:problem:odd-values"))
                .body("status", equalTo(409))
                .body("instance", equalTo("/api/v1/trees/" + tree.id() + "/series"))
                .body("questions.field", contains("whole[0].value"))
                .body("questions.key", contains("slip:shoot_extension_mm:30"));
        assertThat((String) asked.path("questions[0].question"))
                .contains("300 mm of", "Maybe 300 mm");
        assertThat(tables.rows()).isEqualTo(before);
        var sure = new HashMap<String, Object>(odd);
        sure.put("confirmed", asked.path("questions.key"));
        send(sure).then().statusCode(201);
    }

    @Test
    void aSingleReadingIsAskedAboutAsWell() {
        school.see(tree.id(), "trunk_base_mm", "20");
        var odd = Map.of("fact", "trunk_base_mm", "value", "150");
        var before = tables.rows();
        var asked = send("observations", odd);
        asked.then()
                .statusCode(409)
                .contentType("application/problem+json")
                .body("type", equalTo("urn:ripewood:problem:odd-values"))
                .body("questions.field", contains("value"));
        assertThat(tables.rows()).isEqualTo(before);
        var sure = new HashMap<String, Object>(odd);
        sure.put("confirmed", asked.path("questions.key"));
        int kept = send("observations", sure).then().statusCode(201).extract().path("id");
        // the entry that is put right is not held against what it was meant to be
        send("observations", Map.of("fact", "trunk_base_mm", "value", "21", "supersedes", kept))
                .then()
                .statusCode(201);
    }

    @Test
    void aDayBeforeTheTreeCameIsAskedAbout() {
        var early = tree.cameOn().minusDays(1).toString();
        var moist =
                new HashMap<String, Object>(
                        Map.of("fact", "soil_moist", "value", "yes", "observedOn", early));
        var asked = send("observations", moist);
        asked.then().statusCode(409).body("questions.field", contains("observedOn"));
        assertThat((String) asked.path("questions[0].question"))
                .contains(early, tree.cameOn().toString());
        moist.put("confirmed", asked.path("questions.key"));
        send("observations", moist).then().statusCode(201);
        var page =
                school.as(Who.STUDENT)
                        .formParam("fact", "soil_moist")
                        .formParam("value", "no")
                        .formParam("observedOn", tree.cameOn().minusDays(2).toString())
                        .cookie("ripewood-csrf", school.formToken(Who.STUDENT))
                        .formParam("csrf-token", school.formToken(Who.STUDENT))
                        .post("/trees/" + tree.id() + "/observations");
        assertThat(page.statusCode()).isEqualTo(409);
        assertThat(page.asString())
                .contains("the day the tree came", "name=\"confirmed\" value=\"early:came:");
    }

    private Response send(Map<String, ?> fields) {
        return send("series", fields);
    }

    private Response send(String door, Map<String, ?> fields) {
        var body = new HashMap<String, Object>(fields);
        body.putIfAbsent("observedOn", school.today().date().toString());
        return school.as(Who.STUDENT)
                .contentType("application/json")
                .body(body)
                .post("/api/v1/trees/" + tree.id() + "/" + door);
    }
}
