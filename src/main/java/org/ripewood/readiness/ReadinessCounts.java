package org.ripewood.readiness;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.Content;
import org.ripewood.readiness.ReadinessSheet.Care;
import org.ripewood.readiness.ReadinessSheet.Choice;
import org.ripewood.standing.ReasonText;

/** What is counted over all trees of a course. */
final class ReadinessCounts {

    private static final Comparator<Choice> MOST_FIRST =
            Comparator.comparingInt(Choice::trees).reversed().thenComparing(Choice::title);

    private final Content content;
    private final List<TreeRead> trees;

    ReadinessCounts(Content content, List<TreeRead> trees) {
        this.content = content;
        this.trees = trees;
    }

    /** Techniques trees are held from, in the order of work. */
    List<Choice> heldFrom() {
        var counts = new TreeMap<String, Integer>();
        for (var tree : trees) {
            tree.day().standings().stream()
                    .filter(standing -> standing.verdict() == Verdict.HELD)
                    .forEach(standing -> counts.merge(standing.technique(), 1, Integer::sum));
        }
        return content.works().stream()
                .flatMap(work -> work.techniques().stream())
                .filter(counts::containsKey)
                .map(code -> new Choice(code, content.titleOf(code), counts.getOrDefault(code, 0)))
                .toList();
    }

    /** Reasons that hold any technique with a cell, each once a tree. */
    List<Choice> heldBy() {
        var titles = new TreeMap<String, String>();
        var counts = new TreeMap<String, Integer>();
        for (var tree : trees) {
            var found = reasons(tree);
            titles.putAll(found);
            found.keySet().forEach(code -> counts.merge(code, 1, Integer::sum));
        }
        return choices(counts, code -> titles.getOrDefault(code, code)).stream()
                .sorted(MOST_FIRST)
                .toList();
    }

    private Map<String, String> reasons(TreeRead tree) {
        var teller = new ReasonText(content, tree.day().subject().traits());
        var found = new TreeMap<String, String>();
        tree.day().standings().stream()
                .filter(standing -> standing.verdict() == Verdict.HELD)
                .forEach(standing -> Holds.of(standing, teller::titleOf).forEach(found::put));
        return found;
    }

    /** Stages trees are in, the first stage first. */
    List<Choice> stages() {
        var counts = counted(tree -> tree.day().stage().code());
        return content.stages().stream()
                .filter(stage -> counts.containsKey(stage.code()))
                .map(
                        stage ->
                                new Choice(
                                        stage.code(),
                                        stage.title(),
                                        counts.getOrDefault(stage.code(), 0)))
                .toList();
    }

    /** Species of the trees, by their common name. */
    List<Choice> species() {
        var counts = counted(tree -> tree.day().tree().species());
        return choices(counts, code -> content.kindOf(code).common()).stream()
                .sorted(Comparator.comparing(Choice::title))
                .toList();
    }

    private Map<String, Integer> counted(Function<TreeRead, String> what) {
        var counts = new TreeMap<String, Integer>();
        trees.forEach(tree -> counts.merge(what.apply(tree), 1, Integer::sum));
        return counts;
    }

    private static List<Choice> choices(
            Map<String, Integer> counts, Function<String, String> title) {
        return counts.entrySet().stream()
                .map(one -> new Choice(one.getKey(), title.apply(one.getKey()), one.getValue()))
                .toList();
    }

    /** Care that is ready, with its trees by name. */
    List<Care> care() {
        var found = new LinkedHashMap<String, List<Care.OfTree>>();
        content.techniques().keySet().forEach(code -> add(found, code));
        return found.entrySet().stream()
                .map(one -> new Care(one.getKey(), content.titleOf(one.getKey()), one.getValue()))
                .sorted(
                        Comparator.comparingInt((Care care) -> care.trees().size())
                                .reversed()
                                .thenComparing(Care::title))
                .toList();
    }

    private void add(Map<String, List<Care.OfTree>> found, String technique) {
        var ready =
                trees.stream()
                        .map(TreeRead::day)
                        .filter(
                                day ->
                                        day.careNow().stream()
                                                .anyMatch(one -> one.technique().equals(technique)))
                        .map(day -> new Care.OfTree(day.tree().id(), day.tree().label()))
                        .sorted(Comparator.comparing(Care.OfTree::label))
                        .toList();
        if (!ready.isEmpty()) {
            found.put(technique, ready);
        }
    }
}
