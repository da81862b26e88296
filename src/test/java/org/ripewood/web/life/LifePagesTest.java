package org.ripewood.web.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.School.TODAY;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photo;
import org.ripewood.photos.Photos;
import org.ripewood.photos.Pictures;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Role;
import org.ripewood.records.Containers;
import org.ripewood.records.NewContainer;
import org.ripewood.standing.Assigner;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOvers;
import org.ripewood.trees.Tree;
import org.ripewood.web.Visitor;

/** A tree's life: everything on its day, what is ahead, and what a year brought. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class LifePagesTest {

    @Inject School school;
    @Inject People people;
    @Inject Photos photos;
    @Inject Containers containers;
    @Inject Assigner assigner;
    @Inject HandOvers handOvers;

    private School.Group group;
    private Tree tree;
    private Visitor pupil;
    private String page;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        pupil = Visitor.of(people, group.student());
        page = "/trees/" + tree.id() + "/life";
    }

    private Photo front(LocalDate on, @Nullable String caption) {
        return photos.add(
                group.student(),
                tree.id(),
                new NewPhoto(on, Viewpoint.FRONT, caption, null, null),
                new ByteArrayInputStream(Pictures.jpeg()));
    }

    @Test
    void everythingStandsOnItsDayTheLatestFirst() {
        var photo = front(TODAY.minusDays(280), "in leaf");
        var wound = school.wound(group.instructor(), tree, "stump", 12, LocalDate.of(2025, 5, 4));
        school.readWound(group.student(), tree, wound, 9);
        school.see(group.instructor(), tree, "trunk_base_mm", "40", LocalDate.of(2025, 3, 1));
        containers.moveTo(
                group.instructor(),
                tree.id(),
                new NewContainer("training", null, 6.5, LocalDate.of(2024, 3, 9)));
        assigner.noteFoundDone(
                group.instructor(), tree.id(), "root_check", LocalDate.of(2024, 10, 2), null);
        var html = pupil.get(page).asString();
        assertThat(html)
                .containsSubsequence(
                        "id=\"years\"",
                        ">2026<",
                        "20 February 2026",
                        "9 mm open",
                        ">2025<",
                        "href=\"/photos/%d/about\"".formatted(photo.id()),
                        "/photos/%d/thumbnail".formatted(photo.id()),
                        "in leaf",
                        "4 May 2025",
                        "wound, 12 mm wide",
                        "1 March 2025",
                        "40 mm",
                        ">2024<",
                        "2 October 2024",
                        "found done",
                        "9 March 2024",
                        "Into a training container",
                        "6.5 litres",
                        ">2023<",
                        "Arrived")
                .contains("Life of " + tree.label(), ">today<", "id=\"ahead\"");
    }

    @Test
    void aYearWithoutASecondMeasureSaysSo() {
        school.see(group.instructor(), tree, "trunk_base_mm", "40", LocalDate.of(2026, 1, 10));
        assertThat(pupil.get(page).asString())
                .contains("What it gained in 2026", "Nothing was measured twice this year yet");
        school.see(group.instructor(), tree, "trunk_base_mm", "41.5", LocalDate.of(2026, 2, 15));
        assertThat(pupil.get(page).asString())
                .contains(
                        "Trunk base: grew from 40 mm to 41.5 mm between 10 January 2026 and 15"
                                + " February 2026.")
                .doesNotContain("Nothing was measured twice");
    }

    @Test
    void theApiTellsTheSame() {
        var photo = front(TODAY.minusDays(30), null);
        school.see(group.instructor(), tree, "trunk_base_mm", "40", LocalDate.of(2026, 1, 10));
        var told = pupil.get("/api/v1" + page).jsonPath();
        assertThat(told.getInt("treeId")).isEqualTo((int) tree.id());
        assertThat(told.getInt("until")).isEqualTo(2026);
        assertThat(told.getList("entries.kind")).containsExactly("PHOTO", "TRUNK", "ARRIVED");
        assertThat(told.getLong("entries[0].id")).isEqualTo(photo.id());
        assertThat(told.getDouble("entries[1].mm")).isEqualTo(40);
        assertThat(told.getBoolean("gains.measuredTwice")).isFalse();
        assertThat(told.getString("goal.title")).isNotBlank();
        assertThat(told.getList("ahead")).isNotEmpty();
    }

    @Test
    void aLongLifeIsToldByYears() {
        for (int i = 0; i < 230; i++) {
            school.see(
                    group.instructor(),
                    tree,
                    "trunk_base_mm",
                    "40",
                    LocalDate.of(2026, 2, 18).minusDays(4L * i));
        }
        var first = pupil.get("/api/v1" + page).jsonPath();
        assertThat(first.getList("entries")).hasSizeLessThanOrEqualTo(200);
        assertThat(first.getInt("left")).isZero();
        int earlier = first.getInt("earlierUntil");
        assertThat(earlier).isEqualTo(first.getInt("from") - 1);
        assertThat(pupil.get(page).asString())
                .contains(page + "?until=" + earlier)
                .doesNotContain("Later years");
        var before = pupil.get("/api/v1" + page + "?until=" + earlier).jsonPath();
        assertThat(first.getList("entries").size() + before.getList("entries").size())
                .isEqualTo(230 + 1);
        assertThat(before.getList("ahead")).isNotEmpty();
        assertThat(pupil.get(page + "?until=" + earlier).asString())
                .contains("Later years")
                .doesNotContain(">today<", "id=\"ahead\"");
    }

    /** Names and words of a former keeper are for those who reach them. */
    @Test
    void aFormerKeepersWordsAreNotTold() {
        front(TODAY.minusDays(9), "by my own eye");
        var next = school.person("Nora Next", Role.STUDENT);
        school.join(group, next, Role.STUDENT);
        handOvers.handOver(
                group.student(), tree.id(), tree.version(), new HandOver(next.personId(), TODAY));
        var visitor = Visitor.of(people, next);
        for (var path : List.of(page, "/api/v1" + page, "/trees/" + tree.id())) {
            assertThat(visitor.get(path).asString())
                    .as(path)
                    .doesNotContain("by my own eye", "Stan Student");
        }
        assertThat(Visitor.of(people, group.instructor()).get(page).asString())
                .contains("by my own eye");
        assertThat(pupil.get(page).statusCode()).isEqualTo(404);
    }
}
