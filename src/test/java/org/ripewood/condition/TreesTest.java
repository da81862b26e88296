package org.ripewood.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Work;
import org.ripewood.people.Courses;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.Branch;
import org.ripewood.records.BranchRole;
import org.ripewood.records.Branches;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.Containers;
import org.ripewood.records.NewBranch;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewWound;
import org.ripewood.records.Observation;
import org.ripewood.records.Observations;
import org.ripewood.records.WorksDone;
import org.ripewood.records.Wound;
import org.ripewood.records.Wounds;
import org.ripewood.sites.NewSite;
import org.ripewood.sites.Site;
import org.ripewood.sites.SiteLine;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.School;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;

@QuarkusTest
class TreesTest {

    private static final PageRequest FIRST = new PageRequest(0, 200);

    @Inject Courses courses;
    @Inject PersonRegistration register;
    @Inject Trees trees;
    @Inject Observations observing;
    @Inject Wounds wounds;
    @Inject Branches branches;
    @Inject Containers containers;
    @Inject WorksDone worksDone;
    @Inject TreeStates treeStates;
    @Inject TreeSites treeSites;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject Today today;

    private School school;
    private LocalDate day;

    @BeforeEach
    void openSchool() {
        day = today.date();
        school = new School(register, courses, trees, treeSites, day);
    }

    @Test
    void aTreeIsReachedByKeeperTeacherAndRegistrarAlone() {
        var tree = school.tree();
        for (var actor : List.of(school.keeper, school.teacher, school.registrar)) {
            assertThat(trees.get(actor, tree.id())).isEqualTo(tree);
        }
        for (var actor : List.of(school.otherStudent, school.otherTeacher)) {
            askedFor(tree.id())
                    .forEach(
                            (asked, ask) ->
                                    assertThat(problemOf(() -> ask.accept(actor)).status())
                                            .as(asked)
                                            .isEqualTo(404));
        }
        askedFor(-5)
                .forEach(
                        (asked, ask) ->
                                assertThat(problemOf(() -> ask.accept(school.registrar)).status())
                                        .as(asked)
                                        .isEqualTo(404));
    }

    /** Every method that takes a tree's id; a student's 403 for setting facts is tested apart. */
    private Map<String, Consumer<Actor>> askedFor(long id) {
        var asked = new LinkedHashMap<String, Consumer<Actor>>();
        asked.put("get", actor -> trees.get(actor, id));
        asked.put("change", actor -> trees.change(actor, id, 0, school.newTree("Mine now")));
        asked.put("observe", actor -> observing.observe(actor, id, pests("1")));
        asked.put("observations", actor -> observing.list(actor, id, FIRST));
        asked.put("addWound", actor -> wounds.add(actor, id, wound(20)));
        asked.put("wounds", actor -> wounds.of(actor, id));
        asked.put("addBranch", actor -> branches.add(actor, id, branch()));
        asked.put("takeOffBranch", actor -> branches.takeOff(actor, id, 1, day));
        asked.put("branches", actor -> branches.of(actor, id));
        asked.put("moveTo", actor -> containers.moveTo(actor, id, container("show")));
        asked.put("containers", actor -> containers.of(actor, id));
        asked.put("recordWork", actor -> worksDone.record(actor, id, work(), "chop", null));
        asked.put("works", actor -> worksDone.of(actor, id));
        asked.put("stateOn", actor -> treeStates.on(actor, id, day));
        return asked;
    }

    @Test
    void theListHoldsWhatIsInReach() {
        var tree = school.tree();
        assertThat(labels(school.keeper, null, null)).containsExactly(tree.label());
        assertThat(labels(school.teacher, null, null)).containsExactly(tree.label());
        assertThat(labels(school.otherStudent, null, null)).isEmpty();
        assertThat(labels(school.otherTeacher, null, null)).isEmpty();
        assertThat(labels(school.teacher, null, school.courseId)).containsExactly(tree.label());
        assertThat(labels(school.teacher, school.keeper.personId(), school.courseId))
                .containsExactly(tree.label());
        assertThat(labels(school.teacher, school.otherStudent.personId(), null)).isEmpty();
        assertThat(labels(school.registrar, school.keeper.personId(), null))
                .containsExactly(tree.label());
        assertThat(labels(school.otherStudent, null, school.courseId))
                .as("a classmate's tree is not listed by way of the course")
                .isEmpty();
        assertStatus(404, () -> labels(school.otherStudent, school.keeper.personId(), null));
        assertStatus(404, () -> labels(school.otherTeacher, null, school.courseId));
    }

    @Test
    void theListComesInPages() {
        List.of("c", "a", "b").forEach(school::tree);
        var second = trees.list(school.keeper, null, null, new PageRequest(1, 2));
        assertThat(second.items()).extracting(Tree::label).containsExactly("c");
        assertThat(second.total()).isEqualTo(3);
    }

    @Test
    void aStudentEntersOnlyOwnTrees() {
        assertThat(trees.enter(school.keeper, school.newTree("Own")).keeperId())
                .isEqualTo(school.keeper.personId());
        assertStatus(404, () -> trees.enter(school.otherStudent, school.newTree("Not own")));
        assertStatus(404, () -> trees.enter(school.otherTeacher, school.newTree("Not taught")));
    }

    @Test
    void onlyWhoRunsTheSchoolEntersSites() {
        assertStatus(
                403,
                () ->
                        treeSites.enter(
                                school.keeper,
                                new NewSite("Balcony", 1.0, 1.0, "UTC", null, null, null)));
    }

    @Test
    void aSiteKeepsItsMonthlyMeans() {
        var minima = List.of(-3.0, -2.0, 0.5, 4.0, 8.0, 11.0, 13.0, 12.5, 9.0, 5.0, 1.0, -2.0);
        var maxima = minima.stream().map(minimum -> minimum + 9).toList();
        var entered =
                treeSites.enter(
                        school.teacher,
                        new NewSite(
                                "Hill yard",
                                -41.0,
                                174.5,
                                "Pacific/Auckland",
                                null,
                                minima,
                                maxima));
        var kept =
                treeSites.list(school.registrar).stream()
                        .filter(site -> site.id() == entered.id())
                        .map(SiteLine::place)
                        .findFirst();
        assertThat(kept).contains(entered);
        assertThat(entered.meanMinimaCelsius()).isEqualTo(minima);
        assertThat(entered.meanMaximaCelsius()).isEqualTo(maxima);
    }

    @Test
    void aSiteThatCannotBeIsRefused() {
        var twelve = Collections.nCopies(12, 5.0);
        assertFault("zone", "Maybe “Europe/Paris”", () -> site("Europe/Pari", null, null));
        assertFault("meanMaximaCelsius", "or neither", () -> site("UTC", twelve, null));
        assertFault(
                "meanMinimaCelsius",
                "month 1",
                () -> site("UTC", twelve, Collections.nCopies(12, 4.0)));
    }

    @Test
    void aTreeThatCannotBeIsRefused() {
        var tree = school.newTree("Odd");
        assertFault(
                "species",
                "Maybe “acer_palmatum”",
                () -> trees.enter(school.teacher, of(tree, "acer_palmatun", day)));
        assertFault(
                "cameOn",
                "found " + day.plusDays(1),
                () -> trees.enter(school.teacher, of(tree, tree.species(), day.plusDays(1))));
        assertFault(
                "cameOn",
                "1900-01-01",
                () ->
                        trees.enter(
                                school.teacher,
                                of(tree, tree.species(), LocalDate.of(1899, 12, 31))));
        assertFault(
                "siteId",
                "no site -1",
                () ->
                        trees.enter(
                                school.teacher,
                                new NewTree(
                                        "Odd",
                                        "acer_palmatum",
                                        tree.keeperId(),
                                        -1L,
                                        day,
                                        null,
                                        null)));
        assertStatus(
                404,
                () ->
                        trees.enter(
                                school.registrar,
                                new NewTree(
                                        "Odd",
                                        "acer_palmatum",
                                        -1L,
                                        tree.siteId(),
                                        day,
                                        null,
                                        null)));
    }

    @Test
    void aChangeIsRefusedWhenSomebodyWasFaster() {
        var tree = school.tree();
        var changed =
                trees.change(
                        school.keeper, tree.id(), tree.version(), school.newTree("Gate maple"));
        assertThat(changed.label()).isEqualTo("Gate maple");
        assertThat(changed.version()).isEqualTo(tree.version() + 1);
        assertStatus(
                412,
                () ->
                        trees.change(
                                school.teacher,
                                tree.id(),
                                tree.version(),
                                school.newTree("Other name")));
        assertThat(trees.get(school.keeper, tree.id())).isEqualTo(changed);
    }

    @Test
    void aChangeLeavesSpeciesKeeperAndDayAlone() {
        var tree = school.tree();
        assertFault(
                "species",
                "found acer_buergerianum",
                () ->
                        trees.change(
                                school.teacher,
                                tree.id(),
                                tree.version(),
                                of(school.newTree("x"), "acer_buergerianum", tree.cameOn())));
    }

    @Test
    void anEntrySaysWhoSawItAndWhatTheyAre() {
        var tree = school.tree();
        var byKeeper = observing.observe(school.keeper, tree.id(), pests("1"));
        var byTeacher = observing.observe(school.teacher, tree.id(), pests("2"));
        assertThat(byKeeper.source()).hasToString("STUDENT");
        assertThat(byKeeper.byId()).isEqualTo(school.keeper.personId());
        assertThat(byTeacher.source()).hasToString("INSTRUCTOR");
        assertThat(observing.observe(school.registrar, tree.id(), pests("3")).source())
                .hasToString("STUDENT");
    }

    @Test
    void aCorrectionStandsBesideWhatItCorrects() {
        var tree = school.tree();
        var wrong = observing.observe(school.keeper, tree.id(), pests("4"));
        var right = observing.observe(school.keeper, tree.id(), correcting(wrong, "1"));
        var kept = observing.list(school.keeper, tree.id(), FIRST).items();
        assertThat(kept).extracting(Observation::id).containsExactly(right.id(), wrong.id());
        assertThat(kept.get(1).supersededBy()).isEqualTo(right.id());
        assertThat(kept.get(1).value()).isEqualTo(Value.of(4.0));
        assertThat(treeStates.on(school.keeper, tree.id(), day).facts().number(Fact.PEST_LEVEL))
                .isEqualTo(1);
    }

    @Test
    void anEntryIsCorrectedOnce() {
        var tree = school.tree();
        var wrong = observing.observe(school.keeper, tree.id(), pests("4"));
        var right = observing.observe(school.keeper, tree.id(), correcting(wrong, "1"));
        var problem =
                problemOf(
                        () -> observing.observe(school.keeper, tree.id(), correcting(wrong, "2")));
        assertThat(problem.status()).isEqualTo(409);
        assertThat(problem.maybe()).contains(String.valueOf(right.id()));
        assertThat(observing.list(school.keeper, tree.id(), FIRST).total()).isEqualTo(2);
    }

    @Test
    void onlyAnInstructorCorrectsAnInstructor() {
        var tree = school.tree();
        var seen = observing.observe(school.teacher, tree.id(), pests("3"));
        assertStatus(403, () -> observing.observe(school.keeper, tree.id(), correcting(seen, "0")));
        assertThat(observing.observe(school.teacher, tree.id(), correcting(seen, "2")).value())
                .isEqualTo(Value.of(2.0));
    }

    @Test
    void vigourAsAWholeIsJudgedByInstructorsAlone() {
        var tree = school.tree();
        var judged = seen("vigour_index", "80");
        assertStatus(403, () -> observing.observe(school.keeper, tree.id(), judged));
        observing.observe(school.teacher, tree.id(), judged);
        assertThat(treeStates.on(school.keeper, tree.id(), day).facts().number(Fact.VIGOUR_INDEX))
                .isEqualTo(80);
    }

    @TestFactory
    List<DynamicTest> anEntryThatCannotBeIsRefusedAndNothingIsWritten() {
        var tree = school.tree();
        var other = school.tree("Another");
        var wound = wounds.add(school.teacher, tree.id(), wound(20)).id();
        var foreignWound = wounds.add(school.teacher, other.id(), wound(20)).id();
        var branch = branches.add(school.teacher, tree.id(), branch()).id();
        var foreignBranch = branches.add(school.teacher, other.id(), branch()).id();
        var entry = observing.observe(school.teacher, tree.id(), pests("1"));
        var foreignEntry = observing.observe(school.teacher, other.id(), pests("1"));
        var faults =
                List.of(
                        fault("vigor_index", "80", "fact", "Maybe “vigour_index”"),
                        fault("open_wounds", "1", "fact", "worked out from the record"),
                        fault("container_kind", "show", "fact", "worked out from the record"),
                        fault("pest_level", "5", "value", "0 to 4"),
                        fault("pest_level", "1,500", "value", "Maybe “1500” or “1.500”"),
                        fault("wire_on", "maybe", "value", "expected yes or no"),
                        fault("front_mark", "front", "value", "none, tentative, settled"),
                        new Faulty(on(day.plusDays(1)), "observedOn", "found " + day.plusDays(1)),
                        new Faulty(on(LocalDate.of(1899, 12, 31)), "observedOn", "1900-01-01"),
                        new Faulty(at("wound_open_mm", null, null, null), "woundId", "where"),
                        new Faulty(
                                at("wound_open_mm", foreignWound, null, null),
                                "woundId",
                                "no wound " + foreignWound),
                        new Faulty(at("pest_level", wound, null, null), "woundId", "leave it out"),
                        new Faulty(
                                new NewObservation(
                                        "wound_open_mm",
                                        "3",
                                        day.minusDays(500),
                                        null,
                                        wound,
                                        null,
                                        null,
                                        null),
                                "observedOn",
                                "was made on"),
                        new Faulty(at("branch_diameter_mm", null, null, null), "branchId", "where"),
                        new Faulty(
                                at("branch_diameter_mm", null, foreignBranch, null),
                                "branchId",
                                "no branch"),
                        new Faulty(
                                at("wound_open_mm", wound, branch, null),
                                "branchId",
                                "leave it out"),
                        new Faulty(at("trunk_diameter_mm", null, null, null), "heightMm", "where"),
                        new Faulty(
                                at("trunk_diameter_mm", null, null, 5000.5), "heightMm", "5000.5"),
                        new Faulty(
                                at("trunk_diameter_mm", null, null, Double.NaN), "heightMm", "NaN"),
                        new Faulty(
                                correcting(foreignEntry, "1"),
                                "supersedes",
                                "no entry " + foreignEntry.id()),
                        new Faulty(
                                new NewObservation(
                                        "wire_on", "yes", day, null, null, null, null, entry.id()),
                                "supersedes",
                                "is of pest_level"));
        return faults.stream()
                .map(
                        faulty ->
                                DynamicTest.dynamicTest(
                                        faulty.told(),
                                        () -> {
                                            assertFault(
                                                    faulty.field(),
                                                    faulty.told(),
                                                    () ->
                                                            observing.observe(
                                                                    school.teacher,
                                                                    tree.id(),
                                                                    faulty.seen()));
                                            assertThat(
                                                            observing
                                                                    .list(
                                                                            school.teacher,
                                                                            tree.id(),
                                                                            FIRST)
                                                                    .items())
                                                    .containsExactly(entry);
                                        }))
                .toList();
    }

    private record Faulty(NewObservation seen, String field, String told) {}

    private Faulty fault(String fact, String value, String field, String told) {
        return new Faulty(seen(fact, value), field, told);
    }

    @Test
    void aWoundMayOpenAgainAndItsFirstWidthStays() {
        var tree = school.tree();
        var made = wounds.add(school.keeper, tree.id(), wound(20));
        read(tree, made, "12", 200);
        read(tree, made, "26", 10);
        var wound = wounds.of(school.keeper, tree.id()).get(0);
        assertThat(wound.firstWidthMm()).isEqualTo(20);
        assertThat(wound.openMm()).isEqualTo(26);
        assertThat(wound.readings())
                .extracting(Observation::value)
                .containsExactly(Value.of(12.0), Value.of(26.0));
        var facts = treeStates.on(school.keeper, tree.id(), day).facts();
        assertThat(facts.number(Fact.LARGEST_OPENING_MM)).isEqualTo(26);
        assertThat(facts.find(Fact.WOUND_STALLED).value()).isEqualTo(Value.of(true));
    }

    @Test
    void theStateOfADayKnowsNothingOfLaterDays() {
        var tree = school.tree();
        var made = wounds.add(school.teacher, tree.id(), wound(20));
        read(tree, made, "12", 200);
        read(tree, made, "0", 10);
        containers.moveTo(school.teacher, tree.id(), container("training"));
        worksDone.record(school.teacher, tree.id(), work(), "chop", "behind the first branch");
        var before = treeStates.on(school.keeper, tree.id(), day.minusDays(11));
        assertThat(before.facts().number(Fact.LARGEST_OPENING_MM)).isEqualTo(12);
        assertThat(before.facts().find(Fact.CONTAINER_KIND)).isNull();
        assertThat(before.ledger().works()).isEmpty();
        var now = treeStates.on(school.keeper, tree.id(), day);
        assertThat(now.facts().number(Fact.OPEN_WOUNDS)).isZero();
        assertThat(now.facts().find(Fact.CONTAINER_KIND).value()).isEqualTo(Value.of("training"));
        assertThat(now.facts().number(Fact.DAYS_SINCE_CHOP)).isZero();
        assertThat(now.ledger().works()).containsExactly(work());
        var ahead = treeStates.on(school.keeper, tree.id(), day.plusDays(50));
        assertThat(ahead.facts().number(Fact.DAYS_SINCE_CHOP)).isEqualTo(50);
    }

    @Test
    void aDayNobodyCanTellOfIsRefused() {
        var tree = school.tree();
        for (var asked : List.of(LocalDate.MIN, LocalDate.MAX, day.plusYears(51))) {
            assertFault("on", asked + "", () -> treeStates.on(school.keeper, tree.id(), asked));
        }
    }

    @Test
    void whoSawItIsToldByName() {
        var tree = school.tree();
        observing.observe(school.keeper, tree.id(), pests("1"));
        var pests = treeStates.on(school.keeper, tree.id(), day).facts().find(Fact.PEST_LEVEL);
        assertThat(pests.by()).isEqualTo(peopleUnchecked.get(school.keeper.personId()).name());
    }

    @Test
    void theStageSomebodySawShiftsTheTypicalYear() {
        var tree = school.tree();
        var typical = treeStates.on(school.keeper, tree.id(), day).stages();
        int seen = typical.stageOn(day) == 35 ? 31 : 35;
        observing.observe(school.keeper, tree.id(), seen("growth_stage", String.valueOf(seen)));
        var shifted = treeStates.on(school.keeper, tree.id(), day).stages();
        assertThat(shifted.stageOn(day)).isEqualTo(seen);
        assertThat(shifted.stageOn(day.minusDays(1))).isEqualTo(typical.stageOn(day.minusDays(1)));
    }

    @Test
    void signedOffWorkSetsFacts() {
        var tree = school.tree();
        observing.setFacts(
                school.teacher,
                tree.id(),
                Map.of(Fact.WIRE_ON, Value.of(true), Fact.FRONT_MARK, Value.of("settled")),
                day,
                "Wiring signed off");
        var facts = treeStates.on(school.keeper, tree.id(), day).facts();
        assertThat(facts.find(Fact.WIRE_ON).value()).isEqualTo(Value.of(true));
        assertThat(facts.find(Fact.FRONT_MARK).value()).isEqualTo(Value.of("settled"));
        assertThat(facts.find(Fact.WIRE_ON).source()).hasToString("INSTRUCTOR");
    }

    @Test
    void onlySetsWhatCanBeSetAndOnlyByInstructors() {
        var tree = school.tree();
        assertStatus(
                403,
                () ->
                        observing.setFacts(
                                school.keeper,
                                tree.id(),
                                Map.of(Fact.WIRE_ON, Value.of(true)),
                                day,
                                "Mine"));
        assertStatus(
                404,
                () ->
                        observing.setFacts(
                                school.otherTeacher,
                                tree.id(),
                                Map.of(Fact.WIRE_ON, Value.of(true)),
                                day,
                                "Not mine"));
        for (var fact : List.of(Fact.OPEN_WOUNDS, Fact.WOUND_OPEN_MM)) {
            assertFault(
                    fact.code(),
                    "cannot be set",
                    () ->
                            observing.setFacts(
                                    school.teacher,
                                    tree.id(),
                                    Map.of(fact, Value.of(1.0)),
                                    day,
                                    "Wrong"));
        }
    }

    @Test
    void branchesTellTheirLatestReadings() {
        var tree = school.tree();
        var branch = branches.add(school.teacher, tree.id(), branch());
        readBranch(tree, branch, "branch_diameter_mm", "8", 30);
        readBranch(tree, branch, "branch_diameter_mm", "9", 0);
        readBranch(tree, branch, "trunk_at_branch_mm", "30", 0);
        var told = branches.of(school.keeper, tree.id()).get(0);
        assertThat(told.diameterMm()).isEqualTo(9);
        assertThat(told.trunkAtNodeMm()).isEqualTo(30);
        assertThat(
                        treeStates
                                .on(school.keeper, tree.id(), day)
                                .facts()
                                .number(Fact.GIRTH_RATIO_MAX))
                .isEqualTo(0.3);
    }

    @Test
    void aBranchTakenOffStaysInTheRecord() {
        var tree = school.tree();
        var branch = branches.add(school.teacher, tree.id(), branch());
        assertThat(primaryBranches(tree)).isEqualTo(1);
        branches.takeOff(school.teacher, tree.id(), branch.id(), day);
        assertThat(primaryBranches(tree)).isZero();
        assertThat(branches.of(school.keeper, tree.id()))
                .singleElement()
                .satisfies(told -> assertThat(told.removedOn()).isEqualTo(day));
        assertStatus(409, () -> branches.takeOff(school.teacher, tree.id(), branch.id(), day));
    }

    @Test
    void containersAndWorksAreToldLatestFirst() {
        var tree = school.tree();
        containers.moveTo(school.keeper, tree.id(), container("training"));
        containers.moveTo(
                school.keeper,
                tree.id(),
                new NewContainer("nursery", "plastic", 4.0, day.minusDays(700)));
        assertThat(containers.of(school.keeper, tree.id()))
                .extracting(ContainerStay::kind)
                .containsExactly("training", "nursery");
        var done = worksDone.record(school.teacher, tree.id(), work(), "chop", "low");
        assertThat(worksDone.of(school.keeper, tree.id())).containsExactly(done);
        assertFault(
                "clock",
                "Maybe “chop”",
                () -> worksDone.record(school.teacher, tree.id(), work(), "chopp", null));
    }

    private double primaryBranches(Tree tree) {
        return treeStates.on(school.keeper, tree.id(), day).facts().number(Fact.PRIMARY_BRANCHES);
    }

    private List<String> labels(Actor actor, Long keeperId, Long courseId) {
        return trees.list(actor, keeperId, courseId, FIRST).items().stream()
                .map(Tree::label)
                .toList();
    }

    private Site site(String zone, List<Double> minima, List<Double> maxima) {
        return treeSites.enter(
                school.teacher, new NewSite("Yard", 50.0, 8.0, zone, true, minima, maxima));
    }

    private void read(Tree tree, Wound wound, String openMm, int daysAgo) {
        observing.observe(
                school.keeper,
                tree.id(),
                new NewObservation(
                        "wound_open_mm",
                        openMm,
                        day.minusDays(daysAgo),
                        null,
                        wound.id(),
                        null,
                        null,
                        null));
    }

    private void readBranch(Tree tree, Branch branch, String fact, String mm, int daysAgo) {
        observing.observe(
                school.keeper,
                tree.id(),
                new NewObservation(
                        fact, mm, day.minusDays(daysAgo), null, null, branch.id(), null, null));
    }

    private NewObservation pests(String level) {
        return seen("pest_level", level);
    }

    private NewObservation seen(String fact, String value) {
        return new NewObservation(fact, value, day, null, null, null, null, null);
    }

    private NewObservation on(LocalDate observedOn) {
        return new NewObservation("pest_level", "1", observedOn, null, null, null, null, null);
    }

    private NewObservation at(String fact, Long woundId, Long branchId, Double heightMm) {
        return new NewObservation(fact, "3", day, null, woundId, branchId, heightMm, null);
    }

    private NewObservation correcting(Observation wrong, String value) {
        return new NewObservation(
                wrong.fact().code(),
                value,
                wrong.observedOn(),
                "misread",
                null,
                null,
                null,
                wrong.id());
    }

    private NewWound wound(double widthMm) {
        return new NewWound(
                "left, below the first branch",
                day.minusDays(400),
                widthMm,
                30.0,
                120.0,
                270.0,
                false);
    }

    private static NewBranch branch() {
        return new NewBranch("first left", BranchRole.PRIMARY, 150.0, 90.0);
    }

    private NewContainer container(String kind) {
        return new NewContainer(kind, null, null, day);
    }

    private Work work() {
        return new Work("trunk_chop", day, 8, 200, 0.5, 0);
    }

    private static NewTree of(NewTree tree, String species, LocalDate cameOn) {
        return new NewTree(
                tree.label(), species, tree.keeperId(), tree.siteId(), cameOn, null, null);
    }

    private static Problem problemOf(ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(Refused.class);
        return catchThrowableOfType(Refused.class, call).problem();
    }

    private static void assertStatus(int status, ThrowingCallable call) {
        assertThat(problemOf(call).status()).isEqualTo(status);
    }

    private static void assertFault(String field, String told, ThrowingCallable call) {
        var problem = problemOf(call);
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults())
                .singleElement()
                .satisfies(
                        fault -> {
                            assertThat(fault.field()).isEqualTo(field);
                            assertThat(fault.message()).contains(told);
                        });
    }
}
