package org.ripewood.sites;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.jspecify.annotations.Nullable;

/**
 * Reads a file of daily readings: a line a day ({@code date,tmin,tmax}, °C) or GHCN-Daily's layout
 * by station.
 *
 * <p>Good lines are kept in whatever order they come, every bad one is told with its number. With
 * semicolons or tabs between the columns, numbers may have a decimal comma. Each line is parsed for
 * itself, so that a lost quotation mark costs one line and not the rest of the file.
 */
final class DailyReadingsText {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final ReadingsSheet sheet;
    private String separator = ",";
    private CSVFormat format = CSVFormat.DEFAULT;
    private @Nullable ReadingsLayout layout;

    private DailyReadingsText(LocalDate today) {
        this.sheet = new ReadingsSheet(today);
    }

    /**
     * Reads to the end; the reader is not closed.
     *
     * @param today later days are no readings yet, and faults
     * @throws IOException when the reader fails, not for anything it holds
     */
    static ReadingsInText read(Reader reader, LocalDate today) throws IOException {
        var text = new DailyReadingsText(today);
        text.readAll(new BufferedReader(reader));
        return text.sheet.done();
    }

    private void readAll(BufferedReader lines) throws IOException {
        long number = 0;
        for (var line = lines.readLine(); line != null; line = lines.readLine()) {
            number++;
            if (line.isBlank() || (number == 1 && line.equals(BYTE_ORDER_MARK))) {
                continue;
            }
            if (layout != null) {
                take(layout, number, line);
            } else if (!begins(number, line)) {
                return;
            }
        }
        if (layout == null) {
            sheet.fault(Math.max(1, number), "an empty file", ReadingsLayout.EXPECTED);
        } else {
            layout.end();
        }
    }

    /** Finds the layout by the first line; false when there is none. */
    private boolean begins(long number, String firstLine) {
        var line = firstLine.startsWith(BYTE_ORDER_MARK) ? firstLine.substring(1) : firstLine;
        separator = line.indexOf(';') >= 0 ? ";" : line.indexOf('\t') >= 0 ? "\t" : ",";
        format = CSVFormat.DEFAULT.builder().setDelimiter(separator).setTrim(true).get();
        try {
            var cells = cells(line);
            var found = ReadingsLayout.of(cells, !separator.equals(","), sheet);
            if (found.isPresent()) {
                layout = found.get();
                if (!ReadingsLayout.isHeader(cells)) {
                    layout.line(number, cells);
                }
                return true;
            }
        } catch (IOException e) {
            // no layout either
        }
        sheet.fault(number, line, ReadingsLayout.EXPECTED);
        return false;
    }

    private void take(ReadingsLayout by, long number, String line) {
        try {
            by.line(number, cells(line));
        } catch (IOException e) {
            sheet.fault(number, line, "quotation marks that open and close");
        }
    }

    /** A parser for each line costs more than all else, and few lines quote anything. */
    private List<String> cells(String line) throws IOException {
        if (line.indexOf('"') < 0) {
            return Arrays.stream(line.split(separator, -1)).map(String::trim).toList();
        }
        try (var parser = CSVParser.parse(line, format)) {
            return parser.stream().findFirst().map(row -> row.toList()).orElse(List.of());
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }
}
