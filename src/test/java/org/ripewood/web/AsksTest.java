package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.asks.AskKind;
import org.ripewood.asks.Asks;
import org.ripewood.asks.NewAnswer;
import org.ripewood.asks.NewAsk;
import org.ripewood.people.People;
import org.ripewood.photos.Pictures;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Tree;

/** A student asks and reports with photos; the instructor reads it at home and answers. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class AsksTest {

    private static final String PESTS = "pest_control";

    @Inject School school;
    @Inject People people;
    @Inject Asks asks;
    @Inject Assigner assigner;
    @Inject Steps steps;

    private School.Group group;
    private Visitor pupil;
    private Visitor teacher;
    private Tree tree;
    private String page;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        pupil = Visitor.of(people, group.student());
        teacher = Visitor.of(people, group.instructor());
        tree = school.tree(group.instructor(), group.student(), "acer_palmatum");
        school.see(group.instructor(), tree, "pest_level", "3");
        school.see(group.instructor(), tree, "vigour_index", "80");
        school.see(group.instructor(), tree, "soil_moist", "yes", School.TODAY);
        page = "/trees/" + tree.id() + "/asks";
    }

    @Test
    void aQuestionIsReadAtHomeAndItsAnswerToo() {
        var technique = "/trees/" + tree.id() + "/techniques/" + PESTS;
        assertThat(pupil.get(technique).asString()).contains("Ask your instructor");
        assertThat(teacher.get(technique).asString()).doesNotContain("Ask your instructor");
        var sent = pupil.send(technique, page, asked("QUESTION", "Which soap do I take?"));
        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(pupil.get(page).asString())
                .contains("Your instructor reads what you asked")
                .contains("Which soap do I take?", "Nobody has answered yet.");
        assertThat(teacher.get("/home").asString())
                .contains("Asked by your students", "Which soap do I take?", tree.label());
        var ask = asks.of(group.student(), tree.id()).get(0);
        var answered =
                teacher.send(
                        page,
                        page + "/" + ask.id() + "/answer",
                        Map.of("words", "Plain potassium soap."));
        assertThat(answered.statusCode()).isEqualTo(303);
        assertThat(pupil.get("/home").asString())
                .contains("Answers to what you asked", "Plain potassium soap.");
        assertThat(teacher.get("/home").asString()).doesNotContain("Asked by your students");
        var other =
                teacher.send(page, page + "/" + ask.id() + "/answer", Map.of("words", "Another."));
        assertThat(other.statusCode()).isEqualTo(409);
    }

    @Test
    void whoAsksForAStepIsAnsweredByItsAssignment() {
        asks.ask(group.student(), tree.id(), new NewAsk(PESTS, AskKind.STEP, null));
        asks.ask(group.student(), tree.id(), new NewAsk(PESTS, AskKind.QUESTION, "Now?"));
        var step = assigned();
        assertThat(asks.of(group.student(), tree.id()))
                .filteredOn(ask -> ask.kind() == AskKind.STEP)
                .singleElement()
                .satisfies(
                        ask -> {
                            assertThat(ask.open()).isFalse();
                            assertThat(ask.answer().stepId()).isEqualTo(step.id());
                        });
        assertThat(asks.waiting(group.instructor()))
                .as("the question still waits")
                .extracting(line -> line.ask().kind())
                .containsExactly(AskKind.QUESTION);
    }

    @Test
    void theSameCountsOnceOtherWordsWaitAndWhatIsTakenBackIsGone() {
        var wanted = new NewAsk(PESTS, AskKind.QUESTION, "Now?");
        var first = asks.ask(group.student(), tree.id(), wanted);
        assertThat(asks.ask(group.student(), tree.id(), wanted)).isEqualTo(first);
        var answer = pupil.send(page, page, asked("QUESTION", "Or in spring?"));
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.asString()).contains("Or in spring?");
        assertThat(pupil.send(page, page + "/" + first.id() + "/take-back", Map.of()).statusCode())
                .isEqualTo(303);
        assertThat(asks.waiting(group.instructor())).isEmpty();
        assertThat(asks.of(group.student(), tree.id()).get(0).takenBack()).isTrue();
        var late =
                catchThrowableOfType(
                        Refused.class,
                        () ->
                                asks.answer(
                                        group.instructor(),
                                        tree.id(),
                                        first.id(),
                                        new NewAnswer("Yes.")));
        assertThat(late.problem().status()).isEqualTo(409);
    }

    @Test
    void whatIsMissingOrUnknownIsToldAndWhatWasTypedStays() {
        var empty = pupil.send(page, page, asked("QUESTION", " "));
        assertThat(empty.statusCode()).isEqualTo(400);
        assertThat(empty.asString()).contains("Write what you want to know.");
        var form = asked("QUESTION", "What is it?");
        form.put("technique", "pest_contol");
        var unknown = pupil.send(page, page, form);
        assertThat(unknown.statusCode()).isEqualTo(400);
        assertThat(unknown.asString()).contains("Maybe", "What is it?");
        assertThat(teacher.send(page, page, asked("STEP", "x")).statusCode()).isEqualTo(403);
        var strange = Visitor.of(people, school.newGroup().instructor());
        assertThat(strange.get(page).statusCode()).isEqualTo(404);
    }

    /**
     * Instructors of other courses hear nothing of it, and a second instructor of this one does.
     */
    @Test
    void itIsForTheInstructorsOfTheCourse() {
        asks.ask(group.student(), tree.id(), new NewAsk(PESTS, AskKind.STEP, "Please."));
        var second = school.person("Sam Second", Role.INSTRUCTOR);
        school.join(group, second, Role.INSTRUCTOR);
        assertThat(asks.waiting(second)).hasSize(1);
        assertThat(asks.waiting(school.newGroup().instructor())).isEmpty();
        assertThat(asks.waiting(group.student())).isEmpty();
    }

    @Test
    void aReportComesWithItsPhotosOrNotAtAll() {
        var step = assigned();
        var at = "/steps/" + step.id();
        var form = report(step);
        var broken =
                pupil.sendFiles(
                        at,
                        at + "/report-with-photos",
                        form,
                        "photo",
                        List.of("no picture".getBytes(StandardCharsets.UTF_8)));
        assertThat(broken.statusCode()).isEqualTo(400);
        assertThat(broken.asString()).contains("2 scales on 20 shoots", "Choose them again");
        assertThat(steps.get(group.student(), step.id()).state()).isEqualTo(StepState.ASSIGNED);

        var sent =
                pupil.sendFiles(
                        at, at + "/report-with-photos", form, "photo", List.of(Pictures.jpeg()));
        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(pupil.get("/trees/" + tree.id() + "/checklist").asString())
                .contains("with a photo. Your instructor looks at it.");
        assertThat(steps.get(group.student(), step.id()).state()).isEqualTo(StepState.REPORTED);
        assertThat(teacher.get(at).asString()).contains("Photos <span class=\"count\">1</span>");
    }

    @Test
    void aReportNeedsNoPhoto() {
        var step = assigned();
        var at = "/steps/" + step.id();
        var sent =
                pupil.sendFiles(at, at + "/report-with-photos", report(step), "photo", List.of());
        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(steps.get(group.student(), step.id()).state()).isEqualTo(StepState.REPORTED);
    }

    private Step assigned() {
        return assigner.assign(
                group.instructor(), tree.id(), new NewAssignment(PESTS, null, null, null, null));
    }

    private static Map<String, Object> report(Step step) {
        return Map.of(
                "version",
                step.version(),
                "doneOn",
                School.TODAY,
                "evidence",
                "2 scales on 20 shoots");
    }

    private static Map<String, Object> asked(String kind, String words) {
        return new HashMap<>(Map.of("technique", PESTS, "kind", kind, "words", words));
    }
}
