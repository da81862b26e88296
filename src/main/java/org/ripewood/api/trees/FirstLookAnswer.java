package org.ripewood.api.trees;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ripewood.boards.Checklist;
import org.ripewood.core.progress.Fact;
import org.ripewood.firstlook.FirstLook;
import org.ripewood.firstlook.HowToLook;
import org.ripewood.firstlook.LookAnswer;
import org.ripewood.firstlook.LookNumber;
import org.ripewood.firstlook.LookQuestion;
import org.ripewood.firstlook.LookVerdict;
import org.ripewood.standing.TreeOnDay;

/**
 * How far the first look at a tree has come.
 *
 * @param questions still to be asked today, in the order of asking; none when all is said
 * @param verdict what can be said of the tree by now
 * @param measureNext at most three things to measure next
 */
record FirstLookAnswer(
        long treeId,
        LocalDate on,
        List<Question> questions,
        LookVerdict verdict,
        List<Checklist.Measure> measureNext) {

    /**
     * A question.
     *
     * @param facts codes of the facts that answer it
     * @param answers to choose from; none where lengths answer it
     */
    record Question(
            String code,
            String title,
            String how,
            List<String> facts,
            List<Choice> answers,
            List<LookNumber> lengths) {}

    /**
     * An answer to choose.
     *
     * @param values fact to value as an observation takes it; empty where the record is a container
     */
    record Choice(String code, String label, Map<String, String> values) {}

    static FirstLookAnswer of(long treeId, FirstLook look) {
        return new FirstLookAnswer(
                treeId,
                look.on(),
                look.open().stream().map(asked -> question(asked, look.tree())).toList(),
                look.verdict(),
                look.measureNext());
    }

    private static Question question(LookQuestion asked, TreeOnDay tree) {
        return new Question(
                asked.code(),
                asked.title(),
                HowToLook.of(asked, tree),
                asked.about().stream().map(Fact::code).toList(),
                asked.answers().stream().map(FirstLookAnswer::choice).toList(),
                asked.numbers());
    }

    private static Choice choice(LookAnswer answer) {
        var values = new TreeMap<String, String>();
        answer.seen().forEach((fact, value) -> values.put(fact.code(), LookAnswer.text(value)));
        return new Choice(answer.code(), answer.label(), values);
    }
}
