package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.core.progress.Bench.DAY;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Bench.RuleOf;
import org.ripewood.core.progress.Bench.TreeOf;

/** Laws that hold whatever the rules and the tree; each case can be repeated from its seed. */
@Tag("fast")
class RulebookLawsTest {

    private static final int CASES = 3_000;
    private static final List<Fact> NUMBERS =
            List.of(
                    Fact.VIGOUR_INDEX,
                    Fact.LARGEST_OPENING_MM,
                    Fact.SMALLEST_CLOSURE_PERCENT,
                    Fact.CIRCLING_TURN,
                    Fact.PEST_LEVEL);

    private static RuleOf randomRule(Random random) {
        var rule = new RuleOf("any");
        var criteria = new ArrayList<Criterion>();
        for (var fact : NUMBERS) {
            if (random.nextInt(3) > 0) {
                var fresh = random.nextBoolean() ? 1 + random.nextInt(200) : null;
                criteria.add(
                        Bench.criterion(
                                fact, randomBound(random, fact), fresh, random.nextInt(3) == 0));
            }
        }
        rule.criteria = criteria;
        rule.stress = random.nextInt(4) == 0 ? random.nextInt(11) : 0;
        rule.skillLesson = random.nextInt(3) == 0 ? "wires" : null;
        return rule;
    }

    private static Requirement randomBound(Random random, Fact fact) {
        var bound = randomAmount(random, fact);
        return random.nextBoolean()
                ? new Requirement.AtLeast(bound)
                : new Requirement.AtMost(bound);
    }

    private static double randomAmount(Random random, Fact fact) {
        return fact.least() + random.nextDouble() * (fact.most() - fact.least());
    }

    private static TreeOf randomTree(Random random) {
        var tree = new TreeOf();
        for (int i = random.nextInt(14); i > 0; i--) {
            var fact = NUMBERS.get(random.nextInt(NUMBERS.size()));
            tree.saw(
                    fact,
                    Value.of(randomAmount(random, fact)),
                    DAY.minusDays(random.nextInt(300)),
                    random.nextBoolean() ? Source.STUDENT : Source.INSTRUCTOR);
        }
        tree.skills = random.nextBoolean() ? Set.of("wires") : Set.of();
        return tree;
    }

    @Test
    void evidenceThatMeetsACriterionNeverTurnsReadyIntoHeld() {
        int ready = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var random = new Random(seed);
            var rule = randomRule(random);
            // Load is weighed against vigour: evidence of less vigour speaks against the load too.
            rule.stress = 0;
            var tree = randomTree(random);
            if (rule.criteria.isEmpty() || Bench.judge(tree, rule).verdict() != Verdict.READY) {
                continue;
            }
            ready++;
            var criterion = rule.criteria.get(random.nextInt(rule.criteria.size()));
            tree.saw(criterion.fact(), bound(criterion), DAY, Source.INSTRUCTOR);
            assertThat(Bench.judge(tree, rule).verdict())
                    .as("seed %d", seed)
                    .isEqualTo(Verdict.READY);
        }
        assertThat(ready).as("cases that were READY to begin with").isGreaterThan(30);
    }

    private static Value bound(Criterion criterion) {
        return Value.of(
                criterion.requirement() instanceof Requirement.AtLeast least
                        ? least.bound()
                        : ((Requirement.AtMost) criterion.requirement()).bound());
    }

    @Test
    void theOrderOfEvidenceDoesNotMatter() {
        for (long seed = 0; seed < CASES; seed++) {
            var random = new Random(seed);
            var rule = randomRule(random);
            var tree = randomTree(random);
            var before = Bench.judge(tree, rule);
            Collections.shuffle(tree.evidence, random);
            var after = Bench.judge(tree, rule);
            assertThat(after.verdict()).as("seed %d", seed).isEqualTo(before.verdict());
            assertThat(after.toString()).as("seed %d", seed).isEqualTo(before.toString());
        }
    }

    @Test
    void theUnknownNeverCountsAsMet() {
        for (long seed = 0; seed < CASES; seed++) {
            var random = new Random(seed);
            var rule = randomRule(random);
            var tree = randomTree(random);
            if (rule.criteria.isEmpty()) {
                continue;
            }
            var fact = rule.criteria.get(random.nextInt(rule.criteria.size())).fact();
            tree.evidence.removeIf(evidence -> evidence.fact() == fact);
            assertThat(Bench.judge(tree, rule).verdict())
                    .as("seed %d", seed)
                    .isIn(Verdict.MEASURE, Verdict.HELD);
        }
    }

    @Test
    void howFarIsOneOnlyWhenMet() {
        for (long seed = 0; seed < CASES; seed++) {
            var random = new Random(seed);
            for (var reason : Bench.judge(randomTree(random), randomRule(random)).reasons()) {
                assertThat(reason.howFar()).as("seed %d", seed).isBetween(0.0, 1.0);
                if (reason.truth() == Truth.NO) {
                    assertThat(reason.howFar()).as("seed %d", seed).isLessThan(1);
                }
            }
        }
    }
}
