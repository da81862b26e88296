package org.ripewood.standing;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The stage a tree is in: what an instructor said last, and until then the first of which it has
 * not all that is asked for.
 *
 * @param order its place in the sequence, from 1
 * @param aim what the stage is for
 * @param confirmedOn the day an instructor said so; null when the rules tell it
 * @param byRules code of the stage as the rules alone tell it
 * @param byRulesTitle its title
 * @param missing what keeps it from the next stage, not so or not known, what earlier stages ask
 *     for among it; none when it has all
 * @param howFar 0 to 1, the mean over all the stage asks for
 */
public record StageView(
        String code,
        String title,
        int order,
        String aim,
        @Nullable LocalDate confirmedOn,
        String byRules,
        String byRulesTitle,
        List<ReasonView> missing,
        double howFar) {

    public StageView {
        missing = List.copyOf(missing);
    }

    /** Whether the rules alone would tell another stage. */
    public boolean differs() {
        return !code.equals(byRules);
    }
}
