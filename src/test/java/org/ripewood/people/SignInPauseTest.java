package org.ripewood.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class SignInPauseTest {

    private Instant now = Instant.parse("2024-05-01T10:00:00Z");
    private final SignInPause pause = new SignInPause(() -> now);

    @Test
    void tenFailuresPauseALoginAndNoOther() {
        fail("elm", SignInPause.MOST_FAILURES - 1);
        assertThat(pause.isOn("elm")).isFalse();

        fail("elm", 1);
        assertThat(pause.isOn("elm")).isTrue();
        assertThat(pause.isOn("oak")).isFalse();
    }

    @Test
    void thePauseEndsByItself() {
        fail("elm", SignInPause.MOST_FAILURES);

        now = now.plus(SignInPause.WINDOW);
        assertThat(pause.isOn("elm")).isTrue();
        now = now.plus(Duration.ofSeconds(1));
        assertThat(pause.isOn("elm")).isFalse();
    }

    @Test
    void slowFailuresPauseNobody() {
        for (int i = 0; i < 100; i++) {
            fail("elm", 1);
            assertThat(pause.isOn("elm")).isFalse();
            now = now.plus(Duration.ofMinutes(2));
        }
    }

    @Test
    void signingInForgetsTheFailures() {
        fail("elm", SignInPause.MOST_FAILURES - 1);
        pause.forget("elm");
        fail("elm", SignInPause.MOST_FAILURES - 1);

        assertThat(pause.isOn("elm")).isFalse();
    }

    @Test
    void aFloodOfLoginsFillsNoMemory() {
        for (int i = 0; i < SignInPause.MOST_LOGINS + 500; i++) {
            fail("login" + i, 1);
        }
        assertThat(pause.loginsCounted()).isEqualTo(SignInPause.MOST_LOGINS);
    }

    private void fail(String login, int times) {
        for (int i = 0; i < times; i++) {
            pause.countFailure(login);
        }
    }
}
