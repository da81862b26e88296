package org.ripewood.web.stock;

import java.util.List;

/**
 * What came out of a calculator, in plain words.
 *
 * @param headline the answer
 * @param lines what belongs to it, name and value
 * @param tables what is told in rows
 * @param cautions what to take care of
 */
record CalculatorResult(
        String headline, List<Line> lines, List<Table> tables, List<String> cautions) {

    /** A name and its value. */
    public record Line(String name, String value) {}

    /**
     * Rows under a heading.
     *
     * @param columns heads of the columns; each row has as many cells, the first names it
     */
    public record Table(String title, List<String> columns, List<List<String>> rows) {}

    public CalculatorResult {
        lines = List.copyOf(lines);
        tables = List.copyOf(tables);
        cautions = List.copyOf(cautions);
    }
}
