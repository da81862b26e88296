package org.ripewood.search;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class LettersTest {

    @ParameterizedTest
    @CsvSource({
        "Acer palmatum, acer palmatum",
        "ÉRABLE Über Straße, erable uber strasse",
        "Ficus-prebonsái / 3, ficus prebonsai 3",
        "tree's trees’, trees trees",
        "ﬁg Øster Łódź, fig oster lodz",
        "五葉松 no. 2, 五葉松 no 2",
        "ＭＡＰＬＥ ２, maple 2"
    })
    void textsAreComparedInPlainSmallLetters(String text, String words) {
        assertThat(String.join(" ", Letters.words(text))).isEqualTo(words);
    }

    @Test
    void aTextWithoutLettersHasNoWords() {
        assertThat(Letters.words("")).isEmpty();
        assertThat(Letters.words(" %_!*'\\\"<>();-- ")).isEmpty();
        assertThat(Letters.words("\u0301\u200B\uD83C")).isEmpty();
    }
}
