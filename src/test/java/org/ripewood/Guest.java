package org.ripewood;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A browser of a running service: it keeps cookies, sends forms with their token, and JSON. */
final class Guest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Pattern TOKEN = Pattern.compile("name=\"csrf-token\" value=\"([^\"]+)\"");
    private static final String BOUNDARY = "part";

    private final RunningJar service;
    private final HttpClient line;

    Guest(RunningJar service) {
        this.service = service;
        this.line =
                HttpClient.newBuilder()
                        .cookieHandler(new CookieManager(null, CookiePolicy.ACCEPT_ALL))
                        .build();
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return line.send(request(path).GET().build(), BodyHandlers.ofString());
    }

    JsonNode read(String path) throws IOException, InterruptedException {
        return JSON.readTree(get(path).body());
    }

    /** Signs in, as the page's form does. */
    HttpResponse<String> signIn(String login, String password)
            throws IOException, InterruptedException {
        return form(
                "/sign-in",
                "/j_security_check",
                Map.of("j_username", login, "j_password", password));
    }

    /** Sends a form that stands on a page, with the token of the page. */
    HttpResponse<String> form(String page, String action, Map<String, String> fields)
            throws IOException, InterruptedException {
        var all = new TreeMap<>(fields);
        all.put("csrf-token", token(page));
        var body =
                all.entrySet().stream()
                        .map(field -> field.getKey() + "=" + encoded(field.getValue()))
                        .collect(Collectors.joining("&"));
        return post(action, "application/x-www-form-urlencoded", BodyPublishers.ofString(body));
    }

    /** The same with a photo. */
    HttpResponse<String> formWithPhoto(String page, String action, byte[] photo)
            throws IOException, InterruptedException {
        return photo(action, photo, Map.of("view", "FRONT", "csrf-token", token(page)));
    }

    /** Sends a photo as a program does. */
    HttpResponse<String> photo(String path, byte[] photo) throws IOException, InterruptedException {
        return photo(path, photo, Map.of("view", "FRONT"));
    }

    private HttpResponse<String> photo(String path, byte[] photo, Map<String, String> fields)
            throws IOException, InterruptedException {
        var body = new ByteArrayOutputStream();
        for (var field : fields.entrySet()) {
            body.writeBytes(ascii("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\""));
            body.writeBytes(ascii(field.getKey() + "\"\r\n\r\n" + field.getValue() + "\r\n"));
        }
        body.writeBytes(
                ascii(
                        "--part\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.jpg\"\r\nContent-Type: image/jpeg\r\n\r\n"));
        body.writeBytes(photo);
        body.writeBytes(ascii("\r\n--" + BOUNDARY + "--\r\n"));
        return post(
                path,
                "multipart/form-data; boundary=" + BOUNDARY,
                BodyPublishers.ofByteArray(body.toByteArray()));
    }

    /** Sends JSON as a program does. */
    HttpResponse<String> json(String path, String json) throws IOException, InterruptedException {
        return post(path, "application/json", BodyPublishers.ofString(json));
    }

    private HttpResponse<String> post(String path, String type, BodyPublisher body)
            throws IOException, InterruptedException {
        var request = request(path).header("Content-Type", type).header("X-Ripewood", "1");
        return line.send(request.POST(body).build(), BodyHandlers.ofString());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(service.at(path)))
                .version(HttpClient.Version.HTTP_1_1)
                .timeout(Duration.ofSeconds(30));
    }

    private String token(String page) throws IOException, InterruptedException {
        var token = TOKEN.matcher(get(page).body());
        return token.find() ? token.group(1) : "";
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static String encoded(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
