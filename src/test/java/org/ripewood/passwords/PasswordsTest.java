package org.ripewood.passwords;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.elytron.security.common.BcryptUtil;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

@Tag("fast")
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
        var hash = Passwords.hash("a long enough one");

        assertThat(hash).doesNotContain("long").startsWith("2:$2");
        assertThat(Passwords.matches(hash, "a long enough one")).isTrue();
        assertThat(Passwords.matches(hash, "a long enough onE")).isFalse();
        assertThat(Passwords.matches(hash, "")).isFalse();
    }

    @Test
    void nobodyHasNobodysPassword() {
        assertThat(Passwords.matches(null, "nobody signs in with this")).isFalse();
    }

    /** 72 bytes are what bcrypt reads of its input; letters of Cyrillic have two each. */
    @Test
    void longPasswordsCountWholeInAnyScript() {
        var longest = "два жёлтых ведра ".repeat(15);
        var hash = Passwords.hash(longest);

        assertThat(longest.getBytes(StandardCharsets.UTF_8).length).isGreaterThan(72);
        assertThat(Passwords.matches(hash, longest)).isTrue();
        assertThat(Passwords.matches(hash, longest + "!")).isFalse();
        assertThat(Passwords.matches(hash, longest.substring(0, longest.length() - 1))).isFalse();
        assertThat(Passwords.matches(hash, longest.substring(0, 36))).isFalse();
    }

    @Test
    void aHashMadeElsewhereIsNoPassword() throws NoSuchAlgorithmException {
        var digest = MessageDigest.getInstance("SHA-384");
        var leaked = digest.digest("a long enough one".getBytes(StandardCharsets.UTF_8));
        var tried = Base64.getEncoder().encodeToString(leaked);
        var kept = Passwords.hash("a long enough one").substring(2);
        assertThat(BcryptUtil.matches(tried, kept)).isFalse();
    }

    @Test
    void aHashMadeBeforeKnowsItsPasswordAndNoLongerOne() {
        var old = BcryptUtil.bcryptHash("ä".repeat(36), 4);
        assertThat(Passwords.isOld(old)).isTrue();
        assertThat(Passwords.matches(old, "ä".repeat(36))).isTrue();
        assertThat(Passwords.matches(old, "ä".repeat(36) + "x")).isFalse();
    }

    @Test
    void whatIsTooLongIsToldAndNotTaken() {
        assertThatThrownBy(() -> Passwords.chosen("newPassword", "kiln fern ".repeat(26), "", ""))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused ->
                                assertThat(refused.problem().faults())
                                        .extracting(Fault::message)
                                        .containsExactly(
                                                "expected at most 256 characters, found 260"));
    }
}
