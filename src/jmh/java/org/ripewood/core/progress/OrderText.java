package org.ripewood.core.progress;

import org.ripewood.core.progress.TechniqueText.Check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Writes what comes before a technique: techniques to be signed off, what a technique that is
 * passed over hands on, and for styling the work that the material still needs.
 */
final class OrderText {

    private final RuleText text;
    private final Tongue tongue;
    private final Traits traits;
    private final Rules rules;
    private final Map<TechniqueRule, Bool> asked = new HashMap<>();
    private final Map<TechniqueRule, Bool> passedOver = new HashMap<>();
    private final Map<String, Bool> locals = new LinkedHashMap<>();

    OrderText(RuleText text, Tongue tongue, Traits traits, Rules rules) {
        this.text = text;
        this.tongue = tongue;
        this.traits = traits;
        this.rules = rules;
    }

    List<Check> checks(TechniqueRule rule) {
        var checks = new ArrayList<Check>();
        var before = new LinkedHashSet<TechniqueRule>();
        collect(rule, before);
        for (var first : before) {
            checks.add(order(rule, first, before));
        }
        handedOn(rule, before).forEach((key, each) -> checks.add(first(key, each)));
        if (rule.purpose() == TechniqueRule.Purpose.STYLING) {
            rules.techniques().stream()
                    .filter(other -> other.purpose() == TechniqueRule.Purpose.DEVELOPMENT)
                    .filter(other -> other.isFor(traits))
                    .map(this::needs)
                    .forEach(checks::add);
        }
        return checks;
    }

    /** Conditions that checks ask more than once, by the names they ask them by. */
    Map<String, Bool> locals() {
        return locals;
    }

    private Bool local(String name, TechniqueRule first, Bool written) {
        var said = tongue.local(name + "_" + first.code(), written);
        if (!said.equals(written)) {
            locals.put(said.toString(), written);
        }
        return said;
    }

    private void collect(TechniqueRule rule, Set<TechniqueRule> before) {
        for (var code : rule.after()) {
            before.add(rules.technique(code));
            collect(rules.technique(code), before);
        }
    }

    private Check needs(TechniqueRule other) {
        return RuleText.check("needs." + other.code(), Bool.TRUE, text.needed(other).not());
    }

    /** Asked of this technique itself, or of one that is passed over. */
    private Bool asked(TechniqueRule rule, TechniqueRule first, Set<TechniqueRule> before) {
        if (rule.after().contains(first.code())) {
            return Bool.TRUE;
        }
        var known = asked.get(first);
        if (known == null) {
            var because =
                    before.stream()
                            .filter(one -> one.after().contains(first.code()))
                            .map(one -> passedOver(rule, one, before))
                            .toList();
            known = local("asked", first, Bool.any(because));
            asked.put(first, known);
        }
        return known;
    }

    private Bool passedOver(TechniqueRule rule, TechniqueRule first, Set<TechniqueRule> before) {
        if (!first.isFor(traits)) {
            return Bool.FALSE;
        }
        var known = passedOver.get(first);
        if (known == null) {
            var goesOn = Bool.all(done(first).not(), text.spared(first));
            known = local("past", first, Bool.all(asked(rule, first, before), goesOn));
            passedOver.put(first, known);
        }
        return known;
    }

    private Bool done(TechniqueRule first) {
        return Bool.atLeast(tongue.done(first.code()), 0);
    }

    private Check order(TechniqueRule rule, TechniqueRule first, Set<TechniqueRule> before) {
        var elsewhere = first.isFor(traits) ? Bool.FALSE : Bool.TRUE;
        var unasked = asked(rule, first, before).not();
        var met = Bool.any(unasked, elsewhere, done(first), text.spared(first));
        return RuleText.check("after." + first.code(), Bool.any(met, text.needed(first)), met);
    }

    private record HandedOn(Bool when, Check check) {}

    /** By key, what hands on a criterion: of several the one that comes latest counts. */
    private Map<String, List<HandedOn>> handedOn(TechniqueRule rule, Set<TechniqueRule> before) {
        var own = rule.criteria().stream().map(Criterion::key).collect(Collectors.toSet());
        var handedOn = new LinkedHashMap<String, List<HandedOn>>();
        var latestFirst = new ArrayList<>(rules.techniques());
        Collections.reverse(latestFirst);
        latestFirst.retainAll(before);
        for (var first : latestFirst) {
            var when = passedOver(rule, first, before);
            for (var criterion : first.criteria()) {
                if (CompiledOrder.MATERIAL.contains(criterion.fact())
                        && !own.contains(criterion.key())
                        && !when.equals(Bool.FALSE)) {
                    handedOn.computeIfAbsent(criterion.key(), none -> new ArrayList<>())
                            .add(new HandedOn(when, text.criterion(criterion, first.stress())));
                }
            }
        }
        return handedOn;
    }

    private static Check first(String key, List<HandedOn> handedOn) {
        var known = new ArrayList<Bool>();
        var met = new ArrayList<Bool>();
        var doubted = new ArrayList<Bool>();
        var others = Bool.TRUE;
        for (var each : handedOn) {
            var counts = Bool.all(others, each.when());
            known.add(Bool.all(counts, each.check().known()));
            met.add(Bool.all(counts, each.check().met()));
            doubted.add(Bool.all(counts, each.check().doubted()));
            others = Bool.all(others, each.when().not());
        }
        return new Check(
                key,
                Bool.any(others, Bool.any(known)),
                Bool.any(others, Bool.any(met)),
                Bool.any(doubted));
    }
}
