package org.ripewood.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.ripewood.people.BrowserSession;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.signin.SignInPause;

/** A password chosen by a link that a registrar hands over. */
@QuarkusTest
class PasswordLinkTest {

    private static final AtomicInteger NEXT = new AtomicInteger();
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));
    private static final String CHOSEN = "a password of my own";
    private static final String NOBODYS = "A".repeat(43);

    @Inject PasswordLinks links;
    @Inject PersonRegistration register;
    @Inject PasswordLinkRows rows;
    @Inject SignInPause pause;

    @Test
    void whoIsInvitedChoosesAPasswordAndSignsIn() {
        var link = invite();
        assertThat(link.secret()).matches("[A-Za-z0-9_-]{43}");
        assertThat(Duration.between(Instant.now(), link.expiresAt()))
                .isBetween(Duration.ofDays(7).minusMinutes(1), Duration.ofDays(7));
        assertThat(links.invited(List.of(link.person().id()))).containsExactly(link.person().id());

        opened(link.secret()).then().statusCode(200).body(containsString("Choose a password"));
        choose(link.secret(), CHOSEN).then().statusCode(303).header("Location", endsWith("/home"));

        var session = BrowserSession.signIn(link.person().login(), CHOSEN);
        assertThat(session).isNotNull();
        assertThat(links.invited(List.of(link.person().id()))).isEmpty();
    }

    @Test
    void onlyTheHashOfALinkIsKept() {
        var link = invite();
        var kept = QuarkusTransaction.requiringNew().call(() -> rows.findById(link.person().id()));
        assertThat(kept.tokenHash).hasSize(64).doesNotContain(link.secret());
    }

    @Test
    void lookingDoesNotUseALinkUp() {
        var link = invite();
        for (int i = 0; i < 3; i++) {
            opened(link.secret()).then().statusCode(200);
        }
        choose(link.secret(), CHOSEN).then().statusCode(303);
    }

    @Test
    void aPasswordThatIsTooShortLeavesTheLinkAsItWas() {
        var link = invite();
        choose(link.secret(), "short")
                .then()
                .statusCode(400)
                .body(containsString("Choose a password"));
        choose(link.secret(), CHOSEN).then().statusCode(303);
    }

    @Test
    void whatIsUnknownUsedEndedOrTooOldIsAnsweredAlike() {
        var used = invite();
        choose(used.secret(), CHOSEN);
        var ended = invite();
        links.make(OFFICE, ended.person().id());
        var old = invite();
        age(old.person().id());
        var shutOut = invite();
        register.setActive(OFFICE, shutOut.person().id(), shutOut.person().version(), false);

        var told = opened(NOBODYS).asString();
        assertThat(told).contains("This link opens nothing").contains("ask a registrar");
        for (var link : List.of(used, ended, old, shutOut)) {
            opened(link.secret()).then().statusCode(404).body(equalTo(told));
            choose(link.secret(), CHOSEN).then().statusCode(404).body(equalTo(told));
        }
    }

    @Test
    void oneWhoIsLetInAgainIsNotLetInByAnOldLink() {
        var link = invite();
        var out = register.setActive(OFFICE, link.person().id(), link.person().version(), false);
        register.setActive(OFFICE, out.id(), out.version(), true);
        opened(link.secret()).then().statusCode(404);
    }

    @Test
    void aLinkForALostPasswordHoldsADayAndSignsOutEverywhere() {
        var person = invite();
        choose(person.secret(), CHOSEN);
        var login = person.person().login();
        var elsewhere = BrowserSession.signIn(login, CHOSEN);

        var link = links.make(OFFICE, person.person().id());
        assertThat(link.kind()).isEqualTo(PasswordLink.Kind.RESET);
        assertThat(Duration.between(Instant.now(), link.expiresAt()))
                .isBetween(Duration.ofHours(24).minusMinutes(1), Duration.ofHours(24));
        BrowserSession.get("/rehearsal/mine", elsewhere).then().statusCode(200);

        choose(link.secret(), "another of my own").then().statusCode(303);
        BrowserSession.get("/rehearsal/mine", elsewhere).then().statusCode(303);
        assertThat(BrowserSession.signIn(login, CHOSEN)).isNull();
        assertThat(BrowserSession.signIn(login, "another of my own")).isNotNull();
    }

    @Test
    void ofTwoWhoUseALinkAtOnceOneIsTurnedDown() throws Exception {
        var link = invite();
        var both = Executors.newFixedThreadPool(2);
        try {
            var answers =
                    both.invokeAll(
                            List.<Callable<Integer>>of(
                                    () -> choose(link.secret(), "chosen by one").statusCode(),
                                    () -> choose(link.secret(), "chosen by two").statusCode()));
            assertThat(List.of(answers.get(0).get(), answers.get(1).get()))
                    .containsExactlyInAnyOrder(303, 404);
        } finally {
            both.shutdownNow();
        }
    }

    @Test
    void askingForALinkTellsNothingOfWhoIsHere() {
        var person = invite().person();
        var known = wish(person.login());
        var again = wish(person.login());
        var unknown = wish("nobody.of.that.name");

        known.then().statusCode(200);
        assertThat(plain(unknown)).isEqualTo(plain(known)).isEqualTo(plain(again));
        assertThat(links.wishing(OFFICE)).extracting(Person::id).contains(person.id());
        links.make(OFFICE, person.id());
        assertThat(links.wishing(OFFICE)).extracting(Person::id).doesNotContain(person.id());
    }

    @Test
    void askingOverAndOverIsHeldAndStillTellsNothing() {
        var person = invite().person();
        var nobody = "nobody." + person.login();
        for (int i = 0; i < SignInPause.MOST_WISHES; i++) {
            wish(person.login()).then().statusCode(200);
            wish(nobody).then().statusCode(200);
        }
        var known = wish(person.login());
        known.then()
                .statusCode(429)
                .body(containsString("Too many tries"), containsString(person.login()));
        assertThat(plain(wish(nobody))).isEqualTo(plain(known));
        wish(person.login().toUpperCase(Locale.ROOT) + " ").then().statusCode(429);
    }

    @Test
    void aNetworkAsksForSoManyAndNoMore() {
        var network = UUID.randomUUID().toString();
        for (int i = 0; i < SignInPause.MOST_WISHES_FROM_ADDRESS; i++) {
            assertThat(pause.begin(SignInPause.Try.ofWish("nobody." + i, network))).isEmpty();
        }
        assertThat(pause.begin(SignInPause.Try.ofWish("nobody.else", network))).isPresent();
        assertThat(pause.begin(SignInPause.Try.ofLogin("nobody.else", network))).isEmpty();
        assertThat(pause.begin(SignInPause.Try.ofWish("nobody.else", "another"))).isEmpty();
    }

    @Test
    void theAddressOfALinkGoesNowhereElse() {
        var answer = opened(invite().secret());
        assertThat(answer.header("Referrer-Policy")).isEqualTo("strict-origin");
        assertThat(answer.header("Cache-Control")).isEqualTo("no-store");
    }

    @Test
    void onlyRegistrarsMakeLinks() {
        var person = invite().person();
        var self = new Actor(person.id(), person.roles());
        var refused =
                catchThrowableOfType(Refused.class, () -> links.make(self, person.id())).problem();
        assertThat(refused.status()).isEqualTo(403);
    }

    private PasswordLink invite() {
        return links.invite(
                OFFICE,
                new NewGuest("Edda Fenn", "guest." + NEXT.incrementAndGet(), Set.of(Role.STUDENT)));
    }

    private void age(long personId) {
        QuarkusTransaction.requiringNew()
                .run(() -> rows.findById(personId).expiresAt = Instant.now().minusSeconds(1));
    }

    private static Response opened(String secret) {
        return BrowserSession.get("/password/" + secret, "");
    }

    private static Response choose(String secret, String password) {
        return BrowserSession.post("/password/" + secret, "", "newPassword", password);
    }

    private static Response wish(String login) {
        return BrowserSession.post("/password/forgotten", "", "login", login);
    }

    /** Without the form tokens, which differ each time. */
    private static String plain(Response answer) {
        return answer.asString().replaceAll("value=\"[^\"]*\"", "");
    }
}
