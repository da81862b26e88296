package org.ripewood.core.progress;

import dev.cel.bundle.CelFactory;
import dev.cel.common.CelValidationException;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime.Program;
import dev.cel.runtime.CelVariableResolver;

import org.ripewood.core.progress.TechniqueText.Check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The rules as CEL: one expression a technique, compiled once, which gives the truth of each reason
 * as a number in a list; what is settled beforehand gives one number alone.
 */
final class CelContender implements Contender {

    private static final int DONE = -1;
    private static final int NOT_NEEDED = -2;

    private record Technique(TechniqueText text, Program program) {}

    private final Map<String, Integer> places;
    private final Map<String, CelTongue.Variable> variables;
    private final Map<String, List<Technique>> bySpecies = new HashMap<>();

    CelContender(Rules rules) {
        this.places = rules.places();
        var tongue = new CelTongue(rules);
        this.variables = tongue.variables();
        for (var traits : rules.species()) {
            var compiled = new ArrayList<Technique>();
            for (var text : new RuleText(tongue, traits, rules).techniques()) {
                compiled.add(new Technique(text, compile(expression(text))));
            }
            bySpecies.put(traits.species(), compiled);
        }
    }

    private static String expression(TechniqueText text) {
        var truths = new ArrayList<String>();
        text.checks().forEach(check -> truths.add(truth(check)));
        truths.add("%s ? 2 : 0".formatted(text.skilled()));
        truths.add(truth(text.season()));
        return "%s ? [%d] : %s ? [%d] : [%s]"
                .formatted(
                        text.done(), DONE, text.notNeeded(), NOT_NEEDED, String.join(", ", truths));
    }

    private static String truth(Check check) {
        var met =
                check.doubted().equals(Bool.FALSE)
                        ? "2"
                        : "(%s ? 1 : 2)".formatted(check.doubted());
        var known =
                check.met().equals(Bool.TRUE) ? met : "(%s ? %s : 0)".formatted(check.met(), met);
        return check.known().equals(Bool.TRUE)
                ? known
                : "(%s ? %s : 1)".formatted(check.known(), known);
    }

    private Program compile(String expression) {
        var builder = CelFactory.standardCelBuilder();
        variables.forEach((name, variable) -> builder.addVar(name, variable.type()));
        var cel = builder.build();
        try {
            return cel.createProgram(cel.compile(expression).getAst());
        } catch (CelValidationException | CelEvaluationException e) {
            throw new IllegalStateException("cannot compile " + expression, e);
        }
    }

    @Override
    public List<Outcome> judge(Subject subject, LocalDate on) {
        var sight = new Sight(subject, on, places);
        CelVariableResolver resolver = name -> Optional.of(variables.get(name).read().apply(sight));
        var techniques = bySpecies.get(subject.traits().species());
        var outcomes = new ArrayList<Outcome>(techniques.size());
        for (var technique : techniques) {
            outcomes.add(judge(technique, resolver));
        }
        return outcomes;
    }

    private static Outcome judge(Technique technique, CelVariableResolver resolver) {
        var code = technique.text().code();
        if (!technique.text().forSpecies()) {
            return new Outcome(code, Verdict.NOT_NEEDED, List.of("species"));
        }
        try {
            return outcome(technique.text(), (List<?>) technique.program().eval(resolver));
        } catch (CelEvaluationException e) {
            throw new IllegalStateException("cannot evaluate " + code, e);
        }
    }

    private static Outcome outcome(TechniqueText text, List<?> truths) {
        int first = number(truths, 0);
        if (first == DONE) {
            return new Outcome(text.code(), Verdict.DONE, List.of());
        }
        if (first == NOT_NEEDED) {
            return new Outcome(text.code(), Verdict.NOT_NEEDED, List.of("needed"));
        }
        var against = new ArrayList<String>();
        int truth = Outcome.YES;
        int checks = text.checks().size();
        for (int i = 0; i < checks; i++) {
            int found = number(truths, i);
            if (found != Outcome.YES) {
                against.add(text.checks().get(i).key());
                truth = Math.min(truth, found);
            }
        }
        var skilled = number(truths, checks) == Outcome.YES;
        int season = number(truths, checks + 1);
        if (!skilled) {
            against.add("skill");
        }
        if (season != Outcome.YES) {
            against.add("season");
        }
        return new Outcome(text.code(), Outcome.verdict(truth, skilled, season), against);
    }

    private static int number(List<?> truths, int at) {
        return ((Long) truths.get(at)).intValue();
    }
}
