package org.ripewood.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.condition.TreeStates;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.photos.Photo;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.readiness.ReadinessAsked;
import org.ripewood.readiness.ReadinessMaker;
import org.ripewood.readiness.ReadinessSheet;
import org.ripewood.records.NewObservation;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Tree;

/** Whatever day of the year the demo school is loaded on, everything can be seen on it. */
@Tag("one-database")
@QuarkusTest
class DemoVerdictsTest {

    private static final String FIRST_WIRING = "wiring_primary";

    @Inject PeopleUnchecked peopleUnchecked;
    @Inject Steps steps;
    @Inject Standings standings;
    @Inject TreeStates treeStates;
    @Inject SchoolImport schoolImport;
    @Inject Rooms rooms;
    @Inject ReadinessMaker readiness;
    @Inject Today today;

    /** Undoes a load that has been looked at. */
    private static final class LookedAt extends RuntimeException {}

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-01-10",
                "2026-03-05",
                "2028-04-12",
                "2026-05-20",
                "2026-07-01",
                "2026-07-16",
                "2026-08-15",
                "2026-10-01",
                "2026-11-05",
                "2027-11-25"
            })
    void everythingCanBeSeenOnTheDemoSchool(LocalDate day) {
        assertThatThrownBy(
                        () ->
                                schoolImport.load(
                                        SchoolFiles.demo(),
                                        day,
                                        new SignInSheet(),
                                        () -> today.asOf(day, () -> look(day))))
                .isInstanceOf(LookedAt.class);
        assertThat(peopleUnchecked.findByLogin("ilsabet")).isEmpty();
    }

    private void look(LocalDate day) {
        var registrar = actor("ilsabet");
        var trees = demoTrees(registrar);
        assertThat(trees).hasSize(36);
        assertVerdicts(registrar, trees, day);
        assertFacts(registrar, trees, day);
        assertDates(registrar, day);
        assertSteps(registrar, trees);
        assertStory(registrar, trees, day);
        assertPhotos(registrar, trees);
        throw new LookedAt();
    }

    /** A date on a readiness sheet is the one of the technique's page and the checklist. */
    private void assertDates(Actor registrar, LocalDate day) {
        int dated = 0;
        // those of the demo alone: other tests leave hundreds of courses in the database
        for (var course : rooms.courses.as(registrar, Role.INSTRUCTOR)) {
            for (var row :
                    readiness
                            .whole(registrar, course.id(), day, ReadinessAsked.ALL)
                            .rows()
                            .items()) {
                var techniques = standings.of(registrar, row.treeId(), day).techniques();
                for (var cell : row.cells()) {
                    dated += datedAlike(row.label(), cell, techniques) ? 1 : 0;
                }
            }
        }
        assertThat(dated).isPositive();
    }

    private static boolean datedAlike(
            String tree, ReadinessSheet.Cell cell, List<TechniqueStanding> techniques) {
        var on = cell.liftsOn();
        if (on == null
                || cell.step() != null
                || String.valueOf(cell.lifts()).startsWith("Likely")) {
            return false;
        }
        var told =
                techniques.stream()
                        .filter(one -> one.technique().equals(cell.technique()))
                        .findFirst()
                        .orElseThrow();
        var opening = Objects.requireNonNull(told.opening());
        if (opening.likely() == null) {
            assertThat(cell.lifts()).as(tree).startsWith("not before ");
            return false;
        }
        assertThat(on).as("%s, %s", tree, cell.technique()).isEqualTo(opening.likely());
        return true;
    }

    /** Of two trees, and of a wound from its cut on. */
    private void assertPhotos(Actor registrar, List<Tree> trees) {
        var photos =
                trees.stream()
                        .flatMap(tree -> rooms.photos.ofTree(registrar, tree.id()).stream())
                        .toList();
        assertThat(photos.stream().map(Photo::treeId).distinct()).hasSize(2);
        assertThat(photos.stream().filter(photo -> photo.woundId() != null)).hasSize(3);
        assertThat(photos.stream().filter(photo -> photo.view() == Viewpoint.FRONT)).hasSize(4);
    }

    private List<Tree> demoTrees(Actor registrar) {
        var trees = new ArrayList<Tree>();
        for (var login :
                List.of(
                        "ilsabet", "corvan", "maruke", "wenna", "tobin", "maelis", "jory", "sefa",
                        "anrike", "bram", "liss", "dorrin", "ketta", "nerida", "pavo", "tamsel",
                        "ulla")) {
            var keeper = peopleUnchecked.findByLogin(login).orElseThrow();
            trees.addAll(
                    rooms.trees.list(registrar, keeper.id(), null, new PageRequest(0, 50)).items());
        }
        return trees;
    }

    private void assertVerdicts(Actor registrar, List<Tree> trees, LocalDate day) {
        Map<Verdict, List<String>> seen = new EnumMap<>(Verdict.class);
        for (var tree : trees) {
            for (var standing : standings.of(registrar, tree.id(), day).techniques()) {
                seen.computeIfAbsent(standing.verdict(), any -> new ArrayList<>())
                        .add(tree.label() + ": " + standing.technique());
            }
        }
        assertThat(seen.keySet()).isEqualTo(EnumSet.allOf(Verdict.class));
    }

    private void assertFacts(Actor registrar, List<Tree> trees, LocalDate day) {
        var facts =
                trees.stream()
                        .map(tree -> treeStates.on(registrar, tree.id(), day).facts())
                        .toList();
        assertSeen(facts, "a stalled wound", known -> yes(known, Fact.WOUND_STALLED));
        assertSeen(facts, "reverse taper", known -> yes(known, Fact.REVERSE_TAPER));
        assertSeen(facts, "circling roots", known -> known.number(Fact.CIRCLING_TURN) >= 0.33);
        assertSeen(facts, "a tree in recovery", known -> known.number(Fact.RECOVERY_LOAD) >= 2);
        assertSeen(facts, "fresh wounds", known -> known.number(Fact.FRESH_WOUNDS) >= 1);
    }

    private static void assertSeen(List<Facts> facts, String what, Predicate<Facts> seen) {
        assertThat(facts).as(what).anyMatch(seen);
    }

    private static boolean yes(Facts facts, Fact fact) {
        var evidence = facts.find(fact);
        return evidence != null && evidence.value().equals(Value.of(true));
    }

    private void assertSteps(Actor registrar, List<Tree> trees) {
        var all =
                trees.stream()
                        .flatMap(
                                tree ->
                                        steps
                                                .of(registrar, tree.id(), new PageRequest(0, 50))
                                                .items()
                                                .stream())
                        .toList();
        assertThat(all).extracting(Step::state).contains(StepState.values());
        assertThat(all).anyMatch(step -> !step.waivers().isEmpty());
    }

    /** The main path: a closed wound lifts the only hold on the first wiring. */
    private void assertStory(Actor registrar, List<Tree> trees, LocalDate day) {
        var tree =
                trees.stream()
                        .filter(one -> one.label().equals("Glasshouse fig"))
                        .findFirst()
                        .orElseThrow();
        assertThat(peopleUnchecked.get(tree.keeperId()).roles()).containsExactly(Role.STUDENT);
        var held = firstWiring(registrar, tree, day);
        assertThat(held.verdict()).isEqualTo(Verdict.HELD);
        assertThat(held.against())
                .extracting(ReasonView::factCode)
                .containsExactly("largest_opening_mm");
        var wound =
                rooms.wounds.of(registrar, tree.id()).stream()
                        .filter(open -> open.openMm() > 8)
                        .findFirst()
                        .orElseThrow();
        rooms.observations.observe(
                registrar,
                tree.id(),
                new NewObservation(
                        Fact.WOUND_OPEN_MM.code(), "0", day, null, wound.id(), null, null, null));
        assertThat(firstWiring(registrar, tree, day).verdict()).isEqualTo(Verdict.READY);
    }

    private org.ripewood.standing.TechniqueStanding firstWiring(
            Actor registrar, Tree tree, LocalDate day) {
        return standings.of(registrar, tree.id(), day).techniques().stream()
                .filter(standing -> standing.technique().equals(FIRST_WIRING))
                .findFirst()
                .orElseThrow();
    }

    private Actor actor(String login) {
        var person = Objects.requireNonNull(peopleUnchecked.findByLogin(login).orElse(null));
        return new Actor(person.id(), person.roles());
    }
}
