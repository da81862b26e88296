package org.ripewood.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;

/** What was answered. */
record Heard(int statusCode, String contentType, String location, String text) {

    private static final ObjectMapper JSON = new ObjectMapper();

    String asString() {
        return text;
    }

    /** The text as JSON; a missing node when it is none. */
    JsonNode json() {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException noJson) {
            return JSON.missingNode();
        }
    }

    String detail() {
        return json().path("detail").asText();
    }

    /** The fields that a problem names. */
    List<String> faultyFields() {
        var fields = new ArrayList<String>();
        json().path("faults").forEach(fault -> fields.add(fault.path("field").asText()));
        return fields;
    }
}
