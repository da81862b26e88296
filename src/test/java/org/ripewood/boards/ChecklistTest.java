package org.ripewood.boards;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.progress.Verdict;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Elm;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.steps.Reports;

/** What a student reads of a tree, and what an instructor may give next. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class ChecklistTest {

    @Inject School school;
    @Inject Standings standings;
    @Inject Assigner assigner;
    @Inject ChecklistMaker checklistMaker;
    @Inject Reports reports;

    School.Group group;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
    }

    @Test
    void theChecklistTellsWhatIsToDoAndWhatToMeasure() {
        var tree = Elm.readyForWiring(school, group, assigner);
        var before = checklistMaker.make(group.student(), tree.id(), School.TODAY);
        assertThat(before.doNow()).isEmpty();
        assertThat(before.ready())
                .extracting(TechniqueStanding::technique)
                .contains("wiring_primary");
        assertThat(before.ready())
                .extracting(TechniqueStanding::verdict)
                .containsOnly(Verdict.READY);
        var step = assigner.assign(group.instructor(), tree.id(), Elm.wire());
        var list = checklistMaker.make(group.student(), tree.id(), School.TODAY);
        assertThat(list.doNow()).extracting(item -> item.step().id()).containsExactly(step.id());
        assertThat(list.ready())
                .extracting(TechniqueStanding::technique)
                .doesNotContain("wiring_primary");
        assertThat(list.reported()).isEmpty();
        assertThat(list.done())
                .extracting(Checklist.Done::technique)
                .containsExactlyInAnyOrder("branch_selection", "root_check");
        assertThat(list.waiting()).isNotEmpty();
        assertThat(list.waiting())
                .allSatisfy(waiting -> assertThat(waiting.against()).isNotEmpty());
        var counts =
                list.measureNext().stream().map(measure -> measure.waitingTitles().size()).toList();
        assertThat(counts).isNotEmpty().isSortedAccordingTo((one, other) -> other - one);
        assertThat(list.measureNext())
                .extracting(Checklist.Measure::factCode)
                .hasSizeLessThanOrEqualTo(MeasureNext.MOST)
                .doesNotContain("vigour_index", "soil_moist");

        reports.report(group.student(), step.id(), step.version(), Elm.wired());
        var after = checklistMaker.make(group.student(), tree.id(), School.TODAY);
        assertThat(after.doNow()).isEmpty();
        assertThat(after.reported()).hasSize(1);
        assertThat(after.waiting())
                .flatExtracting(TechniqueStanding::against)
                .filteredOn(reason -> reason.key().equals("after.wiring_primary"))
                .isNotEmpty()
                .allSatisfy(
                        reason ->
                                assertThat(reason.told())
                                        .contains("it is reported and waits")
                                        .doesNotContain("it is ready"));
        assertThat(after.care()).isNotEmpty();
    }

    @Test
    void proposalsAreTheMostUsefulFirst() {
        var tree = Elm.readyForWiring(school, group, assigner);
        // small enough to wire by, and new enough to be dressed
        school.wound(group.instructor(), tree, "left", 6, School.TODAY);
        var stages =
                standings.proposals(group.instructor(), tree.id(), School.TODAY).stream()
                        .map(TechniqueStanding::stage)
                        .map(
                                List.of("establish", "develop", "structure", "refine", "show")
                                        ::indexOf)
                        .toList();
        assertThat(stages).hasSizeGreaterThan(1).isSorted();
    }
}
