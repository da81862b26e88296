package org.ripewood.accounts;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.people.BrowserSession;
import org.ripewood.people.NewPerson;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/** Tokens of programs: what they open, and what ends them. */
@QuarkusTest
class ApiTokenTest {

    private static final AtomicInteger NEXT = new AtomicInteger();
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));
    private static final String PASSWORD = "quite a long password";

    @Inject PeopleUnchecked peopleUnchecked;
    @Inject PersonRegistration register;
    @Inject PasswordChange passwordChange;
    @Inject ApiTokens tokens;
    @Inject ApiTokenRows rows;
    @Inject PasswordLinks links;
    @Inject Today today;

    private Person person;
    private Actor actor;

    @BeforeEach
    void somebodyIsEntered() {
        person = entered(Role.STUDENT);
        actor = new Actor(person.id(), person.roles());
    }

    @Test
    void aTokenOpensTheApiWithoutCookieOrHeader() {
        var secret = make(ApiToken.Scope.READ_AND_WRITE).secret();
        who(secret).then().statusCode(200).body("personId", equalTo((int) person.id()));
        write(secret).then().statusCode(200);
    }

    @Test
    void aTokenForReadingDoesNotWrite() {
        var secret = make(ApiToken.Scope.READ).secret();
        who(secret).then().statusCode(200);
        write(secret)
                .then()
                .statusCode(403)
                .contentType("application/problem+json")
                .body("type", equalTo("urn:ripewood:problem:token-reads"));
    }

    @Test
    void aTokenOpensNoPage() {
        var secret = make(ApiToken.Scope.READ_AND_WRITE).secret();
        with(secret).get("/rehearsal/mine").then().statusCode(303);
        with(secret).get("/rehearsal/open").then().statusCode(200).body(containsString("false"));
    }

    @Test
    void aTokenDoesNoMoreThanItsOwnerMay() {
        with(make(ApiToken.Scope.READ_AND_WRITE).secret())
                .get("/api/v1/rehearsal/office")
                .then()
                .statusCode(403);
    }

    @Test
    void aRegistrarsTokenMakesNobodyWhoCouldSignIn() {
        person = entered(Role.REGISTRAR);
        actor = new Actor(person.id(), person.roles());
        var secret = make(ApiToken.Scope.READ_AND_WRITE).secret();
        with(secret).get("/api/v1/rehearsal/office").then().statusCode(200);
        var guest = "{\"name\": \"A\", \"login\": \"by.token\", \"roles\": [\"REGISTRAR\"";
        for (var call :
                new String[][] {
                    {"people/invitations", guest + "]}"},
                    {"people", guest + "], \"password\": \"" + PASSWORD + "\"}"},
                    {"people/" + person.id() + "/password-link", ""}
                }) {
            with(secret)
                    .contentType("application/json")
                    .body(call[1])
                    .post("/api/v1/" + call[0])
                    .then()
                    .statusCode(403)
                    .body("detail", containsString("A token may not"));
        }
        assertThat(peopleUnchecked.findByLogin("by.token")).isEmpty();
    }

    @Test
    void aTokenIsAskedBeforeTheCookie() {
        var session = BrowserSession.signIn(person.login(), PASSWORD);
        with("A".repeat(43))
                .cookie(BrowserSession.COOKIE, session)
                .get("/api/v1/rehearsal/who")
                .then()
                .statusCode(401)
                .header("WWW-Authenticate", equalTo("Bearer"));
        with(make(ApiToken.Scope.READ).secret())
                .cookie(BrowserSession.COOKIE, session)
                .header("X-Ripewood", "1")
                .contentType("application/json")
                .body("{\"name\": \"Tray\"}")
                .post("/api/v1/rehearsal/pots")
                .then()
                .statusCode(403);
    }

    @Test
    void aTokenEndsWithItsLastDay() {
        var made = make(ApiToken.Scope.READ);
        assertThat(made.token().lastDay()).isEqualTo(today.date().plusDays(365));
        lastDay(made, 0);
        who(made.secret()).then().statusCode(200);
        lastDay(made, 1);
        who(made.secret()).then().statusCode(401);
    }

    @Test
    void itsLastUseIsToldByTheDay() {
        var made = make(ApiToken.Scope.READ);
        assertThat(tokens.of(actor).get(0).lastUsedOn()).isNull();
        who(made.secret());
        assertThat(tokens.of(actor).get(0).lastUsedOn()).isEqualTo(today.date());
    }

    @Test
    void onlyItsHashIsKept() {
        var made = make(ApiToken.Scope.READ);
        assertThat(made.secret()).hasSize(43);
        var kept = QuarkusTransaction.requiringNew().call(() -> rows.findById(made.token().id()));
        assertThat(kept.secretHash).hasSize(64).doesNotContain(made.secret());
    }

    @Test
    void itsOwnerEndsItAndNobodyElse() {
        var made = make(ApiToken.Scope.READ);
        var other = entered(Role.STUDENT);
        var stranger = new Actor(other.id(), other.roles());
        assertThat(status(() -> tokens.end(stranger, made.token().id()))).isEqualTo(404);
        who(made.secret()).then().statusCode(200);
        tokens.end(actor, made.token().id());
        who(made.secret()).then().statusCode(401);
    }

    @Test
    void whoIsShutOutHasNoProgramsAnyMoreNotEvenLater() {
        var secret = make(ApiToken.Scope.READ).secret();
        var out = register.setActive(OFFICE, person.id(), person.version(), false);
        who(secret).then().statusCode(401);
        register.setActive(OFFICE, out.id(), out.version(), true);
        who(secret).then().statusCode(401);
    }

    @Test
    void aChangeOfPasswordLeavesItAndALostPasswordEndsIt() {
        var secret = make(ApiToken.Scope.READ).secret();
        passwordChange.change(actor, null, PASSWORD, "another long password");
        who(secret).then().statusCode(200);
        links.use(links.make(OFFICE, person.id()).secret(), PASSWORD);
        who(secret).then().statusCode(401);
    }

    @Test
    void thePageShowsATokenOnce() {
        var session = confirmed();
        var shown =
                BrowserSession.post(
                        "/account/tokens",
                        session,
                        "name",
                        "Bench tablet",
                        "scope",
                        "READ",
                        "days",
                        "30");
        shown.then().statusCode(200).header("Cache-Control", equalTo("no-store"));
        var secret = shown.asString().replaceAll("(?s).*<p class=\"secret\">([^<]*)<.*", "$1");
        who(secret).then().statusCode(200);
        var later = BrowserSession.get("/account", session).asString();
        assertThat(later).contains("Bench tablet").doesNotContain(secret);
    }

    @Test
    void aTokenForMoreThanAYearIsNotMade() {
        var session = confirmed();
        for (var days : new String[] {"0", "366", "soon"}) {
            BrowserSession.post(
                            "/account/tokens",
                            session,
                            "name",
                            "Bench tablet",
                            "scope",
                            "READ",
                            "days",
                            days)
                    .then()
                    .statusCode(400);
        }
        assertThat(tokens.of(actor)).isEmpty();
    }

    @Test
    void nobodyHasMoreTokensThanTheyCanOverlook() {
        for (int i = 0; i < ApiTokens.MOST; i++) {
            make(ApiToken.Scope.READ);
        }
        assertThat(status(() -> make(ApiToken.Scope.READ))).isEqualTo(409);
    }

    private String confirmed() {
        var session = BrowserSession.signIn(person.login(), PASSWORD);
        return BrowserSession.confirm(session, PASSWORD);
    }

    private Person entered(Role role) {
        var login = "program." + NEXT.incrementAndGet();
        return register.enter(OFFICE, new NewPerson("Odile Marn", login, PASSWORD, Set.of(role)));
    }

    private ApiTokens.Made make(ApiToken.Scope scope) {
        return tokens.make(actor, new NewApiToken("Weather station", scope, 365));
    }

    private void lastDay(ApiTokens.Made made, int daysAgo) {
        QuarkusTransaction.requiringNew()
                .run(
                        () ->
                                rows.findById(made.token().id()).lastDay =
                                        today.date().minusDays(daysAgo));
    }

    private static RequestSpecification with(String secret) {
        return given().redirects().follow(false).header("Authorization", "Bearer " + secret);
    }

    private static Response who(String secret) {
        return with(secret).get("/api/v1/rehearsal/who");
    }

    private static Response write(String secret) {
        return with(secret)
                .contentType("application/json")
                .body("{\"name\": \"Tray\"}")
                .post("/api/v1/rehearsal/pots");
    }

    private static int status(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        return catchThrowableOfType(Refused.class, call).problem().status();
    }
}
