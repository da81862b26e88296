package org.ripewood.core.route;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
 * @param unsettles facts its work changes in a way nobody knows beforehand
 * @param goesAfter codes of the techniques that go first where the tree needs them too
 * @param wounding whether its work leaves a wound
 * @param clock the fact whose days its work begins anew; null for none
 * @param standing how it stands; for one that other work makes needed, as if that were done
 * @param waits what it waits for, seen the same way
 * @param facts what was known when it was judged so
 * @param opens the day on which it can be done as things stand, when that is today or in the year
 *     ahead; null when it is not, or cannot be said
 */
record StepAhead(
        TechniqueRule rule,
        List<Effect> effects,
        Set<Fact> unsettles,
        List<String> goesAfter,
        boolean wounding,
        @Nullable Fact clock,
        Standing standing,
        List<Opening.Wait> waits,
        Facts facts,
        @Nullable LocalDate opens) {

    /** What its work makes of facts, the days since then among them. */
    List<Effect> leaves() {
        if (clock == null) {
            return effects;
        }
        var all = new ArrayList<>(effects);
        all.add(new Effect(clock, Value.of(0)));
        return all;
    }

    /**
     * Whether it may begin today or in the year ahead as things stand. Then nothing that is merely
     * expected of the tree goes before it.
     */
    boolean isOpen() {
        return opens != null;
    }

    /** The same, after steps that have to be done first. */
    StepAhead notOpen() {
        return new StepAhead(
                rule, effects, unsettles, goesAfter, wounding, clock, standing, waits, facts, null);
    }

    String code() {
        return rule.code();
    }

    int stage() {
        return rule.stageOrder();
    }
}
