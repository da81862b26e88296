package org.ripewood.core.route;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.TechniqueRule;

/**
 * What a route has to know beside the rulebook.
 *
 * @param techniques those the rulebook was compiled from
 * @param clocks technique code to the fact whose days its work begins anew
 * @param effects technique code to what its work makes of facts
 * @param unsettles technique code to the facts its work changes in a way nobody knows beforehand
 * @param goesAfter technique code to the codes of those that go first where a tree needs them too
 * @param wounding codes of the techniques whose work leaves a wound
 * @param durations how long things take
 */
public record RouteRules(
        List<TechniqueRule> techniques,
        Map<String, Fact> clocks,
        Map<String, List<Effect>> effects,
        Map<String, Set<Fact>> unsettles,
        Map<String, List<String>> goesAfter,
        Set<String> wounding,
        Durations durations) {

    public RouteRules {
        techniques = List.copyOf(techniques);
        clocks = Map.copyOf(clocks);
        effects = Map.copyOf(effects);
        unsettles = Map.copyOf(unsettles);
        goesAfter = Map.copyOf(goesAfter);
        wounding = Set.copyOf(wounding);
    }
}
