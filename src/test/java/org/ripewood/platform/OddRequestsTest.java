package org.ripewood.platform;

import static io.restassured.RestAssured.given;
import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.Logged;
import org.ripewood.RawLine;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.people.NewPerson;

/**
 * Requests of strangers that no browser makes: each is answered in words, and none is written into
 * the log as a fault of the service, or a stranger could fill it. OWASP ASVS 5.0, 16.5.1.
 */
@Tag("one-database")
@QuarkusTest
class OddRequestsTest {

    private static final String PARTS = "multipart/form-data; boundary=";
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));

    @Inject PersonRegistration register;

    private static String answer(String head, String body) {
        try (var logged = new Logged()) {
            var answer = RawLine.answer(head, body);
            assertThat(logged.errors()).isEmpty();
            return answer;
        }
    }

    private static String form(String address, String type, String body) {
        return answer(
                "POST %s HTTP/1.1\nHost: localhost\nContent-Type:%s\nContent-Length: %d"
                        .formatted(address, type.isEmpty() ? "" : " " + type, body.length()),
                body);
    }

    /** RFC 9112, 3.2: a server MUST answer 400 to no host, to two and to one that is none. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Host:",
                "Host: a\"b",
                "Host: a b/c",
                "Host: <x>",
                "Host: a:99999",
                "Host: a@b",
                "Host: a\nHost: b"
            })
    void aHostThatIsNone(String host) {
        for (var address : new String[] {"/sign-in", "/home", "/api/v1/trees", "/q/metrics"}) {
            var answer = answer("GET %s HTTP/1.1\n%s".formatted(address, host), "");
            assertThat(answer).startsWith("HTTP/1.1 400 ").contains("The host is missing");
            assertThat(answer).contains("Content-Security-Policy: default-src");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"localhost", "tree-house_1.example:8080", "192.0.2.7", "[2001:db8::1]:80"})
    void aHostThatIsOne(String host) {
        assertThat(answer("GET /rehearsal/open HTTP/1.1\nHost: " + host, ""))
                .startsWith("HTTP/1.1 200 ");
    }

    /** Each says which version was seen, and only one of them can be right. */
    @Test
    void aVersionSaidTwice() {
        var answer =
                answer(
                        "DELETE /api/v1/photos/1 HTTP/1.1\nHost: localhost\nX-Ripewood: 1\n"
                                + "If-Match: \"1\"\nIf-Match: \"2\"",
                        "");
        assertThat(answer)
                .startsWith("HTTP/1.1 400 ")
                .contains("expected one version, found the header 2 times");
    }

    /**
     * RFC 1945 knew no host; a machine that only asks whether the service is up may be that old.
     */
    @Test
    void anOldMachineIsToldOnlyWhetherItIsUp() {
        assertThat(answer("GET /q/health/ready HTTP/1.0", "")).contains(" 200 ");
        assertThat(answer("GET /home HTTP/1.0", "")).contains(" 400 ").contains("The host is");
    }

    /** RFC 9110, 15.6.6. */
    @ParameterizedTest
    @ValueSource(strings = {"2.0", "3.7", "0.9", "1.7"})
    void aVersionThatIsNotSpoken(String version) {
        assertThat(answer("GET /home HTTP/" + version + "\nHost: localhost", ""))
                .contains(" 505 ")
                .contains("Maybe send it by HTTP/1.1.");
    }

    @ParameterizedTest
    @CsvSource({
        "'', 400",
        "x, 400",
        "/, 400",
        "a/b/c, 400",
        "application/json; charset, 400",
        "multipart/form-data, 400",
        "multipart/form-data; boundary=, 400",
        "'multipart/form-data; boundary=\"', 400",
        "'multipart/form-data; boundary=\"\"', 400",
        "'Multipart/Form-Data; a=b; Boundary=', 400",
        "application/x-www-form-urlencoded; charset=bogus, 415",
        "'application/x-www-form-urlencoded; charset=\"?\"', 415",
    })
    void aTypeThatIsNone(String type, int status) {
        for (var address : new String[] {"/password/forgotten", "/api/v1/trees", "/sign-in"}) {
            var answer = form(address, type, "login=%20");
            assertThat(answer).startsWith("HTTP/1.1 " + status + " ");
            assertThat(answer).contains(status == 400 ? "Content-Type" : "Maybe send it in UTF-8.");
        }
    }

    @Test
    void aTypeThatIsNoneOfNothing() {
        assertThat(answer("GET /rehearsal/open HTTP/1.1\nHost: localhost\nContent-Type:", ""))
                .startsWith("HTTP/1.1 200 ");
        assertThat(
                        answer(
                                "GET /rehearsal/open HTTP/1.1\nHost: localhost\nContent-Type: "
                                        + PARTS,
                                ""))
                .startsWith("HTTP/1.1 400 ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "application/x-www-form-urlencoded",
                "Application/X-WWW-Form-Urlencoded ; CharSet=utf-8",
                "application/x-www-form-urlencoded;charset=\"UTF-8\";"
            })
    void aTypeMeansTheSameInCapitals(String type) {
        // the token of the form is looked for, and is missing
        assertThat(form("/password/forgotten", type, "login=a")).contains("HTTP/1.1 400 ");
    }

    @Test
    void tooManyFields() {
        var token = given().get("/rehearsal/open").getCookie("ripewood-csrf");
        var body = "csrf-token=" + token + "&a=b".repeat(1_001);
        var answer =
                answer(
                        """
                        POST /password/forgotten HTTP/1.1
                        Host: localhost
                        Cookie: ripewood-csrf=%s
                        Content-Type: application/x-www-form-urlencoded
                        Content-Length: %d
                        """
                                .formatted(token, body.length()),
                        body);
        assertThat(answer).startsWith("HTTP/1.1 413 ").contains("at most 1000 fields");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "j_username=somebody",
                "j_password=something",
                "j_username=%zz&j_password=%zz",
                "a=b&"
            })
    void aSignInWithoutAllOfItIsAWrongOne(String body) {
        for (int times : new int[] {1, 300}) {
            assertThat(
                            form(
                                    "/j_security_check",
                                    "application/x-www-form-urlencoded",
                                    body.repeat(times)))
                    .startsWith("HTTP/1.1 303 ")
                    .containsIgnoringCase("Location: /sign-in?wrong=yes");
        }
    }

    /** The framework takes whatever ends like it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/x/j_security_check",
                "/api/v1/trees/j_security_check",
                "/j_security_check/"
            })
    void oneAddressSignsIn(String address) {
        var login = "one.address." + UUID.randomUUID();
        register.enter(
                OFFICE,
                new NewPerson("Runa Voss", login, "three walnut shelves", Set.of(Role.STUDENT)));
        var answer =
                form(
                        address,
                        "application/x-www-form-urlencoded",
                        "j_username=" + login + "&j_password=three+walnut+shelves");
        assertThat(answer).startsWith("HTTP/1.1 404 ").doesNotContainIgnoringCase("set-cookie");
    }

    /** What somebody planted there leads nowhere, and does not spoil the sign-in. */
    @Test
    void anAddressOfAnotherSiteToComeBackToIsForgotten() {
        var login = "come.back." + UUID.randomUUID();
        register.enter(
                OFFICE,
                new NewPerson("Runa Voss", login, "three walnut shelves", Set.of(Role.STUDENT)));
        for (var planted :
                new String[] {"https://other.example/", "x", "http://localhost.other/"}) {
            var body = "j_username=" + login + "&j_password=three+walnut+shelves";
            var answer =
                    answer(
                            """
                            POST /j_security_check HTTP/1.1
                            Host: localhost
                            Cookie: ripewood-return=%s
                            Content-Type: application/x-www-form-urlencoded
                            Content-Length: %d
                            """
                                    .formatted(planted, body.length()),
                            body);
            assertThat(answer)
                    .startsWith("HTTP/1.1 302 ")
                    .containsIgnoringCase("location: http://localhost/\r\n")
                    .contains("ripewood-session=");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "/password/forgotten, application/x-www-form-urlencoded",
        "/password/forgotten, multipart/form-data; boundary=x",
        "/api/v1/rehearsal/pots, application/json",
        "/j_security_check, application/x-www-form-urlencoded"
    })
    void aBodyThatBreaksOff(String address, String type) throws Exception {
        try (var logged = new Logged()) {
            try (var line = new RawLine()) {
                line.send(
                        RawLine.lines(
                                """
                                POST %s HTTP/1.1
                                Host: localhost
                                Content-Type: %s
                                Content-Length: 1000
                                """
                                        .formatted(address, type)));
                line.send("{\"a".getBytes(ISO_8859_1));
                Thread.sleep(200);
            }
            Thread.sleep(500);
            assertThat(logged.errors()).isEmpty();
        }
    }

    /** A comma is what a cookie cannot hold. */
    @ParameterizedTest
    @ValueSource(strings = {"", "?a=1,2", "?a=%22%3B", "/x?a=1,2"})
    void whoReadsTheMetersIsAskedForATokenAtOnce(String rest) {
        var asked = new ArrayList<String>();
        asked.add("");
        asked.add("\nAuthorization: Bearer no-such-token");
        asked.add("\nCookie: ripewood-session=no-such-session");
        for (var by : asked) {
            var answer = answer("GET /q/metrics" + rest + " HTTP/1.1\nHost: localhost" + by, "");
            assertThat(answer)
                    .startsWith("HTTP/1.1 401 ")
                    .contains("WWW-Authenticate: Bearer\r\n", "application/problem+json")
                    .contains("urn:ripewood:problem:sign-in-needed")
                    .doesNotContainIgnoringCase("\r\nlocation:")
                    .doesNotContain("ripewood_tree");
        }
    }
}
