package org.ripewood.lists;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.lists.ListText.Row;
import org.ripewood.platform.problems.DecimalText;

/** Reads the cells of a row; what cannot be read ends the row with a fault. */
final class RowCells {

    private RowCells() {}

    /** Ends a row with faults of its own. */
    static final class Faulty extends RuntimeException {
        private final transient List<ListFault> faults;

        Faulty(List<ListFault> faults) {
            super("a row with faults", null, false, false);
            this.faults = faults;
        }

        List<ListFault> faults() {
            return faults;
        }
    }

    static LocalDate day(Row row, String column) {
        try {
            return LocalDate.parse(row.cell(column));
        } catch (DateTimeParseException e) {
            throw faulty(
                    row,
                    column,
                    "expected a day as 2026-02-20, found “%s”".formatted(row.cell(column)));
        }
    }

    /** Null when the cell is empty. */
    static @Nullable LocalDate dayIfSaid(Row row, String column) {
        return row.cell(column).isEmpty() ? null : day(row, column);
    }

    /** Null when the cell is empty. */
    static @Nullable Double number(Row row, String column) {
        var typed = row.cell(column);
        if (typed.isEmpty()) {
            return null;
        }
        var text = DecimalText.withPoint(typed);
        if (!text.matches("\\d{1,6}([.]\\d{1,6})?")) {
            throw faulty(
                    row,
                    column,
                    "expected a number, found “%s”%s".formatted(typed, DecimalText.maybe(typed)));
        }
        return Double.valueOf(text);
    }

    /** No when the cell is empty. */
    static boolean yes(Row row, String column) {
        return switch (row.cell(column).toLowerCase(Locale.ROOT)) {
            case "yes" -> true;
            case "no", "" -> false;
            default ->
                    throw faulty(
                            row,
                            column,
                            "expected yes or no, found “%s”".formatted(row.cell(column)));
        };
    }

    static Faulty faulty(Row row, String column, String message) {
        return new Faulty(List.of(new ListFault(row.line(), column, message)));
    }
}
