package org.ripewood.web.trees;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.School.TODAY;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
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
import org.ripewood.trees.Tree;
import org.ripewood.web.Visitor;

/** A tree's portrait: where it is, what is next, and what holds styling. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class PortraitTest {

    /** What the page may weigh before it is packed, pictures by address not counted. */
    private static final int MOST_BYTES = 60_000;

    @Inject School school;
    @Inject People people;
    @Inject Photos photos;

    private School.Group group;
    private Tree tree;
    private Visitor pupil;
    private Visitor teacher;
    private String page;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        pupil = Visitor.of(people, group.student());
        teacher = Visitor.of(people, group.instructor());
        page = "/trees/" + tree.id();
    }

    private Photo photo(Viewpoint view, int daysAgo) {
        return photos.add(
                group.student(),
                tree.id(),
                new NewPhoto(TODAY.minusDays(daysAgo), view, null, null, null),
                new ByteArrayInputStream(Pictures.jpeg()));
    }

    private void measured() {
        school.see(group.instructor(), tree, "vigour_index", "78");
        school.see(group.instructor(), tree, "pest_level", "0");
        school.see(group.instructor(), tree, "soil_moist", "yes", TODAY);
        for (int mark = 0; mark < 6; mark++) {
            school.seeTrunk(group.instructor(), tree, 30 * mark, 44 - 2 * mark);
        }
        for (int i = 0; i < 8; i++) {
            school.wound(group.instructor(), tree, "cut " + i, 12 + i);
        }
    }

    @Test
    void theLatestPhotoFromTheFrontStandsFirstElseTheTrunkElseAWordOfWhatToDo() {
        assertThat(pupil.get(page).asString()).contains("No photo and no measure of the trunk yet");
        measured();
        assertThat(pupil.get(page).asString())
                .contains("Drawn from its measures", page + "/photos#send");
        var older = photo(Viewpoint.FRONT, 400);
        var latest = photo(Viewpoint.FRONT, 20);
        photo(Viewpoint.BACK, 1);
        assertThat(pupil.get(page).asString())
                .contains("<img src=\"/photos/%d\"".formatted(latest.id()))
                .doesNotContain(
                        "<img src=\"/photos/%d\"".formatted(older.id()), "Drawn from its measures");
    }

    @Test
    void itTellsWhereTheTreeIsAndThreeReasonsThatHoldStyling() {
        measured();
        var html = pupil.get(page).asString();
        assertThat(html)
                .contains("Stage 1 of 5: Establish", "Missing for the next stage", "here</text>")
                .containsPattern(
                        "<p class=\"lede verdict\">“[^”]+” (is held|waits|may go on|is under way)");
        var holds = html.substring(html.indexOf("id=\"holds\""));
        holds = holds.substring(0, holds.indexOf("</section>"));
        assertThat(holds).containsOnlyOnce("<ul class=\"reasons\">");
        assertThat(holds.split("<li ", -1)).hasSize(1 + 3);
        assertThat(holds.split("<svg class=\"ring\"", -1)).hasSize(1 + 3);
        assertThat(holds).contains("#reasons");
    }

    @Test
    void theNextStepIsAssignedByInstructorsAndAskedForByStudents() {
        measured();
        var next = next(teacher);
        assertThat(next).contains("Assign this step", "#assign").doesNotContain("Your instructor");
        assertThat(next(pupil))
                .contains("Not assigned yet.", "Ask for this step", "#ask")
                .doesNotContain("#assign");
    }

    /** Home, the tree's page and its checklist name the same step, by the same words. */
    @Test
    void aReadyStepIsToldAlikeOnHomeChecklistAndTree() {
        measured();
        var ask = java.util.regex.Pattern.compile(page + "/techniques/([a-z_]+)#ask");
        for (var path : java.util.List.of(page, page + "/checklist", "/home")) {
            var html = pupil.get(path).asString();
            assertThat(html).as(path).containsIgnoringCase("not assigned yet").contains("Ready");
            var found = ask.matcher(html);
            assertThat(found.find()).as(path).isTrue();
            assertThat(next(pupil)).as(path).contains(found.group());
            assertThat(pupil.get(found.group().replace("#ask", "")).asString())
                    .as("where it is asked for")
                    .contains("id=\"ask\"", "Ask your instructor");
        }
        assertThat(teacher.get(page + "/checklist").asString())
                .contains("Ready, not assigned yet", "Assign this step", "#assign")
                .doesNotContain("#ask\"");
    }

    private String next(Visitor visitor) {
        var html = visitor.get(page).asString();
        var next = html.substring(html.indexOf("id=\"next\""));
        return next.substring(0, next.indexOf("</section>"));
    }

    /** Which page of the tree one is on is marked, and the others are one click away. */
    @Test
    void everyPageOfTheTreeNamesItAndLeadsToTheOthers() {
        for (var other :
                java.util.List.of(
                        "checklist", "route", "measure", "observations", "photos", "judgements")) {
            var html = pupil.get(page + "/" + other).asString();
            var heading = html.substring(html.indexOf("<h1"), html.indexOf("</h1>"));
            assertThat(heading).as(other).contains(tree.label());
            assertThat(html)
                    .as(other)
                    .contains(
                            "aria-label=\"Pages of this tree\"",
                            "href=\"%s/%s\" aria-current=\"page\"".formatted(page, other),
                            "href=\"/tree.css\"")
                    .containsOnlyOnce("class=\"treenav\"");
        }
    }

    @Test
    void itWeighsLittleAndLeadsToEveryPageOfTheTree() {
        measured();
        for (var visitor : java.util.List.of(pupil, teacher)) {
            var html = visitor.get(page).asString();
            assertThat(html.getBytes(StandardCharsets.UTF_8).length).isLessThan(MOST_BYTES);
            for (var other :
                    java.util.List.of(
                            "life",
                            "techniques",
                            "checklist",
                            "route",
                            "record",
                            "measure",
                            "observations",
                            "photos",
                            "judgements",
                            "papers")) {
                assertThat(html).contains("href=\"%s/%s\"".formatted(page, other));
            }
            assertThat(html).doesNotContain("method=\"post\" action=\"/trees");
        }
    }
}
