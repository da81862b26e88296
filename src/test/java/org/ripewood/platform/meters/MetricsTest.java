package org.ripewood.platform.meters;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.accounts.ApiToken;
import org.ripewood.accounts.ApiTokens;
import org.ripewood.accounts.NewApiToken;
import org.ripewood.boards.BoardAsked;
import org.ripewood.boards.BoardMaker;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.standing.Standings;

/** What the service tells of itself, and to whom. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class MetricsTest {

    private static final String PASSWORD = "long enough a password";

    @Inject School school;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject ApiTokens tokens;
    @Inject Standings standings;
    @Inject BoardMaker boardMaker;

    private Actor registrar;

    @BeforeEach
    void openTheSchool() {
        registrar = school.person("Rae Registrar", Role.REGISTRAR);
    }

    @Test
    void aRegistrarReadsThemByASessionOrAToken() {
        var byToken =
                given().header("Authorization", "Bearer " + token(registrar)).get("/q/metrics");
        assertThat(byToken.statusCode()).isEqualTo(200);
        assertThat(byToken.asString()).contains("ripewood_");
        assertThat(bySession(registrar).statusCode()).isEqualTo(200);
    }

    @Test
    void nobodyElseReadsThem() {
        for (var role : new Role[] {Role.STUDENT, Role.INSTRUCTOR}) {
            var other = school.person("Otto Other", role);
            assertThat(bySession(other).statusCode()).as(role.name()).isEqualTo(403);
            assertThat(
                            given().header("Authorization", "Bearer " + token(other))
                                    .get("/q/metrics")
                                    .statusCode())
                    .as(role.name())
                    .isEqualTo(403);
        }
        var stranger = given().redirects().follow(false).get("/q/metrics");
        assertThat(stranger.statusCode()).isEqualTo(401);
        assertThat(stranger.asString()).doesNotContain("ripewood_");
        var guessed =
                given().redirects()
                        .follow(false)
                        .header("Authorization", "Bearer no-such-token")
                        .get("/q/metrics");
        assertThat(guessed.statusCode()).isEqualTo(401);
        assertThat(guessed.asString()).doesNotContain("ripewood_");
    }

    @Test
    void aTokenOpensNoOtherPage() {
        var answer =
                given().redirects()
                        .follow(false)
                        .header("Authorization", "Bearer " + token(registrar))
                        .get("/people");
        assertThat(answer.statusCode()).isEqualTo(303);
    }

    @Test
    void theyTellOfTheEngineTheBoardTheFailuresAndTheQueue() {
        var group = school.newGroup();
        var tree = school.tree(group.instructor(), group.student(), "acer_palmatum");
        standings.of(group.student(), tree.id(), School.TODAY);
        boardMaker.make(
                group.instructor(),
                group.course().id(),
                School.TODAY,
                BoardAsked.of(null),
                new PageRequest(0, 10));
        var before = metrics();
        standings.of(group.student(), tree.id(), School.TODAY);
        given().redirects()
                .follow(false)
                .formParam("j_username", "nobody-here")
                .formParam("j_password", "wrong")
                .post("/j_security_check");
        var after = metrics();
        assertThat(value(after, "ripewood_tree_judging_seconds_count"))
                .isEqualTo(value(before, "ripewood_tree_judging_seconds_count") + 1);
        assertThat(value(after, "ripewood_course_board_seconds_count")).isPositive();
        assertThat(value(after, "ripewood_sign_in_failures_total")).isPositive();
        assertThat(value(after, "ripewood_sign_offs_waiting")).isNotNegative();
        // no label of ours, and nobody's name or login
        assertThat(after.lines().filter(line -> line.startsWith("ripewood_") && line.contains("{")))
                .isEmpty();
        assertThat(after).doesNotContain("Registrar", "nobody-here", "person-");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/q/health", "/q/health/live", "/q/health/ready", "/q/health/started"})
    void whetherItIsUpIsToldToEverybodyAndNothingElse(String path) {
        var answer = given().get(path);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.asString()).isEqualTo("{\"status\":\"UP\"}");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/q/health/group", "/q/health/group/x", "/q/health/well", "/q/health/"})
    void noCheckIsToldByName(String path) {
        assertThat(given().get(path).asString()).doesNotContain("checks");
    }

    @Test
    void aNumberThatCostsAQueryIsAskedForOnceAMinute() {
        var asked = new AtomicLong();
        var now = new AtomicLong(-7_000_000_000L);
        var seldom = new CachedGauge(asked::incrementAndGet, Duration.ofMinutes(1), now::get);
        assertThat(seldom.get().longValue()).isOne();
        now.addAndGet(59_999_999_999L);
        assertThat(seldom.get().longValue()).isOne();
        now.addAndGet(1);
        assertThat(seldom.get().longValue()).isEqualTo(2);
        var broken =
                new CachedGauge(
                        () -> {
                            throw new IllegalStateException("no database");
                        },
                        Duration.ofMinutes(1),
                        now::get);
        assertThat(broken.get().doubleValue()).isNaN();
    }

    private String metrics() {
        return given().header("Authorization", "Bearer " + token(registrar))
                .get("/q/metrics")
                .asString();
    }

    private static double value(String metrics, String name) {
        var found = Pattern.compile("(?m)^" + name + " ([0-9.E+-]+)$").matcher(metrics);
        assertThat(found.find()).as(name).isTrue();
        return Double.parseDouble(found.group(1));
    }

    private Response bySession(Actor actor) {
        var signedIn =
                given().redirects()
                        .follow(false)
                        .contentType(ContentType.URLENC)
                        .formParam("j_username", peopleUnchecked.get(actor.personId()).login())
                        .formParam("j_password", PASSWORD)
                        .post("/j_security_check");
        return given().redirects().follow(false).cookies(signedIn.cookies()).get("/q/metrics");
    }

    private String token(Actor actor) {
        return tokens.make(actor, new NewApiToken("monitor", ApiToken.Scope.READ, 30)).secret();
    }
}
