package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.course.TaughtRules;

/** The rulebook says of random trees what its rules say when they are read one by one. */
@Tag("fast")
class PlainJudgeTest {

    /** Some fifty for each species of the course content. */
    private static final int TREES = 2_000;

    @Test
    void theRulebookJudgesAsTheRulesRead() {
        var taught = TaughtRules.read();
        var rules = new Rules(taught.techniques(), taught.species());
        var rulebook = Rulebook.compile(rules.techniques(), rules.species());
        var verdicts = new EnumMap<Verdict, Integer>(Verdict.class);
        for (var tree : new RandomTrees(rules).cases(TREES)) {
            var plain = new PlainJudge(rules.techniques(), tree.subject(), tree.on());
            for (var standing : rulebook.standings(tree.subject(), tree.on())) {
                requireAlike(standing, plain.judge(rules.technique(standing.technique())), tree);
                verdicts.merge(standing.verdict(), 1, Integer::sum);
            }
        }
        assertThat(verdicts).containsOnlyKeys(Verdict.values());
        assertThat(verdicts.values()).as("%s", verdicts).allMatch(count -> count >= TREES / 10);
    }

    /** Reasons against are read first, since those of a standing that was read are kept. */
    private static void requireAlike(Standing found, Standing plain, RandomTrees.Case tree) {
        var against = found.against();
        var what = "%s, seed %d".formatted(found.technique(), tree.seed());
        assertThat(found.verdict()).as(what).isEqualTo(plain.verdict());
        assertThat(found.reasons()).as(what).isEqualTo(plain.reasons());
        assertThat(against)
                .as(what)
                .isEqualTo(
                        plain.reasons().stream()
                                .filter(reason -> reason.truth() != Truth.YES)
                                .toList());
    }
}
