package org.ripewood.firstlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.firstlook.LookTree.CLIMATES;
import static org.ripewood.firstlook.LookTree.CONTENT;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.LooksNow;
import org.ripewood.boards.MeasureNext;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.course.JudgementCase;
import org.ripewood.standing.TreeOnDay;

/**
 * A start for everybody: whatever tree, wherever, in whatever month, and whatever is answered, the
 * first look ends with a step that is ready, care not counted, or with a look that can be had today
 * and that changes how something stands.
 */
@Tag("fast")
class FirstLookTableTest {

    private static final List<LookQuestion> QUESTIONS = List.of(LookQuestion.values());

    /** What somebody may have answered to the questions. */
    enum Answered {
        NOTHING,
        THE_BEST,
        THE_POOREST,
        THE_SECOND,
        IN_TURN;

        private Map<Fact, Value> seen(int month) {
            var seen = new EnumMap<Fact, Value>(Fact.class);
            for (var question : LookQuestion.values()) {
                if (this != NOTHING && !question.answers().isEmpty()) {
                    seen.putAll(question.answers().get(which(question, month)).seen());
                }
            }
            if (this == THE_BEST || this == THE_POOREST) {
                seen.put(Fact.TRUNK_BASE_MM, Value.of(this == THE_BEST ? 60 : 12));
                seen.put(Fact.HEIGHT_MM, Value.of(360));
                seen.put(Fact.SHOOT_EXTENSION_MM, Value.of(this == THE_BEST ? 300 : 10));
            }
            return seen;
        }

        private int which(LookQuestion question, int month) {
            int last = question.answers().size() - 1;
            return switch (this) {
                case NOTHING, THE_BEST -> 0;
                case THE_POOREST -> last;
                case THE_SECOND -> Math.min(1, last);
                case IN_TURN -> (month + QUESTIONS.indexOf(question)) % (last + 1);
            };
        }

        private JudgementCase.@Nullable Stay container() {
            return switch (this) {
                case NOTHING -> null;
                case THE_BEST -> new JudgementCase.Stay("training", 1095);
                case THE_POOREST -> new JudgementCase.Stay("nursery", 30);
                case THE_SECOND -> new JudgementCase.Stay("show", 365);
                case IN_TURN -> new JudgementCase.Stay("ground", 1095);
            };
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyTreeHasAStart(Answered answered) {
        var without = new TreeMap<String, List<String>>();
        int trees = 0;
        for (var species : CONTENT.species().keySet()) {
            for (var climate : CLIMATES) {
                for (int month = 1; month <= 12; month++) {
                    trees++;
                    var tree =
                            LookTree.on(
                                    species,
                                    climate,
                                    MonthDay.of(month, 15),
                                    answered.seen(month),
                                    answered.container());
                    var fault = fault(tree);
                    if (!fault.isEmpty()) {
                        without.computeIfAbsent(fault, any -> new ArrayList<>())
                                .add(
                                        "%s in %s, month %d"
                                                .formatted(species, climate.code(), month));
                    }
                }
            }
        }
        assertThat(trees).isGreaterThan(36 * 12 * 12 - 1);
        assertThat(without).as("without a start, %s answered", answered).isEmpty();
    }

    /** Why a tree has no start; empty when it has one. */
    private static String fault(TreeOnDay tree) {
        var looks = MeasureNext.of(tree);
        if (looks.size() > MeasureNext.MOST) {
            return "more looks than anybody measures in one go";
        }
        for (var look : looks) {
            var fact = fact(look);
            if (!LooksNow.possible(fact, tree) || fact.instructorsWord()) {
                return "cannot be looked at today: " + fact;
            }
        }
        return !tree.free().isEmpty() || changesSomething(looks, tree)
                ? ""
                : "nothing ready, and no look decides: " + LookVerdict.of(tree).sentence();
    }

    private static Fact fact(Checklist.Measure look) {
        return Fact.find(look.factCode()).orElseThrow();
    }

    /** Had together, as a person has them; one alone may be half of a proportion. */
    private static boolean changesSomething(List<Checklist.Measure> looks, TreeOnDay tree) {
        var trial = new Trial(tree, Source.STUDENT);
        return looks.stream()
                .flatMap(look -> outcomes(fact(look)).stream())
                .anyMatch(outcome -> trial.changed(outcome) > 0);
    }

    /** The best and the poorest that a look can show, worked out as the service does it. */
    private static List<Map<Fact, Value>> outcomes(Fact fact) {
        return switch (fact) {
            case DIEBACK_PERCENT, LEAF_COLOUR_GRADE, FOLIAGE_LOSS_PERCENT, SHOOT_EXTENSION_MM ->
                    numbers(Fact.VIGOUR_INDEX, 10, 90);
            case TRUNK_BASE_MM, TRUNK_TARGET_MM -> numbers(Fact.TRUNK_BASE_SHARE, 0.1, 1);
            case HEIGHT_MM -> numbers(Fact.HEIGHT_TO_BASE, 3, 40);
            case TRUNK_DIAMETER_MM -> flags(Fact.REVERSE_TAPER);
            case WOUND_OPEN_MM -> numbers(Fact.LARGEST_OPENING_MM, 0, 60);
            case BRANCH_DIAMETER_MM, TRUNK_AT_BRANCH_MM -> numbers(Fact.GIRTH_RATIO_MAX, 0.1, 1);
            case CONTAINER_KIND ->
                    Fact.CONTAINER_KIND.words().stream()
                            .map(
                                    kind ->
                                            Map.of(
                                                    Fact.CONTAINER_KIND,
                                                    Value.of(kind),
                                                    Fact.MONTHS_IN_CONTAINER,
                                                    Value.of(1)))
                            .toList();
            default ->
                    fact.kind() == Fact.Kind.FLAG
                            ? flags(fact)
                            : numbers(fact, fact.least(), fact.most());
        };
    }

    private static List<Map<Fact, Value>> numbers(Fact fact, double one, double other) {
        return List.of(Map.of(fact, Value.of(one)), Map.of(fact, Value.of(other)));
    }

    private static List<Map<Fact, Value>> flags(Fact fact) {
        return List.of(Map.of(fact, Value.of(true)), Map.of(fact, Value.of(false)));
    }
}
