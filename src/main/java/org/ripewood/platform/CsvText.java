package org.ripewood.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.QuoteMode;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Characters;

/**
 * A table as a CSV file (RFC 4180, UTF-8). Every text is in quotation marks: where the comma is for
 * decimals a spreadsheet parts cells by semicolons, and a text with one would become two cells.
 * Text that a spreadsheet would take for a formula gets an apostrophe before it, so that nobody's
 * tree can reckon on another's computer.
 */
public final class CsvText {

    /** Type of such a file. */
    public static final String MEDIA_TYPE = "text/csv;charset=UTF-8";

    /** Also in the width of East Asian letters, which some spreadsheets read as the plain ones. */
    private static final String FORMULA_STARTS = "=+-@\t\r\uFF1D\uFF0B\uFF0D\uFF20";

    private static final CSVFormat QUOTED =
            CSVFormat.RFC4180.builder().setQuoteMode(QuoteMode.NON_NUMERIC).get();

    private CsvText() {}

    /**
     * The file.
     *
     * @param rows cells as text or numbers; null stands for an empty one
     */
    public static String of(List<String> headings, List<? extends List<?>> rows) {
        var text = new StringBuilder();
        try (var printer = new CSVPrinter(text, QUOTED)) {
            printer.printRecord(headings);
            for (var row : rows) {
                printer.printRecord(row.stream().map(CsvText::harmless).toArray());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a builder of text does not fail", e);
        }
        return text.toString();
    }

    /** A header that hands a file over under a name of letters, digits, dots and hyphens. */
    public static String attachment(String name) {
        return "attachment; filename=\"%s\"".formatted(name.replaceAll("[^A-Za-z0-9.-]+", "-"));
    }

    private static @Nullable Object harmless(@Nullable Object cell) {
        if (cell == null || cell instanceof Number) {
            return cell;
        }
        var text = cell.toString();
        return startsFormula(text) ? "'" + text : text;
    }

    /** Blanks before it and what nobody sees are skipped by some spreadsheets. */
    private static boolean startsFormula(String text) {
        return text.codePoints()
                .filter(
                        character ->
                                FORMULA_STARTS.indexOf(character) >= 0
                                        || !Characters.isInvisible(character))
                .limit(1)
                .anyMatch(character -> FORMULA_STARTS.indexOf(character) >= 0);
    }
}
