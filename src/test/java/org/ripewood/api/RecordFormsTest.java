package org.ripewood.api;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A record goes over the line as ZIP or as JSON, and comes in as either. */
@QuarkusTest
class RecordFormsTest {

    private static final String ZIP = "application/zip";
    private static final String JSON = "application/json";

    @Inject School opening;

    private School school;
    private String url;

    @BeforeEach
    void open() {
        school = opening.open();
        url = "/api/v1/trees/%d/record".formatted(school.photo().treeId());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    */*                                   |            | application/zip
                    text/html,application/xml;q=0.9,*/*;q=0.8 |        | application/zip
                    application/zip                       |            | application/zip
                    application/json                      |            | application/json
                    application/json, application/zip;q=0.5 |          | application/json
                    */*                                   | ?form=JSON | application/json
                    */*                                   | ?form=json | application/json
                    application/json                      | ?form=ZIP  | application/zip
                    """)
    void theFormIsAskedForOrAccepted(String accept, String form, String type) {
        var answer = asking(accept, form == null ? "" : form);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.contentType()).isEqualTo(type);
        assertThat(answer.header("Content-Disposition"))
                .endsWith(type.equals(ZIP) ? ".zip\"" : ".json\"");
        assertThat(new String(answer.asByteArray(), 0, 2, ISO_8859_1))
                .isEqualTo(type.equals(ZIP) ? "PK" : "{\"");
    }

    private Response asking(String accept, String form) {
        return school.as(Who.STUDENT).header("Accept", accept).get(url + form);
    }

    @Test
    void anUnknownFormIsRefusedWithThoseThereAre() {
        var answer = asking("*/*", "?form=TAR");
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString()).contains("form", "ZIP, JSON");
    }

    /** What it is called does not matter. */
    @ParameterizedTest
    @CsvSource({ZIP, JSON})
    void aZipComesInByItsContent(String type) throws IOException {
        var zip = asking(ZIP, "").asByteArray();
        assertThat(entries(zip)).isEqualTo(2);
        var answer = brought(zip, type);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(201);
        assertThat(answer.jsonPath().getInt("tables.photo")).isEqualTo(1);
        assertThat(answer.jsonPath().getInt("tables.tree")).isEqualTo(1);
    }

    @Test
    void aRefusedPictureIsToldByItsEntry() {
        var zip = asking(ZIP, "").asByteArray();
        // the last byte of the picture stands before the list of entries, which PK 1 2 begins
        int list = new String(zip, ISO_8859_1).indexOf("PK\1\2");
        zip[list - 1]++;
        var answer = brought(zip, ZIP);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.contentType()).startsWith("application/problem+json");
        assertThat(answer.jsonPath().getString("faults[0].field")).isEqualTo("photos/000001.jpg");
        assertThat(answer.jsonPath().getString("faults[0].message")).contains("Maybe ");
    }

    private Response brought(byte[] zip, String type) {
        return school.as(Who.REGISTRAR).contentType(type).body(zip).post("/api/v1/record");
    }

    private static int entries(byte[] zip) throws IOException {
        try (var in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            int entries = 0;
            while (in.getNextEntry() != null) {
                entries++;
            }
            return entries;
        }
    }
}
