package org.ripewood.platform;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.time.Duration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.Logged;
import org.ripewood.RawLine;

/**
 * Connections on which nothing comes, or too slowly, are closed (RFC 9112, 9.5); the times are
 * those of the profile, common practice has no number.
 */
@Tag("one-database")
@QuarkusTest
@TestProfile(DoorProfile.class)
class PatienceTest {

    /** Idle for 5 seconds, or a body for 3; the rest is for a busy machine. */
    private static final Duration IN_TIME = Duration.ofSeconds(15);

    private static final String FORM = "application/x-www-form-urlencoded";

    private static final String HEAD =
            """
            POST %s HTTP/1.1
            Host: localhost
            Content-Type: %s
            Content-Length: %d
            """;

    @Test
    void connectionsThatKeepSilentAreClosed() {
        try (var logged = new Logged();
                var nothing = new RawLine();
                var halfAHead = new RawLine();
                var answered = new RawLine();
                var halfABody = new RawLine()) {
            halfAHead.send("GET /sign-in HTTP/1.1\r\nHost: loc".getBytes(ISO_8859_1));
            answered.send(RawLine.lines("GET /q/health/live HTTP/1.1\nHost: localhost"));
            assertThat(answered.answer()).startsWith("HTTP/1.1 200 ");
            halfABody.send(RawLine.lines(HEAD.formatted("/j_security_check", FORM, 1_000)));
            for (var line : new RawLine[] {halfABody, nothing, halfAHead, answered}) {
                assertThat(line.isClosedWithin(IN_TIME)).isTrue();
            }
            assertThat(logged.errors()).isEmpty();
        }
    }

    /** Never silent, and never done. */
    @ParameterizedTest
    @CsvSource({
        "/j_security_check, application/x-www-form-urlencoded",
        "/api/v1/rehearsal/pots, application/json"
    })
    void aBodyThatDripsIsClosed(String address, String type) throws Exception {
        try (var logged = new Logged();
                var line = new RawLine()) {
            line.send(RawLine.lines(HEAD.formatted(address, type, 1_000)));
            var until = System.nanoTime() + IN_TIME.toNanos();
            while (!line.isClosedWithin(Duration.ofMillis(200))) {
                line.send(new byte[] {' '});
                assertThat(System.nanoTime()).as("in time").isLessThan(until);
            }
            assertThat(logged.errors()).isEmpty();
        }
    }

    /**
     * One that comes steadily and is done in time is heard, though it takes longer than a moment.
     */
    @Test
    void aBodyThatIsDoneInTimeIsHeard() throws Exception {
        try (var line = new RawLine()) {
            var body = "j_username=somebody&j_password=x";
            line.send(RawLine.lines(HEAD.formatted("/j_security_check", FORM, body.length())));
            for (var part : body.split("(?<=&)", -1)) {
                line.send(part.getBytes(ISO_8859_1));
                Thread.sleep(400);
            }
            assertThat(line.answer()).startsWith("HTTP/1.1 303 ");
        }
    }
}
