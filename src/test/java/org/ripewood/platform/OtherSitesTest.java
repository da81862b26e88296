package org.ripewood.platform;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.RawLine;
import org.ripewood.accounts.ApiToken;
import org.ripewood.accounts.ApiTokens;
import org.ripewood.accounts.NewApiToken;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.people.NewPerson;
import org.ripewood.people.Person;

/**
 * What another site's page can make a browser send: forms and simple requests, with the browser's
 * cookies. OWASP ASVS 5.0, 3.5.1 and 3.5.3.
 */
@Tag("one-database")
@QuarkusTest
class OtherSitesTest {

    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));
    private static final String PASSWORD = "three walnut shelves";
    private static final String FORM = "application/x-www-form-urlencoded";
    private static final Pattern FIELD = Pattern.compile("name=\"csrf-token\" value=\"([^\"]+)\"");

    @Inject PersonRegistration register;
    @Inject ApiTokens tokens;

    private Person person;
    private String session;

    @BeforeEach
    void somebodyIsSignedIn() {
        person = enter();
        session = signIn(person).getCookie("ripewood-session");
    }

    private Person enter() {
        var login = "other.sites." + UUID.randomUUID();
        return register.enter(
                OFFICE, new NewPerson("Runa Voss", login, PASSWORD, Set.of(Role.REGISTRAR)));
    }

    private static RequestSpecification sent() {
        return given().redirects().follow(false);
    }

    private static Response signIn(Person person, String... headers) {
        var request = sent();
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        return request.formParam("j_username", person.login())
                .formParam("j_password", PASSWORD)
                .post("/j_security_check");
    }

    private Response page(String path, String session) {
        return sent().cookie("ripewood-session", session).get(path);
    }

    /** As bytes, since a browser sends a type as it is told. */
    private String signOut(String type, String cookie, String field) {
        var body = "csrf-token=" + field;
        return RawLine.answer(
                """
                POST /sign-out HTTP/1.1
                Host: localhost
                Cookie: ripewood-session=%s; ripewood-csrf=%s
                Content-Type: %s
                Content-Length: %d
                """
                        .formatted(session, cookie, type, body.length()),
                body);
    }

    @Test
    void aFormsOwnTokenIsTaken() {
        var page = page("/account", session);
        var field = FIELD.matcher(page.asString());
        assertThat(field.find()).isTrue();
        var cookie = page.getCookie("ripewood-csrf");
        assertThat(field.group(1)).isEqualTo(cookie);
        assertThat(signOut(FORM, cookie, cookie)).startsWith("HTTP/1.1 303 ");
    }

    /** Two pages open, and pictures on them: each form stays good. */
    @Test
    void pagesBesideItLeaveAFormGood() {
        var cookie = page("/account", session).getCookie("ripewood-csrf");
        for (var path : new String[] {"/home", "/api/v1/trees", "/style.css", "/nothing"}) {
            var answer =
                    sent().cookie("ripewood-session", session)
                            .cookie("ripewood-csrf", cookie)
                            .get(path);
            assertThat(answer.cookies().getOrDefault("ripewood-csrf", cookie)).isEqualTo(cookie);
        }
        assertThat(signOut(FORM, cookie, cookie)).startsWith("HTTP/1.1 303 ");
    }

    /** Somebody who can plant a cookie makes the pair, or takes one of their own. */
    @Test
    void aPairMadeElsewhereIsRefused() {
        var anothers = page("/account", signIn(enter()).getCookie("ripewood-session"));
        var nobodys = sent().get("/rehearsal/open");
        for (var pair :
                new String[] {
                    "c2l4dGVlbiBieXRlcy4uLg",
                    "A".repeat(64),
                    anothers.getCookie("ripewood-csrf"),
                    nobodys.getCookie("ripewood-csrf")
                }) {
            var answer = signOut(FORM, pair, pair);
            assertThat(answer)
                    .startsWith("HTTP/1.1 400 ")
                    .contains("Maybe the page was open too long");
        }
        assertThat(page("/account", session).statusCode()).isEqualTo(200);
    }

    /**
     * RFC 9110, 8.3.1: a media type means the same in capitals; a browser sends it as it is told.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Application/X-WWW-Form-Urlencoded",
                "application/X-www-form-urlencoded;a=b",
                "Multipart/form-data; boundary=x",
                "multipart/Form-Data; boundary=x",
                "text/plain",
                "TEXT/plain"
            })
    void aFormOfAnotherKindNeedsItsTokenToo(String type) {
        var cookie = page("/account", session).getCookie("ripewood-csrf");
        assertThat(signOut(type, cookie, "x")).matches("(?s)HTTP/1.1 4(00|15) .*");
        assertThat(page("/account", session).statusCode()).isEqualTo(200);
    }

    @Test
    void theTokenComesWithPagesOnlyAndGoesToOurOwn() {
        var cookie = page("/account", session).getDetailedCookie("ripewood-csrf");
        assertThat(cookie.getSameSite()).isEqualToIgnoringCase("strict");
        assertThat(cookie.isHttpOnly()).isTrue();
        for (var path : new String[] {"/api/v1/trees", "/api/v1/people/me", "/calendar/x.ics"}) {
            assertThat(page(path, session).cookies()).doesNotContainKey("ripewood-csrf");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Sec-Fetch-Site: cross-site",
                "Sec-Fetch-Site: same-site",
                "Sec-Fetch-Site: something-new",
                "Origin: https://other.example",
                "Origin: null",
                "Origin: http://127.0.0.1",
                "Origin: http://127.0.0.1.other.example:PORT",
                "Origin: http://127.0.0.1:PORT.other.example",
                "Origin: http://other@127.0.0.1:PORT",
                "Origin: ftp://127.0.0.1:PORT",
                "Origin: http://localhost:PORT",
                "Origin: "
            })
    void whatAnotherSitesPageMakesIsRefused(String header) {
        var name = header.replaceFirst(":.*", "");
        var value = header.replaceFirst("^[^:]*: ", "").replace("PORT", "" + RestAssured.port);
        var login = signIn(person, name, value);
        assertThat(login.statusCode()).isEqualTo(403);
        assertThat(login.cookies()).isEmpty();
        assertThat(login.asString()).contains("From another site");

        var cookie = page("/account", session).getCookie("ripewood-csrf");
        sent().cookie("ripewood-session", session)
                .cookie("ripewood-csrf", cookie)
                .header(name, value)
                .formParam("csrf-token", cookie)
                .post("/sign-out")
                .then()
                .statusCode(403);
        sent().cookie("ripewood-session", session)
                .header("X-Ripewood", "1")
                .header(name, value)
                .contentType("application/json")
                .body("{\"name\": \"Tray\"}")
                .post("/api/v1/rehearsal/pots")
                .then()
                .statusCode(403)
                .contentType("application/problem+json");
        // to be led here from elsewhere is what links are for
        assertThat(
                        sent().cookie("ripewood-session", session)
                                .header(name, value)
                                .get("/account")
                                .statusCode())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Sec-Fetch-Site: same-origin",
                "Sec-Fetch-Site: none",
                "Origin: http://127.0.0.1:PORT",
                "Origin: HTTP://127.0.0.1:PORT",
                // a proxy that speaks TLS and says nothing of it
                "Origin: https://127.0.0.1:PORT"
            })
    void whatOurOwnPagesMakeIsTaken(String header) {
        var name = header.replaceFirst(":.*", "");
        var value = header.replaceFirst("^[^:]*: ", "").replace("PORT", "" + RestAssured.port);
        assertThat(signIn(person, name, value).statusCode()).isEqualTo(302);
    }

    /** A browser sends no token by itself. */
    @Test
    void whoSendsATokenMayBeAnywhere() {
        var actor = new Actor(person.id(), person.roles());
        var token = tokens.make(actor, new NewApiToken("Board", ApiToken.Scope.READ_AND_WRITE, 1));
        sent().header("Authorization", "Bearer " + token.secret())
                .header("Origin", "https://other.example")
                .contentType("application/json")
                .body("{\"name\": \"Tray\"}")
                .post("/api/v1/rehearsal/pots")
                .then()
                .statusCode(200);
        sent().header("Authorization", "Bearer nothing")
                .header("Origin", "https://other.example")
                .cookie("ripewood-session", session)
                .header("X-Ripewood", "1")
                .contentType("application/json")
                .body("{\"name\": \"Tray\"}")
                .post("/api/v1/rehearsal/pots")
                .then()
                .statusCode(401);
        sent().header("Authorization", "Bearer " + token.secret())
                .header("Origin", "https://other.example")
                .formParam("j_username", person.login())
                .formParam("j_password", PASSWORD)
                .post("/j_security_check")
                .then()
                .statusCode(403);
    }
}
