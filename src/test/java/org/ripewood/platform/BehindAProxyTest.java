package org.ripewood.platform;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.Logged;
import org.ripewood.RawLine;

/** What a proxy says of a request is believed, and still has to make sense. */
@QuarkusTest
@TestProfile(DoorProfile.class)
class BehindAProxyTest {

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
}
