package org.ripewood;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A new school goes on writing: the packaged service on an empty folder, whose pool of connections
 * drops the idle ones every few seconds instead of every few minutes, again and again between the
 * writes of a registrar by pages and by the API.
 */
class SoakIT {

    /** What the school has to live through. */
    private static final int IDLE_REMOVALS = 10;

    /** The pool's own count of connections it has dropped. */
    private static final Pattern DROPPED =
            Pattern.compile("agroal_reap_count_total\\{.*\\} (\\S+)");

    /** And of those that are open and not in use. */
    private static final Pattern OPEN = Pattern.compile("agroal_available_count\\{.*\\} (\\S+)");

    /** The pool looks every five seconds for what was idle for five. */
    private static final Duration PAUSE = Duration.ofSeconds(11);

    private static final int MOST_PAUSES = 8;

    private static final int MOST_BURSTS = 100;

    private static final int MOST_SHOWN = 300;
    private static final Pattern CODE = Pattern.compile("give this code: (\\S+)");
    private static final String PASSWORD = "ivory kettle 47 moss lantern";
    private static final String DAY = "2026-04-01";

    private static final Map<String, String> SETTINGS =
            Map.of(
                    "RIPEWOOD_DEMO", "false",
                    "RIPEWOOD_TODAY", "2026-05-01",
                    "QUARKUS_DATASOURCE_JDBC_IDLE_REMOVAL_INTERVAL", "5S",
                    // with its last connection the database would close, and open as after a start
                    "QUARKUS_DATASOURCE_JDBC_MIN_SIZE", "1");

    @TempDir Path data;

    private final List<String> unexpected = new ArrayList<>();
    private int written;

    @Test
    void aNewSchoolGoesOnWriting() throws Exception {
        try (var service = RunningJar.started(data, SETTINGS);
                var readers = new Readers(service)) {
            var registrar = setUp(service);
            var person = id(registrar.get("/api/v1/people/me"));
            var site = id(expect(201, registrar.json("/api/v1/sites", site())));
            var tree = id(expect(201, registrar.json("/api/v1/trees", tree(person, site))));
            for (int round = 0; round < IDLE_REMOVALS; round++) {
                openConnections(registrar, readers);
                awaitIdleRemoval(registrar);
                writeByApi(registrar, person, site, tree, round);
                writeByPages(registrar, person, site, tree, round);
                expect(200, registrar.get("/q/health/ready"));
            }
            assertThat(unexpected).isEmpty();
            assertThat(written).isGreaterThanOrEqualTo(IDLE_REMOVALS * 15);
            var observations = registrar.read("/api/v1/trees/" + tree + "/observations");
            assertThat(observations.path("total").asInt()).isEqualTo(2 * IDLE_REMOVALS);
            var photos = registrar.read("/api/v1/trees/" + tree + "/photos");
            assertThat(photos.path("total").asInt()).isEqualTo(2 * IDLE_REMOVALS);
            assertThat(readers.unexpected).isEmpty();
            assertThat(service.log()).doesNotContain("ERROR", "Out of memory");
        }
    }

    private Guest setUp(RunningJar service) throws Exception {
        var code = CODE.matcher(service.log());
        assertThat(code.find()).isTrue();
        var guest = new Guest(service);
        var form =
                Map.of(
                        "code",
                        code.group(1),
                        "school",
                        "Soak house",
                        "name",
                        "Rena Register",
                        "login",
                        "rena",
                        "password",
                        PASSWORD);
        expect(303, guest.form("/set-up", "/set-up", form));
        expect(302, guest.signIn("rena", PASSWORD));
        // inviting people asks for the password again
        var password =
                """
                {"password": "%s"}"""
                        .formatted(PASSWORD);
        expect(200, guest.json("/api/v1/people/me/confirmation", password));
        return guest;
    }

    /** Lets readers come at the same time until the pool has more connections than it keeps. */
    private static void openConnections(Guest registrar, Readers readers) throws Exception {
        for (int bursts = 0; count(OPEN, registrar) < 2; bursts++) {
            assertThat(bursts).as("bursts of readers").isLessThan(MOST_BURSTS);
            readers.readAtOnce();
        }
    }

    /** Nobody asks for anything meanwhile: a connection that is asked for is not idle. */
    private static void awaitIdleRemoval(Guest registrar) throws Exception {
        var before = count(DROPPED, registrar);
        for (int pauses = 0; count(DROPPED, registrar) == before; pauses++) {
            assertThat(pauses)
                    .as("pauses in which no connection was dropped")
                    .isLessThan(MOST_PAUSES);
            Thread.sleep(PAUSE.toMillis());
        }
    }

    private static double count(Pattern metric, Guest registrar) throws Exception {
        var count = metric.matcher(registrar.get("/q/metrics").body());
        assertThat(count.find()).isTrue();
        return Double.parseDouble(count.group(1));
    }

    private void writeByApi(Guest registrar, long person, long site, long tree, int round)
            throws Exception {
        var at = "/api/v1/trees/" + tree;
        expect(201, registrar.json("/api/v1/sites", site()));
        expect(201, registrar.json("/api/v1/trees", tree(person, site)));
        expect(201, registrar.json(at + "/observations", observation()));
        expect(201, registrar.json(at + "/wounds", wound()));
        expect(201, registrar.json(at + "/branches", branch(round)));
        expect(201, registrar.json(at + "/containers", container()));
        expect(201, registrar.photo(at + "/photos", photo()));
        expect(201, registrar.json("/api/v1/courses", course(round)));
        expect(201, registrar.json("/api/v1/people/invitations", guest(round)));
    }

    private void writeByPages(Guest registrar, long person, long site, long tree, int round)
            throws Exception {
        var at = "/trees/" + tree;
        var place =
                Map.of("name", "Yard", "latitude", "50", "longitude", "7", "zone", "Europe/Berlin");
        expect(303, registrar.form("/sites/new", "/sites", place));
        var planted =
                Map.of(
                        "label",
                        "Maple " + round,
                        "species",
                        "acer_palmatum",
                        "keeperId",
                        String.valueOf(person),
                        "siteId",
                        String.valueOf(site),
                        "cameOn",
                        DAY);
        expect(303, registrar.form("/trees/new", "/trees", planted));
        var seen =
                Map.of("fact", "shoot_extension_mm", "value", "120", "observedOn", DAY, "note", "");
        expect(303, registrar.form(at + "/observations", at + "/observations", seen));
        var wound =
                Map.of(
                        "place",
                        "Chop",
                        "madeOn",
                        DAY,
                        "firstWidthMm",
                        "20",
                        "firstLengthMm",
                        "25",
                        "heightMm",
                        "",
                        "bearingDegrees",
                        "");
        expect(303, registrar.form(at, at + "/wounds", wound));
        var pot = Map.of("kind", "training", "since", DAY, "litres", "4", "description", "");
        expect(303, registrar.form(at, at + "/containers", pot));
        expect(303, registrar.formWithPhoto(at + "/photos", at + "/photos", photo()));
    }

    private HttpResponse<String> expect(int status, HttpResponse<String> answer) {
        written++;
        if (answer.statusCode() != status) {
            unexpected.add(
                    "%s %s -> %d instead of %d: %s"
                            .formatted(
                                    answer.request().method(),
                                    answer.uri().getPath(),
                                    answer.statusCode(),
                                    status,
                                    beginning(answer.body())));
        }
        return answer;
    }

    private static String beginning(String body) {
        return body.substring(0, Math.min(body.length(), MOST_SHOWN));
    }

    private static long id(HttpResponse<String> answer) throws Exception {
        return new ObjectMapper().readTree(answer.body()).path("id").asLong();
    }

    private static String site() {
        return """
        {"name": "Garden", "latitude": 51, "longitude": 7, "zone": "Europe/Berlin"}""";
    }

    private static String tree(long person, long site) {
        return """
        {"label": "Hornbeam", "species": "carpinus_betulus", "keeperId": %d, "siteId": %d,
         "cameOn": "%s"}"""
                .formatted(person, site, DAY);
    }

    private static String observation() {
        return """
        {"fact": "shoot_extension_mm", "value": "130", "observedOn": "%s"}"""
                .formatted(DAY);
    }

    private static String wound() {
        return """
        {"place": "Low cut", "madeOn": "%s", "firstWidthMm": 12, "firstLengthMm": 15,
         "deadwoodByDesign": false}"""
                .formatted(DAY);
    }

    private static String branch(int round) {
        return """
        {"name": "Branch %d", "role": "PRIMARY"}"""
                .formatted(round);
    }

    private static String container() {
        return """
        {"kind": "nursery", "litres": 7, "since": "%s"}"""
                .formatted(DAY);
    }

    private static String course(int round) {
        return """
        {"name": "Course %d", "startsOn": "2026-01-01", "endsOn": "2026-12-31"}"""
                .formatted(round);
    }

    private static String guest(int round) {
        return """
        {"name": "Stan Student", "login": "stan.%d", "roles": ["STUDENT"]}"""
                .formatted(round);
    }

    private static byte[] photo() throws Exception {
        var file = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB), "jpeg", file);
        return file.toByteArray();
    }

    /** Visitors who only read, at the same time, so that the pool opens more connections. */
    private static final class Readers implements AutoCloseable {

        private static final int AT_ONCE = 6;

        private final ExecutorService visits = Executors.newFixedThreadPool(AT_ONCE);
        private final Set<String> unexpected = ConcurrentHashMap.newKeySet();
        private final Guest visitor;

        Readers(RunningJar service) {
            this.visitor = new Guest(service);
        }

        void readAtOnce() throws InterruptedException {
            visits.invokeAll(Collections.nCopies(AT_ONCE, Executors.callable(this::read)));
        }

        /** This page asks the database whether there is anybody. */
        private void read() {
            try {
                var answer = visitor.get("/sign-in");
                if (answer.statusCode() >= 400) {
                    unexpected.add(answer.statusCode() + " " + answer.body());
                }
            } catch (IOException | InterruptedException e) {
                unexpected.add(e.toString());
            }
        }

        @Override
        public void close() {
            visits.shutdownNow();
        }
    }
}
