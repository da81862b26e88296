package org.ripewood.api.kit;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.type.LogicalType;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;
import java.time.LocalDate;
import java.time.LocalTime;

/**
 * Values in one spelling each: no number is taken for a text, no list for a day, no word for a
 * number. Maps are answered in the order of their keys, so that equal answers are equal texts.
 */
@Singleton
class StrictJson implements ObjectMapperCustomizer {

    @Override
    public void customize(ObjectMapper mapper) {
        mapper.enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS);
        // a text of nothing, or of blanks, would be read as no number, no list, no yes
        mapper.coercionConfigDefaults()
                .setCoercion(CoercionInputShape.EmptyString, CoercionAction.Fail)
                .setAcceptBlankAsEmpty(false);
        var text = mapper.coercionConfigFor(LogicalType.Textual);
        text.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail);
        text.setCoercion(CoercionInputShape.Float, CoercionAction.Fail);
        text.setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail);
        mapper.registerModule(
                new SimpleModule("strict")
                        .addDeserializer(LocalDate.class, new StrictText.Day())
                        .addDeserializer(LocalTime.class, new StrictText.TimeOfDay())
                        .addDeserializer(Double.class, new StrictDecimal()));
    }

    /** After the framework's own modules, which would read days their way otherwise. */
    @Override
    public int priority() {
        return MINIMUM_PRIORITY;
    }
}
