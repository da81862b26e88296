package org.ripewood.secondfactor;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.Database;
import org.ripewood.accounts.ApiToken;
import org.ripewood.accounts.ApiTokens;
import org.ripewood.accounts.NewApiToken;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.people.BrowserSession;
import org.ripewood.people.NewPerson;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** A school that wants a second factor of its registrars. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SecondFactorWantedTest.OfRegistrars.class)
class SecondFactorWantedTest {

    public static class OfRegistrars implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            var settings = new HashMap<String, String>(Database.named("second-factor"));
            settings.put("ripewood.second-factor-for", "registrars");
            return settings;
        }
    }

    private static final AtomicInteger NEXT = new AtomicInteger();
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));
    private static final String PASSWORD = "kiln fern marble";

    @Inject PersonRegistration register;
    @Inject SecondFactors factors;
    @Inject SecondFactorRows rows;
    @Inject SealedSecrets sealed;
    @Inject ApiTokens tokens;

    private Person registrar;
    private String session;

    @BeforeEach
    void aRegistrarSignsIn() {
        registrar = entered(Role.REGISTRAR);
        session = BrowserSession.signIn(registrar.login(), PASSWORD);
    }

    @Test
    void everyPageLeadsToSettingItUp() {
        for (var path :
                List.of(
                        "/home",
                        "/people",
                        "/account",
                        "/lessons",
                        "/record",
                        "/people/%d/forget".formatted(registrar.id()))) {
            assertThat(BrowserSession.get(path, session).header("Location"))
                    .as(path)
                    .endsWith("/account/second-factor");
        }
        for (var path : List.of("/account/tokens", "/account/calendar", "/people/invitations")) {
            BrowserSession.post(path, session, "name", "x", "scope", "READ", "days", "9")
                    .then()
                    .statusCode(303)
                    .header("Location", endsWith("/account/second-factor"));
        }
        BrowserSession.get("/account/second-factor", session)
                .then()
                .statusCode(200)
                .body(containsString("Everything else waits"));
        BrowserSession.post("/sign-out", session).then().header("Location", endsWith("/sign-in"));
    }

    @Test
    void theApiSaysWhy() {
        for (var path : List.of("people/me", "trees", "record", "audit")) {
            BrowserSession.get("/api/v1/" + path, session)
                    .then()
                    .statusCode(403)
                    .body("type", equalTo("urn:ripewood:problem:second-factor-first"));
        }
        assertThat(BrowserSession.get("/q/metrics", session).statusCode()).isNotEqualTo(200);
    }

    @Test
    void onceItIsOnAllIsOpenAndItStaysOn() {
        BrowserSession.post("/account/second-factor/begin", session).then().statusCode(403);
        var begun =
                BrowserSession.post(
                        "/account/second-factor/begin", session, "confirmPassword", PASSWORD);
        begun.then().statusCode(200).body(containsString("class=\"qr\""));
        session = begun.getCookie(BrowserSession.COOKIE);
        BrowserSession.post("/account/second-factor/on", session, "code", code())
                .then()
                .statusCode(200);
        BrowserSession.get("/people", session).then().statusCode(200);
        var actor = new Actor(registrar.id(), registrar.roles());
        var refused = catchThrowableOfType(Refused.class, () -> factors.turnOff(actor));
        assertThat(refused.problem().status()).isEqualTo(409);
    }

    @Test
    void othersAndProgramsGoOnAsBefore() {
        var student = BrowserSession.signIn(entered(Role.STUDENT).login(), PASSWORD);
        BrowserSession.get("/home", student).then().statusCode(200);
        var actor = new Actor(registrar.id(), registrar.roles());
        var made = tokens.make(actor, new NewApiToken("Station", ApiToken.Scope.READ, 9));
        given().header("Authorization", "Bearer " + made.secret())
                .get("/api/v1/audit")
                .then()
                .statusCode(200);
    }

    private String code() {
        return io.quarkus.narayana.jta.QuarkusTransaction.requiringNew()
                .call(
                        () -> {
                            var kept = rows.findById(registrar.id()).sealedSecret;
                            var secret = sealed.open(registrar.id(), kept).orElseThrow();
                            return AppCodes.code(secret, Instant.now());
                        });
    }

    private Person entered(Role role) {
        var login = "wanted." + NEXT.incrementAndGet();
        return register.enter(OFFICE, new NewPerson("Enna Rell", login, PASSWORD, Set.of(role)));
    }
}
