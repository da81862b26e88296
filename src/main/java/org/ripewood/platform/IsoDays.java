package org.ripewood.platform;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.function.Function;

/** Days and times as ISO 8601 texts; arrays and numbers, which the library takes too, are not. */
final class IsoDays<T> extends StdScalarDeserializer<T> {

    private final transient Function<String, T> parse;

    private IsoDays(Class<T> type, Function<String, T> parse) {
        super(type);
        this.parse = parse;
    }

    static SimpleModule module() {
        return new SimpleModule("iso-days")
                .addDeserializer(LocalDate.class, new IsoDays<>(LocalDate.class, LocalDate::parse))
                .addDeserializer(LocalTime.class, new IsoDays<>(LocalTime.class, LocalTime::parse));
    }

    @Override
    @SuppressWarnings("unchecked") // what the context hands back is of the handled type
    public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
        if (!parser.hasToken(JsonToken.VALUE_STRING)) {
            return (T) context.handleUnexpectedToken(handledType(), parser);
        }
        var text = parser.getText();
        try {
            return parse.apply(text);
        } catch (DateTimeException e) {
            return (T) context.handleWeirdStringValue(handledType(), text, "not ISO 8601");
        }
    }
}
