package org.ripewood.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** RFC 5545, 3.1: no line longer than 75 octets without its break; folds are taken out whole. */
@Tag("fast")
class FoldingTest {

    @Test
    void seventyFiveOctetsStayOnALineAndOneMoreIsFolded() {
        assertThat(Folding.folded("a".repeat(75) + "\r\n")).isEqualTo("a".repeat(75) + "\r\n");
        assertThat(Folding.folded("a".repeat(76) + "\r\n"))
                .isEqualTo("a".repeat(75) + "\r\n a\r\n");
        assertThat(Folding.folded("a".repeat(150)))
                .isEqualTo("a".repeat(75) + "\r\n " + "a".repeat(74) + "\r\n a");
    }

    @ParameterizedTest
    @CsvSource({"ö, 2", "木, 3", "🌳, 4"})
    void octetsCountAndNoCharacterIsTorn(String character, int octets) {
        int fits = 75 / octets;
        assertThat(Folding.folded(character.repeat(fits))).isEqualTo(character.repeat(fits));
        assertThat(Folding.folded(character.repeat(fits + 1)))
                .isEqualTo(character.repeat(fits) + "\r\n " + character);
    }

    @Test
    void anyTextIsFoldedAndComesBackAsItWas() {
        long seed = 5545;
        System.out.println("FoldingTest seed " + seed);
        var random = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            var text = new StringBuilder();
            for (int length = random.nextInt(400); length > 0; length--) {
                int kind = random.nextInt(10);
                text.append(kind == 0 ? "\r\n" : kind < 6 ? "x" : kind < 8 ? "é" : "🌲");
            }
            var folded = Folding.folded(text.toString());
            assertThat(folded.replace("\r\n ", "")).isEqualTo(text.toString());
            assertThat(folded.split("\r\n", -1))
                    .allSatisfy(
                            line ->
                                    assertThat(line.getBytes(StandardCharsets.UTF_8).length)
                                            .isLessThanOrEqualTo(75));
        }
    }
}
