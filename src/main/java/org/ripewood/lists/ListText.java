package org.ripewood.lists;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.ripewood.platform.problems.Suggestion;

/**
 * A list's text as rows (RFC 4180): separated by commas or, when the header has more of them, by
 * semicolons; a byte order mark is let pass. A cell that a spreadsheet would take for a formula is
 * a text like any other.
 */
final class ListText {

    static final int MOST_ROWS = 5_000;

    /** A row with its cells by column; a column left out or left empty is not in the map. */
    record Row(int line, Map<String, String> cells) {

        Row {
            cells = Map.copyOf(cells);
        }

        String cell(String column) {
            return cells.getOrDefault(column, "");
        }
    }

    private final ListKind kind;
    private final String text;
    private final List<ListFault> faults;

    /** Where the next line is counted from, so that the text is gone through once. */
    private int counted;

    private int countedLine = 1;

    private ListText(ListKind kind, String text, List<ListFault> faults) {
        this.kind = kind;
        this.text = text;
        this.faults = faults;
    }

    /** The rows that can be read; everything else is added to the faults. */
    static List<Row> read(ListKind kind, String text, List<ListFault> faults) {
        var plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        return new ListText(kind, plain, faults).rows();
    }

    private List<Row> rows() {
        var rows = new ArrayList<Row>();
        var format =
                CSVFormat.RFC4180
                        .builder()
                        .setDelimiter(delimiter())
                        .setIgnoreEmptyLines(true)
                        .setTrim(true)
                        .get();
        List<String> header = List.of();
        int line = 1;
        int read = 0;
        try (var parser = CSVParser.parse(text, format)) {
            for (var record : parser) {
                line = lineOf(record);
                if (header.isEmpty()) {
                    header = header(record, line);
                    if (header.isEmpty()) {
                        return rows;
                    }
                } else if (rows.size() == MOST_ROWS) {
                    faults.add(
                            new ListFault(
                                    line, "", "expected at most %d rows".formatted(MOST_ROWS)));
                    return rows;
                } else {
                    read(record, header, line, rows);
                }
                read = (int) parser.getCurrentLineNumber();
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            faults.add(
                    new ListFault(
                            read + 1,
                            "",
                            "from here on the text could not be read. Maybe a quotation mark is"
                                    + " missing, or one inside a cell is not written twice."));
            return List.of();
        }
        if (header.isEmpty()) {
            faults.add(new ListFault(1, "", "expected a header, found nothing"));
        }
        return rows;
    }

    private char delimiter() {
        var first = text.lines().filter(each -> !each.isBlank()).findFirst().orElse("");
        long semicolons = first.chars().filter(each -> each == ';').count();
        return semicolons > first.chars().filter(each -> each == ',').count() ? ';' : ',';
    }

    /** Cells may hold line breaks, so lines are counted and not records. */
    private int lineOf(CSVRecord record) {
        int at = (int) record.getCharacterPosition();
        while (at < text.length() && (text.charAt(at) == '\n' || text.charAt(at) == '\r')) {
            at++;
        }
        for (; counted < at; counted++) {
            char here = text.charAt(counted);
            boolean alone =
                    here == '\r'
                            && (counted + 1 >= text.length() || text.charAt(counted + 1) != '\n');
            if (here == '\n' || alone) {
                countedLine++;
            }
        }
        return countedLine;
    }

    private List<String> header(CSVRecord record, int line) {
        var names = new ArrayList<String>();
        var known = new ArrayList<>(kind.needed());
        known.addAll(kind.more());
        var before = new HashSet<String>();
        int found = faults.size();
        for (var cell : record) {
            var name = cell.strip().toLowerCase(Locale.ROOT).replace(' ', '_');
            if (!known.contains(name)) {
                faults.add(
                        new ListFault(
                                line,
                                cell,
                                "is no column of this list; expected %s.%s"
                                        .formatted(
                                                String.join(", ", known),
                                                Suggestion.maybe(known, name))));
            } else if (!before.add(name)) {
                faults.add(new ListFault(line, cell, "stands in the header twice"));
            }
            names.add(name);
        }
        for (var name : kind.needed()) {
            if (!before.contains(name)) {
                faults.add(new ListFault(line, name, "expected this column, found none"));
            }
        }
        return faults.size() == found ? names : List.of();
    }

    private void read(CSVRecord record, List<String> header, int line, List<Row> rows) {
        if (record.size() != header.size()) {
            faults.add(
                    new ListFault(
                            line,
                            "",
                            "expected %d cells, found %d. Maybe a separator inside a cell needs the"
                                            .formatted(header.size(), record.size())
                                    + " cell in quotation marks."));
            return;
        }
        var cells = new HashMap<String, String>();
        for (int at = 0; at < header.size(); at++) {
            if (!record.get(at).isBlank()) {
                cells.put(header.get(at), record.get(at).strip());
            }
        }
        rows.add(new Row(line, cells));
    }
}
