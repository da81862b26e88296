package org.ripewood.core.progress;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rules and species a comparison runs on, in the order in which they are told. */
record Rules(List<TechniqueRule> techniques, List<Traits> species) {

    Rules {
        techniques = Rulebook.inOrder(techniques);
        species = List.copyOf(species);
    }

    /** Where each technique stands in the list. */
    Map<String, Integer> places() {
        var places = new HashMap<String, Integer>();
        for (var rule : techniques) {
            places.put(rule.code(), places.size());
        }
        return Map.copyOf(places);
    }

    TechniqueRule technique(String code) {
        return techniques.stream()
                .filter(rule -> rule.code().equals(code))
                .findFirst()
                .orElseThrow();
    }
}
