package org.ripewood.api;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.RawLine;

/**
 * Bodies whose length is not told beforehand (RFC 9112, 7.1: chunks): OWASP ASVS 5.0, 5.2.1, asks
 * for a limit on whatever is sent.
 */
@Tag("one-database")
@QuarkusTest
class UnannouncedBodyTest {

    private static final int MEGABYTE = 1024 * 1024;

    @Inject School opening;
    @Inject Tables tables;

    @ConfigProperty(name = "quarkus.http.body.uploads-directory")
    String uploads;

    private School school;

    @BeforeEach
    void open() {
        school = opening.open();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/v1/trees application/json",
                "/api/v1/lists/trees text/csv",
                "/api/v1/sites/1/readings text/csv",
                "/trees/1/change application/x-www-form-urlencoded",
                "/j_security_check application/x-www-form-urlencoded",
                "/nothing application/octet-stream"
            })
    void oneIsRefusedByItsHead(String addressAndType) {
        var sent = addressAndType.split(" ", 2);
        try (var line = new RawLine()) {
            var answer = line.send(head(sent[0], sent[1])).answer();
            assertThat(answer).startsWith("HTTP/1.1 411 ").contains("Content-Length.");
            assertThat(line.isClosedWithin(Duration.ofSeconds(10))).isTrue();
        }
    }

    /** One photo too large does no harm, and 300 MB of them are not even put down. */
    @Test
    void photosAreCountedAsTheyCome() throws Exception {
        var tree = school.tree().id();
        var before = tables.rows();
        for (var door : new String[] {"/api/v1/trees/%d/photos", "/trees/%d/photos"}) {
            try (var line = new RawLine()) {
                line.send(head(door.formatted(tree), "multipart/form-data; boundary=x"));
                line.chunk(
                        "--x\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a\"\r\n\r\n"
                                .getBytes(ISO_8859_1));
                var piece = new byte[MEGABYTE];
                int sent = 0;
                while (sent < 300 && !line.hasAnswer()) {
                    line.chunk(piece);
                    sent++;
                }
                assertThat(line.answer())
                        .startsWith("HTTP/1.1 413 ")
                        .contains("at most 27262976 bytes");
                // what lies between the two in buffers of the line
                assertThat(sent).as(door).isBetween(25, 60);
                assertThat(line.isClosedWithin(Duration.ofSeconds(10))).isTrue();
            }
        }
        assertThat(tables.rows()).isEqualTo(before);
        awaitEmpty(Path.of(uploads));
    }

    /** A field far too long for one that is no photo. */
    @Test
    void whatIsFaultyIsNotReadForEver() {
        var tree = school.tree().id();
        try (var line = new RawLine()) {
            line.send(
                    head(
                            "/api/v1/trees/%d/photos".formatted(tree),
                            "multipart/form-data; boundary=x"));
            line.chunk(
                    "--x\r\nContent-Disposition: form-data; name=\"view\"\r\n\r\n"
                            .getBytes(ISO_8859_1));
            var piece = new byte[MEGABYTE];
            int sent = 0;
            while (sent < 300 && !line.hasAnswer()) {
                line.chunk(piece);
                sent++;
            }
            assertThat(line.answer()).startsWith("HTTP/1.1 413 ");
            assertThat(sent).isLessThan(60);
        }
    }

    /** A photo in pieces that is not too large is a photo. */
    @Test
    void aPhotoInPiecesIsTaken() {
        var tree = school.tree().id();
        try (var line = new RawLine()) {
            line.send(
                    head(
                            "/api/v1/trees/%d/photos".formatted(tree),
                            "multipart/form-data; boundary=x"));
            line.chunk(
                    "--x\r\nContent-Disposition: form-data; name=\"view\"\r\n\r\nFRONT\r\n--x\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a\"\r\n\r\n"
                            .getBytes(ISO_8859_1));
            line.chunk(org.ripewood.photos.Pictures.jpeg());
            line.chunk("\r\n--x--\r\n".getBytes(ISO_8859_1)).chunk(new byte[0]);
            assertThat(line.answer()).startsWith("HTTP/1.1 201 ");
        }
    }

    /**
     * As it comes: the service speaks HTTP/1.1 only, and a client that asks for more goes on by it.
     */
    @Test
    void aClientOfHttp2IsAnsweredByHttp1() throws Exception {
        var request =
                HttpRequest.newBuilder(
                                URI.create(
                                        "http://localhost:" + RestAssured.port + "/api/v1/trees"))
                        .version(HttpClient.Version.HTTP_2)
                        .header("Content-Type", "application/json")
                        .header("X-Ripewood", "1")
                        .header("Cookie", "ripewood-session=" + school.cookie(Who.STUDENT))
                        .POST(
                                BodyPublishers.fromPublisher(
                                        BodyPublishers.ofString("{\"label\":1}")))
                        .build();
        var answer = HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
        assertThat(answer.version()).isEqualTo(HttpClient.Version.HTTP_1_1);
        assertThat(answer.statusCode()).isEqualTo(411);
    }

    /** RFC 9113, 3.4: the words by which a client begins that knows HTTP/2 is spoken. */
    @Test
    void http2IsNotSpoken() {
        try (var line = new RawLine()) {
            var answer =
                    line.send("PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n".getBytes(ISO_8859_1)).answer();
            // a frame of settings would begin with three bytes of its length, of which the first is
            // zero
            assertThat(answer).matches("(?s)(HTTP/.*)?");
        }
    }

    private byte[] head(String address, String type) {
        return RawLine.lines(
                """
                POST %s HTTP/1.1
                Host: localhost
                X-Ripewood: 1
                Cookie: ripewood-session=%s; ripewood-csrf=%s
                Content-Type: %s
                Transfer-Encoding: chunked
                """
                        .formatted(
                                address,
                                school.cookie(Who.STUDENT),
                                school.formToken(Who.STUDENT),
                                type));
    }

    private static void awaitEmpty(Path folder) throws Exception {
        var until = System.nanoTime() + Duration.ofSeconds(20).toNanos();
        while (true) {
            try (var files = Files.list(folder)) {
                if (files.findAny().isEmpty()) {
                    return;
                }
            }
            assertThat(System.nanoTime()).as("in time").isLessThan(until);
            Thread.sleep(20);
        }
    }
}
