package org.ripewood.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/**
 * A table as a CSV file (RFC 4180, UTF-8). Text that a spreadsheet would take for a formula gets an
 * apostrophe before it, so that nobody's tree can reckon on another's computer.
 */
public final class CsvText {

    /** Type of such a file. */
    public static final String MEDIA_TYPE = "text/csv;charset=UTF-8";

    private static final String FORMULA_STARTS = "=+-@\t\r";

    private CsvText() {}

    /**
     * The file.
     *
     * @param rows cells as text or numbers; null stands for an empty one
     */
    public static String of(List<String> headings, List<? extends List<?>> rows) {
        var text = new StringBuilder();
        try (var printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(headings);
            for (var row : rows) {
                printer.printRecord(row.stream().map(CsvText::harmless).toList());
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

    private static Object harmless(@Nullable Object cell) {
        if (cell == null) {
            return "";
        }
        if (cell instanceof Number) {
            return cell;
        }
        var text = cell.toString();
        return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
