package org.ripewood.trees;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.SchoolProfile;
import org.ripewood.core.season.Habit;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Refused;

/** Where a site is, is told to those of whose reach a tree stands there. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class SiteReachTest {

    @Inject org.ripewood.School school;
    @Inject Trees trees;

    private org.ripewood.School.Group group;
    private org.ripewood.School.Group others;
    private Site garden;

    @BeforeEach
    void aTreeStandsInAGarden() {
        group = school.newGroup();
        others = school.newGroup();
        garden =
                trees.enterSite(
                        group.instructor(),
                        new NewSite("A garden", 48.0, 11.0, "Europe/Berlin", null, null));
    }

    @Test
    void itsKeeperAndWhoTeachesThemSeeIt() {
        plant();
        assertThat(trees.site(group.student(), garden.id()).site()).isEqualTo(garden);
        assertThat(trees.site(group.instructor(), garden.id()).site()).isEqualTo(garden);
        assertThat(line(group.student()).place()).isEqualTo(garden);
    }

    @Test
    void othersSeeItsNameOnly() {
        plant();
        for (var stranger : new Actor[] {others.student(), others.instructor()}) {
            assertThat(status(() -> trees.site(stranger, garden.id()))).isEqualTo(404);
            assertThat(status(() -> trees.season(stranger, garden.id(), "acer_palmatum")))
                    .isEqualTo(404);
            assertThat(status(() -> trees.season(stranger, garden.id(), Habit.DECIDUOUS, 5, null)))
                    .isEqualTo(404);
            assertThat(line(stranger)).isEqualTo(new SiteLine(garden.id(), "A garden", null));
        }
        var moved = new NewSite("Moved", 1.0, 1.0, "Europe/Berlin", null, null);
        assertThat(status(() -> trees.changeSite(others.instructor(), garden.id(), 0, moved)))
                .isEqualTo(404);
        assertThat(
                        status(
                                () ->
                                        trees.importReadings(
                                                others.instructor(),
                                                garden.id(),
                                                "date,tmin,tmax\n2024-01-01,1,2")))
                .isEqualTo(404);
    }

    @Test
    void aSiteWithoutTreesIsForInstructorsToLookAfter() {
        assertThat(trees.site(others.instructor(), garden.id()).site()).isEqualTo(garden);
        assertThat(line(others.instructor()).place()).isEqualTo(garden);
        assertThat(status(() -> trees.site(group.student(), garden.id()))).isEqualTo(404);
    }

    private void plant() {
        trees.enter(
                group.student(),
                new NewTree(
                        "Garden maple",
                        "acer_palmatum",
                        group.student().personId(),
                        garden.id(),
                        org.ripewood.School.TODAY.minusYears(1),
                        null,
                        null));
    }

    private SiteLine line(Actor actor) {
        return trees.sites(actor).stream()
                .filter(site -> site.id() == garden.id())
                .findFirst()
                .orElseThrow();
    }

    private static int status(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        return catchThrowableOfType(Refused.class, call).problem().status();
    }
}
