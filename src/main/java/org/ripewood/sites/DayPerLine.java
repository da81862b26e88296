package org.ripewood.sites;

import java.util.List;

/** A line a day: its date, its minimum and its maximum, among other columns perhaps. */
final class DayPerLine implements ReadingsLayout {

    private final ReadingsSheet sheet;
    private final int date;
    private final int minimum;
    private final int maximum;
    private final boolean decimalComma;

    DayPerLine(ReadingsSheet sheet, int date, int minimum, int maximum, boolean decimalComma) {
        this.sheet = sheet;
        this.date = date;
        this.minimum = minimum;
        this.maximum = maximum;
        this.decimalComma = decimalComma;
    }

    @Override
    public void line(long number, List<String> cells) {
        int needed = Math.max(date, Math.max(minimum, maximum)) + 1;
        if (cells.size() < needed) {
            sheet.fault(number, String.join(",", cells), "at least %d columns".formatted(needed));
            return;
        }
        sheet.day(number, cells.get(date))
                .ifPresent(
                        day -> {
                            var low = celsius(cells.get(minimum));
                            var high = celsius(cells.get(maximum));
                            if (low.isEmpty() || high.isEmpty()) {
                                onlyPart(low, high);
                                return;
                            }
                            var min = sheet.number(number, low);
                            var max = sheet.number(number, high);
                            if (min.isPresent() && max.isPresent()) {
                                sheet.enter(number, day, min.get(), max.get());
                            }
                        });
    }

    /** A day without any value is a gap and no fault. */
    private void onlyPart(String low, String high) {
        if (!(low.isEmpty() && high.isEmpty())) {
            sheet.incomplete();
        }
    }

    private String celsius(String cell) {
        return decimalComma ? cell.replace(',', '.') : cell;
    }

    @Override
    public void end() {
        // every line stands for itself
    }
}
