package org.ripewood.web;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;

/** Spreadsheets save lists in the letters of their computer; those would be lost in silence. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class ListBytesTest {

    private static final String HEAD = "label,species,keeper,site,came_on\n";
    private static final String LIST =
            HEAD
                    + "Elm,ulmus_parvifolia,nobody,Nowhere,2021-03-14\n"
                    + "Frühling,ulmus_parvifolia,nobody,Nowhere,2021-03-14\n";

    @Inject School school;
    @Inject People people;

    private Visitor teacher;

    @BeforeEach
    void open() {
        teacher = Visitor.of(people, school.newGroup().instructor());
    }

    @Test
    void aFileThatIsNotUtf8IsRefused() {
        for (var charset : List.of(ISO_8859_1, UTF_16)) {
            var answer = sent(List.of(LIST.getBytes(charset)));
            assertThat(answer.statusCode()).as(charset.name()).isEqualTo(400);
            assertThat(answer.asString()).contains("not UTF-8. Maybe save it as CSV UTF-8.");
        }
        assertThat(sent(List.of(LIST.getBytes(ISO_8859_1))).asString()).contains("line 3");
        assertThat(sent(List.of(LIST.getBytes(UTF_8))).asString()).contains("Frühling");
    }

    @Test
    void ofTwoFilesNoneIsTaken() {
        var list = LIST.getBytes(UTF_8);
        var answer = sent(List.of(list, list));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString()).contains("expected one file, found 2");
    }

    private Response sent(List<byte[]> files) {
        var fields = Visitor.fields("kind", "TREES", "choice", "DRY_RUN");
        return teacher.sendWhole("/lists", "/lists", fields, "file", files);
    }

    @Test
    void aBodyThatIsNotUtf8IsRefused() {
        for (var address : List.of("/api/v1/lists/trees", "/api/v1/sites/1/readings")) {
            var answer = teacher.sendCsv(address, "text/csv", LIST.getBytes(ISO_8859_1));
            assertThat(answer.statusCode()).as(address).isEqualTo(400);
            assertThat(answer.asString()).contains("line 3 not UTF-8. Maybe save it");
        }
        var fine = teacher.sendCsv("/api/v1/lists/trees", "text/csv", LIST.getBytes(UTF_8));
        assertThat(fine.statusCode()).isEqualTo(200);
    }

    @Test
    void aBodySaidToBeInOtherLettersIsRefused() {
        var list = LIST.getBytes(ISO_8859_1);
        for (var charset : List.of("iso-8859-1", "windows-1252", "\"utf-16\"")) {
            var type = "text/csv; charset=" + charset;
            assertThat(teacher.sendCsv("/api/v1/lists/trees", type, list).statusCode())
                    .as(type)
                    .isEqualTo(415);
        }
        for (var charset : List.of("utf-8", "UTF8", "\"utf-8\"")) {
            var type = "text/csv; charset=" + charset;
            assertThat(
                            teacher.sendCsv("/api/v1/lists/trees", type, LIST.getBytes(UTF_8))
                                    .statusCode())
                    .as(type)
                    .isEqualTo(200);
        }
    }
}
