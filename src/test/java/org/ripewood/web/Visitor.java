package org.ripewood.web;

import static io.restassured.RestAssured.config;
import static io.restassured.RestAssured.given;
import static io.restassured.config.EncoderConfig.encoderConfig;
import static java.nio.charset.StandardCharsets.UTF_8;

import io.restassured.config.EncoderConfig;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.io.ByteArrayOutputStream;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;

/** Somebody signed in who reads pages and sends forms as a browser would. */
public final class Visitor {

    private static final String PASSWORD = "long enough a password";
    private static final Pattern TOKEN =
            Pattern.compile("name=\"(csrf-token)\" value=\"([^\"]+)\"");

    private static final EncoderConfig TYPE_AS_GIVEN =
            encoderConfig().appendDefaultContentCharsetToContentTypeIfUndefined(false);

    private final Map<String, String> cookies = new HashMap<>();

    private Visitor() {}

    public static Visitor of(People people, Actor actor) {
        var visitor = new Visitor();
        visitor.keep(
                given().redirects()
                        .follow(false)
                        .formParam("j_username", people.get(actor, actor.personId()).login())
                        .formParam("j_password", PASSWORD)
                        .post("/j_security_check"));
        return visitor;
    }

    /** Shows that it is them, after which forms are acted on at once. */
    Visitor confirmed() {
        sendJson("/api/v1/people/me/confirmation", null, Map.of("password", PASSWORD));
        return this;
    }

    public static Visitor nobody() {
        return new Visitor();
    }

    /** Fields of a form: a name, its value, the next name and so on. */
    static Map<String, String> fields(String... inTurn) {
        var fields = new LinkedHashMap<String, String>();
        for (int i = 0; i < inTurn.length; i += 2) {
            fields.put(inTurn[i], inTurn[i + 1]);
        }
        return fields;
    }

    /** Changes what the browser keeps under a name. */
    void alter(String cookie, UnaryOperator<String> how) {
        cookies.computeIfPresent(cookie, (name, value) -> how.apply(value));
    }

    public Response get(String path) {
        return keep(given().redirects().follow(false).cookies(cookies).get(path));
    }

    /** Asks for what may be in the browser already, under that tag. */
    public Response getUnless(String path, String tag) {
        return given().redirects()
                .follow(false)
                .cookies(cookies)
                .header("If-None-Match", tag)
                .get(path);
    }

    /** Sends a form that stands on a page, with the page's token. */
    public Response send(String page, String action, Map<String, ?> fields) {
        var all = new HashMap<String, Object>(fields);
        var token = TOKEN.matcher(get(page).asString());
        if (token.find()) {
            all.put(token.group(1), token.group(2));
        }
        return post(action, all);
    }

    /** Sends a form with files in one field, each under a name and type that mean nothing. */
    public Response sendFiles(
            String page, String action, Map<String, ?> fields, String field, List<byte[]> files) {
        var request = given().redirects().follow(false);
        var token = TOKEN.matcher(get(page).asString());
        if (token.find()) {
            request.multiPart(token.group(1), token.group(2));
        }
        fields.forEach((name, value) -> request.multiPart(name, String.valueOf(value)));
        files.forEach(file -> request.multiPart(field, "../../x.svg", file, "text/html"));
        return keep(request.cookies(cookies).post(action));
    }

    Response post(String action, Map<String, ?> fields) {
        return keep(
                given().redirects()
                        .follow(false)
                        .cookies(cookies)
                        .contentType(ContentType.URLENC.withCharset("UTF-8"))
                        .formParams(fields)
                        .post(action));
    }

    /**
     * Sends what a program would.
     *
     * @param ifMatch null to leave the version out
     */
    Response sendJson(String path, @Nullable String ifMatch, Map<String, ?> body) {
        var request =
                given().redirects()
                        .follow(false)
                        .cookies(cookies)
                        .header("X-Ripewood", "1")
                        .contentType(ContentType.JSON)
                        .body(body);
        return ifMatch == null
                ? keep(request.post(path))
                : keep(request.header("If-Match", ifMatch).post(path));
    }

    /** The same in one piece that tells its length, as a browser sends it. */
    Response sendWhole(
            String page, String action, Map<String, ?> fields, String field, List<byte[]> files) {
        var body = new ByteArrayOutputStream();
        var all = new HashMap<String, Object>(fields);
        var token = TOKEN.matcher(get(page).asString());
        if (token.find()) {
            all.put(token.group(1), token.group(2));
        }
        all.forEach((name, value) -> part(body, name, "", value.toString().getBytes(UTF_8)));
        files.forEach(file -> part(body, field, "; filename=\"list.csv\"", file));
        body.writeBytes("--whole--\r\n".getBytes(UTF_8));
        return keep(
                given().config(config().encoderConfig(TYPE_AS_GIVEN))
                        .redirects()
                        .follow(false)
                        .cookies(cookies)
                        .header("Content-Type", "multipart/form-data; boundary=whole")
                        .body(body.toByteArray())
                        .post(action));
    }

    private static void part(ByteArrayOutputStream to, String name, String more, byte[] value) {
        var head = "--whole\r\nContent-Disposition: form-data; name=\"%s\"%s\r\n\r\n";
        to.writeBytes(head.formatted(name, more).getBytes(UTF_8));
        to.writeBytes(value);
        to.writeBytes("\r\n".getBytes(UTF_8));
    }

    /** Sends a file as a program would, with the type as it is given. */
    Response sendCsv(String path, String type, byte[] file) {
        return given().config(config().encoderConfig(TYPE_AS_GIVEN))
                .cookies(cookies)
                .header("X-Ripewood", "1")
                .header("Content-Type", type)
                .body(file)
                .post(path);
    }

    /** A cookie that came from elsewhere. */
    void give(String name, String value) {
        cookies.put(name, value);
    }

    private Response keep(Response answer) {
        cookies.putAll(answer.cookies());
        return answer;
    }
}
