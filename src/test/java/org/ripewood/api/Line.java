package org.ripewood.api;

import io.restassured.RestAssured;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A request as it goes over the line, and a connection that is kept: for tests that send thousands,
 * of which each would otherwise open one of its own.
 */
final class Line {

    private static final HttpClient CLIENT =
            HttpClient.newBuilder()
                    .version(HttpClient.Version.HTTP_1_1)
                    .followRedirects(HttpClient.Redirect.NEVER)
                    .build();

    private final Map<String, String> headers = new LinkedHashMap<>();
    private final StringBuilder cookies = new StringBuilder();
    private byte @Nullable [] body;

    /** One that nobody made, of the length they have. */
    private String formToken = "A".repeat(64);

    Line header(String name, String value) {
        headers.put(name, value);
        return this;
    }

    Line cookie(String name, String value) {
        cookies.append(cookies.length() == 0 ? "" : "; ").append(name).append('=').append(value);
        return this;
    }

    /** The token that forms of whoever sends this carry. */
    Line formToken(String token) {
        formToken = token;
        return this;
    }

    String formToken() {
        return formToken;
    }

    /** Sent as it stands, whatever its type promises. */
    Line body(String type, String text) {
        return body(type, text.getBytes(StandardCharsets.UTF_8));
    }

    Line body(String type, byte[] bytes) {
        body = bytes;
        return header("Content-Type", type);
    }

    /** Sends it; the path may be a whole address. */
    Heard send(String verb, String path) {
        var address =
                path.startsWith("http") ? path : "http://localhost:" + RestAssured.port + path;
        var publisher =
                body == null
                        ? HttpRequest.BodyPublishers.noBody()
                        : HttpRequest.BodyPublishers.ofByteArray(body);
        var request =
                HttpRequest.newBuilder(URI.create(address))
                        .timeout(Duration.ofMinutes(1))
                        .method(verb, publisher);
        headers.forEach(request::header);
        if (cookies.length() > 0) {
            request.header("Cookie", cookies.toString());
        }
        try {
            var answer = CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
            return new Heard(
                    answer.statusCode(),
                    answer.headers().firstValue("Content-Type").orElse(""),
                    answer.headers().firstValue("Location").orElse(""),
                    answer.body());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
