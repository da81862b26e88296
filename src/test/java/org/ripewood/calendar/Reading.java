package org.ripewood.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;

/** A calendar as another library than the one that wrote it reads it, valid by RFC 5545. */
record Reading(String text, List<VEvent> events) {

    static Reading of(String text) {
        assertThat(text.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
        assertThat(Arrays.asList(text.split("\r\n", -1)))
                .allSatisfy(
                        line ->
                                assertThat(line.getBytes(StandardCharsets.UTF_8).length)
                                        .isLessThanOrEqualTo(75));
        try {
            var calendar = new CalendarBuilder().build(new StringReader(text));
            var found = calendar.validate(true);
            assertThat(found.hasErrors()).as("%s", found.getEntries()).isFalse();
            List<VEvent> events = calendar.getComponents("VEVENT");
            return new Reading(text, List.copyOf(events));
        } catch (IOException | ParserException e) {
            throw new AssertionError(text, e);
        }
    }

    VEvent event(String uidPart) {
        var found = events.stream().filter(event -> uid(event).contains(uidPart)).toList();
        assertThat(found).as("events with %s of %s", uidPart, uids()).hasSize(1);
        return found.get(0);
    }

    List<String> uids() {
        return events.stream().map(Reading::uid).toList();
    }

    private static String uid(VEvent event) {
        return value(event, Property.UID);
    }

    static String value(VEvent event, String property) {
        Optional<Property> found = event.getProperty(property);
        return found.map(Property::getValue).orElse("");
    }
}
