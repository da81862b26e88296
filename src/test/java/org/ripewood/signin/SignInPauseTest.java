package org.ripewood.signin;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Which tries are held, and for how long. Each test has names and networks of its own. */
@QuarkusTest
class SignInPauseTest {

    @Inject SignInPause pause;
    @Inject SignInFailures failures;

    private final String elm = "elm." + UUID.randomUUID();
    private final String oak = "oak." + UUID.randomUUID();

    @Test
    void tenFailuresPauseALoginAndNoOther() {
        fail(elm, SignInPause.MOST_FAILURES);
        assertThat(pause.begin(by(oak))).isEmpty();
        assertThat(pause.begin(by(elm)))
                .hasValueSatisfying(
                        until ->
                                assertThat(Duration.between(Instant.now(), until))
                                        .isBetween(
                                                SignInPause.WINDOW.minusMinutes(1),
                                                SignInPause.WINDOW));
    }

    @Test
    void thePauseEndsByItself() {
        fail(elm, SignInPause.MOST_FAILURES);
        age(elm, SignInPause.WINDOW.minusSeconds(20));
        assertThat(pause.begin(by(elm))).isPresent();
        age(elm, SignInPause.WINDOW);
        assertThat(pause.begin(by(elm))).isEmpty();
    }

    @Test
    void triesDuringAPauseDoNotLengthenIt() {
        fail(elm, SignInPause.MOST_FAILURES);
        age(elm, Duration.ofMinutes(10));
        var first = pause.begin(by(elm)).orElseThrow();
        assertThat(pause.begin(by(elm))).contains(first);
    }

    @Test
    void signingInForgetsTheFailures() {
        fail(elm, SignInPause.MOST_FAILURES - 1);
        pause.succeeded(by(elm));
        fail(elm, SignInPause.MOST_FAILURES - 1);
        assertThat(pause.begin(by(elm))).isEmpty();
    }

    @Test
    void aBrowserKnownFromBeforeCountsForItself() {
        fail(elm, SignInPause.MOST_FAILURES);
        var known = SignInPause.Try.ofBrowser(elm, "a secret", network());
        for (int i = 0; i < SignInPause.MOST_FAILURES; i++) {
            assertThat(pause.begin(known)).isEmpty();
        }
        assertThat(pause.begin(known)).isPresent();
    }

    @Test
    void manyFailuresWithManyNamesPauseANetwork() {
        var network = network();
        for (int i = 0; i < SignInPause.MOST_FROM_ADDRESS; i++) {
            assertThat(pause.begin(SignInPause.Try.ofLogin(elm + i, network))).isEmpty();
        }
        assertThat(pause.begin(SignInPause.Try.ofLogin(oak, network))).isPresent();
        assertThat(pause.begin(SignInPause.Try.ofLogin(oak, network()))).isEmpty();
        assertThat(pause.begin(SignInPause.Try.ofBrowser(oak, "a secret", network))).isEmpty();
    }

    @Test
    void whatIsCountedNamesNobody() {
        fail(elm, 1);
        var kept =
                QuarkusTransaction.requiringNew()
                        .call(() -> failures.list("loginKey", by(elm).loginKey()).get(0));
        assertThat(kept.loginKey).hasSize(64);
        assertThat(kept.addressKey).hasSize(64);
    }

    @Test
    void failuresTooOldToCountAreCleared() {
        fail(elm, 3);
        age(elm, SignInPause.WINDOW.plusSeconds(1));
        pause.succeeded(by(oak));
        var left =
                QuarkusTransaction.requiringNew()
                        .call(() -> failures.count("loginKey", by(elm).loginKey()));
        assertThat(left).isZero();
    }

    private void fail(String login, int times) {
        for (int i = 0; i < times; i++) {
            assertThat(pause.begin(by(login))).isEmpty();
        }
    }

    private static SignInPause.Try by(String login) {
        return SignInPause.Try.ofLogin(login, network());
    }

    private static String network() {
        return UUID.randomUUID().toString();
    }

    private void age(String login, Duration by) {
        QuarkusTransaction.requiringNew()
                .run(
                        () ->
                                failures.list("loginKey", by(login).loginKey())
                                        .forEach(row -> row.failedAt = Instant.now().minus(by)));
    }
}
