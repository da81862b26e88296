package org.ripewood.passwords;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class GuessingTest {

    private static final List<String> OWN = OwnWords.of("Runa Voss-Lind", "runa.v");

    /** OWASP ASVS 5.0.0, 6.2.4: the 3,000 commonest of those that are long enough, at least. */
    @Test
    void theCommonestAreKnown() {
        assertThat(CommonPasswords.size()).isGreaterThan(3_000);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "123qweasdzxc, COMMON",
                "1q2w3e4r5t6y, COMMON",
                "QwertyQwerty, COMMON",
                "password1234, COMMON",
                "!@#$%^&*()_+, COMMON",
                "123456789012, COMMON",
                "ripewood1234, OWN",
                "Bonsai-School, OWN",
                "i love bonsai, OWN",
                "runavoss1980, OWN",
                "runa.voss.1980, OWN",
                "Lind Voss Runa!, OWN",
                "r.u.n.a.v.12, OWN",
                "voss voss voss, OWN",
                "aaaaaaaaaaaa, COMMON",
                "aaaaaaaaaaaaaaaaaaab, REPEATED",
                "ääääääääääää, REPEATED",
                "йцукйцукйцук, REPEATED",
                "elephantelephant, REPEATED",
                "letmein letmein, REPEATED",
                "盆栽学校盆栽学校盆栽学校, REPEATED",
                "abcdefghijklm, IN_ORDER",
                "98765432109876, IN_ORDER",
                "zxcvbnm-poiuytrewq, NEIGHBOURS",
                "2001-02-03 2001, DAY",
                "p4$$w0rd!2026, WORDS",
                "Welcome-2026!, WORDS",
                "open sesame now, WORDS",
            })
    void whatPeopleTakeOftenIsWeak(String password, Weakness expected) {
        assertThat(Guessing.weakness(password, OWN)).contains(expected);
    }

    /** Made up for this test; the first five have spaces, which are letters like others. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "kiln fern marble",
                "drei gelbe Eimer im Hof",
                "три жёлтых ведра",
                "my bonsai lost a grey kettle",
                "quite a long password",
                "hV7#qd0!tWz2",
                "kettle-marble-orbit-1",
                "黄色いバケツが三つ庭にある",
            })
    void unrelatedWordsAreTaken(String password) {
        assertThat(Guessing.weakness(password, OWN)).isEmpty();
    }

    /** The longest that is taken, of what an estimate takes longest for. */
    @ParameterizedTest
    @ValueSource(strings = {"4@8({[<3691!|/70$5+%2", "p4$$w0rd", "0123456789", "ab", "1qaz!QAZ"})
    void noEstimateTakesLong(String marks) {
        var random = new Random(7);
        Guessing.weakness("warm up the words", OWN);
        for (int round = 0; round < 5; round++) {
            var drawn = new StringBuilder();
            while (drawn.length() < 256) {
                drawn.append(marks.charAt(random.nextInt(marks.length())));
            }
            var begun = System.nanoTime();
            Guessing.weakness(drawn.toString(), OWN);
            Guessing.weakness(marks.repeat(256 / marks.length()), OWN);
            assertThat(Duration.ofNanos(System.nanoTime() - begun))
                    .isLessThan(Duration.ofSeconds(4));
        }
    }

    @Test
    void aStrongEndOfALongOneCounts() {
        assertThat(Guessing.weakness("a".repeat(60), OWN)).isPresent();
        assertThat(Guessing.weakness("a".repeat(60) + "hV7#qd0!tWz2kiln fern marble orbit", OWN))
                .isEmpty();
    }
}
