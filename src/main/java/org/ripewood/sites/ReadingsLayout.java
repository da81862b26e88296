package org.ripewood.sites;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** How the lines of a file of daily readings are laid out. */
sealed interface ReadingsLayout permits DayPerLine, ElementPerLine {

    String EXPECTED =
            "columns date, tmin, tmax in °C, or the GHCN-Daily layout by station (id, date,"
                    + " element, value in tenths of °C, flags)";

    /** Station, day as eight digits, element in capitals. */
    Pattern ELEMENT = Pattern.compile("[A-Z][A-Z0-9]{3}");

    /** Takes a line that is not the header. */
    void line(long number, List<String> cells);

    /** Called after the last line. */
    void end();

    /**
     * The layout a file's first line shows; empty when it shows none.
     *
     * <p>A header with a station's column and temperatures side by side is not taken: such files
     * come in °C, °F and tenths of °C, and do not say which.
     *
     * @param decimalComma whether numbers are written with a comma
     */
    static Optional<ReadingsLayout> of(
            List<String> cells, boolean decimalComma, ReadingsSheet sheet) {
        var names = cells.stream().map(cell -> cell.toLowerCase(Locale.ROOT)).toList();
        if (names.contains("element") && names.indexOf("date") == 1) {
            return Optional.of(new ElementPerLine(sheet));
        }
        int date = names.indexOf("date");
        int minimum = firstOf(names, "tmin", "temp_min", "minimum", "min");
        int maximum = firstOf(names, "tmax", "temp_max", "maximum", "max");
        if (date >= 0 && minimum >= 0 && maximum >= 0 && !names.contains("station")) {
            return Optional.of(new DayPerLine(sheet, date, minimum, maximum, decimalComma));
        }
        return withoutHeader(cells, decimalComma, sheet);
    }

    private static Optional<ReadingsLayout> withoutHeader(
            List<String> cells, boolean decimalComma, ReadingsSheet sheet) {
        if (cells.size() >= 6
                && ReadingsSheet.parse(cells.get(1)).isPresent()
                && ELEMENT.matcher(cells.get(2)).matches()) {
            return Optional.of(new ElementPerLine(sheet));
        }
        return cells.size() == 3 && ReadingsSheet.parse(cells.get(0)).isPresent()
                ? Optional.of(new DayPerLine(sheet, 0, 1, 2, decimalComma))
                : Optional.empty();
    }

    private static int firstOf(List<String> names, String... wanted) {
        for (var name : wanted) {
            if (names.contains(name)) {
                return names.indexOf(name);
            }
        }
        return -1;
    }

    /** Whether a first line holds names, not values. */
    static boolean isHeader(List<String> cells) {
        return cells.stream().anyMatch(cell -> cell.equalsIgnoreCase("date"));
    }
}
