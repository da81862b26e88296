package org.ripewood.signin;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.PasswordLinks;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.audit.Audit;
import org.ripewood.audit.AuditQuestion;
import org.ripewood.audit.Deed;
import org.ripewood.passwords.Secret;
import org.ripewood.people.BrowserSession;
import org.ripewood.people.NewPerson;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/**
 * What was checked of the OWASP Application Security Verification Standard 5.0.0, up to level 2:
 * its number, and in our words what holds here. What other tests check is named in their own words.
 */
@Tag("one-database")
@QuarkusTest
class AsvsTest {

    private static final AtomicInteger NEXT = new AtomicInteger();
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));
    private static final String PASSWORD = "quite a long password";

    @Inject PersonRegistration register;
    @Inject PasswordLinks links;
    @Inject SignInSessions sessions;
    @Inject Audit audit;

    private Person person;
    private String session;

    @BeforeEach
    void somebodyIsSignedIn() {
        var login = "checked." + NEXT.incrementAndGet();
        person =
                register.enter(
                        OFFICE, new NewPerson("Runa Voss", login, PASSWORD, Set.of(Role.STUDENT)));
        session = BrowserSession.signIn(login, PASSWORD);
    }

    @Test
    @DisplayName(
            "3.2.1 · An answer of the API opened as a page runs nothing: type and policy say so")
    void answersOfTheApiAreNoPages() {
        var answer = get("/api/v1/rehearsal/who");
        assertThat(answer.contentType()).startsWith("application/json");
        assertThat(answer.header("Content-Security-Policy")).contains("default-src 'none'");
    }

    @Test
    @DisplayName(
            "3.3.2, 3.3.4 · Cookies go to this site's own requests only, and no script reads them")
    void cookiesAreStrictAndHidden() {
        var answer = BrowserSession.answer(person.login(), PASSWORD);
        for (var name : List.of(BrowserSession.COOKIE, BrowserCookie.KNOWN.name(false))) {
            var cookie = answer.getDetailedCookie(name);
            assertThat(cookie.isHttpOnly()).as(name).isTrue();
            assertThat(cookie.getSameSite()).as(name).isEqualToIgnoringCase("strict");
            assertThat(cookie.getDomain()).as(name).isNull();
        }
        var form = BrowserSession.get("/account", session).getDetailedCookie("ripewood-csrf");
        assertThat(form.isHttpOnly()).isTrue();
        assertThat(form.getSameSite()).isEqualToIgnoringCase("strict");
        var back = BrowserSession.get("/account", "").getDetailedCookie("ripewood-return");
        assertThat(back.isHttpOnly()).isTrue();
        assertThat(back.getSameSite()).isEqualToIgnoringCase("strict");
    }

    @Test
    @DisplayName("7.2.4 · Whoever signs in anew in a browser ends the session it had")
    void signingInAnewEndsTheSessionBefore() {
        signInOver("not the password");
        assertThat(get("/account").statusCode()).isEqualTo(200);
        var next = signInOver(PASSWORD).getCookie(BrowserSession.COOKIE);
        assertThat(get("/account").statusCode()).isEqualTo(303);
        assertThat(BrowserSession.get("/account", next).statusCode()).isEqualTo(200);
        // a cookie of an ended session, or one that was never sealed, keeps nobody out
        assertThat(signInOver(PASSWORD).getCookie(BrowserSession.COOKIE)).isNotNull();
        session = "never.sealed";
        assertThat(signInOver(PASSWORD).getCookie(BrowserSession.COOKIE)).isNotNull();
    }

    private Response signInOver(String password) {
        return as().contentType("application/x-www-form-urlencoded; charset=UTF-8")
                .formParam("j_username", person.login())
                .formParam("j_password", password)
                .post("/j_security_check");
    }

    @Test
    @DisplayName("3.4.2 · No other site is let read an answer")
    void noOtherSiteIsLetRead() {
        var answer = as().header("Origin", "https://other.example").get("/api/v1/rehearsal/who");
        assertThat(answer.header("Access-Control-Allow-Origin")).isNull();
        assertThat(answer.header("Cross-Origin-Resource-Policy")).isEqualTo("same-origin");
    }

    @Test
    @DisplayName(
            "3.4.3 to 3.4.6 · Every answer forbids scripts, inline styles, guessing of types, telling"
                    + " addresses to other sites and frames")
    void everyAnswerTellsTheBrowserWhatNotToDo() {
        for (var path :
                List.of(
                        "/sign-in",
                        "/account",
                        "/api/v1/rehearsal/who",
                        "/no-such",
                        "/style.css")) {
            var answer = get(path);
            var policy = answer.header("Content-Security-Policy");
            assertThat(policy)
                    .as(path)
                    .contains("default-src 'none'", "frame-ancestors 'none'", "base-uri 'none'")
                    .doesNotContain("unsafe", "script-src", "*", "data:");
            assertThat(answer.header("X-Content-Type-Options")).as(path).isEqualTo("nosniff");
            assertThat(answer.header("Referrer-Policy")).as(path).isEqualTo("same-origin");
            assertThat(answer.header("Permissions-Policy")).as(path).contains("camera=()");
            assertThat(answer.header("Cross-Origin-Opener-Policy"))
                    .as(path)
                    .isEqualTo("same-origin");
        }
    }

    @Test
    @DisplayName("3.5.1 · A form without its token and a JSON write without its header do nothing")
    void otherSitesCannotWriteInSomebodysName() {
        as().contentType("application/x-www-form-urlencoded")
                .formParam("oldPassword", PASSWORD)
                .formParam("newPassword", "set by another site")
                .post("/account/password")
                .then()
                .statusCode(400);
        as().contentType("application/json")
                .body("{\"name\": \"Tray\"}")
                .post("/api/v1/rehearsal/pots")
                .then()
                .statusCode(403);
        assertThat(BrowserSession.signIn(person.login(), PASSWORD)).isNotNull();
    }

    @Test
    @DisplayName("3.5.3 · Signing out is no address to be led to: only a form's POST does it")
    void addressesToReadChangeNothing() {
        get("/sign-out").then().statusCode(405);
        get("/account/sign-out-everywhere").then().statusCode(405);
        get("/account").then().statusCode(200);
    }

    @Test
    @DisplayName(
            "6.2.1, 6.2.3 · A new password has 12 characters at least and needs the one of now")
    void aNewPasswordIsLongAndNeedsTheOld() {
        change(PASSWORD, "elevenchars").then().statusCode(400);
        change("a wrong password", "twelve chars").then().statusCode(400);
        change(PASSWORD, "twelve chars").then().statusCode(303);
    }

    @Test
    @DisplayName(
            "6.2.4 · The commonest passwords, and what follows a simple pattern, are refused wherever"
                    + " one is set, in words that say why")
    void commonPasswordsAreRefusedEverywhere() {
        change(PASSWORD, "password1234")
                .then()
                .statusCode(400)
                .body(containsString("tried first"), containsString("Maybe take four"));
        change(PASSWORD, "qwertyuiop12").then().statusCode(400);
        change(PASSWORD, "elephantelephant")
                .then()
                .statusCode(400)
                .body(containsString("the same again and again"));
        assertThat(BrowserSession.signIn(person.login(), PASSWORD)).isNotNull();

        var newcomer = new NewPerson("Bo Lind", "bo.lind", "123456789012", Set.of(Role.STUDENT));
        assertThatThrownBy(() -> register.enter(OFFICE, newcomer)).isInstanceOf(Refused.class);
        var link = links.make(OFFICE, person.id());
        assertThatThrownBy(() -> links.use(link.secret(), "aaaaaaaaaaaa"))
                .isInstanceOf(Refused.class);
        links.use(link.secret(), "kiln fern marble");
    }

    @Test
    @DisplayName("6.2.11 · Neither one's name nor the school's words are a password")
    void ownWordsAreNoPassword() {
        for (var weak : List.of("ripewood1234", "Runa.Voss.1980", person.login() + "123")) {
            change(PASSWORD, weak)
                    .then()
                    .statusCode(400)
                    .body(containsString("little more than your name"));
        }
    }

    @Test
    @DisplayName("6.2.5, 6.2.8, 6.2.9 · Any characters, 64 and more, taken as they were typed")
    void passwordsAreTakenAsTyped() {
        var typed = "  Ünïcode ✿ and \"quotes\" & <marks>, 64 characters long or more  ";
        assertThat(typed.length()).isGreaterThanOrEqualTo(64);
        change(PASSWORD, typed).then().statusCode(303);
        assertThat(BrowserSession.signIn(person.login(), typed.strip())).isNull();
        assertThat(BrowserSession.signIn(person.login(), typed)).isNotNull();

        var cyrillic = "три жёлтых ведра стоят у старого забора, а рядом растёт одна сосна";
        assertThat(cyrillic.length()).isGreaterThanOrEqualTo(64);
        session = BrowserSession.signIn(person.login(), typed);
        change(typed, cyrillic).then().statusCode(303);
        assertThat(BrowserSession.signIn(person.login(), cyrillic)).isNotNull();
        assertThat(BrowserSession.signIn(person.login(), cyrillic.substring(0, 40))).isNull();
    }

    @Test
    @DisplayName("6.2.6, 6.2.7 · Password fields hide what is typed and let a program fill them in")
    void passwordFieldsHideAndMayBeFilledIn() {
        for (var path : List.of("/sign-in", "/account")) {
            assertThat(get(path).asString())
                    .contains("type=\"password\"")
                    .containsPattern("autocomplete=\"(current|new)-password\"");
        }
    }

    @Test
    @DisplayName(
            "6.3.1 · After ten wrong passwords a name is held, and its owner is not locked out")
    void guessingIsHeld() {
        for (int i = 0; i < SignInPause.MOST_FAILURES; i++) {
            BrowserSession.signIn(person.login(), "guess number " + i);
        }
        assertThat(BrowserSession.signIn(person.login(), PASSWORD)).isNull();
        get("/account").then().statusCode(200);
    }

    @Test
    @DisplayName(
            "6.3.1 · A session that somebody left open is no place to guess the password by, and"
                    + " another session of its owner is not held for it")
    void guessingTheOldPasswordIsHeld() {
        for (int i = 0; i < SignInPause.MOST_FAILURES; i++) {
            change("guess number " + i, "kiln fern marble").then().statusCode(400);
        }
        change(PASSWORD, "kiln fern marble")
                .then()
                .statusCode(429)
                .body(containsString("Try again in 15 minutes"));
        session = BrowserSession.signIn(person.login(), PASSWORD);
        change(PASSWORD, "kiln fern marble").then().statusCode(303);
        assertThat(deeds()).contains("CONFIRM_FAILED", "CONFIRM_PAUSED");
    }

    @Test
    @DisplayName(
            "6.4.1, 6.4.3 · The first and a lost password are chosen by a random link that ends")
    void firstAndLostPasswordsAreChosenByLink() {
        var link = links.make(OFFICE, person.id());
        assertThat(link.secret())
                .hasSize(43)
                .isNotEqualTo(links.make(OFFICE, person.id()).secret());
        BrowserSession.get("/password/" + link.secret(), "").then().statusCode(404);
    }

    @Test
    @DisplayName("7.2.3, 7.2.4 · Each sign-in opens a session of its own with 256 random bits")
    void eachSignInOpensAFreshSession() {
        var another = BrowserSession.signIn(person.login(), PASSWORD);
        assertThat(another).isNotEqualTo(session);
        var hashes =
                QuarkusTransaction.requiringNew()
                        .call(
                                () ->
                                        sessions.of(person.id()).stream()
                                                .map(s -> s.secretHash)
                                                .toList());
        assertThat(hashes).hasSize(2).doesNotHaveDuplicates();
        assertThat(Secret.fresh()).hasSize(43);
    }

    @Test
    @DisplayName("7.4.1 · What is signed out opens nothing any more, whoever kept the cookie")
    void whatIsSignedOutOpensNothing() {
        BrowserSession.post("/sign-out", session).then().statusCode(303);
        get("/account").then().statusCode(303);
        get("/api/v1/rehearsal/who").then().statusCode(401);
    }

    @Test
    @DisplayName("7.4.2, 7.4.5 · A registrar who stops a sign-in ends every session of the person")
    void whoIsShutOutHasNoSession() {
        register.setActive(OFFICE, person.id(), person.version(), false);
        get("/account").then().statusCode(303);
        var kept = QuarkusTransaction.requiringNew().call(() -> sessions.of(person.id()));
        assertThat(kept).isEmpty();
    }

    @Test
    @DisplayName(
            "7.4.5 · A registrar ends the sessions of a person, or of everybody, and who may sign in"
                    + " signs in anew")
    void aRegistrarEndsSessions() {
        var registrar = registrar();
        var office = BrowserSession.confirm(registrar, PASSWORD);
        BrowserSession.post("/people/%d/sign-out".formatted(person.id()), office)
                .then()
                .statusCode(303);
        get("/account").then().statusCode(303);
        session = BrowserSession.signIn(person.login(), PASSWORD);
        get("/account").then().statusCode(200);

        BrowserSession.post("/people/sign-out", office).then().statusCode(303);
        get("/account").then().statusCode(303);
        BrowserSession.get("/people", office).then().statusCode(200);
        assertThat(BrowserSession.signIn(person.login(), PASSWORD)).isNotNull();

        var told =
                audit.entries(
                        OFFICE,
                        new AuditQuestion(null, null, null, "person"),
                        new PageRequest(0, 5));
        assertThat(told.items())
                .anySatisfy(
                        entry -> {
                            assertThat(entry.deed()).isEqualTo(Deed.SESSIONS_ENDED);
                            assertThat(entry.personId()).isNotNull().isNotEqualTo(person.id());
                            assertThat(entry.changes().get(0).firstId()).isEqualTo(person.id());
                        });
    }

    private String registrar() {
        var login = "office." + NEXT.incrementAndGet();
        register.enter(OFFICE, new NewPerson("Odo Marn", login, PASSWORD, Set.of(Role.REGISTRAR)));
        return BrowserSession.signIn(login, PASSWORD);
    }

    @Test
    @DisplayName("7.4.3 · A new password ends every other session")
    void aNewPasswordEndsOtherSessions() {
        var another = BrowserSession.signIn(person.login(), PASSWORD);
        change(PASSWORD, "another long password").then().statusCode(303);
        BrowserSession.get("/account", another).then().statusCode(303);
        get("/account").then().statusCode(200);
    }

    @Test
    @DisplayName("7.4.4 · Every page of somebody signed in has the way out on it")
    void everyPageHasTheWayOut() {
        for (var path : List.of("/home", "/account", "/lessons")) {
            assertThat(get(path).asString()).contains("action=\"/sign-out\"");
        }
    }

    @Test
    @DisplayName("8.2.1 · An address nobody gave a role to answers nobody")
    void whatIsForgottenIsDenied() {
        get("/rehearsal/forgotten").then().statusCode(403);
        get("/rehearsal/office").then().statusCode(403);
    }

    @Test
    @DisplayName("14.3.2 · What is personal is not kept by the browser")
    void personalPagesAreNotKept() {
        for (var path : List.of("/account", "/home", "/api/v1/rehearsal/who")) {
            assertThat(get(path).header("Cache-Control")).as(path).contains("no-store");
        }
    }

    @Test
    @DisplayName("14.3.1 · Who leaves has the browser forget what it kept")
    void whoLeavesLeavesNothingBehind() {
        assertThat(get("/account").header("Clear-Site-Data")).isNull();
        var left = BrowserSession.post("/sign-out", session);
        assertThat(left.header("Clear-Site-Data")).isEqualTo("\"cache\"");
        // another browser of theirs, whose session has ended meanwhile
        var another = BrowserSession.signIn(person.login(), PASSWORD);
        var third =
                BrowserSession.confirm(BrowserSession.signIn(person.login(), PASSWORD), PASSWORD);
        BrowserSession.post("/account/sign-out-everywhere", third)
                .then()
                .statusCode(303)
                .header("Clear-Site-Data", "\"cache\"");
        var ended = BrowserSession.get("/account", another);
        assertThat(ended.statusCode()).isEqualTo(303);
        assertThat(ended.header("Clear-Site-Data")).isEqualTo("\"cache\"");
        // who never was there has nothing to forget
        assertThat(BrowserSession.get("/account", "").header("Clear-Site-Data")).isNull();
    }

    @Test
    @DisplayName("16.3.1 · Sign-ins, good and bad, are written down with who and when")
    void signInsAreWrittenDown() {
        BrowserSession.signIn(person.login(), "a wrong password");
        assertThat(deeds()).contains("SIGNED_IN", "SIGN_IN_FAILED");
    }

    private List<String> deeds() {
        var told =
                audit.entries(
                        OFFICE,
                        new AuditQuestion(person.id(), null, null, null),
                        new PageRequest(0, 30));
        return told.items().stream().map(entry -> entry.deed().name()).toList();
    }

    @Test
    @DisplayName("16.5.1 · A fault of ours tells nothing of what happened inside")
    void faultsTellNothingOfTheInside() {
        var answer = get("/api/v1/rehearsal/broken");
        assertThat(answer.statusCode()).isEqualTo(500);
        assertThat(answer.asString()).doesNotContain("words nobody outside may read", "Exception");
    }

    private Response change(String old, String fresh) {
        return BrowserSession.post(
                "/account/password", session, "oldPassword", old, "newPassword", fresh);
    }

    private Response get(String path) {
        return BrowserSession.get(path, session);
    }

    private RequestSpecification as() {
        return given().redirects().follow(false).cookie(BrowserSession.COOKIE, session);
    }
}
