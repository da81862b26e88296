package org.ripewood.classday;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import org.ripewood.course.Species;
import org.ripewood.course.Technique;

/** What the rows of a class day need together. */
final class SessionNeeds {

    private static final List<String> SIGNALS = List.of("DANGER", "WARNING", "CAUTION");

    private final List<SessionPlan.Row> rows;
    private final Map<String, Integer> toolCounts;

    /**
     * @param toolCounts of tools the school counts, by name in small letters
     */
    SessionNeeds(List<SessionPlan.Row> rows, Map<String, Integer> toolCounts) {
        this.rows = rows;
        this.toolCounts = toolCounts;
    }

    List<SessionPlan.Need> tools() {
        return needs(Technique::tools, toolCounts);
    }

    /** Tools with those of one kind told as one. */
    List<SessionPlan.Need> toolKinds() {
        var inStock = new HashMap<String, Integer>();
        toolCounts.forEach((name, count) -> inStock.merge(kind(name), count, Integer::sum));
        return needs(
                technique -> technique.tools().stream().map(SessionNeeds::kind).toList(), inStock);
    }

    /** What a tool is, without how fine or clean it is and what for; one of several. */
    static String kind(String tool) {
        var what = tool.toLowerCase(Locale.ROOT).replaceFirst(" (with|for|of|kept) .*", "");
        what = what.replaceAll("\\b(fine|clean|sharp|small|blunt) ", "");
        return what.replaceFirst("(cutter|chopstick|gouge|sieve)$", "$1s");
    }

    List<SessionPlan.Need> materials() {
        return needs(Technique::materials, toolCounts);
    }

    int studentMinutes() {
        return minutes(Technique::studentMinutes);
    }

    int instructorMinutes() {
        return minutes(Technique::instructorMinutes);
    }

    /**
     * Hazards of the work planned and of every species on the benches, the gravest first; the same
     * caution is told once, with all its trees.
     */
    List<SessionPlan.Caution> cautions(Map<Long, Species> species) {
        var trees = new LinkedHashMap<Technique.Hazard, Set<String>>();
        for (var row : rows) {
            var technique = row.technique();
            if (technique != null) {
                technique.hazards().forEach(hazard -> add(trees, hazard, row));
            }
            var found = species.get(row.treeId());
            if (found != null) {
                found.toxicity().forEach(toxic -> add(trees, hazardOf(found, toxic), row));
            }
        }
        return trees.entrySet().stream()
                .map(
                        entry ->
                                new SessionPlan.Caution(
                                        entry.getKey().signal(),
                                        entry.getKey().hazard(),
                                        entry.getKey().avoid(),
                                        List.copyOf(entry.getValue())))
                .sorted(Comparator.comparingInt(caution -> gravity(caution.signal())))
                .toList();
    }

    private static void add(
            Map<Technique.Hazard, Set<String>> trees,
            Technique.Hazard hazard,
            SessionPlan.Row row) {
        trees.computeIfAbsent(hazard, any -> new LinkedHashSet<>()).add(row.tree());
    }

    private static Technique.Hazard hazardOf(Species species, Species.Toxicity toxic) {
        return new Technique.Hazard(
                "WARNING",
                "%s, %s: %s".formatted(species.common(), toxic.parts(), toxic.effect()),
                toxic.avoid());
    }

    private static int gravity(String signal) {
        var place = SIGNALS.indexOf(signal);
        return place < 0 ? SIGNALS.size() : place;
    }

    private List<SessionPlan.Need> needs(
            Function<Technique, List<String>> things, Map<String, Integer> inStock) {
        var counts = new LinkedHashMap<String, Integer>();
        for (var row : rows) {
            var technique = row.technique();
            if (technique != null) {
                Set.copyOf(things.apply(technique))
                        .forEach(thing -> counts.merge(thing, 1, Integer::sum));
            }
        }
        return counts.entrySet().stream()
                .map(
                        entry ->
                                new SessionPlan.Need(
                                        entry.getKey(),
                                        entry.getValue(),
                                        inStock.get(entry.getKey().toLowerCase(Locale.ROOT))))
                .sorted(
                        Comparator.comparingInt(SessionPlan.Need::trees)
                                .reversed()
                                .thenComparing(SessionPlan.Need::name))
                .toList();
    }

    private int minutes(ToIntFunction<Technique> minutes) {
        int sum = 0;
        for (var row : rows) {
            var technique = row.technique();
            sum += technique == null ? 0 : minutes.applyAsInt(technique);
        }
        return sum;
    }
}
