package org.ripewood.core.route;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Opening;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Value;

/**
 * A technique that is still to be done, or will be once another one is.
 *
 * @param effects what its work makes of facts
 * @param wounding whether its work leaves a wound
 * @param clock the fact whose days its work begins anew; null for none
 * @param standing how it stands; for one that other work makes needed, as if that were done
 * @param waits what it waits for, seen the same way
 * @param facts what was known when it was judged so
 */
record StepAhead(
        TechniqueRule rule,
        List<Effect> effects,
        boolean wounding,
        @Nullable Fact clock,
        Standing standing,
        List<Opening.Wait> waits,
        Facts facts) {

    /** What its work makes of facts, the days since then among them. */
    List<Effect> leaves() {
        if (clock == null) {
            return effects;
        }
        var all = new ArrayList<>(effects);
        all.add(new Effect(clock, Value.of(0)));
        return all;
    }

    String code() {
        return rule.code();
    }

    int stage() {
        return rule.stageOrder();
    }
}
