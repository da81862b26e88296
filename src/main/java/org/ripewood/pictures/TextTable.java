package org.ripewood.pictures;

import java.util.List;

/**
 * What a picture shows, as a table for those who do not see it.
 *
 * @param caption one line
 * @param columns column heads
 * @param rows as many cells as there are columns, the first one naming the row
 */
public record TextTable(String caption, List<String> columns, List<List<String>> rows) {

    /** So many rows are told; a longer series is told by its first and its latest. */
    static final int MOST_ROWS = 60;

    public TextTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (var row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "a row of %d cells is needed, found %s".formatted(columns.size(), row));
            }
        }
    }

    /** A table of a series that may be long: its first entry, and the latest ones. */
    static TextTable ofSeries(String caption, List<String> columns, List<List<String>> rows) {
        if (rows.size() <= MOST_ROWS) {
            return new TextTable(caption, columns, rows);
        }
        var told = new java.util.ArrayList<List<String>>();
        told.add(rows.get(0));
        told.addAll(rows.subList(rows.size() - MOST_ROWS + 1, rows.size()));
        int left = rows.size() - MOST_ROWS;
        return new TextTable(
                "%s (%d between the first and the second row not told)".formatted(caption, left),
                columns,
                told);
    }
}
