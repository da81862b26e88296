package org.ripewood.platform;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
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

/** What a proxy says of a request is believed, and still has to make sense. */
@Tag("one-database")
@QuarkusTest
@TestProfile(DoorProfile.class)
class BehindAProxyTest {

    @Inject PersonRegistration register;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "X-Forwarded-Host: a\"b",
                "X-Forwarded-Host: <x>",
                "X-Forwarded-Host: a b",
                "X-Forwarded-Host: a/b",
                "X-Forwarded-Proto: ftp",
                "X-Forwarded-Proto: a\"b",
                "X-Forwarded-Proto:"
            })
    void aHostOrSchemeThatIsNoneIsRefused(String header) {
        for (var address : new String[] {"/sign-in", "/home", "/api/v1/trees"}) {
            try (var logged = new Logged()) {
                var answer =
                        RawLine.answer(
                                "GET %s HTTP/1.1\nHost: localhost\n%s".formatted(address, header),
                                "");
                assertThat(answer).startsWith("HTTP/1.1 400 ");
                assertThat(logged.errors()).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"school.example", "school.example:8443"})
    void aHostThatIsOneIsLedOnTo(String host) {
        var answer =
                RawLine.answer(
                        """
                        GET /home HTTP/1.1
                        Host: localhost
                        X-Forwarded-Proto: https
                        X-Forwarded-Host: %s
                        """
                                .formatted(host),
                        "");
        assertThat(answer).containsIgnoringCase("Location: https://%s/sign-in".formatted(host));
    }

    /** The page that was asked is the proxy's, whatever name it has for this service. */
    @ParameterizedTest
    @CsvSource({
        "https://school.example, school.example, 302",
        "https://school.example:443, school.example, 302",
        "https://school.example, school.example:443, 302",
        "https://school.example:8443, school.example:8443, 302",
        "http://school.example, school.example, 403",
        "https://school.example:8443, school.example, 403",
        "https://localhost, school.example, 403",
        "https://www.school.example, school.example, 403"
    })
    void whatAPageOfTheProxysMakesIsTaken(String origin, String host, int status) {
        var login = "by.proxy." + UUID.randomUUID();
        register.enter(
                new Actor(-1, Set.of(Role.REGISTRAR)),
                new NewPerson("Runa Voss", login, "three walnut shelves", Set.of(Role.STUDENT)));
        var body = "j_username=" + login + "&j_password=three+walnut+shelves";
        var answer =
                RawLine.answer(
                        """
                        POST /j_security_check HTTP/1.1
                        Host: localhost
                        Origin: %s
                        X-Forwarded-Proto: https
                        X-Forwarded-Host: %s
                        Content-Type: application/x-www-form-urlencoded
                        Content-Length: %d
                        """
                                .formatted(origin, host, body.length()),
                        body);
        assertThat(answer).startsWith("HTTP/1.1 " + status + " ");
    }

    /** RFC 6265bis, 4.1.3: bound by their names, and taken away as they were made. */
    @Test
    void cookiesCarryTheirPrefixes() {
        var login = "by.prefix." + UUID.randomUUID();
        register.enter(
                new Actor(-1, Set.of(Role.REGISTRAR)),
                new NewPerson("Runa Voss", login, "three walnut shelves", Set.of(Role.STUDENT)));
        var asked = given().redirects().follow(false).header("X-Forwarded-Proto", "https");
        var back = asked.get("/account").getDetailedCookie("__Host-ripewood-return");
        assertThat(back.isSecured() && back.isHttpOnly()).isTrue();
        assertThat(back.getPath()).isEqualTo("/");
        assertThat(back.getSameSite()).isEqualToIgnoringCase("strict");
        var signedIn =
                given().redirects()
                        .follow(false)
                        .header("X-Forwarded-Proto", "https")
                        .cookie(back.getName(), back.getValue())
                        .formParam("j_username", login)
                        .formParam("j_password", "three walnut shelves")
                        .post("/j_security_check");
        assertThat(signedIn.getHeader("Location")).endsWith("/account");
        var away = signedIn.getDetailedCookie("__Host-ripewood-return");
        assertThat(away.getMaxAge()).isZero();
        assertThat(away.getPath()).isEqualTo("/");
        assertThat(away.isSecured()).isTrue();
        assertThat(signedIn.getDetailedCookie("__Secure-ripewood-browser").isSecured()).isTrue();
    }
}
