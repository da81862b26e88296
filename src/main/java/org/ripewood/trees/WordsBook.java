package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.trees.EarlierWords.Kind;

/**
 * Where a tree came from and what is noted of it, in the words of whoever said it. Said anew, the
 * new words count and the old ones stay. A former keeper's are for those who reach them; who does
 * not reads none there, and leaves them as they are unless they say something themselves.
 */
@ApplicationScoped
class WordsBook {

    /** Something said, in its turn. */
    private record Said(Kind kind, @Nullable String words, long byId, Instant at) {

        static Said of(TreeWordsEntity row) {
            return new Said(row.kind, row.words, row.byId, row.recordedAt);
        }
    }

    private final TreeWordsRows rows;
    private final FormerKeepers formerKeepers;
    private final Today today;

    WordsBook(TreeWordsRows rows, FormerKeepers formerKeepers, Today today) {
        this.rows = rows;
        this.formerKeepers = formerKeepers;
        this.today = today;
    }

    /** A tree as the actor may read of it. */
    Tree told(Actor actor, TreeEntity tree) {
        return told(actor, List.of(tree)).get(0);
    }

    /** The same of many, in a number of queries that does not depend on how many. */
    List<Tree> told(Actor actor, Collection<TreeEntity> trees) {
        var later = later(trees);
        var hidden = formerKeepers.hidden(actor, trees);
        return trees.stream()
                .map(
                        tree ->
                                told(
                                        tree,
                                        later.getOrDefault(tree.id, List.of()),
                                        hidden.getOrDefault(tree.id, Set.of())))
                .toList();
    }

    /** What was said after the entry, by tree; of most nothing was, and nothing is asked then. */
    private Map<Long, List<TreeWordsEntity>> later(Collection<TreeEntity> trees) {
        var said = trees.stream().filter(tree -> tree.wordsRevision > 0).map(tree -> tree.id);
        return rows.ofTrees(said.toList()).stream()
                .collect(Collectors.groupingBy(row -> row.treeId));
    }

    /** A tree within reach, whose former keepers are known. */
    ReachedTree reached(TreeEntity tree, Set<Long> former, Set<Long> hidden) {
        var later = later(List.of(tree)).getOrDefault(tree.id, List.of());
        return new ReachedTree(
                told(tree, later, hidden), former, hidden, earlier(tree, later, hidden));
    }

    private static Tree told(TreeEntity tree, List<TreeWordsEntity> later, Set<Long> hidden) {
        return tree.toTree(
                read(said(tree, later, Kind.ORIGIN), hidden),
                read(said(tree, later, Kind.NOTE), hidden));
    }

    /** What counts, unless it is not for the reader. */
    private static @Nullable String read(List<Said> inTurn, Set<Long> hidden) {
        var last = inTurn.get(inTurn.size() - 1);
        return FormerKeepers.words(hidden, last.byId(), last.words());
    }

    /** All that was said of a kind, what was said at the tree's entry first. */
    private static List<Said> said(TreeEntity tree, List<TreeWordsEntity> later, Kind kind) {
        var inTurn = new ArrayList<Said>();
        var first = kind == Kind.ORIGIN ? tree.origin : tree.note;
        inTurn.add(new Said(kind, first, tree.byId, tree.recordedAt));
        later.stream().filter(row -> row.kind == kind).map(Said::of).forEach(inTurn::add);
        return inTurn;
    }

    /** Keeps what the actor says anew; what they leave as they read it stays whose it is. */
    void say(Actor actor, TreeEntity tree, @Nullable String origin, @Nullable String note) {
        var now = told(actor, tree);
        say(actor, tree, Kind.ORIGIN, now.origin(), origin);
        say(actor, tree, Kind.NOTE, now.note(), note);
    }

    private void say(
            Actor actor,
            TreeEntity tree,
            Kind kind,
            @Nullable String read,
            @Nullable String typed) {
        var said = typed == null || typed.isBlank() ? null : typed;
        if (Objects.equals(read, said)) {
            return;
        }
        var row = new TreeWordsEntity();
        row.treeId = tree.id;
        row.kind = kind;
        row.words = said;
        row.byId = actor.personId();
        row.recordedAt = today.now();
        rows.persist(row);
        tree.wordsRevision++;
    }

    /** What was said before, as far as it is for the actor; the latest first. */
    List<EarlierWords> earlier(Actor actor, TreeEntity tree) {
        var later = later(List.of(tree)).getOrDefault(tree.id, List.of());
        return earlier(tree, later, formerKeepers.hidden(actor, tree));
    }

    private static List<EarlierWords> earlier(
            TreeEntity tree, List<TreeWordsEntity> later, Set<Long> hidden) {
        var earlier = new ArrayList<EarlierWords>();
        for (var kind : Kind.values()) {
            var inTurn = said(tree, later, kind);
            for (var one : inTurn.subList(0, inTurn.size() - 1)) {
                var words = FormerKeepers.words(hidden, one.byId(), one.words());
                if (words != null) {
                    earlier.add(0, new EarlierWords(kind, words, one.byId(), one.at()));
                }
            }
        }
        earlier.sort(Comparator.comparing(EarlierWords::saidAt).reversed());
        return List.copyOf(earlier);
    }
}
