package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The rules as they stand for one species, in telling order. */
final class SpeciesRules {

    private final CompiledTechnique[] techniques;
    private final Map<String, Integer> positions;
    private final List<CompiledStage> stages;
    private final int asks;

    private SpeciesRules(
            CompiledTechnique[] techniques,
            Map<String, Integer> positions,
            List<CompiledStage> stages,
            int asks) {
        this.techniques = techniques;
        this.positions = positions;
        this.stages = stages;
        this.asks = asks;
    }

    static SpeciesRules compile(
            List<TechniqueRule> ordered, List<StageRule> stages, Traits traits) {
        var positions = new HashMap<String, Integer>();
        var techniques = new CompiledTechnique[ordered.size()];
        var earlier = new HashMap<String, CompiledTechnique>();
        var asks = new HashMap<CompiledCriterion.Ask, Integer>();
        var development = development(ordered, rule -> true);
        for (int i = 0; i < techniques.length; i++) {
            var rule = ordered.get(i);
            var waits = rule.purpose() == TechniqueRule.Purpose.STYLING;
            techniques[i] =
                    CompiledTechnique.compile(
                            rule, i, traits, earlier, waits ? development : new int[0], asks);
            positions.put(rule.code(), i);
            earlier.put(rule.code(), techniques[i]);
        }
        var compiled =
                stages.stream()
                        .map(
                                stage ->
                                        CompiledStage.compile(
                                                stage,
                                                traits,
                                                development(
                                                        ordered,
                                                        rule -> rule.stageOrder() == stage.order()),
                                                asks))
                        .toList();
        return new SpeciesRules(techniques, Map.copyOf(positions), compiled, asks.size());
    }

    /** Positions of the techniques that make the material. */
    private static int[] development(List<TechniqueRule> ordered, Predicate<TechniqueRule> which) {
        return IntStream.range(0, ordered.size())
                .filter(i -> ordered.get(i).purpose() == TechniqueRule.Purpose.DEVELOPMENT)
                .filter(i -> which.test(ordered.get(i)))
                .toArray();
    }

    List<Standing> standings(Subject subject, LocalDate on) {
        return standings(moment(subject, on));
    }

    Openings openings(Subject subject, LocalDate on) {
        var moment = moment(subject, on);
        return new Openings(moment, techniques, positions, standings(moment), stages(moment));
    }

    List<StageStanding> stages(Subject subject, LocalDate on) {
        return stages(moment(subject, on));
    }

    private EvaluationContext moment(Subject subject, LocalDate on) {
        return new EvaluationContext(subject, on, positions, techniques, asks);
    }

    private List<StageStanding> stages(EvaluationContext moment) {
        return stages.stream().map(stage -> stage.judge(moment)).toList();
    }

    private List<Standing> standings(EvaluationContext moment) {
        var standings = new ArrayList<Standing>(techniques.length);
        for (var technique : techniques) {
            standings.add(technique.judge(moment));
        }
        return standings;
    }

    Standing standing(Subject subject, String code, LocalDate on) {
        var position = positions.get(code);
        if (position == null) {
            throw new IllegalArgumentException("no technique " + code + " in the rulebook");
        }
        return techniques[position].judge(moment(subject, on));
    }

    /** What one stage asks of trees of one species. */
    static final class CompiledStage {

        private record Asked(CompiledCriterion criterion, @Nullable Condition when) {}

        private final String code;
        private final List<Asked> asked;
        private final int[] development;

        private CompiledStage(String code, List<Asked> asked, int[] development) {
            this.code = code;
            this.asked = asked;
            this.development = development;
        }

        /**
         * @param development positions of the techniques of this stage that make the material
         */
        static CompiledStage compile(
                StageRule rule,
                Traits traits,
                int[] development,
                Map<CompiledCriterion.Ask, Integer> asks) {
            var asked =
                    rule.readyWhen().stream()
                            .map(
                                    one ->
                                            new Asked(
                                                    CompiledCriterion.compile(
                                                            one.criterion(), traits, 0, asks),
                                                    one.when()))
                            .toList();
            return new CompiledStage(rule.code(), asked, development);
        }

        StageStanding judge(EvaluationContext moment) {
            var reasons = new ArrayList<Reason>(asked.size());
            for (var one : asked) {
                if (one.when() == null || one.when().holds(moment.facts) == Truth.YES) {
                    reasons.add(one.criterion().reason(moment));
                }
            }
            for (int position : development) {
                if (moment.techniques[position].isStillNeeded(moment)) {
                    reasons.add(moment.techniques[position].asNeed());
                }
            }
            return new StageStanding(code, reasons);
        }
    }
}
