package org.ripewood.platform.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

/** Entity tags as RFC 9110, 8.8.3 writes them; 428 is RFC 6585, 3. */
@Tag("fast")
class VersionsTest {

    @Test
    void aVersionSurvivesTheRoundTrip() {
        assertThat(Versions.etag(7)).isEqualTo("\"7\"");
        assertThat(Versions.required(Versions.etag(7))).isEqualTo(7);
        assertThat(Versions.required(" \"0\" ")).isZero();
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", "  "})
    void aMissingTagIsAskedFor(String ifMatch) {
        assertThat(refused(ifMatch).problem().status()).isEqualTo(428);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "7",
                "W/\"7\"",
                "*",
                "\"7\", \"8\"",
                "\"seven\"",
                "\"-1\"",
                "\"\"",
                "\"12345678901234567890\""
            })
    void aTagOfAnotherFormIsAFault(String ifMatch) {
        var problem = refused(ifMatch).problem();
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults()).extracting(Fault::field).containsExactly("If-Match");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"7\"", "W/\"7\"", "*", "\"6\", \"7\"", " W/\"6\" , \"7\" "})
    void aReaderWhoHasItIsKnown(String ifNoneMatch) {
        assertThat(Versions.known(ifNoneMatch, 7)).isTrue();
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", "7", "\"70\"", "\"6\"", "W/7", "\"6\" \"7\""})
    void aReaderOfAnotherVersionIsNot(String ifNoneMatch) {
        assertThat(Versions.known(ifNoneMatch, 7)).isFalse();
    }

    private static Refused refused(String ifMatch) {
        return catchThrowableOfType(Refused.class, () -> Versions.required(ifMatch));
    }
}
