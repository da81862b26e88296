package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rules as they stand for one species, in telling order. */
final class SpeciesRules {

    private final CompiledTechnique[] techniques;
    private final Map<String, Integer> positions;

    private SpeciesRules(CompiledTechnique[] techniques, Map<String, Integer> positions) {
        this.techniques = techniques;
        this.positions = positions;
    }

    static SpeciesRules compile(List<TechniqueRule> ordered, Traits traits) {
        var positions = new HashMap<String, Integer>();
        var techniques = new CompiledTechnique[ordered.size()];
        for (int i = 0; i < techniques.length; i++) {
            var rule = ordered.get(i);
            var after = rule.after().stream().mapToInt(positions::get).toArray();
            techniques[i] = CompiledTechnique.compile(rule, i, traits, after);
            positions.put(rule.code(), i);
        }
        return new SpeciesRules(techniques, Map.copyOf(positions));
    }

    List<Standing> standings(Subject subject, LocalDate on) {
        return standings(new EvaluationContext(subject, on, positions));
    }

    Openings openings(Subject subject, LocalDate on) {
        var moment = new EvaluationContext(subject, on, positions);
        return new Openings(moment, techniques, positions, standings(moment));
    }

    private List<Standing> standings(EvaluationContext moment) {
        var standings = new ArrayList<Standing>(techniques.length);
        for (var technique : techniques) {
            standings.add(technique.judge(moment, techniques));
        }
        return standings;
    }

    Standing standing(Subject subject, String code, LocalDate on) {
        var position = positions.get(code);
        if (position == null) {
            throw new IllegalArgumentException("no technique " + code + " in the rulebook");
        }
        var moment = new EvaluationContext(subject, on, positions);
        return techniques[position].judge(moment, techniques);
    }
}
