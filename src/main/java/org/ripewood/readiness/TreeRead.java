package org.ripewood.readiness;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Verdict;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TreeOnDay;

/**
 * A judged tree, read for a sheet.
 *
 * @param next the next technique of styling; null when nothing of styling is left
 * @param freeOn when nothing of the tree's own is likely to hold that; null when that cannot be
 *     said, or nothing does
 */
record TreeRead(TreeOnDay day, @Nullable StylingNext next, @Nullable LocalDate freeOn) {

    static TreeRead of(TreeOnDay day) {
        return of(day, new LeadingTechnique(new TechniquePriority(day.content()).byCode()));
    }

    static TreeRead of(TreeOnDay day, LeadingTechnique leading) {
        var next = StylingNext.of(day, leading).orElse(null);
        return new TreeRead(
                day, next, next == null || !next.held() ? null : freeOn(day, next.standing()));
    }

    private static @Nullable LocalDate freeOn(TreeOnDay day, Standing styling) {
        return day.openings().of(styling.technique()).flatMap(LeadingReason::freeOn).orElse(null);
    }

    /** How the next technique of styling stands; null when nothing of styling is left. */
    @Nullable Standing styling() {
        return next == null ? null : next.standing();
    }

    /** Whether its next technique of styling is held. */
    boolean heldFromStyling() {
        return next != null && next.held();
    }

    /** Whether the tree itself holds it, and no plan or turn alone. */
    boolean heldByTheTree() {
        var held = next;
        return held != null
                && held.held()
                && held.standing().reasons().stream().anyMatch(Holds::byTheTree);
    }

    /** Whether nothing of the tree's own is likely to hold its styling on a day. */
    boolean isFree(LocalDate by) {
        return freeOn != null && !freeOn.isAfter(by);
    }

    double latitudeDegrees() {
        return day.subject().ledger().latitudeDegrees();
    }

    /** Those of some techniques that are held on it. */
    List<Standing> heldAmong(Collection<String> techniques) {
        return day.standings().stream()
                .filter(standing -> standing.verdict() == Verdict.HELD)
                .filter(standing -> techniques.contains(standing.technique()))
                .toList();
    }
}
