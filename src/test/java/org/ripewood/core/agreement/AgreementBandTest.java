package org.ripewood.core.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class AgreementBandTest {

    /** Landis and Koch 1977, Biometrics 33:159-174; 0.205 and its like fall in the table's gaps. */
    @ParameterizedTest
    @CsvSource({
        "-3, poor",
        "-0.01, poor",
        "0, slight",
        "0.20, slight",
        "0.205, fair",
        "0.40, fair",
        "0.41, moderate",
        "0.60, moderate",
        "0.61, substantial",
        "0.80, substantial",
        "0.81, almost perfect",
        "1, almost perfect"
    })
    void bandsMeetAtThePublishedBounds(double kappa, String words) {
        assertThat(AgreementBand.of(kappa).words()).isEqualTo(words);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.01, Double.NaN})
    void whatIsNoKappaIsRefused(double kappa) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AgreementBand.of(kappa))
                .withMessageContaining(String.valueOf(kappa));
    }
}
