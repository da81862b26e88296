package org.ripewood.core.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Laws of the choice of work on random days; each case can be repeated from its seed. */
@Tag("fast")
class DayChoiceLawsTest {

    private static final int CASES = 400;
    private static final String[] TOOLS = {"jack", "saw"};
    private static final List<Candidate.Skill> SKILLS = List.of(Candidate.Skill.values());
    private static final String[] MATERIALS = {"wire", "moss"};

    private record Day(List<TreeWork> trees, DayLimits limits) {}

    /** Everything is scarce, so that one choice is in the way of another. */
    private static Day day(long seed, int trees, int candidates) {
        var dice = new SplittableRandom(seed);
        var list = new ArrayList<TreeWork>();
        for (int i = 0; i < trees; i++) {
            var works = new ArrayList<Candidate>();
            for (int k = dice.nextInt(candidates + 1); k > 0; k--) {
                works.add(work("t" + k, dice));
            }
            Set<String> pinned = new HashSet<>();
            Set<String> dropped = new HashSet<>();
            if (dice.nextInt(3) == 0) {
                pinned.add("t" + (1 + dice.nextInt(candidates)));
            }
            if (dice.nextInt(3) == 0) {
                dropped.add("t" + (1 + dice.nextInt(candidates)));
                dropped.removeAll(pinned);
            }
            var student = "s" + dice.nextInt(trees);
            list.add(new TreeWork("tree" + i, student, works, pinned, dropped));
        }
        Map<String, Integer> students = new HashMap<>();
        for (int i = 0; i < trees; i += 2) {
            students.put("s" + i, 60 + dice.nextInt(200));
        }
        var limits =
                new DayLimits(
                        300,
                        students,
                        dice.nextInt(30 * trees),
                        Map.of("jack", 1),
                        Map.of("wire", 40.0 * trees / 3, "moss", 30.0),
                        1 + dice.nextInt(2));
        return new Day(list, limits);
    }

    private static Candidate work(String code, SplittableRandom dice) {
        Map<String, Integer> tools = new HashMap<>();
        Map<String, Double> materials = new HashMap<>();
        int student = 15 + 15 * dice.nextInt(10);
        if (dice.nextInt(3) == 0) {
            tools.put(TOOLS[dice.nextInt(5) / 4], 10 + dice.nextInt(150));
        }
        if (dice.nextInt(2) == 0) {
            materials.put(MATERIALS[dice.nextInt(2)], 1 + dice.nextInt(30) + 0.1);
        }
        Candidate.Sureness sureness =
                switch (dice.nextInt(6)) {
                    case 0 -> new Candidate.Assigned();
                    case 1 -> new Candidate.Expected(0.1 * (1 + dice.nextInt(10)));
                    default -> new Candidate.Ready();
                };
        return new Candidate(
                code,
                sureness,
                dice.nextInt(101),
                student,
                dice.nextInt(Math.min(student, 60) + 1),
                tools,
                materials,
                false,
                SKILLS.get(dice.nextInt(8) / 3));
    }

    /** What a choice is worth, told anew: pinned, assigned, usefulness. */
    private static double[] worth(TreeWork tree, List<Candidate> work) {
        var worth = new double[3];
        for (int i = 0; i < work.size(); i++) {
            var one = work.get(i);
            worth[0] += tree.pinned().contains(one.technique()) ? 1 : 0;
            worth[1] += one.sureness() instanceof Candidate.Assigned ? 1 : 0;
            worth[2] += one.usefulness() * one.sureness().probability() * (i == 0 ? 1 : 0.5);
        }
        return worth;
    }

    private static double[] sum(double[] one, double[] other) {
        return new double[] {one[0] + other[0], one[1] + other[1], one[2] + other[2]};
    }

    private static boolean more(double[] one, double[] than) {
        for (int i = 0; i < 3; i++) {
            if (Math.abs(one[i] - than[i]) > 1e-6) {
                return one[i] > than[i];
            }
        }
        return false;
    }

    /** Tries everything, without the choice's own code. */
    private static final class BruteForce {
        private final Day day;
        private double[] best = {-1, -1, -1};

        BruteForce(Day day) {
            this.day = day;
            descend(0, List.of(), new double[3]);
        }

        private void descend(int i, List<Candidate[]> taken, double[] worth) {
            if (i == day.trees().size()) {
                best = more(worth, best) ? worth : best;
                return;
            }
            var tree = day.trees().get(i);
            var works = tree.candidates();
            for (int set = 0; set < 1 << works.size(); set++) {
                var chosen = new ArrayList<Candidate>();
                for (int k = 0; k < works.size(); k++) {
                    if ((set >> k & 1) == 1) {
                        chosen.add(works.get(k));
                    }
                }
                chosen.sort(
                        (one, other) ->
                                more(worth(tree, List.of(one)), worth(tree, List.of(other)))
                                        ? -1
                                        : more(
                                                        worth(tree, List.of(other)),
                                                        worth(tree, List.of(one)))
                                                ? 1
                                                : 0);
                var all = new ArrayList<>(taken);
                all.add(chosen.toArray(new Candidate[0]));
                if (allowed(tree, chosen, day.limits()) && fits(day, all)) {
                    descend(i + 1, all, sum(worth, worth(tree, chosen)));
                }
            }
        }
    }

    private static boolean allowed(TreeWork tree, List<Candidate> work, DayLimits limits) {
        long pins = work.stream().filter(one -> tree.pinned().contains(one.technique())).count();
        return work.stream()
                        .noneMatch(
                                one ->
                                        tree.dropped().contains(one.technique())
                                                || one.skill() == Candidate.Skill.MISSING)
                && work.size() <= Math.max(pins, limits.mostPerTree());
    }

    private static boolean fits(Day day, List<Candidate[]> taken) {
        Map<String, Integer> students = new HashMap<>();
        Map<String, Integer> tools = new HashMap<>();
        Map<String, Double> materials = new HashMap<>();
        int teaching = 0;
        for (int i = 0; i < taken.size(); i++) {
            for (var work : taken.get(i)) {
                students.merge(day.trees().get(i).student(), work.studentMinutes(), Integer::sum);
                work.tools().forEach((tool, use) -> tools.merge(tool, use, Integer::sum));
                work.materials().forEach((what, use) -> materials.merge(what, use, Double::sum));
                teaching += work.instructorMinutes();
            }
        }
        var limits = day.limits();
        return teaching <= limits.instructorMinutes()
                && students.entrySet().stream()
                        .allMatch(
                                one ->
                                        one.getValue()
                                                <= limits.studentMinutes()
                                                        .getOrDefault(one.getKey(), 300))
                && tools.entrySet().stream()
                        .allMatch(
                                one ->
                                        one.getValue()
                                                <= 300
                                                        * limits.tools()
                                                                .getOrDefault(one.getKey(), 0))
                && materials.entrySet().stream()
                        .allMatch(
                                one ->
                                        one.getValue()
                                                <= limits.materials().get(one.getKey()) + 1e-6);
    }

    private static double[] worth(Day day, DayChoice choice) {
        var worth = new double[3];
        for (var tree : day.trees()) {
            worth = sum(worth, worth(tree, choice.find(tree.tree()).orElseThrow().chosen()));
        }
        return worth;
    }

    @Test
    void theChoiceIsTheBestThereIs() {
        int full = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed, 4, 4);
            var choice = DayChoice.of(day.trees(), day.limits());
            assertThat(choice.proved()).as("seed " + seed).isTrue();
            assertThat(worth(day, choice))
                    .as("seed " + seed)
                    .containsExactly(new BruteForce(day).best, within(1e-6));
            full += choice.trees().stream().allMatch(one -> !one.chosen().isEmpty()) ? 1 : 0;
        }
        assertThat(full).as("days on which nothing is short are few").isLessThan(CASES / 4);
    }

    /** As a school has it: material for most, tools enough, few students with several trees. */
    @Test
    void fullDaysOfASchoolAreSolvedToTheEnd() {
        for (long seed = 0; seed < 40; seed++) {
            var day = day(seed, 30, 8);
            var trees = new ArrayList<TreeWork>();
            for (int i = 0; i < 30; i++) {
                var tree = day.trees().get(i);
                var student = "s" + (i < 24 ? i : i - 24);
                trees.add(
                        new TreeWork(
                                tree.tree(),
                                student,
                                tree.candidates(),
                                tree.pinned(),
                                tree.dropped()));
            }
            var limits =
                    new DayLimits(
                            400,
                            Map.of(),
                            200 + 20 * (int) seed,
                            Map.of("jack", 4, "saw", 2),
                            Map.of("wire", 400.0, "moss", 500.0),
                            1);
            var choice = DayChoice.of(trees, limits);
            assertThat(choice.proved())
                    .as("seed %d: %s of %s", seed, choice.worth(), choice.most())
                    .isTrue();
        }
    }

    @Test
    void nothingIsTakenThatIsNotThere() {
        for (long seed = 0; seed < CASES / 4; seed++) {
            var day = day(seed, 3 + (int) seed % 28, 6);
            var choice = DayChoice.of(day.trees(), day.limits());
            var taken =
                    day.trees().stream()
                            .map(
                                    tree ->
                                            choice.find(tree.tree())
                                                    .orElseThrow()
                                                    .chosen()
                                                    .toArray(new Candidate[0]))
                            .toList();
            assertThat(fits(day, taken)).as("seed " + seed).isTrue();
            assertThat(choice.most().pinned())
                    .as("seed " + seed)
                    .isGreaterThanOrEqualTo(choice.worth().pinned());
        }
    }

    @Test
    void theOrderOfTreesAndCandidatesMeansNothing() {
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed, 8, 5);
            var trees = new ArrayList<TreeWork>();
            for (var tree : day.trees()) {
                var works = new ArrayList<>(tree.candidates());
                Collections.shuffle(works, new Random(seed));
                trees.add(
                        new TreeWork(
                                tree.tree(), tree.student(), works, tree.pinned(), tree.dropped()));
            }
            Collections.shuffle(trees, new Random(seed + 1));
            assertThat(DayChoice.of(trees, day.limits()))
                    .as("seed " + seed)
                    .isEqualTo(DayChoice.of(day.trees(), day.limits()));
        }
    }

    @Test
    void everyCandidateAndEveryWishIsAnswered() {
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed, 8, 5);
            var choice = DayChoice.of(day.trees(), day.limits());
            for (var tree : day.trees()) {
                var told = choice.find(tree.tree()).orElseThrow();
                Set<String> asked = new HashSet<>(tree.pinned());
                tree.candidates().forEach(work -> asked.add(work.technique()));
                assertThat(told.decisions())
                        .as("seed " + seed)
                        .extracting(DayChoice.Decision::technique)
                        .containsExactlyInAnyOrderElementsOf(asked);
                for (var one : told.decisions()) {
                    var kind = one.chosen() ? ChoiceReason.For.class : ChoiceReason.Against.class;
                    assertThat(one.reasons()).as("seed %d: %s", seed, one).isNotEmpty();
                    assertThat(one.reasons()).allMatch(kind::isInstance);
                    assertThat(one.reasons()).doesNotContain(new ChoiceReason.NotTried());
                }
            }
        }
    }

    @Test
    void moreInstructorsNeverMakeTheDayLessUseful() {
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed, 6, 5);
            var limits = day.limits();
            var wider =
                    new DayLimits(
                            limits.dayMinutes(),
                            limits.studentMinutes(),
                            limits.instructorMinutes() + 30,
                            limits.tools(),
                            limits.materials(),
                            limits.mostPerTree());
            var before = worth(day, DayChoice.of(day.trees(), limits));
            var after = worth(day, DayChoice.of(day.trees(), wider));
            assertThat(more(before, after)).as("seed " + seed).isFalse();
        }
    }

    /** Where no other choice is worth more, what is worth more on a tree lacks something. */
    @Test
    void whatIsWorthMoreThanTheWorkOfItsTreeIsToldWhatItLacks() {
        int seen = 0;
        for (long seed = 0; seed < CASES; seed++) {
            var day = day(seed, 4, 4);
            var choice = DayChoice.of(day.trees(), day.limits());
            if (!choice.proved()) {
                continue;
            }
            for (var tree : day.trees()) {
                var told = choice.find(tree.tree()).orElseThrow();
                if (told.chosen().size() != 1) {
                    continue;
                }
                var better = ChoiceSearch.mostFirst(tree);
                for (var work : tree.candidates()) {
                    if (DayChoice.barred(tree, work).isEmpty()
                            && better.compare(work, told.chosen().get(0)) < 0
                            && ChoiceSearch.worth(tree, work)
                                    > ChoiceSearch.worth(tree, told.chosen().get(0))) {
                        seen++;
                        assertThat(reasons(told, work))
                                .as("seed %d, %s of %s", seed, work.technique(), tree.tree())
                                .anyMatch(
                                        reason ->
                                                !(reason instanceof ChoiceReason.AnotherFirst)
                                                        && !(reason
                                                                instanceof ChoiceReason.NotTried));
                    }
                }
            }
        }
        assertThat(seen).isGreaterThan(20);
    }

    private static List<ChoiceReason> reasons(DayChoice.OfTree told, Candidate work) {
        return told.decisions().stream()
                .filter(one -> one.technique().equals(work.technique()))
                .findFirst()
                .orElseThrow()
                .reasons();
    }
}
