package org.ripewood.readiness;

import java.util.Optional;
import org.ripewood.core.progress.Opening;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.Content;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TreeOnDay;

/**
 * The next technique of styling on a tree, and the one reason told of it. Sheets, counts and the
 * tree's own page all ask here, so that they name the same.
 *
 * @param inHand whether somebody has a step of it; then no reason is told
 * @param waits the reason that keeps it waiting, with its outlook; empty when nothing does
 */
public record StylingNext(Standing standing, boolean inHand, Optional<Opening.Wait> waits) {

    /** Of a tree on its day; empty when nothing of styling is left. */
    public static Optional<StylingNext> of(TreeOnDay tree, TechniquePriority order) {
        return of(tree, new LeadingTechnique(order.byCode()));
    }

    static Optional<StylingNext> of(TreeOnDay tree, LeadingTechnique leading) {
        var styling =
                tree.standings().stream()
                        .filter(standing -> isStyling(tree.content(), standing.technique()))
                        .toList();
        return leading.of(styling, tree.open().keySet()).map(standing -> told(tree, standing));
    }

    private static StylingNext told(TreeOnDay tree, Standing standing) {
        var inHand = tree.open().containsKey(standing.technique());
        return new StylingNext(
                standing,
                inHand,
                inHand
                        ? Optional.empty()
                        : tree.openings()
                                .of(standing.technique())
                                .flatMap(
                                        opening ->
                                                LeadingReason.of(
                                                        standing.verdict(), opening, true)));
    }

    /** Whether a technique shapes or shows a tree. */
    public static boolean isStyling(Content content, String technique) {
        return content.technique(technique).rule().purpose() == TechniqueRule.Purpose.STYLING;
    }

    boolean held() {
        return standing.verdict() == Verdict.HELD;
    }
}
