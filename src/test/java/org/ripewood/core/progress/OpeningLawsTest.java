package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.core.progress.Bench.DAY;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Bench.RuleOf;
import org.ripewood.core.progress.Bench.TreeOf;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.TypicalYear;

/** Laws of openings, whatever the rules and the tree; each case can be repeated from its seed. */
@Tag("fast")
class OpeningLawsTest {

    private static final int CASES = 2_000;
    private static final List<Fact> FACTS =
            List.of(
                    Fact.LARGEST_OPENING_MM,
                    Fact.TRUNK_BASE_SHARE,
                    Fact.ROOT_SPREAD_DEG,
                    Fact.INTERIOR_BUDS);

    /** A rule of ledgers and season alone: what it waits for runs by itself. */
    private static RuleOf ledgerRule(Random random) {
        var rule = new RuleOf("any");
        rule.stress = random.nextInt(9);
        rule.quietDaysBefore = random.nextInt(400);
        rule.dose = random.nextBoolean() ? new DoseRule(DoseRule.Kind.FOLIAGE, 0.1, 0.25) : null;
        rule.season = Bench.season(List.of("91-03", "31-39", "00-99").get(random.nextInt(3)));
        return rule;
    }

    private static TreeOf workedTree(Random random, boolean south) {
        var tree = new TreeOf().saw(Fact.VIGOUR_INDEX, 75);
        tree.latitude = south ? -50 : 50;
        tree.stages = TypicalYear.of(Habit.DECIDUOUS, tree.latitude);
        for (int i = random.nextInt(4); i > 0; i--) {
            tree.works.add(
                    new Work(
                            "earlier",
                            DAY.minusDays(random.nextInt(300)),
                            random.nextInt(11),
                            random.nextInt(400),
                            random.nextInt(30) / 100.0,
                            0));
        }
        var growth = south ? SummerGrowth.SOUTH : SummerGrowth.NORTH;
        var time = random.nextBoolean() ? growth : GrowthDays.plain();
        tree.recovery = new Recovery(time, 0.5 + random.nextDouble());
        return tree;
    }

    @Test
    void aSureOpeningIsTheDayADayByDaySearchFinds() {
        int waited = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var random = new Random(seed);
            var book = Bench.rulebook(ledgerRule(random));
            var subject = workedTree(random, random.nextBoolean()).make();
            var opening = book.openings(subject, DAY).of("any").orElseThrow();
            var found =
                    DAY.datesUntil(DAY.plusYears(5))
                            .filter(day -> ready(book, subject, day))
                            .findFirst()
                            .orElseThrow();
            var told = opening.outlook().dayAt(0.5, DAY);
            assertThat(told).as("seed %d: %s", seed, opening).contains(found);
            waited += found.equals(DAY) ? 0 : 1;
        }
        assertThat(waited).as("cases that had to wait").isGreaterThan(CASES / 2);
    }

    private static boolean ready(Rulebook book, Subject subject, LocalDate day) {
        return book.standing(subject, "any", day).verdict() == Verdict.READY;
    }

    private static RuleOf criteriaRule(Random random) {
        var rule = new RuleOf("any");
        var criteria = new ArrayList<Criterion>();
        for (var fact : FACTS) {
            if (random.nextInt(3) > 0) {
                var bound = random.nextDouble() * fact.most();
                var required =
                        random.nextBoolean()
                                ? new Requirement.AtLeast(bound)
                                : new Requirement.AtMost(bound);
                criteria.add(
                        Bench.criterion(
                                fact,
                                required,
                                random.nextBoolean() ? 1 + random.nextInt(200) : null,
                                random.nextInt(3) == 0));
            }
        }
        rule.criteria = criteria;
        rule.quietDaysBefore = random.nextInt(200);
        rule.season = Bench.season(List.of("91-03", "31-39", "00-99").get(random.nextInt(3)));
        return rule;
    }

    private static TreeOf seenTree(Random random) {
        var tree = workedTree(random, false);
        for (int i = random.nextInt(9); i > 0; i--) {
            var fact = FACTS.get(random.nextInt(FACTS.size()));
            tree.saw(
                    fact,
                    Value.of(random.nextDouble() * fact.most()),
                    DAY.minusDays(random.nextInt(300)),
                    random.nextBoolean() ? Source.STUDENT : Source.INSTRUCTOR);
        }
        long seed = random.nextLong();
        tree.forecasts =
                (fact, required, from) -> forecast(new Random(seed + fact.code().hashCode()));
        return tree;
    }

    private static Outlook forecast(Random random) {
        if (random.nextInt(5) == 0) {
            return new Outlook.Unsaid("nobody knows");
        }
        var earliest = DAY.plusDays(random.nextInt(900) - 100);
        var likely = earliest.plusDays(random.nextInt(900));
        return new Outlook.Expected(
                earliest,
                likely,
                random.nextInt(4) == 0 ? null : likely.plusDays(random.nextInt(2_000)));
    }

    @Test
    void theUnknownNeverGivesADay() {
        int unknown = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var random = new Random(seed);
            var book = Bench.rulebook(criteriaRule(random));
            var openings = book.openings(seenTree(random).make(), DAY);
            var reasons = openings.standings().get(0).against();
            if (reasons.stream().anyMatch(reason -> reason.truth() == Truth.UNKNOWN)) {
                unknown++;
                assertThat(openings.of("any").orElseThrow().outlook())
                        .as("seed %d", seed)
                        .isInstanceOf(Outlook.Unsaid.class);
            }
        }
        assertThat(unknown).as("cases with something unknown").isGreaterThan(CASES / 4);
    }

    @Test
    void evidenceThatMeetsACriterionNeverMakesItLater() {
        int said = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var random = new Random(seed);
            var rule = criteriaRule(random);
            if (rule.criteria.isEmpty()) {
                continue;
            }
            var tree = seenTree(random);
            var before = Bench.opening(tree, rule).outlook();
            var criterion = rule.criteria.get(random.nextInt(rule.criteria.size()));
            tree.saw(criterion.fact(), bound(criterion), DAY, Source.INSTRUCTOR);
            var after = Bench.opening(tree, rule).outlook();
            assertNotLater(after, before, seed);
            said += before instanceof Outlook.Expected ? 1 : 0;
        }
        assertThat(said).as("cases with a day to begin with").isGreaterThan(CASES / 20);
    }

    private static void assertNotLater(Outlook after, Outlook before, long seed) {
        for (double probability : new double[] {0.1, 0.5, 0.9}) {
            var was = before.dayAt(probability, DAY);
            if (was.isPresent()) {
                assertThat(after.dayAt(probability, DAY).orElseThrow())
                        .as("seed %d at %s: %s then %s", seed, probability, before, after)
                        .isBeforeOrEqualTo(was.get());
            }
        }
    }

    private static Value bound(Criterion criterion) {
        return Value.of(
                criterion.requirement() instanceof Requirement.AtLeast least
                        ? least.bound()
                        : ((Requirement.AtMost) criterion.requirement()).bound());
    }

    /**
     * Everything half a year later south of the equator. Half a year is 182 days to the typical
     * year and six months, of 181 to 184 days, to the growing season: a few days apart are the
     * same.
     */
    @Test
    void theSouthMirrorsTheNorth() {
        for (long seed = 0; seed < 400; seed++) {
            var north = mirrored(seed, false);
            var south = mirrored(seed, true);
            assertThat(north == null).as("seed %d", seed).isEqualTo(south == null);
            if (north != null && south != null) {
                long apart = ChronoUnit.DAYS.between(north.plusMonths(6), south);
                assertThat(Math.abs(apart)).as("seed %d: %s, %s", seed, north, south).isLessThan(6);
            }
        }
    }

    private static @Nullable LocalDate mirrored(long seed, boolean south) {
        var random = new Random(seed);
        var rule = ledgerRule(random);
        var on = south ? DAY.plusMonths(6) : DAY;
        var tree = workedTree(random, south);
        if (south) {
            tree.works.replaceAll(
                    work ->
                            new Work(
                                    work.technique(),
                                    work.doneOn().plusMonths(6),
                                    work.stress(),
                                    work.recoveryDays(),
                                    work.foliageShare(),
                                    work.rootShare()));
        }
        var book = Bench.rulebook(rule);
        var opening = book.openings(tree.make(), on).of("any").orElseThrow();
        return opening.outlook().dayAt(0.5, on).orElse(null);
    }

    /** A reason nobody thought of here would throw; those of settled standings never wait. */
    @Test
    void everyReasonThatCanSpeakAgainstHasAnOutlook() {
        var settled = Set.of(Reason.OfDone.class, Reason.OfSpecies.class);
        var tables =
                List.of(
                        new Reason.OfNeed(Truth.UNKNOWN, List.of(Fact.PEST_LEVEL)),
                        new Reason.OfLoad(4, 5, 8, Truth.NO),
                        new Reason.OfQuiet(3, 9, false),
                        new Reason.OfHeavy(1),
                        new Reason.OfDose(DoseRule.Kind.ROOT, 0.3, 0.1, 0.3),
                        new Reason.OfSkill("wires", false),
                        new Reason.OfSeason(1, Bench.season("91-92"), null, null, Truth.NO),
                        new Reason.OfCriterion(
                                "pest_level.AtMost",
                                Bench.atMost(Fact.PEST_LEVEL, 1),
                                new Requirement.AtMost(1),
                                Reason.Look.MISSING,
                                null,
                                0));
        var outlooks =
                new ReasonOutlooks(
                        new EvaluationContext(
                                new TreeOf().make(), DAY, Map.of(), new CompiledTechnique[0], 0));
        var season = CompiledSeason.compile(Bench.season("91-92"), Bench.MAPLE);
        var seen = new ArrayList<Class<?>>(settled);
        // told by the predecessor's own opening instead
        seen.add(Reason.OfOrder.class);
        seen.add(Reason.OfDevelopment.class);
        for (var reason : tables) {
            assertThat(outlooks.of(reason, season)).isNotNull();
            seen.add(reason.getClass());
        }
        assertThat(seen).containsExactlyInAnyOrder(Reason.class.getPermittedSubclasses());
    }
}
