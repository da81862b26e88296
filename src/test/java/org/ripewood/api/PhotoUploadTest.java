package org.ripewood.api;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.photos.Pictures;

/** Photos sent over the line: by whatever name, in pieces, too large, or only half. */
@Tag("one-database")
@QuarkusTest
class PhotoUploadTest {

    private static final String PROBLEM = "application/problem+json";
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    @Inject School opening;
    @Inject Tables tables;

    @ConfigProperty(name = "ripewood.photos.folder")
    String folder;

    @ConfigProperty(name = "quarkus.http.body.uploads-directory")
    String uploads;

    private School school;
    private String url;

    @BeforeEach
    void open() {
        school = opening.open();
        url = "/api/v1/trees/" + school.tree().id() + "/photos";
    }

    private Response send(String name, byte[] sent, String type) {
        return school.as(Who.STUDENT)
                .multiPart("photo", name, sent, type)
                .multiPart("view", "FRONT")
                .post(url);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "photo.jpg",
                "../../../../etc/passwd",
                "..\\..\\windows.ini",
                "x.php",
                "a;b|c`d`.jpg",
                "con",
                ".htaccess",
                "very long but still a name 0123456789012345678901234567890123456789.jpg"
            })
    void nameAndTypeMeanNothing(String name) throws IOException {
        var before = names();
        var id =
                send(name, Pictures.jpeg(), "text/html")
                        .then()
                        .statusCode(201)
                        .header("Location", containsString("/api/v1/photos/"))
                        .body("view", equalTo("FRONT"))
                        .body("widthPx", equalTo(64))
                        .extract()
                        .jsonPath()
                        .getLong("id");
        var fresh = new TreeSet<>(names());
        fresh.removeAll(before);
        assertThat(fresh).hasSize(2).allMatch(file -> file.matches("[0-9a-f]{32}\\.jpg"));
        school.as(Who.STUDENT)
                .get("/photos/" + id)
                .then()
                .statusCode(200)
                .contentType("image/jpeg")
                .header("X-Content-Type-Options", "nosniff");
    }

    @Test
    void ofTwoPhotosNoneIsKept() throws IOException {
        var files = names();
        school.as(Who.STUDENT)
                .multiPart("photo", "one.jpg", Pictures.jpeg(), "image/jpeg")
                .multiPart("photo", "two.jpg", Pictures.jpeg(), "image/jpeg")
                .multiPart("view", "FRONT")
                .post(url)
                .then()
                .statusCode(400)
                .body("faults[0].field", equalTo("photo"))
                .body("faults[0].message", equalTo("expected one file, found 2"));
        assertThat(names()).isEqualTo(files);
    }

    @Test
    void aTypeAnnouncedDoesNotMakeAPicture() throws IOException {
        var before = tables.rows();
        var files = names();
        var svg =
                "<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>".getBytes(ISO_8859_1);
        var answer = send("photo.jpg", svg, "image/jpeg");
        answer.then()
                .statusCode(400)
                .contentType(PROBLEM)
                .body("faults[0].field", equalTo("photo"));
        assertThat(answer.asString()).contains("SVG").doesNotContain("alert");
        var heic = "\0\0\0\u0018ftypheic\0\0\0\0mif1heic".getBytes(ISO_8859_1);
        var advice = send("photo.jpg", heic, "image/jpeg");
        advice.then().statusCode(400);
        assertThat(advice.asString()).contains("HEIC").contains("phone's camera");
        assertThat(tables.rows()).isEqualTo(before);
        assertThat(names()).isEqualTo(files);
    }

    @Test
    void whatIsLeftOutIsNamed() {
        school.as(Who.STUDENT)
                .multiPart("view", "FRONT")
                .post(url)
                .then()
                .statusCode(400)
                .body("faults[0].field", equalTo("photo"));
        school.as(Who.STUDENT)
                .multiPart("photo", "a.jpg", Pictures.jpeg(), "image/jpeg")
                .post(url)
                .then()
                .statusCode(400)
                .body("faults[0].field", equalTo("view"));
        for (var field : List.of("takenOn", "view", "woundId", "stepId")) {
            var request =
                    school.as(Who.STUDENT)
                            .multiPart("photo", "a.jpg", Pictures.jpeg(), "image/jpeg")
                            .multiPart(field, "<script>");
            if (!field.equals("view")) {
                request.multiPart("view", "FRONT");
            }
            request.post(url).then().statusCode(400).body("faults[0].field", equalTo(field));
        }
    }

    @Test
    void wordsWithTagsAreRefusedAsEverywhere() {
        school.as(Who.STUDENT)
                .multiPart("photo", "a.jpg", Pictures.jpeg(), "image/jpeg")
                .multiPart("view", "FRONT")
                .multiPart("caption", "<img src=x onerror=alert(1)>")
                .post(url)
                .then()
                .statusCode(400)
                .body("faults[0].field", equalTo("caption"));
    }

    /** Without the header a form on another site could send it; no form's token makes up for it. */
    @Test
    void aPhotoFromAnotherSitesFormIsRefused() {
        var before = tables.rows();
        school.as(Who.STUDENT)
                .header("X-Ripewood", "0")
                .cookie("ripewood-csrf", school.formToken(Who.STUDENT))
                .multiPart("csrf-token", school.formToken(Who.STUDENT))
                .multiPart("photo", "a.jpg", Pictures.jpeg(), "image/jpeg")
                .multiPart("view", "FRONT")
                .post(url)
                .then()
                .statusCode(403)
                .contentType(PROBLEM);
        assertThat(tables.rows()).isEqualTo(before);
    }

    /** A page open in the same browser keeps its token. */
    @Test
    void theTokenOfFormsStaysAsItIs() {
        var cookie = school.formToken(Who.STUDENT);
        var answer =
                school.as(Who.STUDENT)
                        .cookie("ripewood-csrf", cookie)
                        .multiPart("photo", "a.jpg", Pictures.jpeg(), "image/jpeg")
                        .multiPart("view", "FRONT")
                        .post(url);
        assertThat(answer.statusCode()).isEqualTo(201);
        assertThat(answer.cookies()).doesNotContainKey("ripewood-csrf");
    }

    @Test
    void aPhotoBeyondTwelveMegabytesIsRefused() throws IOException {
        var files = names();
        var large = Arrays.copyOf(Pictures.jpeg(), 13 * 1024 * 1024);
        send("a.jpg", large, "image/jpeg")
                .then()
                .statusCode(400)
                .body("faults[0].field", equalTo("photo"));
        assertThat(names()).isEqualTo(files);
    }

    @Test
    void whatIsSentToOtherAddressesIsAsSmallAsBefore() {
        school.as(Who.STUDENT)
                .contentType("application/json")
                .body(new byte[2 * 1024 * 1024])
                .post("/api/v1/trees")
                .then()
                .statusCode(413);
    }

    /** The line breaks after half of what was announced. */
    @Test
    void anUploadCutInTheMiddleLeavesNothing() throws Exception {
        var rows = tables.rows();
        var files = names();
        var half = half();
        try (var socket = new Socket("localhost", RestAssured.port)) {
            socket.getOutputStream().write(half);
            socket.getOutputStream().flush();
            // until the service has begun to keep it somewhere
            await(() -> !filesIn(uploads).isEmpty());
        }
        await(() -> filesIn(uploads).isEmpty());
        assertThat(names()).isEqualTo(files);
        assertThat(tables.rows()).isEqualTo(rows);
    }

    private byte[] half() {
        var head =
                """
                POST %s HTTP/1.1\r
                Host: localhost\r
                X-Ripewood: 1\r
                Cookie: ripewood-session=%s\r
                Content-Type: multipart/form-data; boundary=cut\r
                Content-Length: 2000000\r
                \r
                --cut\r
                Content-Disposition: form-data; name="view"\r
                \r
                FRONT\r
                --cut\r
                Content-Disposition: form-data; name="photo"; filename="a.jpg"\r
                Content-Type: image/jpeg\r
                \r
                """
                        .formatted(url, school.cookie(Who.STUDENT));
        var start = head.getBytes(ISO_8859_1);
        var half = Arrays.copyOf(start, start.length + 1_000_000);
        var jpeg = Pictures.jpeg();
        System.arraycopy(jpeg, 0, half, start.length, jpeg.length);
        return half;
    }

    private interface Condition {
        boolean holds() throws IOException;
    }

    private static void await(Condition condition) throws Exception {
        var until = System.nanoTime() + PATIENCE.toNanos();
        while (!condition.holds()) {
            assertThat(System.nanoTime()).as("in time").isLessThan(until);
            Thread.sleep(20);
        }
    }

    private Set<String> names() throws IOException {
        return filesIn(folder);
    }

    private static Set<String> filesIn(String where) throws IOException {
        var names = new TreeSet<String>();
        if (Files.isDirectory(Path.of(where))) {
            try (var files = Files.walk(Path.of(where))) {
                files.filter(Files::isRegularFile)
                        .forEach(file -> names.add(file.getFileName().toString()));
            }
        }
        return names;
    }
}
