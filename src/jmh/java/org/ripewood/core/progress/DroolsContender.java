package org.ripewood.core.progress;

import org.kie.api.io.ResourceType;
import org.kie.api.runtime.KieSession;
import org.kie.internal.utils.KieHelper;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The rules as DRL in Drools: one rule base a species, and a session kept for all its trees, into
 * which each tree goes, fires, and is taken out again; that was quicker than a new session a tree.
 */
final class DroolsContender implements Contender {

    private record Judge(KieSession session, List<TechniqueText> texts) {}

    /** Held, or its level would be forgotten. Lines nobody reads took a seventh of the time. */
    private static final Logger LOG = Logger.getLogger("org.drools");

    private final Map<String, Integer> places;
    private final Map<String, Judge> judges = new HashMap<>();

    DroolsContender(Rules rules) {
        LOG.setLevel(Level.WARNING);
        this.places = rules.places();
        var tongue = Tongue.drl(rules);
        for (var traits : rules.species()) {
            var texts = new RuleText(tongue, traits, rules).techniques();
            var source = DrlSource.of("drl." + traits.species(), texts);
            var base = new KieHelper().addContent(source, ResourceType.DRL).build();
            judges.put(traits.species(), new Judge(base.newKieSession(), texts));
        }
    }

    @Override
    public List<Outcome> judge(Subject subject, LocalDate on) {
        var judge = judges.get(subject.traits().species());
        var session = judge.session();
        var tally = new Tally(judge.texts());
        session.setGlobal("tally", tally);
        var handle = session.insert(new Sight(subject, on, places));
        session.fireAllRules();
        session.delete(handle);
        return tally.outcomes();
    }
}
