package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ripewood.core.season.StageRange;

/**
 * The rules of one content revision, compiled for every species of it; immutable, safe to share.
 *
 * <p>Compiling resolves overrides, season windows and the order of techniques once, so that judging
 * walks plain arrays.
 */
public final class Rulebook {

    private final Map<String, SpeciesRules> bySpecies;
    private final List<StageRule> stages;

    private Rulebook(Map<String, SpeciesRules> bySpecies, List<StageRule> stages) {
        this.bySpecies = bySpecies;
        this.stages = stages;
    }

    /** Compiles rules of techniques alone, without stages. */
    public static Rulebook compile(
            Collection<TechniqueRule> techniques, Collection<Traits> species) {
        return compile(techniques, List.of(), species);
    }

    /**
     * Compiles rules.
     *
     * @param stages in their order
     * @throws IllegalArgumentException when {@code after} names an unknown technique or goes in a
     *     circle, or when work on the material comes after styling, which waits for it; content is
     *     checked for all of these, with names, before it comes here
     */
    public static Rulebook compile(
            Collection<TechniqueRule> techniques,
            List<StageRule> stages,
            Collection<Traits> species) {
        var ordered = inOrder(techniques);
        requireMaterialFirst(ordered);
        var bySpecies = new HashMap<String, SpeciesRules>();
        for (var traits : species) {
            bySpecies.put(traits.species(), SpeciesRules.compile(ordered, stages, traits));
        }
        return new Rulebook(Map.copyOf(bySpecies), List.copyOf(stages));
    }

    /**
     * How every technique stands for a tree on a day, in an order in which what comes first is told
     * first; of a species that is not in the rulebook no technique is judged.
     */
    public List<Standing> standings(Subject subject, LocalDate on) {
        return rulesFor(subject).standings(subject, on);
    }

    /**
     * How one technique stands for a tree on a day.
     *
     * @throws IllegalArgumentException when the technique is not in the rulebook for the species
     */
    public Standing standing(Subject subject, String technique, LocalDate on) {
        return rulesFor(subject).standing(subject, technique, on);
    }

    /**
     * How every technique stands for a tree on a day, and when each could be done; of a species
     * that is not in the rulebook no technique is judged.
     */
    public Openings openings(Subject subject, LocalDate on) {
        return rulesFor(subject).openings(subject, on);
    }

    /**
     * How far a tree is through each stage on a day, the first stage first; a species that is not
     * in the rulebook has no overrides.
     */
    public List<StageStanding> stages(Subject subject, LocalDate on) {
        return rulesFor(subject).stages(subject, on);
    }

    private SpeciesRules rulesFor(Subject subject) {
        var rules = bySpecies.get(subject.traits().species());
        return rules == null ? SpeciesRules.compile(List.of(), stages, subject.traits()) : rules;
    }

    private static void requireMaterialFirst(List<TechniqueRule> ordered) {
        var behindStyling = new HashSet<String>();
        for (var rule : ordered) {
            var behind = rule.after().stream().anyMatch(behindStyling::contains);
            if (behind && rule.purpose() == TechniqueRule.Purpose.DEVELOPMENT) {
                throw new IllegalArgumentException(
                        rule.code() + " is work on the material and comes after styling");
            }
            if (behind || rule.purpose() == TechniqueRule.Purpose.STYLING) {
                behindStyling.add(rule.code());
            }
        }
    }

    /** Stage by stage as far as {@code after} allows: Kahn's algorithm over a sorted list. */
    static List<TechniqueRule> inOrder(Collection<TechniqueRule> techniques) {
        var waiting = new LinkedHashMap<String, TechniqueRule>();
        techniques.stream()
                .sorted(
                        Comparator.comparingInt(TechniqueRule::stageOrder)
                                .thenComparing(TechniqueRule::code))
                .forEach(rule -> waiting.put(rule.code(), rule));
        var ordered = new ArrayList<TechniqueRule>();
        var placed = new HashSet<String>();
        var queue = new ArrayDeque<>(waiting.values());
        int passedOver = 0;
        while (!queue.isEmpty()) {
            var rule = queue.removeFirst();
            if (placed.containsAll(rule.after())) {
                ordered.add(rule);
                placed.add(rule.code());
                passedOver = 0;
            } else {
                queue.addLast(rule);
                passedOver++;
                if (passedOver > queue.size()) {
                    throw new IllegalArgumentException(
                            "after names an unknown technique or goes in a circle at "
                                    + rule.code());
                }
            }
        }
        return ordered;
    }

    /** Marks the stages of these ranges. */
    static BitSet stagesOf(Collection<StageRange> ranges) {
        var open = new BitSet(100);
        for (int stage = 0; stage < 100; stage++) {
            int asked = stage;
            open.set(stage, ranges.stream().anyMatch(range -> range.holds(asked)));
        }
        return open;
    }
}
