package org.ripewood.firstlook;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.ripewood.core.progress.Fact;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.Wording;

/** What the record says of a question today, in words. */
public final class Recorded {

    private Recorded() {}

    /** {@code "Recorded: trunk base 42 mm, height 310 mm."}; empty when nothing is of today. */
    public static String today(LookQuestion question, TreeOnDay tree) {
        var told = new ArrayList<String>();
        for (var fact : facts(question)) {
            var evidence = tree.subject().facts().find(fact);
            if (evidence != null && evidence.observedOn().equals(tree.on())) {
                var title = tree.content().text(fact).title();
                told.add(lowerFirst(title) + " " + Wording.value(fact, evidence.value()));
            }
        }
        return told.isEmpty() ? "" : "Recorded: " + String.join(", ", told) + ".";
    }

    private static Set<Fact> facts(LookQuestion question) {
        var facts = EnumSet.noneOf(Fact.class);
        facts.addAll(question.about());
        question.answers().forEach(answer -> facts.addAll(answer.seen().keySet()));
        switch (question) {
            case CUTS -> facts.add(Fact.LARGEST_OPENING_MM);
            case TRUNK -> facts.add(Fact.TRUNK_TARGET_MM);
            case SHOOTS -> facts.add(Fact.SHOOT_EXTENSION_RATIO);
            default -> {
                // Its own facts tell all of it.
            }
        }
        return facts;
    }

    private static String lowerFirst(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
