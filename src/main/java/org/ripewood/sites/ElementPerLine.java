package org.ripewood.sites;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A line an element and day, as in GHCN-Daily's files by station: station, date, element, value,
 * measurement flag, quality flag and more. Temperatures are in tenths of °C; a value with a quality
 * flag is left out and counted. Source of the layout: NOAA NCEI, readme-by_station (from memory).
 */
final class ElementPerLine implements ReadingsLayout {

    private static final int STATION = 0;
    private static final int DATE = 1;
    private static final int ELEMENT_NAME = 2;
    private static final int VALUE = 3;
    private static final int QUALITY_FLAG = 5;
    private static final String NOT_MEASURED = "-9999";

    private final ReadingsSheet sheet;
    private final Map<LocalDate, Value> minima = new TreeMap<>();
    private final Map<LocalDate, Value> maxima = new TreeMap<>();
    private @Nullable String station;

    ElementPerLine(ReadingsSheet sheet) {
        this.sheet = sheet;
    }

    private record Value(long line, double celsius) {}

    @Override
    public void line(long number, List<String> cells) {
        if (cells.size() <= QUALITY_FLAG) {
            sheet.fault(number, String.join(",", cells), "at least 6 columns");
            return;
        }
        var values =
                switch (cells.get(ELEMENT_NAME)) {
                    case "TMIN" -> minima;
                    case "TMAX" -> maxima;
                    default -> null;
                };
        if (values == null || cells.get(VALUE).equals(NOT_MEASURED)) {
            return;
        }
        if (!cells.get(QUALITY_FLAG).isEmpty()) {
            sheet.flagged();
        } else if (isOfTheStation(number, cells.get(STATION))) {
            keep(number, cells, values);
        }
    }

    private void keep(long number, List<String> cells, Map<LocalDate, Value> values) {
        var day = sheet.day(number, cells.get(DATE));
        var tenths = sheet.number(number, cells.get(VALUE));
        if (day.isEmpty() || tenths.isEmpty()) {
            return;
        }
        if (values.putIfAbsent(day.get(), new Value(number, tenths.get() / 10)) != null) {
            sheet.fault(
                    number,
                    cells.get(ELEMENT_NAME) + " of " + day.get(),
                    "one reading a day; the first one was kept");
        }
    }

    private boolean isOfTheStation(long number, String found) {
        if (station == null) {
            station = found;
        }
        if (!station.equals(found)) {
            sheet.fault(number, found, "the station of the first line, " + station);
        }
        return station.equals(found);
    }

    @Override
    public void end() {
        minima.forEach(
                (day, minimum) -> {
                    var maximum = maxima.remove(day);
                    if (maximum == null) {
                        sheet.incomplete();
                    } else {
                        long line = Math.max(minimum.line, maximum.line);
                        sheet.enter(line, day, minimum.celsius, maximum.celsius);
                    }
                });
        maxima.forEach((day, maximum) -> sheet.incomplete());
    }
}
