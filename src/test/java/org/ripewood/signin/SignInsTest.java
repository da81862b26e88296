package org.ripewood.signin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.endsWith;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.people.BrowserSession;
import org.ripewood.people.NewPerson;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;

/** Sessions end when and where they are said to. */
@QuarkusTest
class SignInsTest {

    private static final AtomicInteger NEXT = new AtomicInteger();
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));
    private static final String PASSWORD = "quite a long password";

    @Inject PersonRegistration register;
    @Inject SignIns signIns;
    @Inject SignInSessions rows;

    private Person person;
    private String here;
    private String there;

    @BeforeEach
    void signedInTwice() {
        var login = "often." + NEXT.incrementAndGet();
        var entered = new NewPerson("Arvid Lund", login, PASSWORD, Set.of(Role.STUDENT));
        person = register.enter(OFFICE, entered);
        here = BrowserSession.signIn(login, PASSWORD);
        there = BrowserSession.signIn(login, PASSWORD);
        assertThat(isOpen(here)).isTrue();
        assertThat(isOpen(there)).isTrue();
    }

    @Test
    void signingOutEndsTheSessionForWhoeverHasItsCookie() {
        BrowserSession.post("/sign-out", here)
                .then()
                .statusCode(303)
                .header("Location", endsWith("/sign-in"));
        assertThat(isOpen(here)).isFalse();
        assertThat(isOpen(there)).isTrue();
    }

    @Test
    void signingOutEverywhereEndsThemAll() {
        BrowserSession.post("/account/sign-out-everywhere", here, "confirmPassword", PASSWORD)
                .then()
                .statusCode(303);
        assertThat(isOpen(here)).isFalse();
        assertThat(isOpen(there)).isFalse();
    }

    @Test
    void oneSessionIsEndedByItselfAndOnlyOnesOwn() {
        var actor = new Actor(person.id(), person.roles());
        var open = signIns.of(actor);
        var page = BrowserSession.get("/account", here).asString();
        for (var session : open) {
            assertThat(page).contains("/account/sessions/%d/end".formatted(session.sessionId()));
        }
        assertThat(page).containsOnlyOnce(", this one");
        here = BrowserSession.confirm(here, PASSWORD);
        var theOther = open.get(0).sessionId();
        end(theOther).then().statusCode(303).header("Location", endsWith("/account#signed-in"));
        assertThat(isOpen(there)).isFalse();
        assertThat(isOpen(here)).isTrue();
        end(theOther).then().statusCode(404);
        end(open.get(1).sessionId()).then().statusCode(303);
        assertThat(isOpen(here)).isFalse();
    }

    private Response end(long sessionId) {
        return BrowserSession.post("/account/sessions/%d/end".formatted(sessionId), here);
    }

    @Test
    void aNewPasswordEndsEveryOtherSessionAtOnce() {
        BrowserSession.post(
                        "/account/password",
                        here,
                        "oldPassword",
                        PASSWORD,
                        "newPassword",
                        "another long password")
                .then()
                .statusCode(303);
        assertThat(isOpen(here)).isTrue();
        assertThat(isOpen(there)).isFalse();
    }

    @Test
    void whoIsShutOutAndLetInAgainSignsInAnew() {
        var out = register.setActive(OFFICE, person.id(), person.version(), false);
        register.setActive(OFFICE, person.id(), out.version(), true);
        assertThat(isOpen(here)).isFalse();
    }

    @Test
    void aSessionEndsAfterAWeekHoweverBusy() {
        age(Duration.ofDays(7).minusMinutes(5));
        assertThat(isOpen(here)).isTrue();
        age(Duration.ofDays(7));
        assertThat(isOpen(here)).isFalse();
        assertThat(signIns.of(new Actor(person.id(), person.roles()))).isEmpty();
    }

    @Test
    void onlyTheHashOfASessionIsKept() {
        var hashes =
                QuarkusTransaction.requiringNew()
                        .call(() -> rows.of(person.id()).stream().map(s -> s.secretHash).toList());
        assertThat(hashes).hasSize(2).allSatisfy(hash -> assertThat(hash).hasSize(64));
    }

    private void age(Duration by) {
        QuarkusTransaction.requiringNew()
                .run(
                        () ->
                                rows.of(person.id())
                                        .forEach(row -> row.signedInAt = Instant.now().minus(by)));
    }

    private static boolean isOpen(String session) {
        return BrowserSession.get("/rehearsal/mine", session).statusCode() == 200;
    }
}
