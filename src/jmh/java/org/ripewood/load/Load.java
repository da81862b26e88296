package org.ripewood.load;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.regex.Pattern;

/**
 * Fifty people at once read a student's checklist and a course's board of the demo school, each
 * against the same server's most trivial page in the same run. Bounded in time, on this machine
 * only.
 *
 * <p>Arguments: the service's port, the student's and the instructor's password of the demo school.
 */
public final class Load {

    private static final int PEOPLE = 50;
    private static final Duration WARM_UP = Duration.ofSeconds(4);
    private static final Duration MEASURED = Duration.ofSeconds(8);
    private static final int ROUNDS = 2;

    private final HttpClient line = HttpClient.newHttpClient();
    private final String base;

    private Load(int port) {
        this.base = "http://127.0.0.1:" + port;
    }

    /** What a page bore: pages a second, and the time of half and of 99 in 100 of them. */
    private record Borne(double aSecond, double halfMs, double mostMs) {}

    public static void main(String[] arguments) throws Exception {
        var load = new Load(Integer.parseInt(arguments[0]));
        var student = load.signIn("anrike", arguments[1]);
        var instructor = load.signIn("ilsabet", arguments[2]);
        var checklist = load.first(student, "/home", "/trees/\\d+/checklist");
        var board = load.first(instructor, "/home", "/courses/\\d+(?=\")");
        for (int round = 1; round <= ROUNDS; round++) {
            var trivial = load.bear("/sign-in", null);
            load.tell(round, "sign-in page", trivial, trivial);
            load.tell(round, checklist, load.bear(checklist, student), trivial);
            load.tell(round, board, load.bear(board, instructor), trivial);
        }
    }

    private void tell(int round, String page, Borne borne, Borne trivial) {
        System.out.printf(
                Locale.ROOT,
                "%d  %-24s %8.0f a second, half within %6.1f ms, 99 %% within %7.1f ms, share %.3f%n",
                round,
                page,
                borne.aSecond(),
                borne.halfMs(),
                borne.mostMs(),
                borne.aSecond() / trivial.aSecond());
    }

    private Borne bear(String path, String cookie) throws Exception {
        all(path, cookie, WARM_UP);
        var times = all(path, cookie, MEASURED);
        Arrays.sort(times);
        return new Borne(
                times.length / (double) MEASURED.toSeconds(),
                times[times.length / 2] / 1e6,
                times[(int) (times.length * 0.99)] / 1e6);
    }

    /** Nanoseconds of each page that all of them read within the time. */
    private long[] all(String path, String cookie, Duration time) throws Exception {
        var until = System.nanoTime() + time.toNanos();
        var readers = Executors.newFixedThreadPool(PEOPLE);
        try {
            var tasks = new ArrayList<Callable<List<Long>>>();
            for (int i = 0; i < PEOPLE; i++) {
                tasks.add(() -> read(path, cookie, until));
            }
            var times = new ArrayList<Long>();
            for (var task : readers.invokeAll(tasks)) {
                times.addAll(task.get());
            }
            return times.stream().mapToLong(Long::longValue).toArray();
        } finally {
            readers.shutdownNow();
        }
    }

    private List<Long> read(String path, String cookie, long until) throws Exception {
        var request = HttpRequest.newBuilder(URI.create(base + path));
        if (cookie != null) {
            request.header("Cookie", cookie);
        }
        var page = request.build();
        var times = new ArrayList<Long>();
        while (System.nanoTime() < until) {
            long began = System.nanoTime();
            var answer = line.send(page, BodyHandlers.ofByteArray());
            if (answer.statusCode() != 200) {
                throw new IllegalStateException(path + " -> " + answer.statusCode());
            }
            times.add(System.nanoTime() - began);
        }
        return times;
    }

    private String first(String cookie, String page, String pattern) throws Exception {
        var request =
                HttpRequest.newBuilder(URI.create(base + page)).header("Cookie", cookie).build();
        var found =
                Pattern.compile(pattern).matcher(line.send(request, BodyHandlers.ofString()).body());
        if (!found.find()) {
            throw new IllegalStateException("no " + pattern + " on " + page);
        }
        return found.group();
    }

    private String signIn(String login, String password) throws Exception {
        var request =
                HttpRequest.newBuilder(URI.create(base + "/j_security_check"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(
                                BodyPublishers.ofString(
                                        "j_username=%s&j_password=%s".formatted(login, password)))
                        .build();
        return line.send(request, BodyHandlers.discarding())
                .headers()
                .allValues("Set-Cookie")
                .stream()
                .filter(set -> set.startsWith("ripewood-session="))
                .map(set -> set.split(";", 2)[0])
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("not signed in"));
    }
}
