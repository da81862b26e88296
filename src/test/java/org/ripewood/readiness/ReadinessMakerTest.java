package org.ripewood.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.standing.RefusalAssert.refusalOf;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManagerFactory;
import java.util.List;
import java.util.Set;
import org.hibernate.SessionFactory;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.boards.HomeTrees;
import org.ripewood.core.progress.Verdict;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.readiness.ReadinessAsked.Sort;
import org.ripewood.readiness.ReadinessSheet.Weight;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Elm;
import org.ripewood.trees.Tree;

/** A course's readiness sheet: which trees are held from what, by what, until when. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class ReadinessMakerTest {

    private static final PageRequest FIRST = new PageRequest(0, 50);

    @Inject School school;
    @Inject Assigner assigner;
    @Inject ReadinessMaker maker;
    @Inject HomeTrees homeTrees;
    @Inject EntityManagerFactory factory;

    @Test
    void aCellTellsTheHoldWithItsNumberAndWhenItLifts() {
        var group = school.newGroup();
        var tree = cut(group, 24);
        var cell = cell(sheet(group, ReadinessAsked.ALL), tree, "wire");
        assertThat(cell.state()).isEqualTo(Verdict.HELD);
        assertThat(cell.weight()).isEqualTo(Weight.HELD);
        assertThat(cell.technique()).isEqualTo(Elm.WIRING);
        assertThat(cell.words()).isEqualTo("wound");
        assertThat(cell.number()).isEqualTo("24 of 8\u00A0mm");
        assertThat(cell.howFar()).isBetween(0.3, 0.4);
        assertThat(cell.lifts()).matches("(about )?([A-Z][a-z]+ )?20\\d\\d( or later)?");
        assertThat(cell.liftsOn()).isAfter(School.TODAY);
        assertThat(cell.sentence()).startsWith("Largest open wound 24 mm on");
    }

    @Test
    void aReadyCellTellsWhatToDoAndOneInHandWhoHasIt() {
        var group = school.newGroup();
        var ready = Elm.readyForWiring(school, group, assigner);
        var given = Elm.readyForWiring(school, group, assigner);
        var step = assigner.assign(group.instructor(), given.id(), Elm.wire());
        var sheet = sheet(group, ReadinessAsked.ALL);
        assertThat(cell(sheet, ready, "wire").words()).isEqualTo("Wire the primary branches");
        assertThat(cell(sheet, ready, "wire").weight()).isEqualTo(Weight.READY);
        assertThat(cell(sheet, given, "wire").stepId()).isEqualTo(step.id());
    }

    @Test
    void everyTreeHasACellForEveryGroupOfWorkAndCareHasNone() {
        var group = courseOf(2);
        var sheet = sheet(group, ReadinessAsked.ALL);
        assertThat(sheet.works())
                .extracting(ReadinessSheet.Work::code)
                .containsExactly("roots", "trunk", "wounds", "branches", "wire", "refine", "show");
        assertThat(sheet.rows().items())
                .allSatisfy(row -> assertThat(row.cells()).hasSize(sheet.works().size()));
        assertThat(sheet.rows().items())
                .flatExtracting(ReadinessSheet.Row::cells)
                .extracting(ReadinessSheet.Cell::technique)
                .doesNotContain("winter_protection", "feed_up", "grow_on");
        var june = School.TODAY.plusMonths(4);
        var inGrowth = maker.whole(group.instructor(), group.course().id(), june, none());
        assertThat(inGrowth.care())
                .extracting(ReadinessSheet.Care::technique)
                .isNotEmpty()
                .isSubsetOf("feed_up", "grow_on", "watering_check", "sucker_removal");
    }

    @Test
    void filtersNarrowTheRowsAndNeverTheCounts() {
        var group = school.newGroup();
        var whole = Elm.readyForWiring(school, group, assigner);
        var cut = cut(group, 24);
        assertThat(rows(group, asked("styling", null))).containsExactly(cut.id());
        assertThat(rows(group, asked(Elm.WIRING, null))).containsExactly(cut.id());
        assertThat(rows(group, asked("wire", null))).contains(cut.id());
        assertThat(rows(group, asked(Elm.WIRING, "largest_opening_mm"))).containsExactly(cut.id());
        assertThat(rows(group, asked(Elm.WIRING, "pest_level"))).isEmpty();
        assertThat(rows(group, asked(null, "largest_opening_mm"))).containsExactly(cut.id());
        assertThat(rows(group, of(group.student().personId(), null, "ulmus_parvifolia")))
                .containsExactlyInAnyOrder(whole.id(), cut.id());
        assertThat(rows(group, of(null, null, "acer_palmatum"))).isEmpty();
        var narrowed = sheet(group, asked(Elm.WIRING, null));
        assertThat(narrowed.trees()).isEqualTo(2);
        assertThat(narrowed.styling().held()).isEqualTo(1);
        var stage = narrowed.rows().items().get(0).stage().code();
        assertThat(rows(group, of(null, stage, null))).contains(cut.id());
        assertThat(narrowed.heldFrom())
                .contains(new ReadinessSheet.Choice(Elm.WIRING, "Wire the primary branches", 1));
        assertThat(narrowed.heldBy())
                .contains(new ReadinessSheet.Choice("largest_opening_mm", "Largest open wound", 1));
    }

    /** A technique that was asked for is what its column tells of. */
    @Test
    void theTechniqueAskedForLeadsItsColumn() {
        var group = school.newGroup();
        var tree = cut(group, 24);
        var cell = cell(sheet(group, asked("wiring_secondary", null)), tree, "wire");
        assertThat(cell.technique()).isEqualTo("wiring_secondary");
    }

    @Test
    void whatNobodyCouldHaveMeantIsRefusedByName() {
        var group = courseOf(1);
        assertRefused(group, asked("wiring_primari", null), "heldFrom", "wiring_primary");
        assertRefused(group, asked("feed_up", null), "heldFrom", "");
        assertRefused(group, asked(null, "largest_openin_mm"), "reason", "largest_opening_mm");
        assertRefused(group, of(null, "structur", null), "stage", "structure");
        assertRefused(group, of(null, null, "acer_palmatu"), "species", "acer_palmatum");
        assertRefused(group, of(987654321L, null, null), "student", "");
    }

    private void assertRefused(
            School.Group group, ReadinessAsked asked, String field, String guess) {
        var problem = refusalOf(() -> sheet(group, asked));
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults())
                .singleElement()
                .satisfies(
                        fault -> {
                            assertThat(fault.field()).isEqualTo(field);
                            assertThat(fault.message()).contains("expected").contains(guess);
                        });
    }

    @Test
    void heldComeFirstAndSoonestPutsTheSoonestFreeBeforeThem() {
        var group = school.newGroup();
        var ready = Elm.readyForWiring(school, group, assigner);
        var late = cut(group, 40);
        var soon = cut(group, 10);
        assertThat(rows(group, ReadinessAsked.ALL)).last().isEqualTo(ready.id());
        var sorted =
                sheet(group, new ReadinessAsked(null, null, false, null, null, null, Sort.SOONEST))
                        .rows()
                        .items();
        assertThat(sorted)
                .extracting(ReadinessSheet.Row::treeId)
                .containsExactly(soon.id(), late.id(), ready.id());
        assertThat(sorted.get(0).freeOn()).isBefore(sorted.get(1).freeOn());
        assertThat(sorted.get(2).freeOn()).isNull();
    }

    @Test
    void aFirstPageCountsAsTheSheetDoes() {
        var group = school.newGroup();
        Elm.readyForWiring(school, group, assigner);
        cut(group, 10);
        cut(group, 40);
        var styling = sheet(group, ReadinessAsked.ALL).styling();
        assertThat(styling.held()).isEqualTo(2);
        // 20 February is winter north of the tropics; the season after the coming one is summer
        assertThat(styling.season()).isEqualTo("summer 2026");
        var course = group.course().id();
        var seen = homeTrees.of(group.instructor(), List.of(course));
        assertThat(seen.styling()).containsEntry(course, styling);
        var free =
                sheet(
                        group,
                        new ReadinessAsked("styling", null, true, null, null, null, Sort.HELD));
        assertThat(free.rows().total()).isEqualTo(styling.free());
        assertThat(free.rows().items())
                .allSatisfy(row -> assertThat(row.freeOn()).isBeforeOrEqualTo(styling.by()));
    }

    @Test
    void theSheetAsksAsOftenForTwoHundredTreesAsForTen() {
        var few = courseOf(10);
        var many = courseOf(200);
        // what the school's closed wounds teach is read once an hour, by whoever asks first
        sheet(few, ReadinessAsked.ALL);
        var forFew = queries(() -> sheet(few, ReadinessAsked.ALL));
        var forMany = queries(() -> sheet(many, ReadinessAsked.ALL));
        assertThat(forMany).isEqualTo(forFew).isPositive();
        assertThat(sheet(many, ReadinessAsked.ALL).rows().total()).isEqualTo(200);
        assertThat(maker.whole(many.instructor(), many.course().id(), School.TODAY, none()).rows())
                .satisfies(rows -> assertThat(rows.items()).hasSize(200));
    }

    @Test
    void theSheetIsForThoseWhoRunTheCourse() {
        var group = courseOf(1);
        var registrar = new Actor(0, Set.of(Role.REGISTRAR));
        assertThat(sheet(registrar, group).trees()).isEqualTo(1);
        assertThat(refusalOf(() -> sheet(group.student(), group)).status()).isEqualTo(403);
        var stranger = school.newGroup().instructor();
        assertThat(refusalOf(() -> sheet(stranger, group)).status()).isEqualTo(404);
    }

    @Test
    void anEmptyCourseHasAnEmptySheet() {
        var sheet = sheet(school.newGroup(), ReadinessAsked.ALL);
        assertThat(sheet.rows().items()).isEmpty();
        assertThat(sheet.styling().held()).isZero();
        assertThat(sheet.styling().freeWords()).isEmpty();
        assertThat(sheet.works()).hasSize(7);
    }

    private School.Group courseOf(int trees) {
        var group = school.newGroup();
        for (int i = 0; i < trees; i++) {
            var tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
            school.see(group.instructor(), tree, "vigour_index", "70");
            school.wound(group.instructor(), tree, "first branch", 24);
        }
        return group;
    }

    private Tree cut(School.Group group, double openMm) {
        var tree = Elm.readyForWiring(school, group, assigner);
        school.wound(group.instructor(), tree, "first branch", openMm);
        return tree;
    }

    private static ReadinessAsked none() {
        return ReadinessAsked.ALL;
    }

    private static ReadinessAsked asked(String heldFrom, String reason) {
        return new ReadinessAsked(heldFrom, reason, false, null, null, null, Sort.HELD);
    }

    private static ReadinessAsked of(Long student, String stage, String species) {
        return new ReadinessAsked(null, null, false, student, stage, species, Sort.HELD);
    }

    private static ReadinessSheet.Cell cell(ReadinessSheet sheet, Tree tree, String work) {
        return sheet.rows().items().stream()
                .filter(row -> row.treeId() == tree.id())
                .flatMap(row -> row.cells().stream())
                .filter(cell -> cell.work().equals(work))
                .findFirst()
                .orElseThrow();
    }

    private List<Long> rows(School.Group group, ReadinessAsked asked) {
        return sheet(group, asked).rows().items().stream().map(ReadinessSheet.Row::treeId).toList();
    }

    private ReadinessSheet sheet(School.Group group, ReadinessAsked asked) {
        return maker.make(group.instructor(), group.course().id(), School.TODAY, asked, FIRST);
    }

    private ReadinessSheet sheet(Actor actor, School.Group group) {
        return maker.make(actor, group.course().id(), School.TODAY, none(), FIRST);
    }

    private long queries(Runnable work) {
        var statistics = factory.unwrap(SessionFactory.class).getStatistics();
        statistics.clear();
        work.run();
        return statistics.getPrepareStatementCount();
    }
}
