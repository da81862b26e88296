package org.ripewood.api.kit;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/** Days and times of day in one spelling each; numbers and lists are not read as days. */
abstract class StrictText<T> extends StdScalarDeserializer<T> {

    private static final long serialVersionUID = 1L;

    private final String spelling;

    private StrictText(Class<T> type, String spelling) {
        super(type);
        this.spelling = spelling;
    }

    /** {@code 2026-04-30}. */
    static final class Day extends StrictText<LocalDate> {
        private static final long serialVersionUID = 1L;

        Day() {
            super(LocalDate.class, "[0-9]{4}-[0-9]{2}-[0-9]{2}");
        }

        @Override
        LocalDate parse(String text) {
            return LocalDate.parse(text);
        }
    }

    /** {@code 09:30} or {@code 09:30:00}. */
    static final class TimeOfDay extends StrictText<LocalTime> {
        private static final long serialVersionUID = 1L;

        TimeOfDay() {
            super(LocalTime.class, "[0-9]{2}:[0-9]{2}(:[0-9]{2})?");
        }

        @Override
        LocalTime parse(String text) {
            return LocalTime.parse(text);
        }
    }

    abstract T parse(String text);

    @Override
    public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
        if (!parser.hasToken(JsonToken.VALUE_STRING)) {
            return context.reportInputMismatch(this, "expected a text");
        }
        var text = parser.getText();
        var read = text.matches(spelling) ? parsed(text) : null;
        if (read == null) {
            throw context.weirdStringException(text, handledType(), "no such day or time");
        }
        return read;
    }

    private @Nullable T parsed(String text) {
        try {
            return parse(text);
        } catch (DateTimeException noSuchDay) {
            return null;
        }
    }
}
