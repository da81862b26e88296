package org.ripewood.platform.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class SecretAddressTest {

    @ParameterizedTest
    @CsvSource({
        "/calendar/aSecret.ics, /calendar/…",
        "//calendar//aSecret.ics, //calendar//…",
        "/password/aSecret, /password/…",
        "/account/password, /account/password",
        "/trees/7/calendar, /trees/7/calendar",
        "/home, /home"
    })
    void anAddressThatIsASecretIsNotLogged(String path, String logged) {
        assertThat(ProblemMappers.loggable(path)).isEqualTo(logged);
    }
}
