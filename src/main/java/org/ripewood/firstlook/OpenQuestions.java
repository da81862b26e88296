package org.ripewood.firstlook;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.boards.LooksNow;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.standing.TreeOnDay;

/**
 * The questions still to be asked of a tree: those that can be answered today, that nobody has
 * answered within the age their facts allow, and that would change how something stands; and always
 * that of open cuts.
 */
final class OpenQuestions {

    /** What is worked out from facts that no rule asks for themselves. */
    private static final Map<Fact, Fact> WORKED_OUT =
            Map.of(
                    Fact.DIEBACK_PERCENT, Fact.VIGOUR_INDEX,
                    Fact.LEAF_COLOUR_GRADE, Fact.VIGOUR_INDEX,
                    Fact.FOLIAGE_LOSS_PERCENT, Fact.VIGOUR_INDEX,
                    Fact.SHOOT_EXTENSION_MM, Fact.VIGOUR_INDEX,
                    Fact.TRUNK_BASE_MM, Fact.TRUNK_BASE_SHARE,
                    Fact.HEIGHT_MM, Fact.TRUNK_BASE_SHARE);

    /** Cuts nobody has spoken of count as none, so they are asked about on every tree. */
    private static final int ALWAYS = Integer.MAX_VALUE;

    private final TreeOnDay tree;
    private final Source eye;

    private OpenQuestions(TreeOnDay tree, Source eye) {
        this.tree = tree;
        this.eye = eye;
    }

    /**
     * In the order of asking; with those the walk came by already at most {@link
     * LookQuestion#MOST}, and then those that decide most.
     *
     * @param eye who looks
     */
    static List<LookQuestion> of(TreeOnDay tree, Source eye, Walk walk) {
        return new OpenQuestions(tree, eye).open(walk);
    }

    private List<LookQuestion> open(Walk walk) {
        var trial = new Trial(tree, eye);
        Map<LookQuestion, Integer> decides = new EnumMap<>(LookQuestion.class);
        Arrays.stream(LookQuestion.values())
                .filter(question -> !walk.passed(question) && possible(question))
                .filter(question -> !answered(question))
                .forEach(
                        question ->
                                decides.put(
                                        question,
                                        question == LookQuestion.CUTS
                                                ? ALWAYS
                                                : trial.decides(question)));
        return decides.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .limit(Math.max(0, LookQuestion.MOST - walk.length()))
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    private boolean possible(LookQuestion question) {
        return question == LookQuestion.LINE
                ? evidence(Fact.HEIGHT_MM) != null
                : question.about().stream().allMatch(fact -> LooksNow.possible(fact, tree));
    }

    private boolean answered(LookQuestion question) {
        return question == LookQuestion.CUTS
                ? isSaidOfCuts()
                : question.about().stream().allMatch(this::known);
    }

    /** Wounds in the record say it, and so does who looked for some. */
    private boolean isSaidOfCuts() {
        return !tree.state().record().wounds().isEmpty() || known(Fact.WIDEST_OPEN_CUT_MM);
    }

    private boolean known(Fact fact) {
        var evidence = evidence(fact);
        return evidence != null
                && !takenForGranted(evidence)
                && criteria(fact).allMatch(criterion -> holds(evidence, criterion));
    }

    /** A plan nobody has spoken of counts as none, and may be asked for. */
    private static boolean takenForGranted(Evidence evidence) {
        return evidence.source() == Source.DERIVED && evidence.fact().untilSaid() != null;
    }

    private boolean holds(Evidence evidence, Criterion criterion) {
        if (criterion.instructorsEye()
                && evidence.source() == Source.STUDENT
                && eye == Source.INSTRUCTOR) {
            return false;
        }
        var until = criterion.goodUntil(evidence.observedOn(), tree.state().growing());
        return criterion.onTheDay() || until == null || !tree.on().isAfter(until);
    }

    /** Of the techniques that are for its species. */
    private Stream<Criterion> criteria(Fact fact) {
        var asked = EnumSet.of(fact, WORKED_OUT.getOrDefault(fact, fact));
        return tree.content().techniques().values().stream()
                .map(technique -> technique.rule())
                .filter(rule -> rule.isFor(tree.subject().traits()))
                .flatMap(rule -> rule.criteria().stream())
                .filter(criterion -> asked.contains(criterion.fact()));
    }

    private @Nullable Evidence evidence(Fact fact) {
        return tree.subject().facts().find(fact);
    }
}
