package org.ripewood.boards;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.readiness.Holds;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeLook;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.Wording;

/** Tells what is read first about a tree, from what was read of it; asks for nothing more. */
public final class PortraitMaker {

    private final TreeLook look;
    private final TreeOnDay tree;
    private final TechniquePriority usefulness;

    private PortraitMaker(TreeLook look) {
        this.look = look;
        this.tree = look.day();
        this.usefulness = new TechniquePriority(tree.content());
    }

    /** The portrait of a tree that was just looked at. */
    public static TreePortrait of(TreeLook look) {
        return new PortraitMaker(look).tell();
    }

    private TreePortrait tell() {
        var styling = styling();
        var told = styling == null ? null : tree.tell(styling);
        var holds = styling == null || told == null ? List.<ReasonView>of() : holds(styling, told);
        var ready = tree.tree().left() ? List.<Standing>of() : ready();
        var next = ready.isEmpty() ? null : ready.get(0);
        var measures = MeasureNext.of(tree);
        return new TreePortrait(
                sentence(ready, styling, told, holds.size()),
                told,
                holds.stream().limit(TreePortrait.MOST_HOLDS).toList(),
                Math.max(0, holds.size() - TreePortrait.MOST_HOLDS),
                next == null ? null : tree.tell(next),
                Math.max(0, ready.size() - 1),
                next == null ? 0 : usefulness.waitingFor(next.technique()),
                measures.isEmpty() ? null : measures.get(0));
    }

    private List<Standing> ready() {
        return tree.free().stream().sorted(usefulness.mostUsefulFirst()).toList();
    }

    /**
     * The styling step that waits and comes next: of the earliest stage, and within it one that
     * waits for no other styling. One that may go on, or is under way, waits for nothing; one that
     * nobody can say yet whether the tree needs it comes behind all others.
     */
    private @Nullable Standing styling() {
        return tree.standings().stream()
                .filter(standing -> WAITING.contains(standing.verdict()))
                .filter(this::isStyling)
                .filter(standing -> !tree.open().containsKey(standing.technique()))
                .min(
                        Comparator.comparing(PortraitMaker::isOnlyALook)
                                .thenComparing(this::stageOrder)
                                .thenComparing(this::waitsForStyling)
                                .thenComparing(usefulness.mostUsefulFirst()))
                .orElse(null);
    }

    private static final Set<Verdict> WAITING =
            EnumSet.of(Verdict.HELD, Verdict.MEASURE, Verdict.LESSON, Verdict.SEASON);

    private static boolean isOnlyALook(Standing standing) {
        return standing.verdict() == Verdict.MEASURE
                && standing.reasons().stream()
                        .anyMatch(
                                reason ->
                                        reason instanceof Reason.OfNeed
                                                && reason.truth() == Truth.UNKNOWN);
    }

    private boolean isStyling(Standing standing) {
        return tree.content().technique(standing.technique()).rule().purpose()
                == TechniqueRule.Purpose.STYLING;
    }

    private int stageOrder(Standing standing) {
        return tree.content().technique(standing.technique()).rule().stageOrder();
    }

    private boolean waitsForStyling(Standing standing) {
        return standing.against().stream()
                .anyMatch(
                        reason ->
                                reason instanceof Reason.OfOrder order
                                        && tree.find(order.technique())
                                                .map(this::isStyling)
                                                .orElse(false));
    }

    /** Reasons told by how much they say of the tree: it holds, then not known, then turns. */
    private static List<ReasonView> holds(Standing styling, TechniqueStanding told) {
        var byKey =
                styling.against().stream()
                        .collect(Collectors.toMap(Reason::key, PortraitMaker::weight, Math::min));
        return told.against().stream()
                .sorted(
                        Comparator.comparingInt(
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

    private String sentence(
            List<Standing> ready,
            @Nullable Standing styling,
            @Nullable TechniqueStanding told,
            int holds) {
        if (look.tree().left()) {
            return "The tree left the school, so nothing is planned for it.";
        }
        var open =
                ready.stream()
                        .filter(this::isStyling)
                        .findFirst()
                        .map(standing -> tree.content().titleOf(standing.technique()));
        if (styling == null || told == null) {
            return open.map("“%s” may go on: the tree has all that it asks for."::formatted)
                    .orElse("No styling waits on this tree today.");
        }
        var waits = "“%s” %s.".formatted(told.title(), waits(styling.verdict(), holds));
        return open.map(title -> "“%s” may go on; %s".formatted(title, waits)).orElse(waits);
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
