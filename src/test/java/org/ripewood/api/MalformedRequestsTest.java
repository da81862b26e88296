package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Requests bent at random, over every address: none ends in an error of the service, tells how it
 * is built, or leaves anything behind. Where a bent request is still a good one nothing is asked of
 * it but that.
 */
@Tag("one-database")
@QuarkusTest
class MalformedRequestsTest {

    private static final int REQUESTS = 10_000;
    private static final int REQUESTS_THAT_END = 400;
    private static final long SEED = 20261125L;

    private static final List<String> VERBS =
            List.of("GET", "POST", "PUT", "DELETE", "PATCH", "OPTIONS", "HEAD");

    private static final List<String> TYPES =
            List.of(
                    "application/json",
                    "application/x-www-form-urlencoded",
                    "multipart/form-data",
                    "multipart/form-data; boundary=x",
                    "text/csv",
                    "text/plain",
                    "application/xml",
                    "application/json; charset=utf-16",
                    "image/svg+xml",
                    "*/*",
                    "",
                    "a",
                    "Multipart/Form-Data; boundary=x",
                    "multipart/form-data; boundary=",
                    "application/x-www-form-urlencoded; charset=bogus");

    /** Pieces of paths and bodies, dangerous or only odd. */
    private static final List<String> PIECES =
            List.of(
                    "..",
                    "%2e%2e%2f",
                    "%00",
                    "%ff",
                    "%c0%af",
                    ";a=b",
                    "'",
                    "%22",
                    "-1",
                    "0",
                    "99999999999999999999",
                    "1e9",
                    "NaN",
                    "%3Cscript%3E",
                    "%24%7B7*7%7D",
                    "%7B%7D",
                    "a".repeat(3000),
                    "%F0%9F%8C%B3",
                    "?",
                    "//",
                    "?page=2147483648",
                    "?on=9999-99-99",
                    "?size=%27%3B--");

    private static final List<String> BODIES =
            List.of(
                    "",
                    "{",
                    "[]",
                    "null",
                    "{\"a\":1}",
                    "{\"rubric\":{\"$ne\":null}}",
                    "\u0000\u0001\u0002",
                    "a=b&a=c&%=%",
                    "a=b&".repeat(1_001),
                    "--x\r\nContent-Disposition: form-data; name=\"a\"\r\n\r\n",
                    "--x--",
                    "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]><a>&b;</a>",
                    "=cmd|' /C calc'!A0,1,2",
                    "PK\u0003\u0004",
                    "{\"a\":" + "[".repeat(2000));

    @Inject School opening;
    @Inject Tables tables;

    private School school;
    private Calls calls;

    @BeforeEach
    void open() {
        school = opening.open();
        calls = new Calls(school);
    }

    @Test
    void noneEndsInAnErrorOfTheService() {
        var statuses = bend(REQUESTS, endpoint -> !endsSessions(endpoint), () -> {});
        // bent requests are refused for the most part, or the bending bends nothing
        assertThat(statuses.getOrDefault(4, 0)).isGreaterThan(REQUESTS / 2);
    }

    /** After one that is heard the next would only be told to sign in. */
    @Test
    void noneOfThoseThatMayEndASession() {
        var statuses =
                bend(
                        REQUESTS_THAT_END,
                        MalformedRequestsTest::endsSessions,
                        school::forgetSessions);
        assertThat(statuses.getOrDefault(4, 0)).isGreaterThan(REQUESTS_THAT_END / 4);
        assertThat(statuses.getOrDefault(3, 0)).isPositive();
    }

    private static boolean endsSessions(Endpoint endpoint) {
        return endpoint.path().contains("sign-out") || endpoint.path().startsWith("/account");
    }

    /**
     * @return how many answers of each hundred of statuses there were
     */
    private Map<Integer, Integer> bend(
            int requests, Predicate<Endpoint> which, Runnable afterHeard) {
        var dice = new SplittableRandom(SEED);
        var good = Endpoint.all().stream().filter(which).map(calls::of).toList();
        var wrong = new ArrayList<String>();
        var statuses = new TreeMap<Integer, Integer>();
        Map<String, Long> before = Map.of();
        boolean stale = true;
        for (int i = 0; i < requests && wrong.size() < 20; i++) {
            var call = good.get(i % good.size());
            var who = any(List.of(Who.values()), dice);
            var path = bent(call.url(), dice);
            var verb = dice.nextInt(3) == 0 ? any(VERBS, dice) : call.endpoint().verb();
            if (stale) {
                afterHeard.run();
            }
            var line = line(call, who, dice);
            // signing in anew has written something down as well
            before = stale || endsSessions(call.endpoint()) ? tables.rows() : before;
            var answer = line.send(verb, path);
            statuses.merge(answer.statusCode() / 100, 1, Integer::sum);
            var told =
                    "seed %d, %d: %s %s as %s -> %d %s"
                            .formatted(
                                    SEED,
                                    i,
                                    verb,
                                    cut(path),
                                    who,
                                    answer.statusCode(),
                                    cut(answer.text()));
            if (answer.statusCode() >= 500) {
                wrong.add("an error: " + told);
            }
            if (tellsOfItself(answer.text())) {
                wrong.add("tells how it is built: " + told);
            }
            stale = answer.statusCode() < 400;
            if (!stale && !tables.rows().equals(before)) {
                wrong.add("left something behind: " + told);
                stale = true;
            }
        }
        assertThat(wrong).isEmpty();
        return statuses;
    }

    private Line line(Call call, Who who, SplittableRandom dice) {
        var line = school.lineOf(who);
        if (dice.nextBoolean()) {
            line.header("If-Match", any(List.of("\"0\"", "*", "W/\"1\"", "\"x\"", "\""), dice));
        }
        if (dice.nextInt(4) == 0) {
            line.header("Accept", any(List.of("text/html", "application/json", "a/b", "*"), dice));
        }
        if (dice.nextInt(5) > 0) {
            var json = call.body() == null ? "{}" : call.json();
            line.body(
                    any(TYPES, dice),
                    switch (dice.nextInt(3)) {
                        case 0 -> any(BODIES, dice);
                        case 1 -> torn(json, dice);
                        default -> swapped(json, dice);
                    });
        }
        return line;
    }

    /** A piece of a path changed for an odd one, or one put behind it. */
    private static String bent(String path, SplittableRandom dice) {
        int turn = dice.nextInt(3);
        if (turn == 0) {
            return path;
        }
        var piece = any(PIECES, dice);
        if (turn == 1) {
            return path + "/" + piece;
        }
        var parts = path.split("/");
        if (parts.length < 2) {
            return "/" + piece;
        }
        parts[1 + dice.nextInt(parts.length - 1)] = piece;
        return String.join("/", parts);
    }

    private static String torn(String json, SplittableRandom dice) {
        return json.substring(0, dice.nextInt(json.length() + 1));
    }

    /** Some of its characters changed for others. */
    private static String swapped(String json, SplittableRandom dice) {
        var text = new StringBuilder(json);
        for (int i = 0; i < 3 && text.length() > 0; i++) {
            text.setCharAt(dice.nextInt(text.length()), (char) (32 + dice.nextInt(95)));
        }
        return text.toString();
    }

    private static boolean tellsOfItself(String text) {
        return text.contains("Exception")
                || text.contains("\tat ")
                || text.contains("org.ripewood")
                || text.contains("org.hibernate");
    }

    private static <T> T any(List<T> of, SplittableRandom dice) {
        return of.get(dice.nextInt(of.size()));
    }

    private static String cut(String text) {
        return text.substring(0, Math.min(200, text.length()));
    }
}
