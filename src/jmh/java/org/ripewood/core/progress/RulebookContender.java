package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The engine of this house. The keys are read off the reasons against. */
final class RulebookContender implements Contender {

    private final Rulebook rulebook;

    RulebookContender(Rules rules) {
        this.rulebook = Rulebook.compile(rules.techniques(), rules.species());
    }

    @Override
    public List<Outcome> judge(Subject subject, LocalDate on) {
        var standings = rulebook.standings(subject, on);
        var outcomes = new ArrayList<Outcome>(standings.size());
        for (var standing : standings) {
            outcomes.add(new Outcome(standing.technique(), standing.verdict(), against(standing)));
        }
        return outcomes;
    }

    private static List<String> against(Standing standing) {
        var against = standing.against();
        var keys = new ArrayList<String>(against.size());
        against.forEach(reason -> keys.add(reason.key()));
        return keys;
    }
}
