package org.ripewood.sites;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.ripewood.core.season.DayReading;

/** Gathers readings and faults while a file is read; one fault never hides the next. */
final class ReadingsSheet {

    /** Before the oldest series of thermometer readings that anyone would bring. */
    private static final LocalDate EARLIEST = LocalDate.of(1700, 1, 1);

    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,5}(\\.\\d{1,10})?");
    private static final Pattern EIGHT_DIGITS = Pattern.compile("\\d{8}");

    private final LocalDate today;
    private final Map<LocalDate, DayReading> readings = new TreeMap<>();
    private final List<ReadingsFault> faults = new ArrayList<>();
    private int faultCount;
    private int flagged;
    private int incomplete;

    ReadingsSheet(LocalDate today) {
        this.today = today;
    }

    void fault(long line, String found, String expected) {
        faultCount++;
        if (faults.size() < ReadingsInText.LISTED) {
            faults.add(new ReadingsFault(line, found, expected));
        }
    }

    void flagged() {
        flagged++;
    }

    void incomplete() {
        incomplete++;
    }

    /** A day, or a fault and nothing. */
    Optional<LocalDate> day(long line, String text) {
        var day = parse(text);
        if (day.isEmpty()) {
            fault(line, text, "a date such as 2024-05-01");
        } else if (day.get().isBefore(EARLIEST) || day.get().isAfter(today)) {
            fault(line, text, "a day from %s to %s".formatted(EARLIEST, today));
            return Optional.empty();
        }
        return day;
    }

    /** The day a text means: 2024-05-01, 2024/05/01 or 20240501. */
    static Optional<LocalDate> parse(String text) {
        try {
            return Optional.of(
                    EIGHT_DIGITS.matcher(text).matches()
                            ? LocalDate.parse(text, DateTimeFormatter.BASIC_ISO_DATE)
                            : LocalDate.parse(text.replace('/', '-')));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** A number, or a fault and nothing. */
    Optional<Double> number(long line, String text) {
        var plain = text.replace('\u2212', '-');
        if (NUMBER.matcher(plain).matches()) {
            return Optional.of(Double.valueOf(plain));
        }
        fault(line, text, "a temperature such as -3.5");
        return Optional.empty();
    }

    /** Enters a day's reading, or a fault. */
    void enter(long line, LocalDate day, double minimum, double maximum) {
        if (outside(minimum) || outside(maximum)) {
            fault(line, shown(minimum, maximum), "temperatures from -90 to 60 °C");
        } else if (minimum > maximum) {
            fault(line, shown(minimum, maximum), "a minimum not above the maximum");
        } else if (readings.containsKey(day)) {
            fault(line, day.toString(), "one reading a day; the first one was kept");
        } else {
            readings.put(day, new DayReading(day, minimum, maximum));
        }
    }

    private static boolean outside(double celsius) {
        return celsius < DayReading.LOWEST_CELSIUS || celsius > DayReading.HIGHEST_CELSIUS;
    }

    private static String shown(double minimum, double maximum) {
        return "minimum %s, maximum %s".formatted(minimum, maximum);
    }

    ReadingsInText done() {
        faults.sort(Comparator.comparingLong(ReadingsFault::line));
        return new ReadingsInText(
                List.copyOf(readings.values()), faults, faultCount, flagged, incomplete);
    }
}
