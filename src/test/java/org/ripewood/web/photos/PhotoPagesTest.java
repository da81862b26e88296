package org.ripewood.web.photos;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photo;
import org.ripewood.photos.Photos;
import org.ripewood.photos.Pictures;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Role;
import org.ripewood.standing.Assigner;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOvers;
import org.ripewood.trees.Tree;
import org.ripewood.web.Visitor;

/** Photos on pages: sent from a phone, side by side, beside the wound and the step they show. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class PhotoPagesTest {

    private static final LocalDate TODAY = School.TODAY;

    @Inject School school;
    @Inject People people;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject Photos photos;
    @Inject Assigner assigner;
    @Inject HandOvers handOvers;

    private School.Group group;
    private Tree tree;
    private Visitor pupil;
    private String page;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        tree = school.tree(group.instructor(), group.student(), "acer_palmatum");
        pupil = Visitor.of(people, group.student());
        page = "/trees/" + tree.id() + "/photos";
    }

    private Photo photo(Viewpoint view, LocalDate on, @Nullable Long woundId, @Nullable Long step) {
        return photos.add(
                group.student(),
                tree.id(),
                new NewPhoto(on, view, "shown to " + view, woundId, step),
                new ByteArrayInputStream(Pictures.jpeg()));
    }

    private Photo front(LocalDate on) {
        return photo(Viewpoint.FRONT, on, null, null);
    }

    private static String whole(Photo photo) {
        return "<img src=\"/photos/%d\"".formatted(photo.id());
    }

    @Test
    void theFirstAndTheLatestFromTheFrontStandSideBySide() {
        var middle = front(TODAY.minusYears(1));
        var latest = front(TODAY.minusDays(10));
        var first = front(TODAY.minusDays(40));
        first =
                photos.change(
                        group.student(),
                        first.id(),
                        first.version(),
                        new NewPhoto(TODAY.minusYears(3), Viewpoint.FRONT, null, null, null));
        var back = photo(Viewpoint.BACK, TODAY, null, null);
        var html = pupil.get(page).asString();
        assertThat(html)
                .contains(whole(first), whole(latest))
                .doesNotContain(whole(middle), whole(back))
                .contains("20 February 2023")
                .containsPattern("1086 days lie between them");
        assertThat(html.indexOf(whole(first))).isLessThan(html.indexOf(whole(latest)));

        var chosen = pupil.get(page + "?before=" + middle.id() + "&after=" + back.id()).asString();
        assertThat(chosen)
                .contains(whole(middle), whole(back))
                .doesNotContain(whole(first), whole(latest))
                .contains("<option value=\"%d\" selected>".formatted(middle.id()));
    }

    /** Leaves beside bare twigs tell nothing of growth. */
    @Test
    void ofSeveralYearsTwoOfTheSameSeasonStandSideBySide() {
        var summer = front(TODAY.minusDays(900));
        var first = front(TODAY.minusDays(740));
        front(TODAY.minusDays(380));
        var latest = front(TODAY.minusDays(5));
        var html = pupil.get(page).asString();
        assertThat(html)
                .contains(whole(first), whole(latest))
                .doesNotContain(whole(summer))
                .contains("735 days lie between them; the season is the same.");
        assertThat(html.indexOf(whole(first))).isLessThan(html.indexOf(whole(latest)));
        assertThat(pupil.get(page + "?before=" + summer.id()).asString())
                .contains(whole(summer), whole(latest))
                .contains("895 days lie between them.");
    }

    @Test
    void aFormerKeepersNameAndWordsAreOnNoPage() {
        var wound = school.wound(group.instructor(), tree, "left", 20);
        var first = photo(Viewpoint.FRONT, TODAY.minusDays(9), wound.id(), null);
        front(TODAY);
        var gone = front(TODAY.minusDays(2));
        photos.remove(group.student(), gone.id(), gone.version());
        var next = school.person("Nora Next", Role.STUDENT);
        school.join(group, next, Role.STUDENT);
        handOvers.handOver(
                group.student(), tree.id(), tree.version(), new HandOver(next.personId(), TODAY));
        var visitor = Visitor.of(people, next);
        var about = "/photos/" + first.id() + "/about";
        var pages = List.of(page, about, "/trees/" + tree.id() + "/wounds/" + wound.id());
        for (var each : pages) {
            assertThat(visitor.get(each).asString())
                    .as(each)
                    .contains("/photos/" + first.id())
                    .doesNotContain("shown to", "Stan Student");
        }
        assertThat(visitor.get(about).asString()).contains("a former keeper");
        assertThat(visitor.get(page).asString()).contains("taken away by a former keeper");
        var teacher = Visitor.of(people, group.instructor());
        assertThat(teacher.get(about).asString()).contains("shown to FRONT", "Stan Student");
    }

    @Test
    void aPhotoOfAnotherTreeCannotBeChosen() {
        front(TODAY);
        front(TODAY.minusDays(1));
        var other = school.tree(group.instructor(), group.student(), "acer_palmatum");
        var strange =
                photos.add(
                        group.student(),
                        other.id(),
                        new NewPhoto(null, Viewpoint.FRONT, null, null, null),
                        new ByteArrayInputStream(Pictures.jpeg()));
        assertThat(pupil.get(page + "?before=" + strange.id()).statusCode()).isEqualTo(404);
        assertThat(pupil.get(page + "?after=x").statusCode()).isEqualTo(400);
    }

    @Test
    void oneFromTheFrontIsNotComparedWithItself() {
        var only = front(TODAY);
        assertThat(pupil.get(page).asString())
                .doesNotContain("Before and after")
                .contains("/photos/%d/thumbnail".formatted(only.id()));
    }

    @Test
    void severalPhotosAreSentAtOnceAndTheBadOnesTold() {
        var sent =
                pupil.sendFiles(
                        page,
                        page,
                        Map.of("view", "LEFT", "takenOn", "2026-02-01", "caption", "a \"b\""),
                        "photo",
                        List.of(Pictures.jpeg(), Pictures.jpeg()));
        assertThat(sent.statusCode()).as(sent.asString()).isEqualTo(303);
        assertThat(sent.header("Location")).endsWith(page + "#all");
        assertThat(photos.ofTree(group.student(), tree.id()))
                .hasSize(2)
                .allSatisfy(photo -> assertThat(photo.takenOn()).isEqualTo("2026-02-01"))
                .allSatisfy(photo -> assertThat(photo.view()).isEqualTo(Viewpoint.LEFT));
        assertThat(pupil.get(page).asString()).contains("a &quot;b&quot;");

        var mixed =
                pupil.sendFiles(
                        page,
                        page,
                        Map.of("view", "BACK", "caption", "kept words"),
                        "photo",
                        List.of(
                                "<svg/>".getBytes(StandardCharsets.UTF_8),
                                Pictures.jpeg(),
                                new byte[0]));
        assertThat(mixed.statusCode()).isEqualTo(400);
        assertThat(mixed.asString())
                .contains("1 of 3 photo(s) were kept")
                .contains("number 1 of 3: expected a JPEG or PNG picture, found text with tags")
                .contains("number 3 of 3: expected a JPEG or PNG picture, found an empty file")
                .contains(">kept words</textarea>")
                .contains("<option value=\"BACK\" selected>");
        assertThat(photos.ofTree(group.student(), tree.id())).hasSize(3);
    }

    @Test
    void aFormWithoutAFileOrWithADayToComeKeepsItsWords() {
        var none = pupil.sendFiles(page, page, Map.of("view", "BACK"), "photo", List.of());
        assertThat(none.statusCode()).isEqualTo(400);
        assertThat(none.asString()).contains("id=\"upload-photo-fault\"");
        var early =
                pupil.sendFiles(
                        page,
                        page,
                        Map.of("view", "BACK", "takenOn", "2026-02-21"),
                        "photo",
                        List.of(Pictures.jpeg()));
        assertThat(early.statusCode()).isEqualTo(400);
        assertThat(early.asString())
                .contains("id=\"upload-takenOn-fault\"")
                .contains("value=\"2026-02-21\"");
        assertThat(photos.ofTree(group.student(), tree.id())).isEmpty();
    }

    @Test
    void aFormWithoutItsTokenKeepsNothing() {
        var answer =
                pupil.sendFiles(
                        "/sign-out-nowhere",
                        page,
                        Map.of("view", "BACK"),
                        "photo",
                        List.of(Pictures.jpeg()));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(photos.ofTree(group.student(), tree.id())).isEmpty();
    }

    @Test
    void aPictureIsServedAsWhatItIs() {
        var photo = front(TODAY);
        for (var path : List.of("/photos/" + photo.id(), "/photos/" + photo.id() + "/thumbnail")) {
            var answer = pupil.get(path);
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.contentType()).isEqualTo("image/jpeg");
            assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
            assertThat(answer.header("Cache-Control")).isEqualTo("private, no-cache");
            assertThat(answer.asByteArray()).startsWith(0xFF, 0xD8, 0xFF).endsWith(0xFF, 0xD9);
            var again = pupil.getUnless(path, answer.header("ETag"));
            assertThat(again.statusCode()).isEqualTo(304);
            assertThat(again.asByteArray()).isEmpty();
            assertThat(pupil.getUnless(path, "\"another\"").statusCode()).isEqualTo(200);
        }
        var stranger = Visitor.of(people, school.newGroup().student());
        var hidden = stranger.getUnless("/photos/" + photo.id(), "\"" + photo.sha256() + "\"");
        assertThat(hidden.statusCode()).isEqualTo(404);
    }

    @Test
    void woundAndStepShowTheirPhotos() {
        var wound = school.wound(group.instructor(), tree, "first branch", 24);
        var step =
                assigner.noteFoundDone(
                        group.instructor(), tree.id(), "root_check", TODAY, "seen at the bench");
        var ofWound = photo(Viewpoint.DETAIL, TODAY, wound.id(), null);
        var ofStep = photo(Viewpoint.ABOVE, TODAY, null, step.id());
        var thumbnail = "src=\"/photos/%d/thumbnail\"";
        var teacher = Visitor.of(people, group.instructor());
        assertThat(teacher.get("/trees/" + tree.id() + "/wounds/" + wound.id()).asString())
                .contains(thumbnail.formatted(ofWound.id()))
                .doesNotContain(thumbnail.formatted(ofStep.id()));
        assertThat(teacher.get("/steps/" + step.id()).asString())
                .contains(thumbnail.formatted(ofStep.id()))
                .doesNotContain(thumbnail.formatted(ofWound.id()));
        assertThat(pupil.get(page + "?wound=" + wound.id()).asString())
                .contains("<option value=\"%d\" selected>".formatted(wound.id()))
                .contains("<option value=\"DETAIL\" selected>");
        assertThat(pupil.get(page + "?step=" + step.id()).asString())
                .contains("<option value=\"%d\" selected>".formatted(step.id()));
    }

    @Test
    void whatIsSaidIsChangedOnItsPageAndAnOlderVersionComesBack() {
        var photo = front(TODAY.minusDays(5));
        var at = "/photos/" + photo.id() + "/about";
        var changed =
                pupil.send(
                        at,
                        at,
                        Map.of(
                                "version", photo.version(),
                                "takenOn", "2026-02-02",
                                "view", "RIGHT",
                                "caption", "turned round"));
        assertThat(changed.statusCode()).as(changed.asString()).isEqualTo(303);
        assertThat(pupil.get(at).asString()).contains("Right, 2 February 2026", "turned round");
        var late =
                pupil.send(
                        at,
                        at,
                        Map.of(
                                "version", photo.version(),
                                "takenOn", "2026-02-03",
                                "view", "LEFT",
                                "caption", "too late"));
        assertThat(late.statusCode()).isEqualTo(412);
        assertThat(late.asString()).contains("Someone changed this", ">too late</textarea>");
    }

    @Test
    void aPhotoTakenAwayIsToldWithWhoDidIt() {
        var photo = front(TODAY);
        var at = "/photos/" + photo.id();
        var teacher = Visitor.of(people, group.instructor());
        var answer =
                teacher.send(at + "/about", at + "/remove", Map.of("version", photo.version()));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(pupil.get(at).statusCode()).isEqualTo(404);
        assertThat(pupil.get(at + "/thumbnail").statusCode()).isEqualTo(404);
        var name = peopleUnchecked.get(group.instructor().personId()).name();
        assertThat(pupil.get(page).asString()).contains("taken away by " + name);
        assertThat(pupil.get(at + "/about").asString())
                .contains("taken away by " + name)
                .doesNotContain("<img src=\"/photos");
    }
}
