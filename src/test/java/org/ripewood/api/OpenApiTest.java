package org.ripewood.api;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The description of the API says what there is and how it refuses. */
@Tag("one-database")
@QuarkusTest
class OpenApiTest {

    private record Described(String address, Map<String, Object> operation) {}

    @Test
    void theDescriptionIsServed() {
        given().get("/openapi?format=json")
                .then()
                .statusCode(200)
                .body("openapi", startsWith("3."));
    }

    @Test
    void everyAddressOfTheApiIsDescribedAndNothingElse() {
        var described = new TreeSet<String>();
        operations().forEach(found -> described.add(found.address()));
        var there = new TreeSet<String>();
        Endpoint.all().stream()
                .filter(Endpoint::api)
                .forEach(endpoint -> there.add(endpoint.toString()));
        assertThat(described).isEqualTo(there);
    }

    @Test
    void everyOperationHasASummaryAndAProblem() {
        assertThat(operations())
                .allSatisfy(
                        found -> {
                            assertThat((String) found.operation().get("summary")).isNotBlank();
                            assertThat(problems(found.operation())).isNotEmpty();
                        });
    }

    @Test
    void everySuccessHasASchema() {
        assertThat(operations())
                .allSatisfy(
                        found ->
                                assertThat(child(found.operation(), "responses").toString())
                                        .as(found.address())
                                        .containsPattern(
                                                "20[01]=\\{.*content=\\{(application/json|text/csv)"));
    }

    @Test
    void whatIsAskedAboutASeriesIsDescribed() {
        var series =
                operations().stream()
                        .filter(found -> found.address().equals("POST /api/v1/trees/{id}/series"))
                        .findFirst()
                        .orElseThrow();
        var asked = child(child(series.operation(), "responses"), "409").toString();
        assertThat(asked).contains("application/problem+json", "schemas/OddValues");
    }

    /** A program made from the description has a method for each, by a name of its own. */
    @Test
    void everyOperationHasANameOfItsOwn() {
        var names =
                operations().stream().map(found -> found.operation().get("operationId")).toList();
        assertThat(names).doesNotContainNull().doesNotHaveDuplicates();
    }

    @Test
    void noOperationAsksForAWayOfSigningInThatIsNotDescribed() {
        assertThat(operations())
                .allSatisfy(
                        found ->
                                assertThat(String.valueOf(found.operation().get("security")))
                                        .as(found.address())
                                        .doesNotContain("SecurityScheme"));
    }

    @Test
    void bothWaysOfSigningInAreDescribed() {
        Map<String, Object> api = given().get("/openapi?format=json").path("");
        var schemes = child(child(api, "components"), "securitySchemes");
        assertThat(child(schemes, "token")).containsEntry("scheme", "bearer");
        assertThat(child(schemes, "session")).containsEntry("in", "cookie");
        assertThat(api.get("security").toString()).contains("token", "session");
    }

    private static List<String> problems(Map<String, Object> operation) {
        var problems = new ArrayList<String>();
        child(operation, "responses")
                .forEach(
                        (status, response) -> {
                            if (status.startsWith("4")
                                    && response.toString().contains("application/problem+json")
                                    && response.toString().contains("schemas/Problem")) {
                                problems.add(status);
                            }
                        });
        return problems;
    }

    private static List<Described> operations() {
        Map<String, Map<String, Map<String, Object>>> paths =
                given().get("/openapi?format=json").path("paths");
        var operations = new ArrayList<Described>();
        paths.forEach(
                (path, item) ->
                        item.forEach(
                                (verb, operation) ->
                                        operations.add(
                                                new Described(
                                                        verb.toUpperCase(java.util.Locale.ROOT)
                                                                + " "
                                                                + path,
                                                        operation))));
        return operations;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> child(Map<String, Object> parent, String name) {
        return (Map<String, Object>) parent.get(name);
    }
}
