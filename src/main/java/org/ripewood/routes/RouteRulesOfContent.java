package org.ripewood.routes;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.route.Effect;
import org.ripewood.core.route.RouteRules;
import org.ripewood.course.Content;
import org.ripewood.course.Technique;

/** What course content says that a route goes by. */
final class RouteRulesOfContent {

    /** As course content names clocks, without what their facts have in front. */
    private static final String CLOCK = "days_since_";

    private RouteRulesOfContent() {}

    static RouteRules of(Content content) {
        var techniques = content.techniques().values();
        return new RouteRules(
                techniques.stream().map(Technique::rule).toList(),
                clocks(content),
                techniques.stream()
                        .collect(Collectors.toMap(Technique::code, RouteRulesOfContent::effects)),
                techniques.stream()
                        .collect(
                                Collectors.toMap(
                                        Technique::code, one -> Set.copyOf(one.unsettles()))),
                techniques.stream()
                        .collect(Collectors.toMap(Technique::code, Technique::goesAfter)),
                techniques.stream()
                        .filter(technique -> technique.asks().contains(Technique.Ask.WOUND))
                        .map(Technique::code)
                        .collect(Collectors.toSet()),
                content.durations());
    }

    private static List<Effect> effects(Technique technique) {
        return technique.effects().stream()
                .map(effect -> new Effect(effect.fact(), effect.value()))
                .toList();
    }

    private static Map<String, Fact> clocks(Content content) {
        var clocks = new HashMap<String, Fact>();
        for (var technique : content.techniques().values()) {
            var clock = technique.startsClock();
            if (clock != null) {
                Fact.find(CLOCK + clock).ifPresent(fact -> clocks.put(technique.code(), fact));
            }
        }
        return clocks;
    }
}
