package org.ripewood.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.platform.problems.Fault;

@Tag("fast")
class TextFormatTest {

    private static final LocalDate DAY = LocalDate.of(2024, 5, 3);

    @Test
    void daysAreWrittenOut() {
        assertThat(TextFormat.day(DAY)).isEqualTo("3 May 2024");
        assertThat(TextFormat.weekday(DAY)).isEqualTo("Friday 3 May 2024");
    }

    @ParameterizedTest
    @CsvSource({"24, 24", "24.50, 24.5", "0.333, 0.33", "0, 0", "1200, 1200", "0.005, 0.01"})
    void numbersCarryNoMoreDecimalsThanMatter(double amount, String shown) {
        assertThat(TextFormat.plain(amount)).isEqualTo(shown);
    }

    @Test
    void oneIsNotMany() {
        assertThat(TextFormat.counted(1, "row")).isEqualTo("1 row");
        assertThat(TextFormat.counted(0L, "row")).isEqualTo("0 rows");
        assertThat(TextFormat.counted(21L, "row")).isEqualTo("21 rows");
    }

    @Test
    void valuesCarryTheirUnit() {
        assertThat(text(Fact.LARGEST_OPENING_MM, Value.of(24))).isEqualTo("24 mm");
        assertThat(text(Fact.VIGOUR_INDEX, Value.of(62.4))).isEqualTo("62.4");
        assertThat(text(Fact.WIRE_ON, Value.of(true))).isEqualTo("yes");
        assertThat(text(Fact.FRONT_MARK, Value.of("settled"))).isEqualTo("settled");
        assertThat(text(Fact.DAYS_SINCE_CHOP, Value.of(12))).isEqualTo("12 days");
        assertThat(text(Fact.DAYS_SINCE_CHOP, Value.of(WorkLedger.NEVER_DAYS))).isEqualTo("never");
    }

    @ParameterizedTest
    @CsvSource({
        "firstWidthMm, first width mm",
        "woundId, wound",
        "instructorIds[0], instructor",
        "waivers.pest_level.atMost, waivers pest level at most",
        "/tables/3/rows/0/siteId, /tables/3/rows/0/siteId",
        "photos/000012.jpg, photos/000012.jpg",
        "record.json, record.json"
    })
    void namesOfFieldsAreToldInWords(String field, String words) {
        assertThat(TextFormat.fieldWords(new Fault(field, ""))).isEqualTo(words);
    }

    private static String text(Fact fact, Value value) {
        return TextFormat.text(Evidence.derived(fact, value, DAY, "the record"));
    }
}
