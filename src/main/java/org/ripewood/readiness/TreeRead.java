package org.ripewood.readiness;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.Content;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TreeOnDay;

/**
 * A judged tree, read for a sheet.
 *
 * @param styling how the next technique of styling stands; null when nothing of styling is left
 * @param freeOn when nothing of the tree's own is likely to hold that; null when that cannot be
 *     said, or nothing does
 */
record TreeRead(TreeOnDay day, @Nullable Standing styling, @Nullable LocalDate freeOn) {

    static TreeRead of(TreeOnDay day) {
        return of(day, new LeadingTechnique(new TechniquePriority(day.content()).byCode()));
    }

    static TreeRead of(TreeOnDay day, LeadingTechnique leading) {
        var styling = leading.of(allOfStyling(day), day.open().keySet()).orElse(null);
        return new TreeRead(
                day,
                styling,
                styling == null || styling.verdict() != Verdict.HELD ? null : freeOn(day, styling));
    }

    private static @Nullable LocalDate freeOn(TreeOnDay day, Standing styling) {
        return day.openings().of(styling.technique()).flatMap(LeadingReason::freeOn).orElse(null);
    }

    private static List<Standing> allOfStyling(TreeOnDay day) {
        return day.standings().stream()
                .filter(standing -> isStyling(day.content(), standing.technique()))
                .toList();
    }

    static boolean isStyling(Content content, String technique) {
        return content.technique(technique).rule().purpose() == TechniqueRule.Purpose.STYLING;
    }

    /** Whether its next technique of styling is held. */
    boolean heldFromStyling() {
        return styling != null && styling.verdict() == Verdict.HELD;
    }

    /** Whether the tree itself holds it, and no plan or turn alone. */
    boolean heldByTheTree() {
        var next = styling;
        return next != null
                && next.verdict() == Verdict.HELD
                && next.reasons().stream().anyMatch(Holds::byTheTree);
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
