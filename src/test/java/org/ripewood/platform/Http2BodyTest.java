package org.ripewood.platform;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpClient;
import io.vertx.core.http.HttpClientOptions;
import io.vertx.core.http.HttpClientRequest;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpVersion;
import jakarta.inject.Inject;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.accounts.ApiToken;
import org.ripewood.accounts.ApiTokens;
import org.ripewood.accounts.NewApiToken;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.people.NewPerson;
import org.ripewood.people.Person;

/**
 * Where HTTP/2 is spoken (RFC 9113), whose bodies need not tell their length, they are bounded like
 * any other.
 */
@Tag("one-database")
@QuarkusTest
@TestProfile(DoorProfile.class)
class Http2BodyTest {

    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));
    private static final int MEGABYTE = 1024 * 1024;
    private static final String PIECE = " ".repeat(MEGABYTE / 8);
    private static final String PART =
            "--x\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a\"\r\n\r\n";
    private static Person registrar;

    @Inject PersonRegistration register;
    @Inject ApiTokens tokens;
    @Inject Vertx vertx;

    private HttpClient client;
    private String token;

    @BeforeEach
    void open() {
        if (registrar == null) {
            registrar =
                    register.enter(
                            OFFICE,
                            new NewPerson(
                                    "Rae Registrar",
                                    "rae.by.http2",
                                    "three walnut shelves",
                                    Set.of(Role.REGISTRAR)));
        }
        var wanted = new NewApiToken("Line", ApiToken.Scope.READ_AND_WRITE, 1);
        var actor = new Actor(registrar.id(), registrar.roles());
        tokens.of(actor).forEach(old -> tokens.end(actor, old.id()));
        token = "Bearer " + tokens.make(actor, wanted).secret();
        client =
                vertx.createHttpClient(
                        new HttpClientOptions()
                                .setDefaultPort(RestAssured.port)
                                .setProtocolVersion(HttpVersion.HTTP_2)
                                .setHttp2ClearTextUpgrade(false));
    }

    @AfterEach
    void close() throws Exception {
        client.close().toCompletionStage().toCompletableFuture().get(10, SECONDS);
    }

    private record Answer(HttpVersion version, int status, String text) {}

    private HttpClientRequest request(String address, String type) throws Exception {
        var request =
                client.request(HttpMethod.POST, address)
                        .toCompletionStage()
                        .toCompletableFuture()
                        .get(10, SECONDS);
        return request.putHeader("Authorization", token).putHeader("Content-Type", type);
    }

    private static CompletableFuture<Answer> answer(HttpClientRequest request) {
        return request.response()
                .compose(
                        response ->
                                response.body()
                                        .map(
                                                body ->
                                                        new Answer(
                                                                response.version(),
                                                                response.statusCode(),
                                                                body.toString())))
                .toCompletionStage()
                .toCompletableFuture();
    }

    @ParameterizedTest
    @CsvSource({
        "/api/v1/sites, application/json, 1048576",
        "/api/v1/lists/trees, text/csv, 1048576",
        "/api/v1/trees/1/photos, multipart/form-data; boundary=x, 27262976"
    })
    void aBodyWithoutItsLengthIsCounted(String address, String type, int most) throws Exception {
        var request = request(address, type).setChunked(true);
        var answer = answer(request);
        request.write(Buffer.buffer(type.startsWith("multipart") ? PART : "{\"format\":"));
        long sent = 0;
        while (sent < 200L * MEGABYTE && !answer.isDone()) {
            if (request.writeQueueFull()) {
                Thread.sleep(1);
            } else {
                request.write(Buffer.buffer(PIECE));
                sent += PIECE.length();
            }
        }
        var heard = answer.get(20, SECONDS);
        assertThat(heard.version()).isEqualTo(HttpVersion.HTTP_2);
        assertThat(heard.status()).as(heard.text()).isEqualTo(413);
        assertThat(heard.text()).contains("at most %d bytes".formatted(most));
        // what is on its way between the two
        assertThat(sent).isLessThan(most + 40L * MEGABYTE);
    }

    /** What is not even read, because nobody is let in or nothing is there, is not waited for. */
    @Test
    void whoeverIsNotLetInIsToldAtOnce() throws Exception {
        var request = request("/j_security_check", "application/x-www-form-urlencoded");
        request.setChunked(true).write(Buffer.buffer("j_username="));
        assertThat(answer(request).get(20, SECONDS).status()).isEqualTo(411);
    }

    /** RFC 9113, 8.1.1: more or less than was announced is malformed. */
    @ParameterizedTest
    @ValueSource(ints = {10, 3_000_000})
    void aLengthThatIsNotTrueIsNotBelieved(int sent) throws Exception {
        var request = request("/api/v1/sites", "application/json");
        request.putHeader("Content-Length", "1000");
        request.end(Buffer.buffer(new byte[sent]));
        var answer = request.response().toCompletionStage().toCompletableFuture();
        assertThat(answer).failsWithin(Duration.ofSeconds(20));
    }

    @Test
    void whatHasNoBodyNeedsNoLength() throws Exception {
        var request = request("/api/v1/backups", "application/json");
        request.end();
        assertThat(answer(request).get(20, SECONDS).status()).isIn(201, 409);
    }

    /** RFC 7540, 3.2: one that begins by HTTP/1.1 and is led on. */
    @Test
    void aClientThatChangesToItIsCountedAsWell() throws Exception {
        var url = URI.create("http://localhost:" + RestAssured.port + "/api/v1/sites");
        var request =
                HttpRequest.newBuilder(url)
                        .version(java.net.http.HttpClient.Version.HTTP_2)
                        .header("Content-Type", "application/json")
                        .header("Authorization", token);
        var browser = java.net.http.HttpClient.newHttpClient();
        for (int i = 0; i < 2; i++) {
            var large = BodyPublishers.ofString("{\"name\":" + PIECE.repeat(30));
            var sent = request.POST(BodyPublishers.fromPublisher(large)).build();
            var answer = browser.send(sent, BodyHandlers.ofString());
            assertThat(answer.version()).isEqualTo(java.net.http.HttpClient.Version.HTTP_2);
            assertThat(answer.statusCode()).isEqualTo(413);
            assertThat(answer.body()).contains("at most 1048576 bytes");
        }
        var page = browser.send(request.GET().build(), BodyHandlers.ofString());
        assertThat(page.statusCode()).isEqualTo(200);
    }
}
