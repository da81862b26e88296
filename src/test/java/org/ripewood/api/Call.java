package org.ripewood.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A request with everything it needs to be taken.
 *
 * @param body fields of a JSON body or of a form; null for none
 * @param version sent as If-Match; null for none
 */
record Call(
        Endpoint endpoint, String url, @Nullable Map<String, Object> body, @Nullable Long version) {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Sixteen bytes, as the form token has them. */
    private static final String TOKEN = "c2l4dGVlbiBieXRlcy4uLg";

    Call with(String field, Object value) {
        var changed = new LinkedHashMap<>(body);
        changed.put(field, value);
        return new Call(endpoint, url, changed, version);
    }

    Call without(String field) {
        var changed = new LinkedHashMap<>(body);
        changed.remove(field);
        return new Call(endpoint, url, changed, version);
    }

    Response send(School school, Who who) {
        var request = school.as(who);
        if (version != null && endpoint.versioned()) {
            request.header("If-Match", "\"" + version + "\"");
        }
        if (endpoint.api() && endpoint.body().isPresent()) {
            request.contentType("application/json").body(json());
        } else if (endpoint.consumes("text/csv")) {
            request.contentType("text/csv; charset=UTF-8").body(String.valueOf(body.get("text")));
        } else if (endpoint.consumes("multipart/form-data")) {
            request.contentType("multipart/form-data");
            if (!endpoint.api()) {
                request.cookie("ripewood-csrf", TOKEN).multiPart("csrf-token", TOKEN);
            }
            body.forEach((name, value) -> part(request, name, value));
        } else if (endpoint.api()) {
            request.noContentType();
        } else if (endpoint.writes() && !endpoint.api()) {
            request.contentType("application/x-www-form-urlencoded; charset=UTF-8")
                    .cookie("ripewood-csrf", TOKEN)
                    .formParam("csrf-token", TOKEN)
                    .formParams(body == null ? Map.of() : body);
        }
        var answer = request.request(endpoint.verb(), url);
        if (url.contains("sign-out")) {
            school.forgetSessions();
        }
        return answer;
    }

    private static void part(RequestSpecification request, String name, Object value) {
        if (value instanceof byte[] file) {
            request.multiPart(name, "file", file, "application/octet-stream");
        } else {
            request.multiPart(name, String.valueOf(value));
        }
    }

    String json() {
        try {
            return JSON.writeValueAsString(body);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    Set<String> fields() {
        return body.keySet();
    }
}
