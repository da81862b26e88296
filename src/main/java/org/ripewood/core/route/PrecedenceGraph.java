package org.ripewood.core.route;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Outlook;

/**
 * The turns of all steps that lead to the goal, and what follows on what; checked for circles.
 *
 * <p>Turns stand in an order in which what comes first stands first, and earlier stages before
 * later ones as far as that allows.
 */
final class PrecedenceGraph {

    /**
     * One time a step is done.
     *
     * @param number 1 for the first
     * @param waits what it waits for apart from other turns
     */
    record Turn(RouteStep step, int number, List<Wait> waits) {}

    /**
     * One turn has to wait for another.
     *
     * @param lagDays sure days in between
     * @param lag what else has to go by in between; null for nothing
     */
    record Arrow(int from, int to, int lagDays, @Nullable Lag lag) {}

    final List<Turn> turns;
    final List<Arrow> arrows;

    private PrecedenceGraph(List<Turn> turns, List<Arrow> arrows) {
        this.turns = turns;
        this.arrows = arrows;
    }

    /**
     * Lays out what leads to a goal stage.
     *
     * @throws IllegalArgumentException when two steps share a code or steps go in a circle
     */
    static PrecedenceGraph towards(int goalStageOrder, List<RouteStep> steps) {
        var byCode = new LinkedHashMap<String, RouteStep>();
        for (var step : steps) {
            if (byCode.put(step.code(), step) != null) {
                throw new IllegalArgumentException("two steps are called " + step.code());
            }
        }
        var ordered = inOrder(byCode);
        var wanted = wanted(goalStageOrder, ordered, byCode);
        var turns = new ArrayList<Turn>();
        var arrows = new ArrayList<Arrow>();
        Map<String, Integer> firstTurn = new HashMap<>();
        for (var step : ordered) {
            if (!wanted.contains(step.code()) || step.turns() == 0) {
                continue;
            }
            int first = turns.size();
            arrows.addAll(arrowsTo(first, step, byCode, firstTurn));
            firstTurn.put(step.code(), first);
            int repeats = step.stageOrder() <= goalStageOrder ? step.turns() : 1;
            for (int number = 1; number <= repeats; number++) {
                turns.add(new Turn(step, number, number == 1 ? waits(step, byCode) : List.of()));
                if (number > 1) {
                    int here = first + number - 1;
                    arrows.add(new Arrow(here - 1, here, step.repeatAfterDays(), null));
                }
            }
        }
        arrows.addAll(stageByStage(turns));
        return new PrecedenceGraph(List.copyOf(turns), List.copyOf(arrows));
    }

    /**
     * From every turn that takes its place in the order of the stages to those of the next stage
     * that wait for theirs; through them it holds for later stages too. What {@code after} has put
     * the other way round stays so.
     */
    private static List<Arrow> stageByStage(List<Turn> turns) {
        var byStage = new TreeMap<Integer, List<Integer>>();
        for (int i = 0; i < turns.size(); i++) {
            var step = turns.get(i).step();
            if (step.turn() != RouteStep.Turn.NONE) {
                byStage.computeIfAbsent(step.stageOrder(), any -> new ArrayList<>()).add(i);
            }
        }
        var arrows = new ArrayList<Arrow>();
        List<Integer> before = List.of();
        for (var stage : byStage.values()) {
            for (int from : before) {
                stage.stream()
                        .filter(to -> from < to && waitsForStages(turns.get(to)))
                        .forEach(to -> arrows.add(new Arrow(from, to, 0, null)));
            }
            var first = before;
            boolean handsOn =
                    stage.stream()
                            .anyMatch(
                                    to ->
                                            waitsForStages(turns.get(to))
                                                    && first.stream().allMatch(from -> from < to));
            before = handsOn ? stage : Stream.concat(first.stream(), stage.stream()).toList();
        }
        return arrows;
    }

    private static boolean waitsForStages(Turn turn) {
        return turn.number() == 1 && turn.step().turn() == RouteStep.Turn.WAITS;
    }

    /** A step's own waits, and what is left of time that already runs since work done before. */
    private static List<Wait> waits(RouteStep step, Map<String, RouteStep> byCode) {
        var waits = new ArrayList<>(step.waits());
        var doneOn = step.doneOn();
        if (doneOn != null) {
            var due = Outlook.Expected.on(doneOn.plusDays(step.repeatAfterDays()));
            waits.add(new Wait("repeat", "repeat", due, Wait.Assumption.MET_NEXT_SEASON));
        }
        for (var lag : step.lags()) {
            var before = byCode.get(lag.after());
            var since = before == null ? null : before.doneOn();
            if (since != null) {
                waits.add(Wait.of(lag.key(), lag.since(since)));
            }
        }
        return List.copyOf(waits);
    }

    private static List<Arrow> arrowsTo(
            int to, RouteStep step, Map<String, RouteStep> byCode, Map<String, Integer> firstTurn) {
        var arrows = new ArrayList<Arrow>();
        for (var code : new LinkedHashSet<>(step.after())) {
            var before = byCode.get(code);
            if (before != null && !before.behind()) {
                arrows.add(new Arrow(require(firstTurn, code), to, 0, null));
            }
        }
        for (var lag : step.lags()) {
            var before = byCode.get(lag.after());
            if (before != null && !before.behind()) {
                arrows.add(new Arrow(require(firstTurn, lag.after()), to, 0, lag));
            }
        }
        return arrows;
    }

    private static int require(Map<String, Integer> firstTurn, String code) {
        var found = firstTurn.get(code);
        if (found == null) {
            throw new IllegalStateException(code + " should have been laid out before");
        }
        return found;
    }

    /** The goal's own steps and whatever has to come before one of them. */
    private static Set<String> wanted(
            int goalStageOrder, List<RouteStep> ordered, Map<String, RouteStep> byCode) {
        var wanted = new HashSet<String>();
        for (int i = ordered.size() - 1; i >= 0; i--) {
            var step = ordered.get(i);
            if (step.turns() > 0
                    && (step.stageOrder() <= goalStageOrder || wanted.contains(step.code()))) {
                wanted.add(step.code());
                for (var code : before(step)) {
                    var before = byCode.get(code);
                    if (before != null && !before.behind()) {
                        wanted.add(code);
                    }
                }
            }
        }
        return wanted;
    }

    private static Set<String> before(RouteStep step) {
        var before = new HashSet<>(step.after());
        step.lags().forEach(lag -> before.add(lag.after()));
        return before;
    }

    /** Kahn's algorithm over the steps sorted by stage and code, as in the rulebook. */
    private static List<RouteStep> inOrder(Map<String, RouteStep> byCode) {
        var waiting =
                new ArrayDeque<>(
                        byCode.values().stream()
                                .sorted(
                                        Comparator.comparingInt(RouteStep::stageOrder)
                                                .thenComparing(RouteStep::code))
                                .toList());
        var ordered = new ArrayList<RouteStep>();
        var placed = new HashSet<String>();
        int passedOver = 0;
        while (!waiting.isEmpty()) {
            var step = waiting.removeFirst();
            var free =
                    before(step).stream()
                            .allMatch(code -> placed.contains(code) || !byCode.containsKey(code));
            if (free) {
                ordered.add(step);
                placed.add(step.code());
                passedOver = 0;
            } else {
                waiting.addLast(step);
                if (++passedOver > waiting.size()) {
                    throw new IllegalArgumentException(
                            "steps go in a circle at " + step.code() + " after " + before(step));
                }
            }
        }
        return ordered;
    }
}
