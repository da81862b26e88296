package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;
import org.ripewood.sites.NewSite;
import org.ripewood.trees.SeasonSheet;
import org.ripewood.trees.SeasonSheets;
import org.ripewood.trees.TreeSites;

/** The seasons of a species across; the weeks are common practice, no source. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class SeasonSheetPagesTest {

    @Inject School school;
    @Inject People people;
    @Inject SeasonSheets sheets;
    @Inject TreeSites sites;

    private static SeasonSheet.Row row(SeasonSheet sheet, String technique) {
        return sheet.parts().stream()
                .flatMap(part -> part.rows().stream())
                .filter(row -> row.technique().equals(technique))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSheetOfAMapleTellsItsRootWorkAndWhenItBleeds() {
        var group = school.newGroup();
        var sheet = sheets.of(group.student(), "acer_palmatum", null);
        assertThat(sheet.clocks())
                .contains(
                        new SeasonSheet.Clock("Root work", "01 to 03"),
                        new SeasonSheet.Clock("Cuts bleed", "00 to 11"));
        // the typical year has stages 01 and 03 from 16 February to 15 March
        assertThat(row(sheet, "root_pruning_repot").days()).isEqualTo("16 Feb to 15 Mar");
        assertThat(row(sheet, "root_pruning_repot").halves().subList(2, 6))
                .containsExactly("", "x", "x", "");
        assertThat(row(sheet, "wire_removal").days()).isEqualTo("all the year");
        assertThat(sheet.months()).startsWith("Jan", "Feb").hasSize(12);
        assertThat(sheet.parts().stream().flatMap(part -> part.rows().stream()))
                .as("not for a maple")
                .noneMatch(row -> row.technique().equals("candle_cutting"));
    }

    @Test
    void theSouthBeginsInJulyAndAGlasshouseHasNoWinter() {
        var group = school.newGroup();
        var south =
                sites.enter(
                        group.instructor(),
                        new NewSite("South", -43., 147., "Australia/Hobart", false, null, null));
        var sheet = sheets.of(group.instructor(), "acer_palmatum", south.id());
        assertThat(sheet.months()).startsWith("Jul", "Aug");
        assertThat(sheet.withoutWinter()).isFalse();
        var house =
                sites.enter(
                        group.instructor(),
                        new NewSite(
                                "House",
                                47.,
                                9.,
                                "Europe/Zurich",
                                false,
                                Collections.nCopies(12, 15.),
                                Collections.nCopies(12, 22.)));
        var fig = sheets.of(group.instructor(), "ficus_retusa", house.id());
        assertThat(fig.withoutWinter()).isTrue();
        assertThat(fig.wantsWinter()).as("a tropical kind").isFalse();
        var teacher = Visitor.of(people, group.instructor());
        for (var kind : List.of("ficus_retusa", "acer_palmatum")) {
            for (var print : List.of("", "/print")) {
                var path = "/content/species/" + kind + "/season" + print + "?site=" + house.id();
                var words = teacher.get(path).asString();
                assertThat(words.contains("This species needs a winter rest"))
                        .as(path)
                        .isEqualTo(kind.equals("acer_palmatum"));
            }
        }
    }

    @Test
    void whatGoesByTheFlowersIsNotToldAsNever() {
        var sheet = sheets.of(school.newGroup().student(), "bougainvillea_glabra", null);
        assertThat(row(sheet, "post_flower_pruning").days()).isEqualTo("goes by the flowers: look");
    }

    @Test
    void pageAndPaperSayTheSameToAllWhoReachTheSite() {
        var group = school.newGroup();
        var own =
                sites.enter(
                        group.instructor(),
                        new NewSite("Own", 47., 9., "Europe/Zurich", false, null, null));
        var at = "/content/species/acer_palmatum/season";
        var site = "?site=" + own.id();
        var teacher = Visitor.of(people, group.instructor());
        for (var path : List.of(at, at + site, at + "/print" + site)) {
            var page = teacher.get(path);
            assertThat(page.statusCode()).as(path).isEqualTo(200);
            assertThat(page.asString()).contains("Seasons of Japanese maple", "Root work", "Repot");
        }
        // The school's record is switched off in tests, and the page says so.
        assertThat(teacher.get(at).asString())
                .contains("Reference shoots", "In the ground, content", "switched off");
        assertThat(teacher.get("/content/species/acer_palmatum/season.pdf" + site).contentType())
                .startsWith("application/pdf");
        var stranger = Visitor.of(people, school.newGroup().student());
        for (var path : List.of(at, at + "/print", "/content/species/acer_palmatum/season.pdf")) {
            assertThat(stranger.get(path + site).statusCode()).as(path).isEqualTo(404);
        }
        assertThat(teacher.get("/content/species/acer_palmatun/season").statusCode())
                .isEqualTo(404);
        assertThat(teacher.get(at + "?site=x").statusCode()).isEqualTo(400);
    }
}
