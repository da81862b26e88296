package org.ripewood.platform.problems;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class DecimalTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ' ',
            value = {
                "7,5 7.5",
                "-7,25 -7.25",
                "0,125 0.125",
                "1250,5 1250.5",
                "12,5000 12.5000",
                ",5 .5",
                "7.5 7.5",
                "12 12",
                "1,250.5 1,250.5",
                "1,2,3 1,2,3",
                "7, 7,",
                "a,b a,b"
            })
    void aDecimalCommaIsReadAsAPoint(String typed, String read) {
        assertThat(DecimalText.withPoint(typed)).isEqualTo(read);
        assertThat(DecimalText.maybe(typed)).isEmpty();
    }

    /** A thousand and a half to one reader, one and a half to another. */
    @Test
    void threeDigitsAfterACommaAreAskedAbout() {
        assertThat(DecimalText.withPoint("1,500")).isEqualTo("1,500");
        assertThat(DecimalText.maybe("1,500")).isEqualTo(" Maybe “1500” or “1.500”.");
    }
}
