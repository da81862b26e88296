package org.ripewood.routes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.route.Route;
import org.ripewood.core.season.Outlook;

/** Laws of routes on random trees of all species by the content in the jar. */
@Tag("fast")
class RandomTreesTest {

    private static final int CASES = 120;
    private static final int DRAWS = 60;
    private static final int SHOW = 5;
    private static final Outlook NOTHING_SAID = new Outlook.Unsaid("It is done or not needed.");
    private static final List<String> SPECIES = List.copyOf(TypicalTree.CONTENT.species().keySet());

    private static TypicalTree tree(long seed, double vigour, double baseShare) {
        var random = new SplittableRandom(seed);
        var tree =
                new TypicalTree(SPECIES.get(random.nextInt(SPECIES.size())), 52)
                        .is(Fact.VIGOUR_INDEX, vigour)
                        .base(60 * baseShare, 60)
                        .branching(random.nextBoolean(), 1 + random.nextInt(3))
                        .is(Fact.REVERSE_TAPER, random.nextInt(3) == 0)
                        .is(Fact.HEIGHT_TO_BASE, random.nextBoolean() ? 6 : 12)
                        .is(Fact.LEADER_SHARE, random.nextBoolean() ? 0.8 : 0.3)
                        .is(Fact.SURPLUS_BRANCH, random.nextInt(3) == 0)
                        .is(Fact.SUBSTRATE_DRAINS, random.nextInt(4) > 0)
                        .is(Fact.CIRCLING_TURN, random.nextInt(3) == 0 ? 0.5 : 0.1)
                        .is(Fact.ROOT_FLARE_EXPOSED, random.nextInt(3) > 0)
                        .is(Fact.PRIMARY_BRANCHES, 1 + random.nextInt(8))
                        .gains(1 + 2 * random.nextDouble());
        if (random.nextBoolean()) {
            tree.done("root_check").done("front_marking");
        }
        return tree;
    }

    private static LocalDate likely(Outlook outlook) {
        if (outlook instanceof Outlook.Expected expected) {
            return expected.likely();
        }
        return outlook instanceof Outlook.Already ? LocalDate.MIN : LocalDate.MAX;
    }

    /**
     * Weaker or thinner, a tree is not sooner. One heavy work a season may let another one in
     * earlier when the first is late, as anomalies of lists go; so a season is let pass, and one
     * tree in fifty, told with its seed.
     *
     * <p>Source of the anomalies: Graham 1969, "Bounds on multiprocessing timing anomalies", SIAM
     * Journal on Applied Mathematics 17(2).
     */
    private static void assertNotSooner(
            LongFunction<TypicalTree> worse, LongFunction<TypicalTree> better) {
        var sooner = new ArrayList<String>();
        for (long seed = 0; seed < CASES; seed++) {
            var late = likely(worse.apply(seed).route(SHOW, DRAWS).goal());
            var soon = likely(better.apply(seed).route(SHOW, DRAWS).goal());
            if (!soon.equals(LocalDate.MIN) && late.isBefore(soon.minusMonths(3))) {
                sooner.add("seed %d: %s before %s".formatted(seed, late, soon));
            }
        }
        assertThat(sooner).hasSizeLessThanOrEqualTo(CASES / 50);
    }

    @Test
    void aWeakerTreeIsNeverSooner() {
        assertNotSooner(seed -> tree(seed, 50, 0.8), seed -> tree(seed, 68, 0.8));
        assertNotSooner(seed -> tree(seed, 68, 0.8), seed -> tree(seed, 85, 0.8));
    }

    @Test
    void aThinnerTreeIsNeverSooner() {
        assertNotSooner(seed -> tree(seed, 80, 0.3), seed -> tree(seed, 80, 0.6));
        assertNotSooner(seed -> tree(seed, 80, 0.6), seed -> tree(seed, 80, 0.95));
    }

    @Test
    void workOnTheMaterialAlwaysComesBeforeStyling() {
        int pairs = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var steps = tree(seed, 80, 0.5).route(SHOW, 1).steps();
            for (var made : of(steps, TechniqueRule.Purpose.DEVELOPMENT)) {
                for (var styled : of(steps, TechniqueRule.Purpose.STYLING)) {
                    assertThat(likely(styled.when()))
                            .as("%s before %s, seed %d", made.code(), styled.code(), seed)
                            .isAfterOrEqualTo(likely(made.when()));
                    pairs++;
                }
            }
        }
        assertThat(pairs).as("pairs looked at").isGreaterThan(CASES);
    }

    /**
     * What could begin today or in its next window begins then on the route as well, unless heavy
     * work, recovery, quiet or the season's share is in the way, or a step that goes first.
     */
    @Test
    void theRouteBeginsAWorkWhenTheChecklistSaysItOpens() {
        int looked = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var tree = tree(seed, 85, 0.7 + 0.4 * (seed % 2));
            var openings = tree.openings();
            var route = tree.plainRoute(SHOW);
            for (var step : route.steps()) {
                var opens = likely(openings.getOrDefault(step.code(), NOTHING_SAID));
                if (opens.isAfter(TypicalTree.DAY.plusYears(1))) {
                    continue;
                }
                looked++;
                if (likely(step.when()).isAfter(latest(opens))) {
                    assertThat(mayBePutOff(step, route, openings))
                            .as("seed %d: %s opens %s", seed, step, opens)
                            .isTrue();
                }
            }
        }
        assertThat(looked).as("steps looked at").isGreaterThan(CASES);
    }

    /** The route goes by growth stages, the checklist also by frost and weeks left. */
    private static LocalDate latest(LocalDate opens) {
        return (opens.isBefore(TypicalTree.DAY) ? TypicalTree.DAY : opens).plusDays(14);
    }

    private static boolean mayBePutOff(
            Route.Step step, Route route, Map<String, Outlook> openings) {
        var after = TypicalTree.CONTENT.technique(step.code()).goesAfter();
        boolean goesAfter = after.stream().anyMatch(code -> route.find(code).isPresent());
        return switch (step.decider().cause()) {
            case HEAVY, QUIET, LOAD, DOSE -> true;
            case ORDER, LAG -> goesAfter || isDueAsSoon(step, route, openings);
            case NOTHING, WAIT, SEASON -> false;
        };
    }

    /** Whether a step may begin as soon that undoes for a time what this one needs. */
    private static boolean isDueAsSoon(
            Route.Step step, Route route, Map<String, Outlook> openings) {
        var opens = likely(openings.getOrDefault(step.code(), NOTHING_SAID));
        return route.steps().stream()
                .filter(other -> !other.code().equals(step.code()))
                .filter(other -> other.stageOrder() <= step.stageOrder())
                .map(other -> openings.getOrDefault(other.code(), NOTHING_SAID))
                .anyMatch(other -> !likely(other).isAfter(opens));
    }

    /** What waits for what is told without a circle, and the chain says what the steps say. */
    @Test
    void waitsGoInNoCircleAndTheChainSaysTheSame() {
        int named = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var route =
                    tree(seed, 60.0 + (int) (seed % 30), 0.5 + 0.5 * (seed % 2)).route(SHOW, DRAWS);
            var waitsFor = new HashMap<String, String>();
            for (var step : route.steps()) {
                if (route.find(step.decider().what()).isPresent()) {
                    waitsFor.put(step.code(), step.decider().what());
                }
            }
            named += waitsFor.size();
            for (var start : waitsFor.keySet()) {
                var at = waitsFor.get(start);
                for (int steps = 0; at != null && steps <= waitsFor.size(); steps++) {
                    assertThat(at).as("seed %d: %s", seed, waitsFor).isNotEqualTo(start);
                    at = waitsFor.get(at);
                }
            }
            for (var link : route.chain()) {
                assertThat(link.decider())
                        .as("seed %d: %s", seed, link.code())
                        .isEqualTo(route.find(link.code()).orElseThrow().decider());
            }
        }
        assertThat(named).as("waits for a step").isGreaterThan(CASES);
    }

    private static List<Route.Step> of(List<Route.Step> steps, TechniqueRule.Purpose purpose) {
        return steps.stream()
                .filter(
                        step ->
                                TypicalTree.CONTENT.technique(step.code()).rule().purpose()
                                        == purpose)
                .toList();
    }
}
