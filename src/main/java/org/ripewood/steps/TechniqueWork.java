package org.ripewood.steps;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Work;
import org.ripewood.course.Technique;

/** What work by a technique costs a tree, as its rule says. */
public final class TechniqueWork {

    private TechniqueWork() {}

    /**
     * Work as the ledgers count it. A dose nobody stated counts as what the technique usually
     * takes: the ledger errs for care.
     *
     * @param foliageShare share of the foliage taken, 0 to 1; null when nobody stated it
     * @param rootShare share of the roots taken, 0 to 1; null when nobody stated it
     */
    public static Work of(
            Technique technique,
            LocalDate doneOn,
            @Nullable Double foliageShare,
            @Nullable Double rootShare) {
        var rule = technique.rule();
        return new Work(
                technique.code(),
                doneOn,
                rule.stress(),
                rule.recoveryDays(),
                share(foliageShare, rule.dose(), DoseRule.Kind.FOLIAGE),
                share(rootShare, rule.dose(), DoseRule.Kind.ROOT));
    }

    private static double share(
            @Nullable Double stated, @Nullable DoseRule dose, DoseRule.Kind kind) {
        if (stated != null) {
            return stated;
        }
        return dose != null && dose.kind() == kind ? dose.typicalShare() : 0;
    }
}
