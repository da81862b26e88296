package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.accounts.ApiToken.Scope.READ;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every address written in another way that means the same to somebody on its way (RFC 3986, 6.2):
 * none of them leads past a guard, since all are refused before anything else. OWASP ASVS 5.0,
 * 8.3.1: what is allowed is decided in one place.
 */
@Tag("one-database")
@QuarkusTest
class BentAddressTest {

    private static final String PART =
            "--x\r\nContent-Disposition: form-data; name=\"a\"\r\n\r\nb\r\n--x--\r\n";

    private static final Map<String, String> BODIES =
            Map.of(
                    "", "",
                    "application/x-www-form-urlencoded", "a=b",
                    "multipart/form-data; boundary=x", PART);

    private static final String ENCODED = "its first letter encoded";

    /** How an address is written otherwise. */
    private static final Map<String, UnaryOperator<String>> BENDS = new LinkedHashMap<>();

    static {
        BENDS.put(ENCODED, path -> "/" + encoded(path, 1) + path.substring(2));
        BENDS.put("its last sign encoded", path -> cut(path) + encoded(path, path.length() - 1));
        BENDS.put("a slash before", path -> "/" + path);
        BENDS.put("a slash twice", path -> path.replaceFirst("(?<=.)/|$", "//"));
        BENDS.put("a dot before", path -> "/." + path);
        BENDS.put("an encoded dot before", path -> "/%2e" + path);
        BENDS.put("a way back before", path -> "/home/.." + path);
        BENDS.put("an encoded way back before", path -> "/home/%2E%2e" + path);
        BENDS.put("a dot behind", path -> path + "/.");
        BENDS.put("a parameter behind", path -> path + ";a=b");
        BENDS.put("a parameter in it", path -> path.replaceFirst("(?<=.)/|$", ";/"));
        BENDS.put("a slash encoded", path -> path.replaceFirst("(?<=.)/|$", "%2f"));
        BENDS.put("a slash the other way", path -> path.replaceFirst("(?<=.)/|$", "%5C"));
        BENDS.put("nothing behind", path -> path + "%00");
        BENDS.put("an end of line behind", path -> path + "%0d%0a");
        BENDS.put("half a character behind", path -> path + "%c3");
        BENDS.put("a slash of two bytes", path -> path + "%c0%af");
    }

    @Inject School opening;
    @Inject Tables tables;

    private School school;
    private Calls calls;
    private final List<String> wrong = new ArrayList<>();

    @BeforeEach
    void open() {
        school = opening.open();
        calls = new Calls(school);
    }

    @Test
    void noOtherSpellingNoReadingTokenAndNoBareSessionComesIn() {
        for (var endpoint : Endpoint.all()) {
            if (endpoint.path().equals("/")) {
                continue;
            }
            // nothing is written, so that one call serves for all
            var call = endpoint.writes() ? calls.of(endpoint) : read(endpoint);
            var token = endpoint.writes() ? school.token(mostAllowed(endpoint), READ) : null;
            var before = tables.rows();
            bend(call);
            if (token != null && !isForStrangers(endpoint)) {
                readByToken(call, token);
            }
            if (endpoint.writes() && endpoint.api()) {
                writeByABareSession(call);
            }
            if (!tables.rows().equals(before)) {
                wrong.add("written: " + endpoint);
            }
        }
        assertThat(wrong).isEmpty();
    }

    private void bend(Call call) {
        var path = call.url().replaceFirst("\\?.*", "");
        var query = call.url().substring(path.length());
        var who = mostAllowed(call.endpoint());
        BENDS.forEach(
                (how, bend) -> {
                    var heard = call.send(school.lineOf(who), bend.apply(path) + query);
                    check(
                            heard.statusCode() == 400
                                    && heard.text().contains("One address, one spelling"),
                            call,
                            how,
                            heard);
                });
        var heard = call.send(school.lineOf(who), inAnotherCase(path) + query);
        check(heard.statusCode() >= 404 && heard.statusCode() < 500, call, "another case", heard);
    }

    private void readByToken(Call call, String token) {
        Supplier<Line> line = () -> new Line().header("Authorization", "Bearer " + token);
        var own = call.send(line.get(), call.url());
        boolean refused =
                call.endpoint().api()
                        ? own.statusCode() == 403 && own.text().contains("This token only reads")
                        : !success(own);
        check(refused, call, "a reading token", own);
        tryBodies(call, line, "a reading token with ");
    }

    private void writeByABareSession(Call call) {
        var cookie = school.cookie(mostAllowed(call.endpoint()));
        Supplier<Line> line = () -> new Line().cookie("ripewood-session", cookie);
        var own = call.send(line.get(), call.url());
        check(
                own.statusCode() == 403 && own.text().contains("X-Ripewood"),
                call,
                "a bare session",
                own);
        tryBodies(call, line, "a bare session with ");
    }

    private void tryBodies(Call call, Supplier<Line> line, String how) {
        BODIES.forEach(
                (type, body) -> {
                    for (var path : List.of(call.url(), BENDS.get(ENCODED).apply(call.url()))) {
                        var sent = line.get();
                        if (call.version() != null) {
                            sent.header("If-Match", "\"" + call.version() + "\"");
                        }
                        if (!type.isEmpty()) {
                            sent.body(type, body);
                        }
                        var heard = sent.send(call.endpoint().verb(), path);
                        check(!success(heard), call, how + type + " at " + path, heard);
                    }
                });
    }

    private void check(boolean asExpected, Call call, String how, Heard heard) {
        if (!asExpected) {
            var text = heard.text().substring(0, Math.min(300, heard.text().length()));
            wrong.add("%s, %s: %d %s".formatted(call.endpoint(), how, heard.statusCode(), text));
        }
    }

    /** Whatever it names is not looked for. */
    private static Call read(Endpoint endpoint) {
        return new Call(endpoint, endpoint.path().replaceAll("\\{\\w+\\}", "1"), null, null);
    }

    /** What is no other spelling of anything stays as it was. */
    @Test
    void addressesWithMoreThanLettersAreTaken() {
        var tree = school.tree().id();
        for (var path :
                List.of(
                        "/api/v1/trees?size=1&page=0",
                        "/api/v1/trees/" + tree + "/standing?on=" + school.today().date(),
                        "/lessons?note=a,b;c%2F%2e//../%00",
                        "/style.css",
                        "/trees/" + tree + "/",
                        "/q/health/ready")) {
            assertThat(school.lineOf(Who.STUDENT).send("GET", path).statusCode())
                    .as(path)
                    .isEqualTo(200);
        }
        for (var path : List.of("/lessons/%C3%9Cbung", "/lessons/a%20b%25", "/lessons/a:b@c~d!")) {
            assertThat(school.lineOf(Who.STUDENT).send("GET", path).statusCode())
                    .as(path)
                    .isEqualTo(404);
        }
    }

    /** Whoever has the link chooses a password, and anybody may wish for a link. */
    private static boolean isForStrangers(Endpoint endpoint) {
        return endpoint.path().startsWith("/password/");
    }

    /** Leading on to the sign-in page is no success. */
    private static boolean success(Heard heard) {
        return heard.statusCode() < 300
                || (heard.statusCode() < 400 && !heard.location().contains("/sign-in"));
    }

    /** Whom the table lets do most; the registrar where nobody is let. */
    private static Who mostAllowed(Endpoint endpoint) {
        return RoleTable.rows().get(endpoint.toString()).entrySet().stream()
                .filter(row -> row.getKey() != Who.ANONYMOUS && row.getValue() < 400)
                .findFirst()
                .map(Map.Entry::getKey)
                .orElse(Who.REGISTRAR);
    }

    private static String encoded(String path, int at) {
        return "%%%02X".formatted((int) path.charAt(at));
    }

    private static String cut(String path) {
        return path.substring(0, path.length() - 1);
    }

    /** Another address (RFC 3986, 6.2.2.1): in a path the case counts. */
    private static String inAnotherCase(String path) {
        return "/" + path.substring(1, 2).toUpperCase(Locale.ROOT) + path.substring(2);
    }
}
