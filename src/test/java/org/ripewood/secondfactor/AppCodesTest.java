package org.ripewood.secondfactor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class AppCodesTest {

    /** Of both RFCs' vectors. */
    private static final byte[] SECRET = "12345678901234567890".getBytes(StandardCharsets.US_ASCII);

    /** RFC 6238, appendix B, SHA-1: its eight digits, of which six-digit codes are the last six. */
    @ParameterizedTest
    @CsvSource({
        "59, 94287082",
        "1111111109, 07081804",
        "1111111111, 14050471",
        "1234567890, 89005924",
        "2000000000, 69279037",
        "20000000000, 65353130",
    })
    void codesAreThoseOfTheStandard(long second, String digits) {
        assertThat(AppCodes.code(SECRET, Instant.ofEpochSecond(second)))
                .isEqualTo(digits.substring(2));
    }

    /** RFC 4226, appendix D. */
    @ParameterizedTest
    @CsvSource({
        "0, 755224",
        "1, 287082",
        "2, 359152",
        "3, 969429",
        "4, 338314",
        "5, 254676",
        "6, 287922",
        "7, 162583",
        "8, 399871",
        "9, 520489",
    })
    void codesOfAStepAreThoseByItsCount(long step, String code) {
        assertThat(AppCodes.code(SECRET, Instant.ofEpochSecond(step * 30))).isEqualTo(code);
    }

    /** RFC 6238, 5.2: one step of 30 seconds aside, and no code twice. */
    @Test
    void aCodeCountsAStepBeforeAndAfterAndOnce() {
        var now = Instant.ofEpochSecond(1111111111);
        long step = 1111111111 / 30;
        for (int aside = -1; aside <= 1; aside++) {
            var code = AppCodes.code(SECRET, now.plusSeconds(30L * aside));
            assertThat(AppCodes.stepOf(SECRET, code, now, 0)).hasValue(step + aside);
            assertThat(AppCodes.stepOf(SECRET, code, now, step + aside)).isEmpty();
        }
        for (int aside : new int[] {-2, 2}) {
            var code = AppCodes.code(SECRET, now.plusSeconds(30L * aside));
            assertThat(AppCodes.stepOf(SECRET, code, now, 0)).isEmpty();
        }
    }

    /** RFC 4226, 4, R6: 160 bits. */
    @Test
    void eachSecretIsAnother() {
        assertThat(AppCodes.freshSecret()).hasSize(20).isNotEqualTo(AppCodes.freshSecret());
    }

    /** RFC 4648, 10, without the padding. */
    @ParameterizedTest
    @CsvSource({
        "f, MY",
        "fo, MZXQ",
        "foo, MZXW6",
        "foob, MZXW6YQ",
        "fooba, MZXW6YTB",
        "foobar, MZXW6YTBOI"
    })
    void secretsAreTypedInLettersOfBase32(String text, String letters) {
        assertThat(Base32.encode(text.getBytes(StandardCharsets.US_ASCII))).isEqualTo(letters);
    }

    @Test
    void whatIsSealedIsReadWithItsKeyForItsOwnerOnly() {
        var seals = new SealedSecrets("of one school");
        var sealed = seals.seal(7, SECRET);
        assertThat(sealed).hasSizeLessThan(200).isNotEqualTo(seals.seal(7, SECRET));
        assertThat(seals.open(7, sealed)).contains(SECRET);
        assertThat(seals.open(8, sealed)).isEmpty();
        assertThat(new SealedSecrets("of another").open(7, sealed)).isEmpty();
        assertThat(seals.open(7, "AAAA")).isEmpty();
    }
}
