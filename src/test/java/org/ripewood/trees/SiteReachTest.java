package org.ripewood.trees;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.SchoolProfile;
import org.ripewood.core.season.Habit;
import org.ripewood.lists.Choice;
import org.ripewood.lists.ListKind;
import org.ripewood.lists.Lists;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sites.NewSite;
import org.ripewood.sites.Site;
import org.ripewood.sites.SiteLine;

/** Where a site is, is told to those of whose reach a tree stands there. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class SiteReachTest {

    @Inject org.ripewood.School school;
    @Inject Trees trees;
    @Inject TreeSites treeSites;
    @Inject HandOvers handOvers;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject Lists lists;

    private org.ripewood.School.Group group;
    private org.ripewood.School.Group others;
    private Site garden;

    private static final NewSite MOVED =
            new NewSite("Moved", 1.0, 1.0, "Europe/Berlin", null, null, null);
    private static final String READINGS = "date,tmin,tmax\n2024-01-01,1,2";

    private static final Site NOWHERE =
            new Site(
                    987_654_321,
                    "Nowhere",
                    0,
                    0,
                    ZoneId.of("UTC"),
                    false,
                    List.of(),
                    List.of(),
                    0,
                    0);

    @BeforeEach
    void aTreeStandsInAGarden() {
        group = school.newGroup();
        others = school.newGroup();
        var name = "Garden of " + group.course().name();
        garden =
                treeSites.enter(
                        group.instructor(),
                        new NewSite(name, 48.0, 11.0, "Europe/Berlin", null, null, null));
    }

    @Test
    void itsKeeperAndWhoTeachesThemSeeIt() {
        plant();
        assertThat(treeSites.get(group.student(), garden.id()).site()).isEqualTo(garden);
        assertThat(treeSites.get(group.instructor(), garden.id()).site()).isEqualTo(garden);
        assertThat(line(group.student()).place()).isEqualTo(garden);
    }

    @Test
    void othersSeeItsNameOnly() {
        plant();
        for (var stranger : new Actor[] {others.student(), others.instructor()}) {
            assertThat(status(() -> treeSites.get(stranger, garden.id()))).isEqualTo(404);
            assertThat(status(() -> treeSites.season(stranger, garden.id(), "acer_palmatum")))
                    .isEqualTo(404);
            assertThat(
                            status(
                                    () ->
                                            treeSites.season(
                                                    stranger,
                                                    garden.id(),
                                                    Habit.DECIDUOUS,
                                                    5,
                                                    null)))
                    .isEqualTo(404);
            assertThat(line(stranger)).isEqualTo(new SiteLine(garden.id(), garden.name(), null));
        }
        assertThat(status(() -> treeSites.change(others.instructor(), garden.id(), 0, MOVED)))
                .isEqualTo(404);
        assertThat(
                        status(
                                () ->
                                        treeSites.importReadings(
                                                others.instructor(),
                                                garden.id(),
                                                "date,tmin,tmax\n2024-01-01,1,2")))
                .isEqualTo(404);
    }

    @Test
    void aSiteWithoutTreesIsForInstructorsToLookAfter() {
        assertThat(treeSites.get(others.instructor(), garden.id()).site()).isEqualTo(garden);
        assertThat(line(others.instructor()).place()).isEqualTo(garden);
        assertThat(status(() -> treeSites.get(group.student(), garden.id()))).isEqualTo(404);
    }

    /** A tree opens its site to all who reach it, so nobody plants where they may not look. */
    @Test
    void aTreeIsEnteredOnlyWhereItsSiteIsSeen() {
        plant();
        for (var stranger : new Actor[] {others.student(), others.instructor()}) {
            assertThat(fault(() -> enter(stranger, others.student(), garden)))
                    .isEqualTo(fault(() -> enter(stranger, others.student(), NOWHERE)));
            assertThat(status(() -> treeSites.get(stranger, garden.id()))).isEqualTo(404);
        }
        // a fellow of the course is a stranger in this garden as well
        var fellow = school.person("Fay Fellow", Role.STUDENT);
        school.join(group, fellow, Role.STUDENT);
        assertThat(fault(() -> enter(fellow, fellow, garden)))
                .startsWith("siteId: there is no site");
        enter(group.student(), group.student(), garden);
        enter(group.instructor(), fellow, garden);
        assertThat(treeSites.get(fellow, garden.id()).site()).isEqualTo(garden);
    }

    @Test
    void aTreeIsMovedOnlyToWhereItsSiteIsSeen() {
        plant();
        var tree = school.tree(others.student(), others.student(), "acer_palmatum");
        for (var stranger : new Actor[] {others.student(), others.instructor()}) {
            assertThat(fault(() -> move(stranger, tree, garden)))
                    .startsWith("siteId: there is no site");
        }
        assertThat(trees.get(others.student(), tree.id())).isEqualTo(tree);
        var own = school.tree(group.student(), group.student(), "acer_palmatum");
        assertThat(move(group.student(), own, garden).siteId()).isEqualTo(garden.id());
    }

    @Test
    void aListOfTreesNamesOnlySitesThatAreSeen() {
        plant();
        var keeper = peopleUnchecked.get(others.student().personId()).login();
        var list =
                "label,species,keeper,site,came_on\nMaple,acer_palmatum,%s,%s,2024-03-01\n"
                        .formatted(keeper, garden.name());
        var stranger = lists.take(others.instructor(), ListKind.TREES, list, Choice.ALL_OR_NOTHING);
        assertThat(stranger.entered()).isZero();
        assertThat(stranger.faults())
                .singleElement()
                .satisfies(
                        fault ->
                                assertThat(fault.message())
                                        .startsWith("there is no site “" + garden.name()));
        var registrar = school.person("Rae Registrar", Role.REGISTRAR);
        assertThat(lists.take(registrar, ListKind.TREES, list, Choice.ALL_OR_NOTHING).entered())
                .isEqualTo(1);
    }

    @Test
    void whoEnteredASiteSeesAndChangesItWhoeversTreesStandThere() {
        enter(group.instructor(), group.student(), garden);
        var terrace = enterSite(others.instructor(), false);
        enter(group.instructor(), group.student(), terrace);
        assertThat(treeSites.get(others.instructor(), terrace.id()).site()).isEqualTo(terrace);
        assertThat(line(others.instructor(), terrace).place()).isEqualTo(terrace);
        assertThat(treeSites.mayChange(others.instructor(), terrace.id())).isTrue();
        treeSites.change(others.instructor(), terrace.id(), 0, MOVED);
    }

    @Test
    void theSchoolsOwnGroundIsSeenByEverybodyAndTakesTheirTrees() {
        var ground = enterSite(group.instructor(), true);
        for (var anybody : new Actor[] {others.student(), others.instructor(), group.student()}) {
            assertThat(treeSites.get(anybody, ground.id()).site()).isEqualTo(ground);
            assertThat(line(anybody, ground).place()).isEqualTo(ground);
        }
        enter(others.student(), others.student(), ground);
        assertThat(status(() -> treeSites.change(others.student(), ground.id(), 0, MOVED)))
                .isEqualTo(403);
    }

    /** The season of every tree there goes by it. */
    @Test
    void aSiteIsChangedByInstructorsOfMostWhoseTreesStandThere() {
        var office = school.person("Orla Office", Role.REGISTRAR);
        var ground = enterSite(office, true);
        enter(group.student(), group.student(), ground);
        enter(others.student(), others.student(), ground);
        enter(others.student(), others.student(), ground);
        for (var half : new Actor[] {group.instructor(), others.instructor()}) {
            assertThat(treeSites.mayChange(half, ground.id())).isFalse();
            assertThat(status(() -> treeSites.change(half, ground.id(), 0, MOVED))).isEqualTo(403);
            assertThat(status(() -> treeSites.importReadings(half, ground.id(), READINGS)))
                    .isEqualTo(403);
        }
        var fellow = school.person("Fay Fellow", Role.STUDENT);
        school.join(group, fellow, Role.STUDENT);
        enter(fellow, fellow, ground);
        assertThat(status(() -> treeSites.change(others.instructor(), ground.id(), 0, MOVED)))
                .isEqualTo(403);
        assertThat(treeSites.mayChange(group.instructor(), ground.id())).isTrue();
        treeSites.importReadings(group.instructor(), ground.id(), READINGS);
        var moved = treeSites.change(group.instructor(), ground.id(), 0, MOVED);
        assertThat(moved.site().latitude()).isEqualTo(1);
        treeSites.change(office, ground.id(), moved.site().version(), MOVED);
    }

    /** Whoever gives a tree away sees its site, and gives that away with it. */
    @Test
    void whoIsGivenATreeSeesWhereItStands() {
        plant();
        var tree = enter(group.student(), group.student(), garden);
        var registrar = school.person("Rae Registrar", Role.REGISTRAR);
        assertThat(status(() -> treeSites.get(others.student(), garden.id()))).isEqualTo(404);
        handOvers.handOver(
                registrar,
                tree.id(),
                tree.version(),
                new HandOver(others.student().personId(), org.ripewood.School.TODAY));
        assertThat(treeSites.get(others.student(), garden.id()).site()).isEqualTo(garden);
        assertThat(treeSites.mayChange(others.instructor(), garden.id())).isFalse();
    }

    private void plant() {
        enter(group.instructor(), group.student(), garden);
    }

    private Tree enter(Actor by, Actor keeper, Site at) {
        return trees.enter(
                by,
                new NewTree(
                        "Garden maple",
                        "acer_palmatum",
                        keeper.personId(),
                        at.id(),
                        org.ripewood.School.TODAY.minusYears(1),
                        null,
                        null));
    }

    private Tree move(Actor by, Tree tree, Site to) {
        return trees.change(
                by,
                tree.id(),
                tree.version(),
                new NewTree(
                        tree.label(),
                        tree.species(),
                        tree.keeperId(),
                        to.id(),
                        tree.cameOn(),
                        null,
                        null));
    }

    private Site enterSite(Actor by, boolean schoolGround) {
        return treeSites.enter(
                by, new NewSite("A yard", 48.0, 11.0, "Europe/Berlin", schoolGround, null, null));
    }

    private SiteLine line(Actor actor, Site of) {
        return treeSites.list(actor).stream()
                .filter(site -> site.id() == of.id())
                .findFirst()
                .orElseThrow();
    }

    private SiteLine line(Actor actor) {
        return line(actor, garden);
    }

    /** Without the number, which is the asker's own. */
    private static String fault(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        var problem = catchThrowableOfType(Refused.class, call).problem();
        assertThat(problem.status()).isEqualTo(400);
        var fault = problem.faults().get(0);
        return (fault.field() + ": " + fault.message()).replaceFirst("-?\\d+", "#");
    }

    private static int status(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        return catchThrowableOfType(Refused.class, call).problem().status();
    }
}
