package org.ripewood.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class DayTextTest {

    private static final LocalDate LOADING_DAY = LocalDate.of(2028, 3, 1);

    @ParameterizedTest
    @CsvSource({
        "0, 2028-03-01",
        "-1, 2028-02-29",
        "-380, 2027-02-15",
        "4, 2028-03-05",
        "+4, 2028-03-05",
        "2027-12-31, 2027-12-31",
        "-36600, 1927-12-17",
    })
    void aDayIsWrittenAsADateOrCountedFromTheDayOfLoading(String text, LocalDate day) {
        assertThat(DayText.read(text, LOADING_DAY)).isEqualTo(day);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "yesterday", "2027-13-01", "2027-02-29", "1.5", "-36601", "27-1-1"})
    void everythingElseIsNoDay(String text) {
        assertThat(DayText.read(text, LOADING_DAY)).isNull();
    }
}
