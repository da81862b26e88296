package org.ripewood.core.progress;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one stage asks of trees of one species. */
final class CompiledStage {

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
    static CompiledStage compile(StageRule rule, Traits traits, int[] development) {
        var asked =
                rule.readyWhen().stream()
                        .map(
                                one ->
                                        new Asked(
                                                CompiledCriterion.compile(
                                                        one.criterion(), traits, 0),
                                                one.when()))
                        .toList();
        return new CompiledStage(rule.code(), asked, development);
    }

    StageStanding judge(EvaluationContext moment, CompiledTechnique[] all) {
        var reasons = new ArrayList<Reason>(asked.size());
        for (var one : asked) {
            if (one.when() == null || one.when().holds(moment.facts) == Truth.YES) {
                reasons.add(one.criterion().judge(moment));
            }
        }
        for (int position : development) {
            if (all[position].isStillNeeded(moment)) {
                reasons.add(new Reason.OfDevelopment(all[position].rule().code()));
            }
        }
        return new StageStanding(code, reasons);
    }
}
