package org.ripewood.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells as RFC 4180, section 2, has them; no text starts a formula. */
@Tag("fast")
class CsvTextTest {

    @Test
    void linesEndInCarriageReturnAndLineFeed() {
        assertThat(CsvText.of(List.of("Tree", "Steps"), List.of(List.of("Elm", 3))))
                .isEqualTo("\"Tree\",\"Steps\"\r\n\"Elm\",3\r\n");
    }

    @Test
    void commasQuotesAndLineBreaksAreQuoted() {
        assertThat(line("a,b", "the \"old\" one", "two\r\nlines"))
                .isEqualTo("\"a,b\",\"the \"\"old\"\" one\",\"two\r\nlines\"\r\n");
    }

    /** Where the comma is for decimals, a semicolon outside quotation marks parts two cells. */
    @Test
    void everyTextIsQuoted() {
        assertThat(line("a;=1+1", "", "Elm")).isEqualTo("\"a;=1+1\",\"\",\"Elm\"\r\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\uFF1D1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF20A1",
                " =1",
                "\u00A0=1",
                "\u200B\uFEFF=1",
                " \n@A1",
                "\u3164\uFF1D1",
                " \t1"
            })
    void textThatStartsAFormulaGetsAnApostrophe(String cell) {
        assertThat(line(cell)).isEqualTo("\"'" + cell + "\"\r\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Elm = 3", "a-b", " Elm", "\u200BElm", "1", ""})
    void otherTextStaysAsItIs(String cell) {
        assertThat(line(cell)).isEqualTo("\"" + cell + "\"\r\n");
    }

    @Test
    void numbersStayNumbersAndNothingIsEmpty() {
        assertThat(line(-3, null, "a=b")).isEqualTo("-3,,\"a=b\"\r\n");
    }

    @Test
    void aFileNameHasNothingToBreakOutOf() {
        assertThat(CsvText.attachment("../a\"b\r\nc;d.csv"))
                .isEqualTo("attachment; filename=\"..-a-b-c-d.csv\"");
    }

    private static String line(Object... cells) {
        return CsvText.of(List.of("h"), List.of(Arrays.asList(cells))).substring(5);
    }
}
