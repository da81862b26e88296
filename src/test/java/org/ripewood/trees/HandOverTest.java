package org.ripewood.trees;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipInputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.archive.Archive;
import org.ripewood.archive.RecordForm;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photos;
import org.ripewood.photos.Pictures;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Observations;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Decisions;
import org.ripewood.standing.NewAssignment;
import org.ripewood.standing.Standings;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Steps;

/** A tree goes on with its record, and whoever kept it stays behind. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class HandOverTest {

    private static final PageRequest ALL = new PageRequest(0, 50);
    private static final String MARK = "my aunt in the hills gave it";

    @Inject School school;
    @Inject Trees trees;
    @Inject Observations observing;
    @Inject HandOvers handOvers;
    @Inject Departures departures;
    @Inject Standings standings;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject Steps steps;
    @Inject Decisions decisions;
    @Inject Archive archive;
    @Inject Photos photos;

    private School.Group group;
    private Actor next;
    private Tree tree;

    @BeforeEach
    void open() {
        group = school.newGroup();
        next = school.person("Nora Next", Role.STUDENT);
        school.join(group, next, Role.STUDENT);
        tree = school.tree(group.student(), group.student(), "acer_palmatum");
        observing.observe(
                group.student(),
                tree.id(),
                new NewObservation(
                        "pest_level",
                        "3",
                        School.TODAY.minusDays(9),
                        MARK,
                        null,
                        null,
                        null,
                        null));
        school.see(group.instructor(), tree, "vigour_index", "80");
        school.see(group.instructor(), tree, "pest_level", "3", School.TODAY);
        school.see(group.student(), tree, "soil_moist", "yes", School.TODAY);
    }

    private Tree handOver(Actor by) {
        return handOvers.handOver(
                by, tree.id(), tree.version(), new HandOver(next.personId(), School.TODAY));
    }

    @Test
    void theNewKeeperReachesItAndTheFormerDoesNot() {
        var handed = handOver(group.student());
        assertThat(handed.keeperId()).isEqualTo(next.personId());
        assertThat(handed.version()).isGreaterThan(tree.version());
        assertThat(trees.get(next, tree.id()).label()).isEqualTo(tree.label());
        assertThatThrownBy(() -> trees.get(group.student(), tree.id()))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("There is no tree");
    }

    @Test
    void aFormerKeepersNameAndWordsStayBehind() {
        handOver(group.student());
        var former = group.student().personId();
        var seen = observing.list(next, tree.id(), ALL).items();
        assertThat(seen).hasSize(4).allSatisfy(each -> assertThat(each.note()).isNull());
        assertThat(trees.names(next, tree.id(), List.of(former)))
                .containsEntry(former, "a former keeper");
        assertThat(standings.of(next, tree.id(), School.TODAY).techniques().toString())
                .doesNotContain("Stan Student");
        // Their instructor reaches both, and reads on.
        assertThat(observing.list(group.instructor(), tree.id(), ALL).items())
                .anyMatch(each -> MARK.equals(each.note()));
        assertThat(trees.names(group.instructor(), tree.id(), List.of(former)).get(former))
                .startsWith("Stan Student");
    }

    @Test
    void whatTheFormerKeeperSaidOfItStaysAndIsNotReplacedUnread() {
        say(group.student(), "dug by " + MARK, MARK);
        tree = handOver(group.student());
        assertThat(trees.get(next, tree.id()))
                .extracting(Tree::origin, Tree::note)
                .containsExactly(null, null);
        var version = tree.version();
        assertThat(say(next, null, null).version()).as("nothing is said anew").isEqualTo(version);
        assertThat(trees.get(group.instructor(), tree.id()))
                .extracting(Tree::origin, Tree::note)
                .containsExactly("dug by " + MARK, MARK);
        assertThat(trees.earlierWords(group.instructor(), tree.id())).isEmpty();
    }

    @Test
    void whatTheNewKeeperSaysCountsAndTheFormerKeepersStaysForWhoMayReadIt() {
        say(group.student(), "dug by " + MARK, MARK);
        var before = handOver(group.student());
        var said = say(next, null, "leans to the left");
        assertThat(said.version()).isGreaterThan(before.version());
        for (var reader : List.of(next, group.instructor())) {
            assertThat(trees.get(reader, tree.id()).note()).isEqualTo("leans to the left");
            assertThat(trees.list(reader, next.personId(), null, ALL).items())
                    .singleElement()
                    .extracting(Tree::note)
                    .isEqualTo("leans to the left");
        }
        assertThat(trees.get(group.instructor(), tree.id()).origin()).isEqualTo("dug by " + MARK);
        assertThat(trees.get(next, tree.id()).origin()).as("not theirs by that").isNull();
        assertThat(trees.earlierWords(next, tree.id())).isEmpty();
        assertThat(trees.earlierWords(group.instructor(), tree.id()))
                .extracting(EarlierWords::kind, EarlierWords::words, EarlierWords::byId)
                .containsExactly(tuple(EarlierWords.Kind.NOTE, MARK, group.student().personId()));
        say(group.instructor(), null, "leans to the left");
        assertThat(trees.get(group.instructor(), tree.id()).origin()).isNull();
        assertThat(trees.earlierWords(group.instructor(), tree.id()))
                .extracting(EarlierWords::words)
                .containsExactlyInAnyOrder("dug by " + MARK, MARK);
    }

    /** An instructor's words are no keeper's, and go along. */
    @Test
    void whatAnInstructorSaidOfItGoesAlong() {
        say(group.instructor(), "from the long bed", null);
        handOver(group.student());
        assertThat(trees.get(next, tree.id()).origin()).isEqualTo("from the long bed");
    }

    private Tree say(Actor by, @Nullable String origin, @Nullable String note) {
        var now = trees.get(by, tree.id());
        tree =
                trees.change(
                        by,
                        now.id(),
                        now.version(),
                        new NewTree(
                                now.label(),
                                now.species(),
                                now.keeperId(),
                                now.siteId(),
                                now.cameOn(),
                                origin,
                                note));
        return tree;
    }

    @Test
    void aStepUnderWayStaysAndItsReportsWordsDoNot() {
        var step =
                assigner.assign(
                        group.instructor(),
                        tree.id(),
                        new NewAssignment("pest_control", null, null, null, null));
        reports.report(
                group.student(),
                step.id(),
                step.version(),
                new NewReport(
                        School.TODAY,
                        "3 scales left on 20 shoots, " + MARK,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null));
        handOver(group.instructor());
        var told = steps.get(next, step.id());
        assertThat(told.state()).isEqualTo(StepState.REPORTED);
        assertThat(told.toString()).doesNotContain(MARK);
        assertThat(steps.of(next, tree.id(), ALL).toString()).doesNotContain(MARK);
        assertThat(steps.get(group.instructor(), step.id()).toString()).contains(MARK);
        var decision = step.decisionId();
        assertThat(decisions.get(group.instructor(), decision).standing().toString())
                .contains("Stan Student");
        assertThat(decisions.get(next, decision).standing().toString())
                .doesNotContain("Stan Student")
                .contains("a former keeper");
    }

    @Test
    void theFileTheNewKeeperTakesOutHasNoNames() throws IOException {
        handOver(group.student());
        try (var file = archive.tree(next, tree.id(), true, RecordForm.JSON)) {
            assertThat(new String(file.readAllBytes(), StandardCharsets.UTF_8))
                    .contains("\"named\":false")
                    .doesNotContain("Stan Student")
                    .doesNotContain(MARK);
        }
    }

    /** What is said of the tree itself goes along; the keeper before them is nobody they know. */
    @Test
    void theNewKeepersOwnRecordHasNoWordsOfTheFormer() throws IOException {
        photos.add(
                group.student(),
                tree.id(),
                new NewPhoto(School.TODAY, Viewpoint.FRONT, MARK, null, null),
                new ByteArrayInputStream(Pictures.jpeg()));
        assertThat(ownRecord(group.student())).contains(MARK);
        var handed = handOver(group.student());
        var here = ownRecord(next);
        departures.leave(
                next,
                handed.id(),
                handed.version(),
                new NewDeparture(School.TODAY, Departure.How.DIED, null));
        assertThat(List.of(here, ownRecord(next)))
                .allSatisfy(
                        record ->
                                assertThat(record)
                                        .contains("\"table\":\"photo\"", tree.label())
                                        .doesNotContain("Stan Student")
                                        .doesNotContain(MARK));
    }

    private String ownRecord(Actor actor) throws IOException {
        try (var file = archive.person(actor, actor.personId(), RecordForm.ZIP);
                var zip = new ZipInputStream(file)) {
            zip.getNextEntry();
            return new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void onlyFellowsReceiveATreeUnlessARegistrarGivesIt() {
        var stranger = school.person("Sam Stranger", Role.STUDENT);
        var to = new HandOver(stranger.personId(), School.TODAY);
        for (var by : List.of(group.student(), group.instructor())) {
            assertThatThrownBy(() -> handOvers.handOver(by, tree.id(), tree.version(), to))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("There is no person");
            assertThat(handOvers.receivers(by, tree.id()))
                    .noneMatch(person -> person.id() == stranger.personId());
        }
        assertThatThrownBy(() -> handOvers.handOver(stranger, tree.id(), tree.version(), to))
                .hasMessageContaining("There is no tree");
        var registrar = school.person("Rae Registrar", Role.REGISTRAR);
        assertThat(handOvers.handOver(registrar, tree.id(), tree.version(), to).keeperId())
                .isEqualTo(stranger.personId());
    }

    @Test
    void aTreeIsHandedOverOnceAndNotBackInTime() {
        assertThatThrownBy(
                        () ->
                                handOvers.handOver(
                                        group.student(),
                                        tree.id(),
                                        tree.version(),
                                        new HandOver(next.personId(), tree.cameOn().minusDays(1))))
                .isInstanceOf(Refused.class);
        handOver(group.instructor());
        assertThatThrownBy(() -> handOver(group.instructor()))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("was changed");
    }
}
