package org.ripewood.boards;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.readiness.Holds;
import org.ripewood.readiness.StylingNext;
import org.ripewood.standing.AliveDoubt;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.Wording;

/** Tells what is read first about a tree, from what was read of it; asks for nothing more. */
public final class PortraitMaker {

    private final TreeOnDay tree;
    private final TechniquePriority usefulness;

    private PortraitMaker(TreeOnDay tree) {
        this.tree = tree;
        this.usefulness = new TechniquePriority(tree.content());
    }

    /** The portrait of a tree that was just looked at. */
    public static TreePortrait of(TreeOnDay tree) {
        return new PortraitMaker(tree).tell();
    }

    private TreePortrait tell() {
        var styling = StylingNext.of(tree, usefulness).orElse(null);
        var told = styling == null ? null : tree.tell(styling.standing());
        var holds = styling == null || told == null ? List.<ReasonView>of() : holds(styling, told);
        var ready = tree.tree().left() ? List.<Standing>of() : ready();
        var next = ready.isEmpty() ? null : ready.get(0);
        var measures = MeasureNext.of(tree);
        return new TreePortrait(
                AliveDoubt.of(tree).orElse(null),
                sentence(ready, styling, holds.size()),
                told,
                styling != null && styling.inHand(),
                holds.stream().limit(TreePortrait.MOST_HOLDS).toList(),
                Math.max(0, holds.size() - TreePortrait.MOST_HOLDS),
                next == null ? null : tree.tell(next),
                Math.max(0, ready.size() - 1),
                next == null ? 0 : tree.waitingFor(next.technique()),
                measures.isEmpty() ? null : measures.get(0));
    }

    private List<Standing> ready() {
        return tree.free().stream().sorted(usefulness.mostUsefulFirst()).toList();
    }

    /**
     * The reason every sheet tells first, then the others by how much they say of the tree: it
     * holds, then not known, then turns. Nothing holds a step that somebody has in hand.
     */
    private static List<ReasonView> holds(StylingNext styling, TechniqueStanding told) {
        if (styling.inHand()) {
            return List.of();
        }
        var first = styling.waits().map(wait -> wait.reason().key()).orElse("");
        var byKey =
                styling.standing().against().stream()
                        .filter(
                                reason ->
                                        !Holds.isToldByVigour(reason, styling.standing().against()))
                        .collect(Collectors.toMap(Reason::key, PortraitMaker::weight, Math::min));
        return told.against().stream()
                .filter(reason -> byKey.containsKey(reason.key()))
                .sorted(
                        Comparator.<ReasonView, Boolean>comparing(
                                        reason -> !reason.key().equals(first))
                                .thenComparing(
                                        reason -> byKey.getOrDefault(reason.key(), LEAST_WEIGHT)))
                .toList();
    }

    private static final int LEAST_WEIGHT = 4;

    private static int weight(Reason reason) {
        if (Holds.byItself(reason)) {
            return reason instanceof Reason.OfNeed ? 1 : 0;
        }
        if (reason instanceof Reason.OfOrder || reason instanceof Reason.OfDevelopment) {
            return 3;
        }
        return reason.truth() == Truth.UNKNOWN ? 2 : LEAST_WEIGHT;
    }

    private String sentence(List<Standing> ready, @Nullable StylingNext styling, int holds) {
        if (tree.tree().left()) {
            return "The tree left the school, so nothing is planned for it.";
        }
        if (styling == null) {
            return "Nothing of styling is left to do on this tree.";
        }
        var technique = styling.standing().technique();
        var title = tree.content().titleOf(technique);
        if (styling.inHand()) {
            return "“%s” is under way.".formatted(title);
        }
        if (styling.standing().verdict() == Verdict.READY) {
            return "“%s” may go on: the tree has all that it asks for.".formatted(title);
        }
        var waits = "“%s” %s".formatted(title, waits(styling.standing().verdict(), holds));
        return ready.stream()
                .filter(one -> StylingNext.isStyling(tree.content(), one.technique()))
                .findFirst()
                .map(one -> "%s; “%s” may go on.".formatted(waits, titleOf(one)))
                .orElse(waits + ".");
    }

    private String titleOf(Standing standing) {
        return tree.content().titleOf(standing.technique());
    }

    private static String waits(Verdict verdict, int holds) {
        return switch (verdict) {
            case HELD -> "is held, for " + Wording.counted(holds, "reason");
            case MEASURE ->
                    "waits for %s to be looked at".formatted(Wording.counted(holds, "thing"));
            case LESSON -> "waits for a lesson to be learnt";
            case SEASON -> "waits for its season";
            case READY, DONE, NOT_NEEDED ->
                    throw new IllegalStateException("waits for nothing: " + verdict);
        };
    }
}
