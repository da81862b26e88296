package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photos;
import org.ripewood.photos.Pictures;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Role;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOvers;
import org.ripewood.trees.Tree;

/** The record with its photos on pages: taken out, brought in, and told of before forgetting. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class RecordPageTest {

    @Inject School school;
    @Inject People people;
    @Inject Photos photos;
    @Inject HandOvers handOvers;

    private School.Group group;
    private Tree tree;
    private Visitor registrar;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        tree = school.tree(group.instructor(), group.student(), "acer_palmatum");
        for (int each = 0; each < 2; each++) {
            photos.add(
                    group.student(),
                    tree.id(),
                    new NewPhoto(School.TODAY, Viewpoint.FRONT, null, null, null),
                    new ByteArrayInputStream(Pictures.jpeg()));
        }
        registrar = Visitor.of(people, school.person("Rae Registrar", Role.REGISTRAR)).confirmed();
    }

    private byte[] taken() {
        var pupil = Visitor.of(people, group.student());
        var link = "/api/v1/trees/%d/record".formatted(tree.id());
        assertThat(pupil.get("/trees/%d/papers".formatted(tree.id())).asString())
                .contains("href=\"%s\"".formatted(link), "href=\"%s?form=JSON\"".formatted(link));
        return pupil.get(link).asByteArray();
    }

    private Response bring(byte[] file) {
        return registrar.sendFiles("/record", "/record", Map.of(), "file", List.of(file));
    }

    @Test
    void aTreeWithItsPhotosIsBroughtInWhateverTheFileIsCalled() {
        var answer = bring(taken());
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.asString())
                .contains("rows were brought in")
                .contains("<dt>photo</dt><dd>2</dd>");
    }

    @Test
    void whyAFileIsRefusedIsToldWithItsEntry() {
        var zip = taken();
        // within the second picture, before the list of entries of three lines
        zip[zip.length - 400]++;
        var answer = bring(zip);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString()).contains("photos/000002.jpg", "Maybe take the record out");
    }

    @Test
    void beforeSomebodyIsForgottenTheirPhotosAreCounted() {
        handOvers.handOver(
                group.instructor(),
                tree.id(),
                tree.version(),
                new HandOver(group.instructor().personId(), School.TODAY));
        assertThat(told(group.student().personId()))
                .contains("2 photos that they sent will be deleted");
        assertThat(told(school.person("Nora Next", Role.STUDENT).personId()))
                .contains("They have sent no photos");
    }

    private String told(long personId) {
        return registrar.get("/people/%d/forget".formatted(personId)).asString();
    }
}
