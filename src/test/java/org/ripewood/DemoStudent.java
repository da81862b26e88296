package org.ripewood;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;

/** A student of the demo school who is signed in to a running service and speaks to its API. */
final class DemoStudent {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final HttpClient line = HttpClient.newHttpClient();
    private final RunningJar service;
    private final String cookie;

    private DemoStudent(RunningJar service, String cookie) {
        this.service = service;
        this.cookie = cookie;
    }

    static DemoStudent signIn(RunningJar service, String login) throws Exception {
        var form = "j_username=%s&j_password=%s".formatted(login, service.passwordOf(login));
        var request =
                HttpRequest.newBuilder(URI.create(service.at("/j_security_check")))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(form))
                        .build();
        var answer = HttpClient.newHttpClient().send(request, BodyHandlers.discarding());
        var cookie =
                answer.headers().allValues("Set-Cookie").stream()
                        .filter(set -> set.startsWith("ripewood-session="))
                        .map(set -> set.split(";", 2)[0])
                        .findFirst()
                        .orElseThrow(() -> new IllegalStateException("not signed in: " + answer));
        return new DemoStudent(service, cookie);
    }

    /** The same session, spoken to another node. */
    DemoStudent at(RunningJar other) {
        return new DemoStudent(other, cookie);
    }

    HttpResponse<byte[]> get(String path) throws Exception {
        return line.send(request(path).GET().build(), BodyHandlers.ofByteArray());
    }

    JsonNode read(String path) throws Exception {
        var answer = get(path);
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(path + " -> " + answer.statusCode());
        }
        return JSON.readTree(answer.body());
    }

    HttpResponse<String> post(String path, String json) throws IOException, InterruptedException {
        return send(path, "application/json", BodyPublishers.ofString(json));
    }

    HttpResponse<String> send(String path, String type, HttpRequest.BodyPublisher body)
            throws IOException, InterruptedException {
        var request = request(path).header("Content-Type", type).POST(body).build();
        return line.send(request, BodyHandlers.ofString());
    }

    /** Changes something to a version; answers the status. */
    int put(String path, String version, String json) throws Exception {
        var request =
                request(path)
                        .header("Content-Type", "application/json")
                        .header("If-Match", version)
                        .PUT(BodyPublishers.ofString(json))
                        .build();
        return line.send(request, BodyHandlers.discarding()).statusCode();
    }

    /** Signs out, as the page's button does; answers the status. */
    int leave() throws Exception {
        // in the form and in its cookie, as a page gives it
        var page = HttpRequest.newBuilder(URI.create(service.at("/home"))).header("Cookie", cookie);
        var token =
                line
                        .send(page.build(), BodyHandlers.discarding())
                        .headers()
                        .allValues("Set-Cookie")
                        .stream()
                        .filter(set -> set.startsWith("ripewood-csrf="))
                        .map(set -> set.replaceFirst("^[^=]*=", "").replaceFirst(";.*", ""))
                        .findFirst()
                        .orElseThrow();
        var request =
                HttpRequest.newBuilder(URI.create(service.at("/sign-out")))
                        .header("Cookie", cookie + "; ripewood-csrf=" + token)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString("csrf-token=" + token))
                        .build();
        return line.send(request, BodyHandlers.discarding()).statusCode();
    }

    /** What was made of JSON; anything but 201 is a fault. */
    JsonNode make(String path, String json) throws Exception {
        var answer = post(path, json);
        if (answer.statusCode() != 201) {
            throw new IllegalStateException(path + " -> " + answer.body());
        }
        return JSON.readTree(answer.body());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(service.at(path)))
                .timeout(Duration.ofSeconds(30))
                .header("Cookie", cookie)
                .header("X-Ripewood", "1");
    }
}
