package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.EnumMap;
import java.util.List;
import java.util.TreeMap;

/** A comparison counts only between those who give the same answers. */
class ContendersAgreeTest {

    private static final Contest CONTEST = new Contest(Contest.ALL_SORTS);
    private static final Contender RULEBOOK = Contenders.RULEBOOK.make(CONTEST.rules);

    private static final List<String> OFTEN =
            List.of(
                    "season of its own NO",
                    "season of its own YES",
                    "season of its own UNKNOWN",
                    "season by the weather NO",
                    "OfDevelopment NO",
                    "handed on NO",
                    "handed on UNKNOWN",
                    "look ON_THE_DAY",
                    "look PROVISIONAL",
                    "look STALE",
                    "OfDose NO",
                    "OfQuiet NO",
                    "OfLoad UNKNOWN");

    @ParameterizedTest
    @EnumSource(names = "RULEBOOK", mode = EnumSource.Mode.EXCLUDE)
    void aContenderGivesTheVerdictsAndKeysOfTheRulebook(Contenders contender) {
        var judge = contender.make(CONTEST.rules);
        assertThat(Agreement.differences(RULEBOOK, judge, CONTEST.trees)).isEmpty();
    }

    @Test
    void whatTheRulesAskComesUpOften() {
        var rulebook = Rulebook.compile(CONTEST.rules.techniques(), CONTEST.rules.species());
        var counts = new TreeMap<String, Integer>();
        for (var tree : CONTEST.trees) {
            for (var standing : rulebook.standings(tree.subject(), tree.on())) {
                var rule = CONTEST.rules.technique(standing.technique());
                for (var reason : standing.reasons()) {
                    counts.merge(of(rule, reason), 1, Integer::sum);
                    if (reason instanceof Reason.OfCriterion criterion) {
                        counts.merge("look " + criterion.look(), 1, Integer::sum);
                    }
                }
            }
        }
        assertThat(OFTEN).as("%s", counts).allMatch(what -> counts.getOrDefault(what, 0) >= 20);
    }

    private static String of(TechniqueRule rule, Reason reason) {
        return kind(rule, reason) + " " + reason.truth();
    }

    private static String kind(TechniqueRule rule, Reason reason) {
        if (reason instanceof Reason.OfSeason season) {
            return kind(rule.season(), season.closedBecause());
        }
        return reason instanceof Reason.OfCriterion criterion
                        && rule.criteria().stream().noneMatch(criterion.criterion()::equals)
                ? "handed on"
                : reason.getClass().getSimpleName();
    }

    private static String kind(SeasonRule rule, @Nullable String why) {
        if (why != null && rule.avoid().stream().noneMatch(avoid -> avoid.why().equals(why))) {
            return "season by the weather";
        }
        return rule.clock() == null ? "season" : "season of its own";
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
