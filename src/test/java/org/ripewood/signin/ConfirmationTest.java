package org.ripewood.signin;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.ApiToken;
import org.ripewood.accounts.ApiTokens;
import org.ripewood.accounts.NewApiToken;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.people.BrowserSession;
import org.ripewood.people.NewPerson;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;

/** What a session that somebody left open is not enough for (OWASP ASVS 5.0.0, 7.5). */
@QuarkusTest
class ConfirmationTest {

    private static final AtomicInteger NEXT = new AtomicInteger();
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));
    private static final String PASSWORD = "kiln fern marble";

    @Inject PeopleUnchecked peopleUnchecked;
    @Inject PersonRegistration register;
    @Inject ApiTokens tokens;
    @Inject SignIns signIns;
    @Inject SignInSessions sessions;
    @Inject SignInPause pause;

    private Person registrar;
    private Person other;
    private String session;

    @BeforeEach
    void aRegistrarIsSignedIn() {
        registrar = entered(Role.REGISTRAR);
        other = entered(Role.STUDENT);
        session = BrowserSession.signIn(registrar.login(), PASSWORD);
    }

    @Test
    @DisplayName(
            "7.5.1, 7.5.2 · Sessions are ended, tokens and links made, persons entered and forgotten"
                    + " once the password was given again")
    void formsAskForThePassword() {
        for (var path : forms().keySet()) {
            var asked = post(path);
            asked.then()
                    .statusCode(403)
                    .header("Cache-Control", containsString("no-store"))
                    .body(containsString("Confirm that it is you"))
                    .body(containsString("action=\"%s\"".formatted(path)));
        }
        assertThat(tokens.of(new Actor(registrar.id(), registrar.roles()))).isEmpty();
        assertThat(peopleUnchecked.findByLogin("guest.of." + registrar.login())).isEmpty();
        assertThat(peopleUnchecked.get(other.id()).active()).isTrue();
        assertThat(signIns.of(new Actor(registrar.id(), Set.of()))).hasSize(1);
    }

    @Test
    @DisplayName("7.5.3 · Programs are told what to do, and a file is not asked for in vain")
    void theApiTellsWhereToConfirm() {
        var guest = "{\"name\": \"Guest\", \"login\": \"guest.by.api\", \"roles\": [\"STUDENT\"]";
        for (var call :
                new String[][] {
                    {"people", guest + ", \"password\": \"" + PASSWORD + "\"}"},
                    {"people/invitations", guest + "}"},
                    {"people/%d/password-link", ""},
                    {"people/%d/forget", ""},
                    {"people/%d/sign-out", ""},
                    {"people/%d/second-factor/reset", ""}
                }) {
            byApi().header("If-Match", "\"0\"")
                    .body(call[1])
                    .post("/api/v1/" + call[0].formatted(other.id()))
                    .then()
                    .statusCode(403)
                    .body("type", equalTo("urn:ripewood:problem:confirm-first"))
                    .body("maybe", containsString("/api/v1/people/me/confirmation"));
        }
        byApi().body("{}").post("/api/v1/record").then().statusCode(403);
        BrowserSession.get("/record", session)
                .then()
                .body(containsString("/record/confirmation"), not(containsString("type=\"file\"")));
        session = BrowserSession.confirm(session, PASSWORD);
        byApi().body("{}").post("/api/v1/record").then().statusCode(400);
        BrowserSession.get("/record", session).then().body(containsString("type=\"file\""));
    }

    @Test
    void whatWasTypedIsKeptWhileThePasswordIsAsked() {
        var fields = new String[] {"name", "Bench \"tablet\" <1>", "scope", "READ", "days", "30"};
        var asked = post("/account/tokens", (Object[]) fields);
        asked.then()
                .body(containsString("name=\"name\" value=\"Bench &quot;tablet&quot; &lt;1&gt;\""))
                .body(containsString("name=\"days\" value=\"30\""));
        var wrong = post("/account/tokens", with(fields, "confirmPassword", "not my password"));
        wrong.then()
                .statusCode(400)
                .body(containsString("that is not your password"))
                .body(containsString("name=\"days\" value=\"30\""))
                .body(not(containsString("not my password")));
        var made = post("/account/tokens", with(fields, "confirmPassword", PASSWORD));
        made.then()
                .statusCode(200)
                .body(containsString("Your program's token"), not(containsString(PASSWORD)));
    }

    @Test
    @DisplayName("7.2.4 · A session goes on under another secret once it was confirmed")
    void aConfirmedSessionHasAnotherCookie() {
        var answer = BrowserSession.confirmation(session, PASSWORD);
        var cookie = answer.getDetailedCookie(BrowserSession.COOKIE);
        assertThat(cookie.getValue()).isNotEqualTo(session);
        assertThat(cookie.isHttpOnly()).isTrue();
        assertThat(cookie.getSameSite()).isEqualToIgnoringCase("strict");
        assertThat(cookie.getPath()).isEqualTo("/");
        BrowserSession.get("/account", session).then().statusCode(303);
        BrowserSession.get("/account", cookie.getValue()).then().statusCode(200);
        assertThat(signIns.of(new Actor(registrar.id(), Set.of()))).hasSize(1);
    }

    @Test
    void itHoldsForTenMinutesAndInThatBrowserOnly() {
        var elsewhere = BrowserSession.signIn(registrar.login(), PASSWORD);
        session = BrowserSession.confirm(session, PASSWORD);
        post("/account/calendar").then().statusCode(200);
        age(Confirmations.HOLDS.minusSeconds(20));
        post("/account/calendar").then().statusCode(200);
        age(Confirmations.HOLDS);
        post("/account/calendar").then().statusCode(403);
        session = elsewhere;
        post("/account/calendar").then().statusCode(403);
    }

    @Test
    void aProgramThatJustSignedInNeedNotConfirm() {
        var program =
                given().header("X-Ripewood", "1")
                        .redirects()
                        .follow(false)
                        .formParam("j_username", registrar.login())
                        .formParam("j_password", PASSWORD)
                        .post("/j_security_check")
                        .getCookie(BrowserSession.COOKIE);
        session = program;
        for (int minutes = 0; minutes < 30; minutes += 9) {
            byApi().body("{}").post("/api/v1/record").then().statusCode(400);
            age(Duration.ofMinutes(9));
        }
        age(Confirmations.HOLDS);
        byApi().body("{}").post("/api/v1/record").then().statusCode(403);
    }

    @Test
    @DisplayName("6.3.1 · Wrong passwords are held there as well")
    void guessingIsHeld() {
        for (int i = 0; i < SignInPause.MOST_FAILURES; i++) {
            assertThat(BrowserSession.confirmation(session, "guess " + i).statusCode())
                    .isEqualTo(400);
        }
        BrowserSession.confirmation(session, PASSWORD)
                .then()
                .statusCode(429)
                .body("type", equalTo("urn:ripewood:problem:too-many-tries"));
        post("/account/calendar", "confirmPassword", PASSWORD).then().statusCode(429);
    }

    @Test
    void aTokenConfirmsNothing() {
        var made =
                tokens.make(
                        new Actor(registrar.id(), registrar.roles()),
                        new NewApiToken("Program", ApiToken.Scope.READ_AND_WRITE, 9));
        given().header("Authorization", "Bearer " + made.secret())
                .contentType("application/json")
                .body(Map.of("password", PASSWORD))
                .post("/api/v1/people/me/confirmation")
                .then()
                .statusCode(403);
    }

    /** Forms that must not be acted on at once, with fields that would be taken. */
    private Map<String, Object[]> forms() {
        var guest = "guest.of." + registrar.login();
        var forms = new LinkedHashMap<String, Object[]>();
        forms.put("/account/sign-out-everywhere", new Object[0]);
        var mine = signIns.of(new Actor(registrar.id(), Set.of())).get(0).sessionId();
        forms.put("/account/sessions/%d/end".formatted(mine), new Object[0]);
        forms.put(
                "/account/tokens", new Object[] {"name", "Program", "scope", "READ", "days", "9"});
        forms.put("/account/calendar", new Object[0]);
        forms.put(
                "/people/invitations",
                new Object[] {"name", "Guest", "login", guest, "roles", "STUDENT"});
        forms.put(
                "/people",
                new Object[] {
                    "name", "Guest", "login", guest, "roles", "STUDENT", "password", PASSWORD
                });
        forms.put("/people/%d/password-link".formatted(other.id()), new Object[0]);
        forms.put(
                "/people/%d/forget".formatted(other.id()),
                new Object[] {"version", other.version(), "meant", "true"});
        forms.put("/people/%d/sign-out".formatted(other.id()), new Object[0]);
        forms.put("/people/sign-out", new Object[0]);
        forms.put("/people/%d/second-factor/reset".formatted(other.id()), new Object[0]);
        forms.put("/record/confirmation", new Object[0]);
        return forms;
    }

    private Response post(String path, Object... fields) {
        var sent = fields.length == 0 ? forms().getOrDefault(path, fields) : fields;
        return BrowserSession.post(path, session, sent);
    }

    private static Object[] with(String[] fields, String name, String value) {
        var all = new Object[fields.length + 2];
        System.arraycopy(fields, 0, all, 0, fields.length);
        all[fields.length] = name;
        all[fields.length + 1] = value;
        return all;
    }

    private io.restassured.specification.RequestSpecification byApi() {
        return given().cookie(BrowserSession.COOKIE, session)
                .header("X-Ripewood", "1")
                .contentType("application/json");
    }

    private void age(Duration by) {
        QuarkusTransaction.requiringNew()
                .run(
                        () ->
                                sessions.of(registrar.id())
                                        .forEach(
                                                row -> {
                                                    if (row.confirmedAt != null) {
                                                        row.confirmedAt = Instant.now().minus(by);
                                                    }
                                                }));
    }

    private Person entered(Role role) {
        var login = "left.open." + NEXT.incrementAndGet();
        return register.enter(OFFICE, new NewPerson("Orla Birk", login, PASSWORD, Set.of(role)));
    }
}
