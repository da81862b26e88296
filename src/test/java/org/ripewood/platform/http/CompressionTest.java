package org.ripewood.platform.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.config.DecoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.response.Response;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is the same for everybody travels compressed, and nothing else does. */
@Tag("one-database")
@QuarkusTest
class CompressionTest {

    /** Does not undo it. */
    private static final RestAssuredConfig AS_SENT =
            RestAssuredConfig.config()
                    .decoderConfig(DecoderConfig.decoderConfig().noContentDecoders());

    private static Response asked(String path) {
        return given().config(AS_SENT)
                .redirects()
                .follow(false)
                .header("Accept-Encoding", "gzip, deflate")
                .get(path);
    }

    @ParameterizedTest
    @ValueSource(strings = "/style.css")
    void whatIsTheSameForEverybodyIs(String path) {
        var answer = asked(path);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.header("Content-Encoding")).isEqualTo("gzip");
    }

    /** Gluck, Harris and Prado 2013: beside a secret, the length of what is compressed tells it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/sign-in",
                "/set-up",
                "/password/none",
                "/none",
                "/api/v1/trees",
                "/api/v1/none",
                "/openapi"
            })
    void whatMayHoldASecretIsNot(String path) {
        assertThat(asked(path).header("Content-Encoding")).isIn(null, "identity");
    }
}
