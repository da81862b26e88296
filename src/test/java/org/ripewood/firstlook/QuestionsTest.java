package org.ripewood.firstlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.firstlook.LookTree.CLIMATES;
import static org.ripewood.firstlook.LookTree.CONTENT;

import java.time.MonthDay;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.course.JudgementCase;
import org.ripewood.pictures.AnswerPicture;
import org.ripewood.standing.TreeOnDay;

/** Which questions are asked of a tree, and that each is worth asking. */
@Tag("fast")
class QuestionsTest {

    private static final int EVERY_MONTHS = 3;

    private interface Seen {
        void tree(TreeOnDay tree);
    }

    /** Trees of every species through the year, each in another climate. */
    private static void newTrees(Map<Fact, Value> seen, Seen each) {
        int place = 0;
        for (var species : CONTENT.species().keySet()) {
            for (int month = 1; month <= 12; month += EVERY_MONTHS) {
                var climate = CLIMATES.get(place++ % CLIMATES.size());
                each.tree(
                        LookTree.on(
                                species,
                                climate,
                                MonthDay.of(month, 15),
                                seen,
                                seen.isEmpty() ? null : new JudgementCase.Stay("training", 400)));
            }
        }
    }

    @Test
    void atMostTwelveAreAskedAndEachWouldChangeSomething() {
        newTrees(
                Map.of(),
                tree -> {
                    var open = OpenQuestions.of(tree, Source.STUDENT, Walk.NEW);
                    assertThat(open).hasSizeBetween(5, LookQuestion.MOST).isSorted();
                    var trial = new Trial(tree, Source.STUDENT);
                    assertThat(open)
                            .contains(LookQuestion.CUTS)
                            .filteredOn(asked -> asked != LookQuestion.CUTS)
                            .allSatisfy(asked -> assertThat(trial.decides(asked)).isPositive());
                });
    }

    @Test
    void noQuestionIsIdle() {
        var asked = EnumSet.noneOf(LookQuestion.class);
        newTrees(Map.of(), tree -> asked.addAll(OpenQuestions.of(tree, Source.STUDENT, Walk.NEW)));
        newTrees(
                Map.of(Fact.HEIGHT_MM, Value.of(300), Fact.TRUNK_BASE_MM, Value.of(40)),
                tree -> asked.addAll(OpenQuestions.of(tree, Source.STUDENT, Walk.NEW)));
        var good = firstAnswers();
        good.remove(Fact.FRONT_MARK);
        good.put(Fact.SHOOT_EXTENSION_MM, Value.of(300));
        newTrees(good, tree -> asked.addAll(OpenQuestions.of(tree, Source.INSTRUCTOR, Walk.NEW)));
        assertThat(asked).containsExactlyInAnyOrder(LookQuestion.values());
    }

    private static Map<Fact, Value> firstAnswers() {
        var seen = new EnumMap<Fact, Value>(Fact.class);
        for (var question : LookQuestion.values()) {
            question.answers().stream().findFirst().ifPresent(answer -> seen.putAll(answer.seen()));
        }
        return seen;
    }

    @Test
    void whatWasAnsweredIsNotAskedAgain() {
        var seen = firstAnswers();
        var answered = EnumSet.allOf(LookQuestion.class);
        answered.removeIf(question -> question.answers().isEmpty());
        newTrees(
                seen,
                tree ->
                        assertThat(OpenQuestions.of(tree, Source.STUDENT, Walk.NEW))
                                .doesNotContainAnyElementsOf(answered));
    }

    @Test
    void whoKnowsNothingIsAskedEachOnceAndComesToAnEnd() {
        newTrees(
                Map.of(),
                tree -> {
                    var walk = Walk.NEW;
                    var asked = new HashSet<LookQuestion>();
                    var open = OpenQuestions.of(tree, Source.STUDENT, walk);
                    while (!open.isEmpty()) {
                        assertThat(asked.add(open.get(0))).isTrue();
                        walk = walk.without(open.get(0));
                        open = OpenQuestions.of(tree, Source.STUDENT, walk);
                    }
                    assertThat(walk.skipped()).hasSizeLessThanOrEqualTo(LookQuestion.MOST);
                    assertThat(LookVerdict.of(tree).sentence()).endsWith(".");
                });
    }

    @Test
    void leavesAreNotAskedOfABareTree() {
        var place = LookTree.climate("maritime-53n");
        var winter = LookTree.on("acer_palmatum", place, MonthDay.of(1, 15), Map.of(), null);
        var summer = LookTree.on("acer_palmatum", place, MonthDay.of(7, 15), Map.of(), null);
        var pine = LookTree.on("pinus_sylvestris", place, MonthDay.of(1, 15), Map.of(), null);
        assertThat(asked(winter)).doesNotContain(LookQuestion.LEAVES).contains(LookQuestion.TWIGS);
        assertThat(asked(summer)).contains(LookQuestion.LEAVES);
        assertThat(asked(pine)).contains(LookQuestion.LEAVES);
    }

    @Test
    void rootsAreNotAskedWhileTheBallIsFrozen() {
        var tree =
                LookTree.on(
                        "acer_palmatum",
                        LookTree.climate("cold-60n"),
                        MonthDay.of(1, 15),
                        Map.of(),
                        null);
        assertThat(asked(tree))
                .doesNotContain(
                        LookQuestion.ROOTS,
                        LookQuestion.FLARE,
                        LookQuestion.FIRM,
                        LookQuestion.WATER);
    }

    private static Set<LookQuestion> asked(TreeOnDay tree) {
        return Set.copyOf(OpenQuestions.of(tree, Source.STUDENT, Walk.NEW));
    }

    @Test
    void everyAnswerIsDrawnAndCanBeRecorded() {
        for (var question : LookQuestion.values()) {
            var codes = new HashSet<String>();
            for (var answer : question.answers()) {
                assertThat(codes.add(answer.code())).as(question + answer.code()).isTrue();
                assertThat(AnswerPicture.of(question.code(), answer.code(), answer.label()))
                        .as("%s %s", question, answer.code())
                        .isPresent();
                answer.seen()
                        .forEach(
                                (fact, value) -> {
                                    assertThat(fact.refusalOf(value)).isNull();
                                    assertThat(fact.recordable()).as(fact.code()).isTrue();
                                    assertThat(fact.instructorsWord()).as(fact.code()).isFalse();
                                });
            }
            assertThat(question.answers().isEmpty() && question.numbers().isEmpty())
                    .as("%s can be answered", question)
                    .isFalse();
        }
    }

    @Test
    void aWalkIsReadFromItsAddress() {
        var walk = Walk.of("twigs,leaves,no such", "flare,,TWIGS");
        assertThat(walk.answered())
                .containsExactlyInAnyOrder(LookQuestion.TWIGS, LookQuestion.LEAVES);
        assertThat(walk.skipped()).containsExactly(LookQuestion.FLARE);
        assertThat(walk.answeredCodes()).isEqualTo("twigs,leaves");
        assertThat(walk.with(LookQuestion.FLARE).skipped()).isEmpty();
    }
}
