package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.EnumMap;

/** A comparison counts only between those who give the same answers. */
class ContendersAgreeTest {

    private static final Contest CONTEST = new Contest(Contest.ALL_SORTS);
    private static final Contender RULEBOOK = Contenders.RULEBOOK.make(CONTEST.rules);

    @ParameterizedTest
    @EnumSource(names = "RULEBOOK", mode = EnumSource.Mode.EXCLUDE)
    void aContenderGivesTheVerdictsAndKeysOfTheRulebook(Contenders contender) {
        var judge = contender.make(CONTEST.rules);
        assertThat(Agreement.differences(RULEBOOK, judge, CONTEST.trees)).isEmpty();
    }

    @Test
    void everyVerdictComesUpOften() {
        var counts = new EnumMap<Verdict, Integer>(Verdict.class);
        for (var tree : CONTEST.trees) {
            for (var outcome : RULEBOOK.judge(tree.subject(), tree.on())) {
                counts.merge(outcome.verdict(), 1, Integer::sum);
            }
        }
        assertThat(counts).containsOnlyKeys(Verdict.values());
        assertThat(counts.values()).as("%s", counts).allMatch(count -> count >= 20);
    }
}
