package org.ripewood.core.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Finds the most useful work for all trees together.
 *
 * <p>Depth first, tree by tree: with each tree one of its sets of work, or none. A branch is left
 * when the worth so far and the most the trees to come could add lie no higher than the best found.
 * That most is exact but for tools, materials and students of several trees: by dynamic programming
 * over the instructors' minutes, from the last tree to the first, each tree taking the set that is
 * worth most for the minutes it leaves (the multiple-choice knapsack problem; source: Kellerer,
 * Pferschy and Pisinger 2004, "Knapsack Problems", chapter 11). So where neither tools nor
 * materials nor a student's own minutes run short the first descent is the best, and the table says
 * so; else the search goes on, up to a number of steps, and the table's value remains as bound.
 */
final class ChoiceSearch {

    private static final int MOST_STEPS = 50_000;

    /** Worth of a pinned piece: more than all assigned ones. */
    private static final long PINNED = 100_000_000_000_000L;

    /** Worth of an assigned piece: more than all usefulness. */
    private static final long ASSIGNED = 10_000_000_000L;

    private static final double THOUSANDTHS = 1000;

    /** Some work for one tree. */
    private record Option(List<Candidate> work, long worth, int instructorMinutes) {}

    private final List<TreeWork> trees;
    private final DayLimits limits;
    private final Stock stock;
    private final List<List<Option>> options = new ArrayList<>();
    private final long[][] most;
    private final int topMinutes;
    private final List<List<Candidate>> now = new ArrayList<>();
    private List<List<Candidate>> best = new ArrayList<>();
    private long bestWorth = -1;
    private int steps;

    ChoiceSearch(List<TreeWork> trees, DayLimits limits) {
        this.trees = trees;
        this.limits = limits;
        this.stock = new Stock(limits);
        trees.forEach(tree -> options.add(optionsOf(tree)));
        int asked =
                options.stream()
                        .mapToInt(
                                of ->
                                        of.stream()
                                                .mapToInt(Option::instructorMinutes)
                                                .max()
                                                .orElse(0))
                        .sum();
        this.topMinutes = Math.min(limits.instructorMinutes(), asked);
        this.most = table();
        descend(0, 0);
    }

    /** By tree the chosen work, most useful first. */
    List<List<Candidate>> best() {
        return best;
    }

    long worth() {
        return bestWorth;
    }

    /** What no choice is worth more than. */
    long mostWorth() {
        return steps < MOST_STEPS ? bestWorth : most[0][topMinutes];
    }

    /**
     * What one piece is worth: pinned before assigned before useful; taught today breaks a tie, and
     * some work is better than none.
     */
    static long worth(TreeWork tree, Candidate work) {
        return (tree.pins(work) ? PINNED : 0)
                + (work.assigned() ? ASSIGNED : 0)
                + 4 * thousandths(work)
                + (work.skill() == Candidate.Skill.TAUGHT_TODAY ? 2 : 0)
                + 2;
    }

    /** A worth taken apart again; ties and the like are lost in it. */
    static DayChoice.Worth told(long worth) {
        return new DayChoice.Worth(
                (int) (worth / PINNED),
                (int) (worth % PINNED / ASSIGNED),
                worth % ASSIGNED / 4.0 / THOUSANDTHS);
    }

    private static long thousandths(Candidate work) {
        return Math.round(THOUSANDTHS * work.usefulness() * work.sureness().probability());
    }

    /** Pieces after the first count half of their usefulness: another tree rather than more. */
    private static long worth(TreeWork tree, List<Candidate> work) {
        long worth = 0;
        for (int i = 0; i < work.size(); i++) {
            long all = worth(tree, work.get(i));
            worth += all - (i == 0 ? 0 : 2 * thousandths(work.get(i)));
        }
        return worth;
    }

    private List<Option> optionsOf(TreeWork tree) {
        var possible =
                tree.candidates().stream()
                        .filter(work -> DayChoice.barred(tree, work).isEmpty())
                        .filter(work -> stock.fits(tree.student(), work))
                        .sorted(mostFirst(tree))
                        .toList();
        var found = new ArrayList<Option>();
        collect(tree, possible, 0, List.of(), found);
        found.sort(Comparator.comparingLong(Option::worth).reversed());
        return found;
    }

    static Comparator<Candidate> mostFirst(TreeWork tree) {
        return Comparator.comparingLong((Candidate work) -> worth(tree, work))
                .reversed()
                .thenComparing(Candidate::technique);
    }

    private void collect(
            TreeWork tree,
            List<Candidate> possible,
            int from,
            List<Candidate> work,
            List<Option> to) {
        int minutes = work.stream().mapToInt(Candidate::instructorMinutes).sum();
        to.add(new Option(work, worth(tree, work), minutes));
        for (int i = from; i < possible.size(); i++) {
            var more = new ArrayList<>(work);
            more.add(possible.get(i));
            if (allowed(tree, more)) {
                collect(tree, possible, i + 1, List.copyOf(more), to);
            }
        }
    }

    /** Pinned pieces are always allowed, others up to the limit that pinned ones leave. */
    private boolean allowed(TreeWork tree, List<Candidate> work) {
        long pinned = work.stream().filter(tree::pins).count();
        boolean enough = work.size() - pinned <= Math.max(0, limits.mostPerTree() - pinned);
        int minutes = work.stream().mapToInt(Candidate::studentMinutes).sum();
        return enough && minutes <= limits.minutesOf(tree.student());
    }

    /** By tree and instructors' minutes left the most that it and those after it can be worth. */
    private long[][] table() {
        var table = new long[trees.size() + 1][topMinutes + 1];
        for (int i = trees.size() - 1; i >= 0; i--) {
            var worths = worthByMinutes(options.get(i));
            for (int left = 0; left <= topMinutes; left++) {
                long top = 0;
                for (var one : worths.headMap(left, true).entrySet()) {
                    top = Math.max(top, one.getValue() + table[i + 1][left - one.getKey()]);
                }
                table[i][left] = top;
            }
        }
        return table;
    }

    private static NavigableMap<Integer, Long> worthByMinutes(List<Option> options) {
        var worths = new TreeMap<Integer, Long>();
        options.forEach(
                option -> worths.merge(option.instructorMinutes(), option.worth(), Math::max));
        return worths;
    }

    private long most(int tree) {
        return most[tree][Math.min(topMinutes, stock.instructorLeft())];
    }

    private void descend(int tree, long worth) {
        if (worth + most(tree) <= bestWorth || steps >= MOST_STEPS) {
            return;
        }
        steps++;
        if (tree == trees.size()) {
            bestWorth = worth;
            best = new ArrayList<>(now);
            return;
        }
        for (var option : byPromise(tree)) {
            int taken = take(trees.get(tree).student(), option.work());
            if (taken == option.work().size()) {
                now.add(option.work());
                descend(tree + 1, worth + option.worth());
                now.remove(now.size() - 1);
            }
            giveBack(trees.get(tree).student(), option.work().subList(0, taken));
        }
    }

    private Option[] byPromise(int tree) {
        int left = Math.min(topMinutes, stock.instructorLeft());
        var promising =
                options.get(tree).stream()
                        .filter(option -> option.instructorMinutes() <= left)
                        .toArray(Option[]::new);
        Arrays.sort(
                promising,
                Comparator.comparingLong(
                                (Option option) ->
                                        option.worth()
                                                + most[tree + 1][left - option.instructorMinutes()])
                        .reversed());
        return promising;
    }

    /** How many of some pieces could be taken, one after the other. */
    private int take(String student, List<Candidate> work) {
        int taken = 0;
        while (taken < work.size() && stock.fits(student, work.get(taken))) {
            stock.take(student, work.get(taken++));
        }
        return taken;
    }

    private void giveBack(String student, List<Candidate> work) {
        work.forEach(piece -> stock.giveBack(student, piece));
    }
}
