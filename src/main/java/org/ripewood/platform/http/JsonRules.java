package org.ripewood.platform.http;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;

/** JSON is read to the letter: what is not understood is told, never guessed or dropped. */
@Singleton
class JsonRules implements ObjectMapperCustomizer {

    /** Long enough for a number that is far too large to be read, and its field named. */
    private static final int LONGEST_NUMBER = 10_000;

    @Override
    @SuppressWarnings("deprecation") // the replacement exists only on a builder, which is not ours
    public void customize(ObjectMapper mapper) {
        mapper.enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
                .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS);
        mapper.getFactory()
                .setStreamReadConstraints(
                        StreamReadConstraints.builder().maxNumberLength(LONGEST_NUMBER).build());
        mapper.enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION);
        mapper.configure(MapperFeature.ALLOW_COERCION_OF_SCALARS, false);
    }
}
