package org.ripewood.calendar;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.io.text.ICalWriter;
import biweekly.util.Duration;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** A calendar as its text (RFC 5545; name and interval by RFC 7986). */
final class CalendarText {

    private static final String PRODUCT = "-//Ripewood//Class dates and care//EN";
    private static final int HOURS_TO_NEXT_READING = 6;

    private CalendarText() {}

    static String text(Dates dates) {
        var calendar = new ICalendar();
        calendar.setProductId(PRODUCT);
        calendar.setName("Ripewood");
        calendar.setRefreshInterval(Duration.builder().hours(HOURS_TO_NEXT_READING).build())
                // which RFC 7986, 5.7 asks for, there being no kind of value otherwise
                .setParameter("VALUE", "DURATION");
        ClassEvents.of(dates).forEach(calendar::addEvent);
        CareEvents.of(dates).forEach(calendar::addEvent);
        return Folding.folded(unfolded(calendar));
    }

    private static String unfolded(ICalendar calendar) {
        var text = new StringWriter();
        try (var writer = new ICalWriter(text, ICalVersion.V2_0)) {
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
            writer.write(calendar);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
