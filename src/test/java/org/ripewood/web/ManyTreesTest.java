package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.Statements;
import org.ripewood.people.People;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.Observations;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Elm;
import org.ripewood.standing.NewAssignments;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Tree;

/** A step, a fact, a sign-off and cards for many trees of a course, from one page. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class ManyTreesTest {

    private static final PageRequest FIRST = new PageRequest(0, 50);
    private static final String PESTS = "pest_control";

    @Inject @PersistenceUnitExtension Statements statements;
    @Inject School school;
    @Inject People people;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject Steps steps;
    @Inject Observations observations;

    private School.Group group;
    private Visitor teacher;
    private String course;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        teacher = Visitor.of(people, group.instructor());
        course = "/courses/" + group.course().id();
    }

    @Test
    void thePreviewTellsReadyHeldAndNotNeededTreeByTree() {
        var ready = infested();
        var clean = tree();
        school.see(group.instructor(), clean, "pest_level", "0");
        var page = teacher.get(act("ASSIGN", "technique", PESTS, List.of(ready, clean))).asString();
        assertThat(page)
                .contains("2 of 2 trees chosen.")
                .contains("<b class=\"nums\">1</b> ready")
                .contains("name=\"tree\" value=\"" + ready.id() + "\" checked");
        assertThat(page.split("name=\"tree\" value=\"" + clean.id() + "\"", -1))
                .as("not to be chosen for the step, only in the choice of trees")
                .hasSize(2);
    }

    @Test
    void aStepIsAssignedToAllTickedTreesAndSentAgainCountsOnce() {
        var trees = List.of(infested(), infested(), infested());
        var form = assignment(trees);
        var sent = teacher.send(act(), course + "/trees/steps", form);
        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(teacher.get(course).asString()).contains("Assigned “", "to 3 trees.");
        assertThat(teacher.send(act(), course + "/trees/steps", form).statusCode()).isEqualTo(303);
        for (var tree : trees) {
            assertThat(stepsOf(tree))
                    .singleElement()
                    .satisfies(
                            step -> {
                                assertThat(step.state()).isEqualTo(StepState.ASSIGNED);
                                assertThat(step.note()).isEqualTo("Before Sunday.");
                                assertThat(step.decisionId()).isNotNull();
                            });
        }
    }

    @Test
    void oneThatCannotBeGivenTheStepKeepsAllFromItAndIsNamed() {
        var ready = infested();
        var given = infested();
        assignedTo(given);
        var answer =
                teacher.send(act(), course + "/trees/steps", assignment(List.of(ready, given)));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString())
                .contains(given.label() + ": Step")
                .contains("still open on this tree")
                .contains("Before Sunday.")
                .contains("name=\"tree\" value=\"" + ready.id() + "\" checked");
        assertThat(stepsOf(ready)).isEmpty();
        assertThat(stepsOf(given)).hasSize(1);
    }

    @Test
    void aWaiverIsAskedForWhereItIsNeededAndOnlyThere() {
        var ready = Elm.readyForWiring(school, group, assigner);
        var held = Elm.readyForWiring(school, group, assigner);
        school.wound(group.instructor(), held, "first branch", 24);
        var page =
                teacher.get(act("ASSIGN", "technique", Elm.WIRING, List.of(ready, held)))
                        .asString();
        var waiver = "waivers." + held.id() + ".largest_opening_mm.AtMost";
        assertThat(page)
                .contains("name=\"" + waiver + "\"")
                .doesNotContain("name=\"waivers." + ready.id() + ".")
                .contains("name=\"tree\" value=\"" + ready.id() + "\" checked");
        var form = assignment(List.of(ready, held));
        form.put("technique", Elm.WIRING);
        var missing = teacher.send(act(), course + "/trees/steps", form);
        assertThat(missing.statusCode()).isEqualTo(400);
        assertThat(missing.asString()).contains("Needs a reason to be let pass", held.label());
        form.put("once", UUID.randomUUID().toString());
        form.put(waiver, "It lies at the back.");
        assertThat(teacher.send(act(), course + "/trees/steps", form).statusCode()).isEqualTo(303);
        assertThat(stepsOf(held))
                .filteredOn(step -> step.technique().equals(Elm.WIRING))
                .singleElement()
                .satisfies(
                        step ->
                                assertThat(step.waivers())
                                        .extracting(Step.Waiver::why)
                                        .containsExactly("It lies at the back."));
        assertThat(stepsOf(ready).get(0).waivers()).isEmpty();
    }

    @Test
    void treesOfOthersAndTreesNamedTwiceAreRefusedAtTheirPlace() {
        var own = infested();
        var other = school.newGroup();
        var strange = school.tree(other.instructor(), other.student(), "acer_palmatum");
        var wanted =
                new NewAssignments(
                        PESTS,
                        null,
                        null,
                        null,
                        List.of(
                                new NewAssignments.OfTree(own.id(), null),
                                new NewAssignments.OfTree(strange.id(), null),
                                new NewAssignments.OfTree(own.id(), Map.of())));
        var refused =
                catchThrowableOfType(
                        Refused.class,
                        () -> assigner.assignAll(group.instructor(), group.course().id(), wanted));
        assertThat(refused.problem().faults())
                .extracting(Fault::field)
                .containsExactly("trees[1].treeId", "trees[2].treeId");
        assertThat(teacher.get(course + "/trees/act?tree=" + strange.id()).statusCode())
                .isEqualTo(400);
        assertThat(Visitor.of(people, other.instructor()).get(course + "/trees/act").statusCode())
                .isEqualTo(404);
    }

    @Test
    void aFactIsRecordedForManyTreesOrForNone() {
        var trees = List.of(tree(), tree());
        var form = fact("soil_moist", "yes", trees);
        assertThat(teacher.send(act(), course + "/trees/facts", form).statusCode()).isEqualTo(303);
        assertThat(teacher.get(course).asString()).contains("for 2 trees.");
        assertThat(teacher.send(act(), course + "/trees/facts", form).statusCode()).isEqualTo(303);
        for (var tree : trees) {
            assertThat(observations.list(group.instructor(), tree.id(), FIRST).items()).hasSize(1);
        }
        var wrong = fact("soil_moist", "perhaps", trees);
        assertThat(teacher.send(act(), course + "/trees/facts", wrong).statusCode()).isEqualTo(400);
        var none = fact("soil_moist", "yes", List.of());
        var answer = teacher.send(act(), course + "/trees/facts", none);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString()).contains("Choose at least one tree.");
    }

    @Test
    void anOddValueIsAskedAboutAtItsTreeBeforeAnythingIsKept() {
        var grown = tree();
        var small = tree();
        school.see(group.instructor(), grown, "height_mm", "300", School.TODAY.minusDays(30));
        school.see(group.instructor(), small, "height_mm", "30", School.TODAY.minusDays(30));
        var form = fact("height_mm", "310", List.of(grown, small));
        var asked = teacher.send(act(), course + "/trees/facts", form);
        assertThat(asked.statusCode()).isEqualTo(409);
        var page = asked.asString();
        assertThat(page).contains("I looked once more, it is so").contains(small.label() + ":");
        assertThat(observations.list(group.instructor(), grown.id(), FIRST).items()).hasSize(1);
        var key = page.split("name=\"confirmed\" value=\"", -1)[1].split("\"", -1)[0];
        assertThat(key).startsWith(small.id() + "/");
        form.put("confirmed", key);
        form.put("once", UUID.randomUUID().toString());
        assertThat(teacher.send(act(), course + "/trees/facts", form).statusCode()).isEqualTo(303);
        assertThat(observations.list(group.instructor(), small.id(), FIRST).items()).hasSize(2);
    }

    @Test
    void reportsAreSignedOffTogetherOrNotAtAll() {
        var first = reported(infested());
        var second = reported(infested());
        var at = course + "/trees/act?act=SIGN_OFF";
        var page = teacher.get(at).asString();
        assertThat(page)
                .contains("2 scales on 20 shoots")
                .contains("value=\"%d@%d\"".formatted(first.id(), first.version()))
                .doesNotContain("@%d\" checked".formatted(first.version()));
        var stale = signOff(first.id() + "@" + first.version(), second.id() + "@0");
        var answer = teacher.send(at, course + "/trees/sign-offs", stale);
        assertThat(answer.statusCode()).isEqualTo(412);
        assertThat(answer.asString()).contains("No step was signed off.");
        assertThat(state(first)).isEqualTo(StepState.REPORTED);
        var both =
                signOff(first.id() + "@" + first.version(), second.id() + "@" + second.version());
        assertThat(teacher.send(at, course + "/trees/sign-offs", both).statusCode()).isEqualTo(303);
        assertThat(state(first)).isEqualTo(StepState.SIGNED_OFF);
        assertThat(state(second)).isEqualTo(StepState.SIGNED_OFF);
        for (var wrong : List.of("x", "1@", "999999999@1", "1@99999999999999999999")) {
            assertThat(teacher.send(at, course + "/trees/sign-offs", signOff(wrong)).statusCode())
                    .as(wrong)
                    .isEqualTo(400);
        }
    }

    @Test
    void cardsArePrintedOfTheChosenTreesOnly() {
        var chosen = tree();
        var other = tree();
        assertThat(teacher.get(act("CARDS", "fact", "", List.of(chosen))).asString())
                .contains(course + "/cards?tree=" + chosen.id());
        assertThat(teacher.get(course + "/cards?tree=" + chosen.id()).asString())
                .contains(chosen.label())
                .contains("cards.pdf?tree=" + chosen.id())
                .doesNotContain(other.label() + "<");
    }

    @Test
    void thePageAsksAsMuchForTwentyTreesAsForOne() {
        infested();
        var pages =
                List.of(
                        course + "/trees/act",
                        course + "/trees/act?act=ASSIGN&technique=" + PESTS,
                        course + "/trees/act?act=RECORD&fact=soil_moist",
                        course + "/trees/act?act=SIGN_OFF");
        var few = pages.stream().map(this::sent).toList();
        for (int i = 0; i < 19; i++) {
            infested();
        }
        assertThat(pages.stream().map(this::sent).toList()).isEqualTo(few);
    }

    private int sent(String path) {
        teacher.get(path);
        return statements
                .of(() -> assertThat(teacher.get(path).statusCode()).as(path).isEqualTo(200))
                .size();
    }

    private Tree tree() {
        return school.tree(group.instructor(), group.student(), "acer_palmatum");
    }

    private Tree infested() {
        var tree = tree();
        school.see(group.instructor(), tree, "pest_level", "3");
        school.see(group.instructor(), tree, "vigour_index", "80");
        school.see(group.instructor(), tree, "soil_moist", "yes", School.TODAY);
        return tree;
    }

    private Step assignedTo(Tree tree) {
        var wanted =
                new NewAssignments(
                        PESTS,
                        null,
                        null,
                        null,
                        List.of(new NewAssignments.OfTree(tree.id(), null)));
        return assigner.assignAll(group.instructor(), group.course().id(), wanted).get(0);
    }

    private Step reported(Tree tree) {
        var step = assignedTo(tree);
        return reports.report(
                group.student(),
                step.id(),
                step.version(),
                new NewReport(
                        School.TODAY,
                        "2 scales on 20 shoots",
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null));
    }

    private StepState state(Step step) {
        return steps.get(group.instructor(), step.id()).state();
    }

    private List<Step> stepsOf(Tree tree) {
        return steps.of(group.instructor(), tree.id(), FIRST).items();
    }

    private String act() {
        return course + "/trees/act";
    }

    private String act(String act, String field, String code, List<Tree> trees) {
        var address = new StringBuilder(act() + "?act=" + act + "&" + field + "=" + code);
        trees.forEach(tree -> address.append("&tree=").append(tree.id()));
        return address.toString();
    }

    private static Map<String, Object> assignment(List<Tree> trees) {
        return new HashMap<>(
                Map.of(
                        "once",
                        UUID.randomUUID().toString(),
                        "technique",
                        PESTS,
                        "note",
                        "Before Sunday.",
                        "tree",
                        ids(trees),
                        "shown",
                        ids(trees)));
    }

    private static Map<String, Object> fact(String fact, String value, List<Tree> trees) {
        var form =
                new HashMap<String, Object>(
                        Map.of(
                                "once",
                                UUID.randomUUID().toString(),
                                "fact",
                                fact,
                                "value",
                                value,
                                "observedOn",
                                School.TODAY.toString()));
        if (!trees.isEmpty()) {
            form.put("tree", ids(trees));
            form.put("shown", ids(trees));
        }
        return form;
    }

    private static Map<String, Object> signOff(String... steps) {
        return Map.of("step", List.of(steps), "note", "Well done.");
    }

    private static List<Long> ids(List<Tree> trees) {
        return new ArrayList<>(trees.stream().map(Tree::id).toList());
    }
}
