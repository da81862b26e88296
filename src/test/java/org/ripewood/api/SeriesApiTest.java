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

    private Response send(Map<String, ?> fields) {
        var body = new HashMap<String, Object>(fields);
        body.put("observedOn", school.today().date().toString());
        return school.as(Who.STUDENT)
                .contentType("application/json")
                .body(body)
                .post("/api/v1/trees/" + tree.id() + "/series");
    }
}
