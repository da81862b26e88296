package org.ripewood.core.progress;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A stage of a tree's training, and what a tree must have to leave it for the next.
 *
 * @param order from 1
 * @param readyWhen none when nothing is asked for
 */
public record StageRule(String code, int order, List<Asked> readyWhen) {

    /**
     * One thing a stage asks for. Evidence for it does not age: a tree does not go back a stage
     * because nobody has looked lately.
     *
     * @param when asked for only of trees of which this is known to hold; null for every tree
     */
    public record Asked(Criterion criterion, @Nullable Condition when) {}

    public StageRule {
        readyWhen = List.copyOf(readyWhen);
    }
}
