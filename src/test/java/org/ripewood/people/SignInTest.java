package org.ripewood.people;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.signin.SignInPause;

@QuarkusTest
class SignInTest {

    private static final AtomicInteger NEXT = new AtomicInteger();
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));
    private static final String PASSWORD = "quite a long password";
    private static final String SESSION = "ripewood-session";

    @Inject PersonRegistration register;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject PersonRows persons;

    private Person person;

    @BeforeEach
    void somebodyIsEntered() {
        person =
                register.enter(
                        OFFICE,
                        new NewPerson(
                                "Tilda Moor",
                                "s" + NEXT.incrementAndGet() + ".sign-in",
                                PASSWORD,
                                Set.of(Role.STUDENT)));
    }

    @Test
    void signingInOpensASessionInAGuardedCookie() {
        var answer = signIn(person.login(), PASSWORD);

        answer.then().statusCode(302).header("Location", endsWith("/"));
        var cookie = answer.getDetailedCookie(SESSION);
        assertThat(cookie.isHttpOnly()).isTrue();
        assertThat(cookie.getSameSite()).isEqualToIgnoringCase("strict");
        assertThat(cookie.getValue()).doesNotContain(person.login());
        asked("/api/v1/rehearsal/who", cookie.getValue())
                .then()
                .statusCode(200)
                .body("personId", equalTo((int) person.id()));
        asked("/rehearsal/mine", cookie.getValue()).then().statusCode(200);
    }

    @Test
    void rolesDecideWhoMayCallWhat() {
        var session = signIn(person.login(), PASSWORD).getCookie(SESSION);

        asked("/api/v1/rehearsal/office", session)
                .then()
                .statusCode(403)
                .contentType("application/problem+json");
        asked("/rehearsal/office", session)
                .then()
                .statusCode(403)
                .body(containsString("Not yours to do"));
        asked("/rehearsal/forgotten", session).then().statusCode(403);
    }

    @Test
    void aHashOfTheOldWayIsReplacedAtSignIn() {
        keep(BcryptUtil.bcryptHash(PASSWORD, 4));
        var version = peopleUnchecked.get(person.id()).version();
        assertThat(signIn(person.login(), "a wrong one").getCookie(SESSION)).isNull();
        assertThat(kept()).startsWith("$2");
        assertThat(signIn(person.login(), PASSWORD).getCookie(SESSION)).isNotNull();
        assertThat(kept()).startsWith("2:$2");
        assertThat(signIn(person.login(), PASSWORD).getCookie(SESSION)).isNotNull();
        assertThat(peopleUnchecked.get(person.id()).version()).isEqualTo(version);
    }

    private void keep(String hash) {
        QuarkusTransaction.requiringNew()
                .run(() -> persons.update("passwordHash = ?1 where id = ?2", hash, person.id()));
    }

    private String kept() {
        return QuarkusTransaction.requiringNew()
                .call(() -> persons.findById(person.id()).passwordHash);
    }

    @Test
    void aWrongPasswordAndAnUnknownLoginLookAlike() {
        for (var answer :
                new Response[] {
                    signIn(person.login(), "another password"),
                    signIn("nobody-at-all", PASSWORD),
                    signIn(person.login(), "x".repeat(500))
                }) {
            answer.then().statusCode(303).header("Location", endsWith("/sign-in?wrong=yes"));
            assertThat(answer.getCookie(SESSION)).isNull();
        }
    }

    @Test
    void whoIsShutOutIsOutAtOnce() {
        var session = signIn(person.login(), PASSWORD).getCookie(SESSION);
        register.setActive(OFFICE, person.id(), person.version(), false);

        asked("/api/v1/rehearsal/who", session).then().statusCode(401);
        asked("/rehearsal/mine", session)
                .then()
                .statusCode(303)
                .header("Location", endsWith("/sign-in"));
        asked("/rehearsal/open", session).then().statusCode(200).body(containsString("false"));
        signIn(person.login(), PASSWORD).then().header("Location", endsWith("/sign-in?wrong=yes"));
    }

    @Test
    void whoIsNotSignedInIsSentToSignInAndBack() {
        var sent = asked("/rehearsal/mine", "");
        sent.then().statusCode(303).header("Location", endsWith("/sign-in"));

        given().redirects()
                .follow(false)
                .cookies(sent.getCookies())
                .formParam("j_username", person.login())
                .formParam("j_password", PASSWORD)
                .post("/j_security_check")
                .then()
                .statusCode(302)
                .header("Location", endsWith("/rehearsal/mine"));
    }

    @Test
    void aForgedSessionIsNobodys() {
        asked("/api/v1/rehearsal/who", "AAAAAAAAAAAAAAAAAAAAAAAA").then().statusCode(401);
        asked("/rehearsal/open", "AAAAAAAAAAAAAAAAAAAAAAAA").then().statusCode(200);
    }

    @Test
    void signingOutEndsTheSessionInTheBrowser() {
        var session = signIn(person.login(), PASSWORD).getCookie(SESSION);

        var token = asked("/rehearsal/open", session).getCookie("ripewood-csrf");
        var left =
                given().redirects()
                        .follow(false)
                        .cookie(SESSION, session)
                        .cookie("ripewood-csrf", token)
                        .formParam("csrf-token", token)
                        .post("/rehearsal/leave");

        left.then().statusCode(303);
        assertThat(left.getDetailedCookie(SESSION).getMaxAge()).isZero();
        assertThat(left.getCookie(SESSION)).isEmpty();
    }

    @Test
    void aFormWithoutItsTokenIsRefusedWithWords() {
        var session = signIn(person.login(), PASSWORD).getCookie(SESSION);

        given().redirects()
                .follow(false)
                .cookie(SESSION, session)
                .formParam("anything", "x")
                .post("/rehearsal/leave")
                .then()
                .statusCode(400)
                .body(containsString("open too long"));
    }

    @Test
    void tooManyFailuresPauseTheLogin() {
        for (int i = 0; i < SignInPause.MOST_FAILURES; i++) {
            signIn(person.login(), "guess number " + i)
                    .then()
                    .header("Location", endsWith("/sign-in?wrong=yes"));
        }
        var paused = signIn(person.login(), PASSWORD);

        paused.then()
                .statusCode(303)
                .header("Location", endsWith("/sign-in?wrong=paused&minutes=15"));
        assertThat(paused.getCookie(SESSION)).isNull();
        asked("/sign-in?wrong=paused&minutes=15", "")
                .then()
                .statusCode(200)
                .body(containsString("Try again in 15 minutes"));
    }

    @Test
    void nobodyIsLockedOutOfTheBrowserTheySignedInWithBefore() {
        var known = signIn(person.login(), PASSWORD).getDetailedCookie("ripewood-browser");
        assertThat(known.isHttpOnly()).isTrue();
        assertThat(known.getPath()).isEqualTo("/j_security_check");
        for (int i = 0; i < SignInPause.MOST_FAILURES; i++) {
            signIn(person.login(), "guess number " + i);
        }
        signIn(person.login(), PASSWORD).then().header("Location", containsString("paused"));

        var there = signInFrom(known.getValue(), person.login(), PASSWORD);
        assertThat(there.getCookie(SESSION)).isNotNull();
        assertThat(there.getCookie("ripewood-browser")).isNull();
        var forged = signInFrom("A".repeat(43), person.login(), PASSWORD);
        assertThat(forged.getCookie(SESSION)).isNull();
        var guessed = signInFrom(known.getValue(), person.login(), "a guess");
        assertThat(guessed.getCookie(SESSION)).isNull();
    }

    private static Response signInFrom(String browser, String login, String password) {
        return given().redirects()
                .follow(false)
                .cookie("ripewood-browser", browser)
                .formParam("j_username", login)
                .formParam("j_password", password)
                .post("/j_security_check");
    }

    @Test
    void aFormWithoutItsFieldsBreaksNothing() {
        var without = given().redirects().follow(false).post("/j_security_check");
        var json =
                given().redirects()
                        .follow(false)
                        .contentType("application/json")
                        .body("{}")
                        .post("/j_security_check");
        for (var answer : new Response[] {without, json}) {
            assertThat(answer.statusCode()).isIn(303, 415);
            assertThat(answer.getCookie(SESSION)).isNull();
        }
    }

    @Test
    void aWriteBySessionNeedsTheHeader() {
        var session = signIn(person.login(), PASSWORD).getCookie(SESSION);
        var request = "{\"name\": \"Tray\"}";

        given().cookie(SESSION, session)
                .contentType("application/json")
                .body(request)
                .post("/api/v1/rehearsal/pots")
                .then()
                .statusCode(403)
                .body("type", equalTo("urn:ripewood:problem:header-missing"))
                .body("detail", containsString("X-Ripewood: 1"));
        given().cookie(SESSION, session)
                .header("X-Ripewood", "1")
                .contentType("application/json")
                .body(request)
                .post("/api/v1/rehearsal/pots")
                .then()
                .statusCode(200);
    }

    private static Response signIn(String login, String password) {
        return given().redirects()
                .follow(false)
                .formParam("j_username", login)
                .formParam("j_password", password)
                .post("/j_security_check");
    }

    private static Response asked(String path, String session) {
        return given().redirects().follow(false).cookie(SESSION, session).get(path);
    }
}
