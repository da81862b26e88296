package org.ripewood.platform.guards;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Base64;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** OWASP ASVS 5.0, 3.5.1: tokens that another site can neither guess nor make. */
@Tag("fast")
class FormTokensTest {

    private final FormTokens tokens = new FormTokens(Optional.of("a key of sixteen and more"));

    @Test
    void oneIsForOnePerson() {
        var token = tokens.make(7L);
        assertThat(tokens.isFor(7L, token)).isTrue();
        assertThat(tokens.isFor(8L, token)).isFalse();
        assertThat(tokens.isFor(null, token)).isFalse();
        assertThat(tokens.isFor(null, tokens.make(null))).isTrue();
        assertThat(tokens.isFor(7L, tokens.make(null))).isFalse();
        assertThat(tokens.make(7L)).isNotEqualTo(token);
    }

    @Test
    void aNodeWithTheSameKeyTakesItAndNoOther() {
        var token = tokens.make(7L);
        assertThat(new FormTokens(Optional.of("a key of sixteen and more")).isFor(7L, token))
                .isTrue();
        assertThat(new FormTokens(Optional.of("a key of sixteen and less")).isFor(7L, token))
                .isFalse();
        assertThat(new FormTokens(Optional.empty()).isFor(7L, token)).isFalse();
    }

    @Test
    void noneIsMadeElsewhere() {
        var token = Base64.getUrlDecoder().decode(tokens.make(7L));
        assertThat(token).hasSize(48);
        for (int i = 0; i < token.length; i++) {
            var other = token.clone();
            other[i] ^= 1;
            var sent = Base64.getUrlEncoder().withoutPadding().encodeToString(other);
            assertThat(tokens.isFor(7L, sent)).isFalse();
        }
        for (var sent : new String[] {"", "A", "A".repeat(22), "A".repeat(64), "%", "==", "Ü"}) {
            assertThat(tokens.isFor(7L, sent)).isFalse();
        }
    }
}
