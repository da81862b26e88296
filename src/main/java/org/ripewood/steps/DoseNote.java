package org.ripewood.steps;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.course.Technique;

/**
 * Tells when a reported dose goes beyond its limit. It is not refused, since it has happened; the
 * instructor has to know.
 */
final class DoseNote {

    /** Shares are told in whole per cents; a thousandth is not a breach. */
    private static final double SLACK = 1e-3;

    private DoseNote() {}

    static @Nullable String of(
            Technique technique,
            Traits traits,
            WorkLedger ledger,
            double vigour,
            LocalDate doneOn,
            ReportEntity report) {
        var dose = technique.rule().dose();
        var notes = new ArrayList<String>();
        var foliage = report.foliageShare;
        if (foliage != null && dose != null && dose.kind() == DoseRule.Kind.FOLIAGE) {
            var taken = ledger.takenThisSeason(DoseRule.Kind.FOLIAGE, doneOn);
            note(notes, "foliage", foliage, taken, dose.forTree(traits, vigour).limitShare());
        }
        var roots = report.rootShare;
        if (roots != null) {
            // What a species bears at the root limits every work on it, dosed or not.
            var limit =
                    dose != null && dose.kind() == DoseRule.Kind.ROOT
                            ? dose.forTree(traits, vigour).limitShare()
                            : traits.maxRootShare();
            var taken = ledger.takenThisSeason(DoseRule.Kind.ROOT, doneOn);
            note(notes, "roots", roots, taken, limit);
        }
        return notes.isEmpty() ? null : String.join(" ", notes);
    }

    private static void note(
            List<String> notes, String what, double now, double before, double limit) {
        if (now + before > limit + SLACK) {
            notes.add(
                    "Beyond the limit: %s of the %s with this work, %s earlier this season; at most %s in all."
                            .formatted(
                                    Wording.percent(now),
                                    what,
                                    Wording.percent(before),
                                    Wording.percent(limit)));
        }
    }
}
