package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Kleene's strong tables: S. C. Kleene 1952, Introduction to Metamathematics, § 64 (from memory).
 */
@Tag("fast")
class TruthTest {

    @ParameterizedTest
    @CsvSource({
        "NO, NO, NO, NO",
        "NO, UNKNOWN, NO, UNKNOWN",
        "NO, YES, NO, YES",
        "UNKNOWN, NO, NO, UNKNOWN",
        "UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN",
        "UNKNOWN, YES, UNKNOWN, YES",
        "YES, NO, NO, YES",
        "YES, UNKNOWN, UNKNOWN, YES",
        "YES, YES, YES, YES"
    })
    void theyCombineByKleenesTables(Truth a, Truth b, Truth and, Truth or) {
        assertThat(a.and(b)).isEqualTo(and);
        assertThat(a.or(b)).isEqualTo(or);
    }

    @ParameterizedTest
    @CsvSource({"NO, YES", "UNKNOWN, UNKNOWN", "YES, NO"})
    void theUnknownStaysUnknownWhenTurned(Truth truth, Truth turned) {
        assertThat(truth.not()).isEqualTo(turned);
    }
}
