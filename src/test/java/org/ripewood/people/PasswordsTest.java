package org.ripewood.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.ripewood.platform.Refused;

class PasswordsTest {

    /** From the test vectors of Openwall's crypt_blowfish 1.3 (from memory): cost 5. */
    @Test
    void aHashMadeElsewhereIsKnownAgain() {
        assertThat(
                        Passwords.matches(
                                "$2a$05$CCCCCCCCCCCCCCCCCCCCC.E5YPO9kmyuRGyh0XouQYb4YMJKvyOeW",
                                "U*U"))
                .isTrue();
    }

    @Test
    void onlyTheSamePasswordMatches() {
        var hash = Passwords.hash("password", "a long enough one");

        assertThat(hash).doesNotContain("long").startsWith("$2");
        assertThat(Passwords.matches(hash, "a long enough one")).isTrue();
        assertThat(Passwords.matches(hash, "a long enough onE")).isFalse();
        assertThat(Passwords.matches(hash, "")).isFalse();
    }

    @Test
    void nobodyHasNobodysPassword() {
        assertThat(Passwords.matches(null, "nobody signs in with this")).isFalse();
    }

    @Test
    void whatBcryptDoesNotReadIsNoPassword() {
        var longest = "ä".repeat(36);
        var hash = Passwords.hash("password", longest);

        assertThat(Passwords.matches(hash, longest)).isTrue();
        assertThat(Passwords.matches(hash, longest + "x")).isFalse();
        assertThatThrownBy(() -> Passwords.hash("password", longest + "x"))
                .isInstanceOf(Refused.class);
    }
}
