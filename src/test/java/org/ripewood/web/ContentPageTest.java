package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;

/** The files are read again from the page of the content, which lists the cases that disagree. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class ContentPageTest {

    private static final String TITLE = "A cedar full of scale insects is left as it is";

    private static final String OF_SCHOOL = "Of this school";

    private static final String TOPIC =
            """
            code: left-as-it-is
            title: Left as it is
            about: What no teacher would say, so that it is told.
            cases:
              - name: cedar
                title: %s
                species: cryptomeria_japonica
                climate: humid-35n
                day: "08-20"
                age: 1
                known:
                  - {fact: pest_level, is: 3}
                  - {fact: soil_moist, is: true}
                technique: pest_control
                verdicts: [NOT_NEEDED]
                why: Said only to see whether it is told.
                source: common practice, no source
            """
                    .formatted(TITLE);

    @Inject School school;
    @Inject People people;
    @Inject CourseContent content;

    @Test
    void aCaseThatDisagreesIsListedAndStandsInTheWayOfNothing() throws IOException {
        var teacher = Visitor.of(people, school.newGroup().instructor());
        var before = content.inForce().revision();
        assertThat(teacher.get("/lessons").asString()).contains("href=\"/content\"");
        assertThat(teacher.get("/content").asString()).contains(before).doesNotContain(TITLE);
        var file = SchoolProfile.CONTENT.resolve("cases/left-as-it-is.yaml");
        try {
            Files.writeString(file, TOPIC);
            assertThat(renewed(teacher))
                    .contains("read without faults")
                    .contains(TITLE)
                    .contains("expected NOT_NEEDED; found READY")
                    .contains("cases/left-as-it-is.yaml:5");
            assertThat(content.inForce().revision()).isNotEqualTo(before);
            Files.writeString(file, TOPIC.replace("is: 3", "is: 30"));
            assertThat(renewed(teacher))
                    .contains("the content in force stays as it was")
                    .contains("cases/left-as-it-is.yaml:12")
                    .contains("a number from 0 to 4 for pest_level")
                    .contains(TITLE);
        } finally {
            Files.deleteIfExists(file);
            assertThat(content.renew()).isEmpty();
        }
        assertThat(teacher.get("/content").asString()).contains(before).doesNotContain(TITLE);
    }

    @Test
    void programsAreToldOfItWithTheRenewal() throws IOException {
        var teacher = Visitor.of(people, school.newGroup().instructor());
        var file = SchoolProfile.CONTENT.resolve("cases/left-as-it-is.yaml");
        try {
            Files.writeString(file, TOPIC);
            var answer = teacher.sendJson("/api/v1/content/renew", null, Map.of()).jsonPath();
            assertThat(answer.getList("faults")).isEmpty();
            assertThat(answer.getList("disagreeingCases.code", String.class))
                    .contains("left-as-it-is/cedar");
        } finally {
            Files.deleteIfExists(file);
            assertThat(content.renew()).isEmpty();
        }
    }

    @Test
    void whatTheSchoolLaidOverTheContentSaysSoOnItsPages() throws IOException {
        var teacher = Visitor.of(people, school.newGroup().instructor());
        var paths =
                List.of(
                        "techniques/jin.yaml",
                        "species/acer_palmatum.yaml",
                        "lessons/wiring-branches.md");
        var pages =
                List.of("/techniques/jin", "/species/acer_palmatum", "/lessons/wiring-branches");
        pages.forEach(page -> assertThat(teacher.get(page).asString()).doesNotContain(OF_SCHOOL));
        try {
            for (var path : paths) {
                var file = SchoolProfile.ADDED.resolve(path);
                Files.createDirectories(file.getParent());
                Files.copy(SchoolProfile.CONTENT.resolve(path), file);
            }
            assertThat(renewed(teacher)).contains("read without faults").contains(paths);
            pages.forEach(page -> assertThat(teacher.get(page).asString()).contains(OF_SCHOOL));
            assertThat(teacher.get("/species/acer_buergerianum").asString())
                    .doesNotContain(OF_SCHOOL);
        } finally {
            for (var path : paths) {
                Files.deleteIfExists(SchoolProfile.ADDED.resolve(path));
            }
            assertThat(content.renew()).isEmpty();
        }
    }

    private static String renewed(Visitor teacher) {
        var answer = teacher.send("/content", "/content/renew", Map.of());
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.asString();
    }
}
