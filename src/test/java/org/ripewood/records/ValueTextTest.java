package org.ripewood.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.platform.problems.Refused;

@Tag("fast")
class ValueTextTest {

    @ParameterizedTest
    @CsvSource({"12.5, 12.5", "'12,5', 12.5", "' 12 ', 12", "+3, 3", "0, 0", "-0.0, 0", "007, 7"})
    void numbersAreReadWithADecimalPointOrComma(String text, double amount) {
        var value = (Value.Number) ValueText.read(Fact.TRUNK_BASE_MM, text);
        assertThat(value.amount()).isEqualTo(amount);
    }

    @ParameterizedTest
    @CsvSource({"yes, true", "No, false", "YES, true"})
    void flagsAreYesOrNo(String text, boolean set) {
        assertThat(ValueText.read(Fact.WIRE_ON, text)).isEqualTo(Value.of(set));
    }

    @ParameterizedTest
    @CsvSource({"settled, settled", "None, none"})
    void wordsAreReadInAnyCase(String text, String word) {
        assertThat(ValueText.read(Fact.FRONT_MARK, text)).isEqualTo(Value.of(word));
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource({
        "TRUNK_BASE_MM, '1,250', 'Maybe “1250” or “1.250”'",
        "TRUNK_BASE_MM, '1,250.5', 'expected a number'",
        "TRUNK_BASE_MM, 12 mm, 'found “12 mm”'",
        "TRUNK_BASE_MM, 1e3, 'expected a number'",
        "TRUNK_BASE_MM, NaN, 'expected a number'",
        "TRUNK_BASE_MM, Infinity, 'expected a number'",
        "TRUNK_BASE_MM, 0x10, 'expected a number'",
        "TRUNK_BASE_MM, 1f, 'expected a number'",
        "TRUNK_BASE_MM, 2000.1, '0 to 2000'",
        "TRUNK_BASE_MM, -1, '0 to 2000'",
        "TRUNK_BASE_MM, 999999999999999999999999, 'expected a number'",
        "PEST_LEVEL, yes, 'expected a number'",
        "WIRE_ON, true, 'Maybe “yes”'",
        "WIRE_ON, yess, 'Maybe “yes”'",
        "WIRE_ON, 0, 'Maybe “no”'",
        "FRONT_MARK, setled, 'Maybe “settled”'",
        "FRONT_MARK, <script>, 'none, tentative, settled'",
        "GROWTH_STAGE, 9.5, 'whole BBCH code'",
        "FLOWER_STAGE, 10, '51 to 89'"
    })
    void whatIsNoValueIsRefusedWithAGuess(Fact fact, String text, String told) {
        var refused = catchThrowableOfType(Refused.class, () -> ValueText.read(fact, text));
        assertThat(refused.problem().status()).isEqualTo(400);
        assertThat(refused.problem().faults())
                .singleElement()
                .satisfies(
                        fault -> {
                            assertThat(fault.field()).isEqualTo("value");
                            assertThat(fault.message()).contains(told);
                        });
    }
}
