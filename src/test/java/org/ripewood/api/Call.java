package org.ripewood.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
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

    private static final String BOUNDARY = "a-line-nobody-writes";
    private static final String PARTS_TYPE = "multipart/form-data; boundary=" + BOUNDARY;

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

    Heard send(School school, Who who) {
        var answer = send(school.lineOf(who));
        boolean renewed = url.endsWith("/me/confirmation") && answer.statusCode() < 300;
        if (url.contains("sign-out") || url.startsWith("/password/") || renewed) {
            school.forgetSessions();
        }
        return answer;
    }

    /** Sends it over a line on which somebody has said who they are. */
    Heard send(Line line) {
        return send(line, url);
    }

    /** The same by another address. */
    Heard send(Line line, String address) {
        if (version != null && endpoint.versioned()) {
            line.header("If-Match", "\"" + version + "\"");
        }
        write(line);
        return line.send(endpoint.verb(), address);
    }

    private void write(Line line) {
        if (endpoint.api() && endpoint.body().isPresent()) {
            line.body("application/json", json());
        } else if (endpoint.consumes("text/csv")) {
            line.body("text/csv; charset=UTF-8", String.valueOf(body.get("text")));
        } else if (endpoint.consumes("multipart/form-data")) {
            if (!endpoint.api()) {
                line.cookie("ripewood-csrf", line.formToken());
            }
            line.body(PARTS_TYPE, parts(line));
        } else if (endpoint.api() && endpoint.consumes("application/json") && body != null) {
            // read as a stream and not into a record; what has no body consumes JSON as well
            if (body.containsKey("text")) {
                line.body("application/json", String.valueOf(body.get("text")));
            }
        } else if (endpoint.writes() && !endpoint.api()) {
            line.cookie("ripewood-csrf", line.formToken())
                    .body("application/x-www-form-urlencoded; charset=UTF-8", form(line));
        }
    }

    private Map<String, Object> withToken(Line line) {
        var all = new LinkedHashMap<String, Object>(body == null ? Map.of() : body);
        all.put("csrf-token", line.formToken());
        return all;
    }

    private String form(Line line) {
        var pairs = new StringJoiner("&");
        withToken(line)
                .forEach(
                        (name, value) -> {
                            var several = value instanceof Collection<?> all ? all : List.of(value);
                            several.forEach(one -> pairs.add(name + "=" + encoded(one)));
                        });
        return pairs.toString();
    }

    private static String encoded(Object value) {
        return URLEncoder.encode(String.valueOf(value), StandardCharsets.UTF_8);
    }

    private byte[] parts(Line line) {
        var parts = new ByteArrayOutputStream();
        var all = endpoint.api() ? body : withToken(line);
        all.forEach(
                (name, value) -> {
                    var file = value instanceof byte[] ? "; filename=\"file\"" : "";
                    write(
                            parts,
                            "--%s\r\nContent-Disposition: form-data; name=\"%s\"%s\r\n\r\n"
                                    .formatted(BOUNDARY, name, file));
                    if (value instanceof byte[] bytes) {
                        parts.writeBytes(bytes);
                    } else {
                        write(parts, String.valueOf(value));
                    }
                    write(parts, "\r\n");
                });
        write(parts, "--%s--\r\n".formatted(BOUNDARY));
        return parts.toByteArray();
    }

    private static void write(ByteArrayOutputStream parts, String text) {
        parts.writeBytes(text.getBytes(StandardCharsets.UTF_8));
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
