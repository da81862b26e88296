package org.ripewood.core.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which work each tree gets on a class day, and why.
 *
 * @param trees by student, then tree
 * @param worth what the choice is worth
 * @param most what no choice is worth more than; the same when the choice is the best
 */
public record DayChoice(List<OfTree> trees, Worth worth, Worth most) {

    /** More trees than this on one day are a mistake. */
    public static final int MOST_TREES = 200;

    /**
     * What a choice is worth; the first number in which two differ decides.
     *
     * @param pinned pieces the instructor wants
     * @param assigned pieces assigned before
     * @param usefulness times probability, summed, of second pieces half
     */
    public record Worth(int pinned, int assigned, double usefulness) {}

    /**
     * What is said of one candidate.
     *
     * @param pinned whether the instructor wants it
     * @param reasons all that speak for it when it was chosen, all against it when it was not
     */
    public record Decision(
            String technique, boolean chosen, boolean pinned, List<ChoiceReason> reasons) {
        public Decision {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * What is said of one tree.
     *
     * @param chosen the work it gets, most useful first; often one piece, sometimes none
     * @param decisions on chosen pieces, then on all others by what they are worth; one for each
     *     candidate, and for each pinned technique that is none
     */
    public record OfTree(
            String tree, String student, List<Candidate> chosen, List<Decision> decisions) {
        public OfTree {
            chosen = List.copyOf(chosen);
            decisions = List.copyOf(decisions);
        }

        /** What the instructor wants and does not get, with the reasons. */
        public List<Decision> pinnedInVain() {
            return decisions.stream().filter(one -> one.pinned() && !one.chosen()).toList();
        }
    }

    public DayChoice {
        trees = List.copyOf(trees);
    }

    /**
     * Chooses.
     *
     * <p>What counts, in this order: as many pinned pieces as fit; as many assigned ones; the sum
     * of usefulness times probability, in which a second piece on one tree counts half. Of pieces
     * worth the same one whose lesson is taught today comes first, then the order of codes. No wish
     * goes over time, tools, materials or a missing skill: a pinned piece that does not fit is
     * told. The order in which trees and candidates are given means nothing.
     *
     * <p>Limits: the choice is the best there is, unless tools, materials or the minutes of
     * students with several trees run so short that the search stops; {@code most} tells.
     * Instructors' minutes are added up: whether they fit one after another is the timetable's.
     *
     * @throws IllegalArgumentException when two trees share a name or there are too many
     */
    public static DayChoice of(List<TreeWork> trees, DayLimits limits) {
        JobIds.requireDifferent("trees", trees, TreeWork::tree);
        if (trees.size() > MOST_TREES) {
            throw new IllegalArgumentException(
                    "a day has at most %d trees, found %d".formatted(MOST_TREES, trees.size()));
        }
        var sorted =
                trees.stream()
                        .sorted(
                                Comparator.comparing(TreeWork::student)
                                        .thenComparing(TreeWork::tree))
                        .toList();
        var search = new ChoiceSearch(sorted, limits);
        var stock = new Stock(limits);
        for (int i = 0; i < sorted.size(); i++) {
            var student = sorted.get(i).student();
            search.best().get(i).forEach(work -> stock.take(student, work));
        }
        var told = new ArrayList<OfTree>();
        for (int i = 0; i < sorted.size(); i++) {
            told.add(tell(sorted.get(i), search.best().get(i), stock, limits.mostPerTree()));
        }
        return new DayChoice(
                told, ChoiceSearch.told(search.worth()), ChoiceSearch.told(search.mostWorth()));
    }

    /** Whether no other choice is worth more. */
    public boolean proved() {
        return worth.equals(most);
    }

    /** Where a tree stands in the choice. */
    public Optional<OfTree> find(String tree) {
        return trees.stream().filter(one -> one.tree().equals(tree)).findFirst();
    }

    /** What bars a piece of work whatever else is chosen, but for what there is too little of. */
    static List<ChoiceReason.Against> barred(TreeWork tree, Candidate work) {
        var reasons = new ArrayList<ChoiceReason.Against>();
        if (tree.dropped().contains(work.technique())) {
            reasons.add(new ChoiceReason.Dropped());
        }
        if (work.skill() == Candidate.Skill.MISSING) {
            reasons.add(new ChoiceReason.SkillMissing());
        }
        return reasons;
    }

    private static OfTree tell(TreeWork tree, List<Candidate> chosen, Stock left, int mostPerTree) {
        var decisions = new ArrayList<Decision>();
        for (var work : chosen) {
            decisions.add(
                    new Decision(
                            work.technique(),
                            true,
                            tree.pins(work),
                            reasonsFor(tree, work, chosen)));
        }
        tree.candidates().stream()
                .filter(work -> !chosen.contains(work))
                .sorted(ChoiceSearch.mostFirst(tree))
                .forEach(
                        work ->
                                decisions.add(
                                        new Decision(
                                                work.technique(),
                                                false,
                                                tree.pins(work),
                                                reasonsAgainst(
                                                        tree, work, chosen, left, mostPerTree))));
        Map<String, Candidate> known = new TreeMap<>();
        tree.candidates().forEach(work -> known.put(work.technique(), work));
        for (var code : new TreeSet<>(tree.pinned())) {
            if (!known.containsKey(code)) {
                decisions.add(
                        new Decision(code, false, true, List.of(new ChoiceReason.NotPossible())));
            }
        }
        return new OfTree(tree.tree(), tree.student(), chosen, decisions);
    }

    private static List<ChoiceReason> reasonsFor(
            TreeWork tree, Candidate work, List<Candidate> chosen) {
        var reasons = new ArrayList<ChoiceReason>();
        if (tree.pins(work)) {
            reasons.add(new ChoiceReason.Pinned());
        }
        if (work.assigned()) {
            reasons.add(new ChoiceReason.AssignedBefore());
        }
        if (work.skill() == Candidate.Skill.TAUGHT_TODAY) {
            reasons.add(new ChoiceReason.TaughtToday());
        }
        var first = chosen.get(0);
        if (!work.equals(first)) {
            reasons.add(new ChoiceReason.FitsBeside(first.technique()));
        } else if (!tree.pins(work) && !work.assigned()) {
            reasons.add(new ChoiceReason.MostUseful());
        }
        return reasons;
    }

    private static List<ChoiceReason> reasonsAgainst(
            TreeWork tree, Candidate work, List<Candidate> chosen, Stock left, int mostPerTree) {
        var reasons = new ArrayList<ChoiceReason>(barred(tree, work));
        if (!tree.pins(work) && chosen.size() >= mostPerTree) {
            reasons.addAll(shortInsteadOf(tree, work, chosen.get(0), left));
            reasons.add(new ChoiceReason.AnotherFirst(chosen.get(0).technique()));
        } else {
            reasons.addAll(left.whatIsShort(tree.student(), work));
        }
        if (reasons.isEmpty()) {
            reasons.add(new ChoiceReason.NotTried());
        }
        return reasons;
    }

    /** What is short, beside all other trees' work, for work worth more than what its tree gets. */
    private static List<ChoiceReason.Against> shortInsteadOf(
            TreeWork tree, Candidate work, Candidate gets, Stock left) {
        if (ChoiceSearch.mostFirst(tree).compare(work, gets) > 0) {
            return List.of();
        }
        left.giveBack(tree.student(), gets);
        var reasons = left.whatIsShort(tree.student(), work);
        left.take(tree.student(), gets);
        return reasons;
    }
}
