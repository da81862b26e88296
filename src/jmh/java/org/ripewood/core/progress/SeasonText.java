package org.ripewood.core.progress;

import org.ripewood.core.progress.TechniqueText.Check;
import org.ripewood.core.season.StageRange;

import java.util.ArrayList;
import java.util.List;

/** Writes a season rule for one species. */
final class SeasonText {

    private final Tongue tongue;
    private final Traits traits;

    SeasonText(Tongue tongue, Traits traits) {
        this.tongue = tongue;
        this.traits = traits;
    }

    Check check(SeasonRule rule) {
        var window = rule.windows().stream().filter(each -> each.speaksOf(traits)).findFirst();
        var open = window.map(SeasonRule.Window::stages).orElse(List.of());
        var closed = new ArrayList<StageRange>();
        rule.avoid().stream()
                .filter(avoid -> avoid.speaksOf(traits))
                .forEach(avoid -> closed.addAll(avoid.stages()));
        var inWindow = rule.windows().isEmpty() ? Bool.TRUE : leaves(open);
        var shut = Bool.any(leaves(closed), flowers(closed));
        var met = Bool.all(shut.not(), Bool.any(inWindow, flowers(open)));
        return new Check("season", known(shut, inWindow, open, closed), met, Bool.FALSE);
    }

    /** Unseen flowers could open the window, or close it. */
    private Bool known(Bool shut, Bool inWindow, List<StageRange> open, List<StageRange> closed) {
        if (!ofFlowers(open) && !ofFlowers(closed)) {
            return Bool.TRUE;
        }
        var seen = Bool.atLeast(tongue.figure("flowers"), 0);
        return Bool.any(
                shut,
                Bool.all(inWindow.not(), ofFlowers(open) ? seen : Bool.TRUE),
                Bool.all(inWindow, ofFlowers(closed) ? seen : Bool.TRUE));
    }

    private static boolean ofFlowers(List<StageRange> ranges) {
        return ranges.stream().anyMatch(StageRange::onFlowerTrack);
    }

    private Bool leaves(List<StageRange> ranges) {
        return within(
                tongue.figure("stage"),
                ranges.stream().filter(range -> !range.onFlowerTrack()).toList());
    }

    private Bool flowers(List<StageRange> ranges) {
        var flowers = tongue.figure("flowers");
        var within = within(flowers, ranges.stream().filter(StageRange::onFlowerTrack).toList());
        return Bool.all(Bool.atLeast(flowers, 0), within);
    }

    private static Bool within(String stage, List<StageRange> ranges) {
        return Bool.any(ranges.stream().map(range -> within(stage, range)).toList());
    }

    private static Bool within(String stage, StageRange range) {
        var begun = Bool.atLeast(stage, range.from());
        var notOver = Bool.atMost(stage, range.to());
        return range.from() <= range.to() ? Bool.all(begun, notOver) : Bool.any(begun, notOver);
    }
}
