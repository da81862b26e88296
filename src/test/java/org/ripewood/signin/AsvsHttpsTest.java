package org.ripewood.signin;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.Database;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.people.NewPerson;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;

/** What of OWASP ASVS 5.0.0 holds behind a proxy that speaks TLS. */
@Tag("one-database")
@QuarkusTest
@TestProfile(AsvsHttpsTest.BehindTls.class)
class AsvsHttpsTest {

    public static class BehindTls implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            var settings = new HashMap<String, String>(Database.named("behind-tls"));
            settings.put("ripewood.https", "true");
            return settings;
        }
    }

    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));

    @Inject PersonRegistration register;
    @Inject SignInPause pause;

    @Test
    @DisplayName(
            "3.3.1, 3.3.3 · Cookies go by TLS only, to this host only, and say so by their name")
    void cookiesAreBoundToHostAndTls() {
        register.enter(
                OFFICE,
                new NewPerson("Tord Ask", "by.tls", "quite a long password", Set.of(Role.STUDENT)));
        var answer =
                byTls().formParam("j_username", "by.tls")
                        .formParam("j_password", "quite a long password")
                        .post("/j_security_check");
        var session = answer.getDetailedCookie("__Host-ripewood-session");
        assertThat(session.isSecured()).isTrue();
        assertThat(session.getPath()).isEqualTo("/");
        assertThat(session.getDomain()).isNull();
        assertThat(answer.getDetailedCookie("__Secure-ripewood-browser").isSecured()).isTrue();

        var page = byTls().cookie(session.getName(), session.getValue()).get("/account");
        assertThat(page.statusCode()).isEqualTo(200);
        var form = page.getDetailedCookie("__Host-ripewood-csrf");
        assertThat(form.isSecured()).isTrue();
        assertThat(form.getPath()).isEqualTo("/");
    }

    @Test
    @DisplayName("3.4.1 · By TLS a browser is told to come by TLS for a year; without it, nothing")
    void browsersAreToldToComeByTls() {
        for (var path : List.of("/sign-in", "/style.css", "/api/v1/people/me")) {
            assertThat(byTls().get(path).header("Strict-Transport-Security"))
                    .as(path)
                    .isEqualTo("max-age=31536000; includeSubDomains");
            assertThat(given().get(path).header("Strict-Transport-Security")).as(path).isNull();
        }
    }

    /** Addresses are those kept for documentation (RFC 5737). */
    @Test
    @DisplayName(
            "4.1.3 · Whom the proxy itself was asked by counts, whatever a request claims before it:"
                    + " a hundred wrong sign-ins hold that network and no other")
    void aForgedAddressHidesNobody() {
        var network = ClientNetwork.of("203.0.113.9");
        for (int i = 2; i < SignInPause.MOST_FROM_ADDRESS; i++) {
            pause.begin(SignInPause.Try.ofLogin("nobody.at.all." + i, network));
        }
        wrong("192.0.2.1, 203.0.113.9", 0);
        wrong("192.0.2.2, 203.0.113.9", 1);
        assertThat(wrong("192.0.2.250, 203.0.113.9", 250)).contains("paused");
        assertThat(wrong("203.0.113.9, 198.51.100.4", 251)).doesNotContain("paused");
    }

    private static String wrong(String forwardedFor, int name) {
        return byTls().header("X-Forwarded-For", forwardedFor)
                .formParam("j_username", "nobody." + name)
                .formParam("j_password", "a guess")
                .post("/j_security_check")
                .header("Location");
    }

    private static RequestSpecification byTls() {
        return given().redirects().follow(false).header("X-Forwarded-Proto", "https");
    }
}
