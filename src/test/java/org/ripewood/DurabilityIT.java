package org.ripewood;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packaged service is killed while several people write, again and again: what it acknowledged
 * is there after the next start, and nothing is there by half.
 *
 * <p>{@code -Dripewood.kills=50} kills each service fifty times.
 */
class DurabilityIT {

    private static final int KILLS = Integer.getInteger("ripewood.kills", 3);
    private static final int WRITERS = 3;
    private static final long SEED = 20261125L;

    /** Three values in one go: all of them or none. */
    private static final String SERIES =
            """
            {"observedOn": "%s", "note": "%s", "whole": [
              {"fact": "shoot_extension_mm", "value": "120"},
              {"fact": "pest_level", "value": "1"},
              {"fact": "leaf_colour_grade", "value": "4"}]}
            """;

    private static final int VALUES = 3;

    private static final Duration PATIENCE = Duration.ofMinutes(1);

    @TempDir Path data;

    private final Set<String> acknowledged = ConcurrentHashMap.newKeySet();
    private final Set<Long> photos = ConcurrentHashMap.newKeySet();
    private final Set<String> refused = ConcurrentHashMap.newKeySet();
    private final AtomicInteger count = new AtomicInteger();

    private interface Start {
        RunningJar run() throws Exception;
    }

    @Test
    void whatH2AcknowledgedIsThereAfterTheServiceIsKilled() throws Exception {
        killAgainAndAgain(() -> RunningJar.onH2(data));
    }

    @Test
    void whatPostgresAcknowledgedIsThereAfterTheServiceIsKilled() throws Exception {
        Database.renew("demo");
        killAgainAndAgain(() -> RunningJar.onPostgres(data, Database.server().getPort()));
    }

    private void killAgainAndAgain(Start start) throws Exception {
        var dice = new SplittableRandom(SEED);
        var trees = new ArrayList<Long>();
        for (int kill = 0; kill < KILLS; kill++) {
            var service = start.run();
            var student = DemoStudent.signIn(service, "anrike");
            if (!trees.isEmpty()) {
                check(student, trees.subList(trees.size() - 1, trees.size()), "kill " + kill);
            }
            trees.add(tree(student));
            writeUntilKilled(service, student, trees.get(kill), dice.nextInt(300, 1500));
        }
        try (var service = start.run()) {
            var student = DemoStudent.signIn(service, "anrike");
            check(student, trees, "the end");
            assertThat(refused).isEmpty();
            assertThat(acknowledged).hasSizeGreaterThan(KILLS);
            for (var photo : photos) {
                assertThat(student.get("/photos/" + photo).statusCode()).isEqualTo(200);
            }
            assertThat(photos).hasSizeGreaterThan(KILLS / 2);
        }
    }

    private long tree(DemoStudent student) throws Exception {
        var me = student.read("/api/v1/people/me").path("id").asLong();
        // the first tree's, whose place they may see
        var site = student.read("/api/v1/trees").path("items").path(0).path("siteId").asLong();
        var tree =
                """
                {"label": "Durable %d", "species": "acer_palmatum", "keeperId": %d,
                 "siteId": %d, "cameOn": "2024-03-01"}
                """
                        .formatted(count.incrementAndGet(), me, site);
        return student.make("/api/v1/trees", tree).path("id").asLong();
    }

    private void writeUntilKilled(RunningJar service, DemoStudent student, long tree, int afterMs)
            throws Exception {
        var writers = Executors.newFixedThreadPool(WRITERS + 1);
        int series = acknowledged.size() + WRITERS;
        int uploads = photos.size() + 1;
        for (int i = 0; i < WRITERS; i++) {
            writers.execute(() -> writeOn(student, tree));
        }
        writers.execute(() -> uploadOn(student, tree));
        awaitFirstWrites(series, uploads);
        Thread.sleep(afterMs);
        service.kill();
        writers.shutdown();
        assertThat(writers.awaitTermination(1, TimeUnit.MINUTES)).isTrue();
    }

    /** A machine under load may need longer for the first than the service is left alive. */
    private void awaitFirstWrites(int series, int uploads) throws InterruptedException {
        var end = Instant.now().plus(PATIENCE);
        while ((acknowledged.size() < series || photos.size() < uploads)
                && refused.isEmpty()
                && Instant.now().isBefore(end)) {
            Thread.sleep(20);
        }
    }

    /** Until the line breaks. */
    private void writeOn(DemoStudent student, long tree) {
        try {
            while (true) {
                var note = "written " + count.incrementAndGet();
                var answer =
                        student.post(
                                "/api/v1/trees/" + tree + "/series",
                                SERIES.formatted("2026-04-01", note));
                if (answer.statusCode() == 201) {
                    acknowledged.add(tree + " " + note);
                } else {
                    refused.add(answer.body());
                }
            }
        } catch (Exception broken) {
            // Nobody knows of the last one, nor does this test.
        }
    }

    private void uploadOn(DemoStudent student, long tree) {
        try {
            while (true) {
                var answer =
                        student.send(
                                "/api/v1/trees/" + tree + "/photos",
                                "multipart/form-data; boundary=part",
                                BodyPublishers.ofByteArray(photo()));
                if (answer.statusCode() == 201) {
                    photos.add(firstId(answer.body()));
                } else {
                    refused.add(answer.body());
                }
            }
        } catch (Exception broken) {
            // As above.
        }
    }

    private static long firstId(String json) {
        var id = Pattern.compile("\"id\":(\\d+)").matcher(json);
        if (!id.find()) {
            throw new IllegalStateException(json);
        }
        return Long.parseLong(id.group(1));
    }

    private static byte[] photo() throws Exception {
        var image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
        image.setRGB(10, 10, Color.GREEN.getRGB());
        var file = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", file);
        var body = new ByteArrayOutputStream();
        body.writeBytes(
                "--part\r\nContent-Disposition: form-data; name=\"view\"\r\n\r\nFRONT\r\n--part\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.jpg\"\r\nContent-Type: image/jpeg\r\n\r\n"
                        .getBytes(StandardCharsets.US_ASCII));
        body.writeBytes(file.toByteArray());
        body.writeBytes("\r\n--part--\r\n".getBytes(StandardCharsets.US_ASCII));
        return body.toByteArray();
    }

    private void check(DemoStudent student, List<Long> trees, String when) throws Exception {
        for (var tree : trees) {
            var values = values(student, tree);
            values.forEach((note, found) -> assertThat(found).as(when + note).isEqualTo(VALUES));
            var missing =
                    acknowledged.stream()
                            .filter(one -> one.startsWith(tree + " "))
                            .map(one -> one.substring(one.indexOf(' ') + 1))
                            .filter(note -> !values.containsKey(note))
                            .toList();
            assertThat(missing).as("acknowledged and lost, %s", when).isEmpty();
        }
    }

    /** How many values are kept of each series, by its note. */
    private static Map<String, Integer> values(DemoStudent student, long tree) throws Exception {
        var values = new HashMap<String, Integer>();
        for (int page = 0; ; page++) {
            var entries =
                    student.read(
                            "/api/v1/trees/%d/observations?size=200&page=%d".formatted(tree, page));
            entries.path("items")
                    .forEach(entry -> values.merge(entry.path("note").asText(), 1, Integer::sum));
            if ((page + 1) * 200L >= entries.path("total").asLong()) {
                return values;
            }
        }
    }
}
