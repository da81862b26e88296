package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rules written out as Java, compiled when the contender is made. */
public final class StraightJavaContender implements Contender {

    /** What the written classes are. */
    public interface Judge {
        List<Outcome> judge(Sight sight);
    }

    private final Map<String, Integer> places;
    private final Map<String, Judge> judges = new HashMap<>();

    StraightJavaContender(Rules rules) {
        this.places = rules.places();
        var tongue = Tongue.java(rules);
        for (var traits : rules.species()) {
            var name = "Straight_" + traits.species();
            var texts = new RuleText(tongue, traits, rules).techniques();
            var source = StraightJavaSource.of(name, texts);
            judges.put(traits.species(), (Judge) InMemoryJava.make(name, source));
        }
    }

    @Override
    public List<Outcome> judge(Subject subject, LocalDate on) {
        return judges.get(subject.traits().species()).judge(new Sight(subject, on, places));
    }
}
