package org.ripewood.core.route;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Outlook;

/** Puts what was counted into a route. */
final class RouteSummary {

    private final PrecedenceGraph network;
    private final YearsAhead terrain;
    private final RandomDraw draw;
    private final Tally tally;

    /** By turn how many turns are usually done before it; no two are equal. */
    private final int[] usualPlace;

    RouteSummary(PrecedenceGraph network, YearsAhead terrain, RandomDraw draw, Tally tally) {
        this.network = network;
        this.terrain = terrain;
        this.draw = draw;
        this.tally = tally;
        usualPlace = usualPlaces();
    }

    /** By half of the draws, and turns of one day as they stand in the network. */
    private int[] usualPlaces() {
        int[] middle = new int[network.turns.size()];
        for (int i = 0; i < middle.length; i++) {
            var days = tally.days[i].clone();
            Arrays.sort(days);
            middle[i] = days[Math.max(0, (days.length + 1) / 2 - 1)];
        }
        var order =
                IntStream.range(0, middle.length)
                        .boxed()
                        .sorted(
                                Comparator.<Integer>comparingInt(i -> middle[i])
                                        .thenComparing(Comparator.naturalOrder()))
                        .toList();
        int[] places = new int[middle.length];
        for (int place = 0; place < places.length; place++) {
            places[order.get(place)] = place;
        }
        return places;
    }

    Route route(int goalStageOrder, int draws, long seed) {
        var goal = network.turns.isEmpty() ? new Outlook.Already() : outlook(tally.goalDays);
        return new Route(
                terrain.first,
                goalStageOrder,
                goal,
                steps(draws),
                chain(),
                waitings(),
                unsaid(),
                draws,
                seed);
    }

    private List<Route.Step> steps(int draws) {
        var assumed = assumed();
        var onChain = usualChain();
        var steps = new ArrayList<Route.Step>();
        for (int i = 0; i < network.turns.size(); i++) {
            var turn = network.turns.get(i);
            steps.add(
                    new Route.Step(
                            turn.step().code(),
                            turn.number(),
                            turn.step().stageOrder(),
                            outlook(tally.days[i]),
                            shareBySeason(tally.days[i]),
                            (double) tally.onChain[i] / draws,
                            decider(i, onChain.contains(i)),
                            assumed[i]));
        }
        return steps;
    }

    private boolean[] assumed() {
        var assumed = new boolean[network.turns.size()];
        for (int i = 0; i < assumed.length; i++) {
            assumed[i] = network.turns.get(i).waits().stream().anyMatch(Wait::takenForGranted);
        }
        network.arrows.stream()
                .sorted(Comparator.comparingInt(PrecedenceGraph.Arrow::from))
                .forEach(arrow -> assumed[arrow.to()] |= assumed[arrow.from()]);
        return assumed;
    }

    /** The least days by which a tenth, half and nine tenths of the draws are there. */
    private Outlook outlook(int[] days) {
        var sorted = days.clone();
        Arrays.sort(sorted);
        var earliest = quantile(sorted, 0.1);
        var likely = quantile(sorted, 0.5);
        if (earliest == null || likely == null) {
            return new Outlook.Unsaid(
                    "In more than half of the draws it does not come about within %d years."
                            .formatted(Outlook.REACH_YEARS));
        }
        return new Outlook.Expected(earliest, likely, quantile(sorted, 0.9));
    }

    private @Nullable LocalDate quantile(int[] sorted, double probability) {
        int at = (int) Math.ceil(probability * sorted.length - 1e-9) - 1;
        int day = sorted[Math.max(0, at)];
        return day == YearsAhead.NEVER ? null : terrain.dateOf(day);
    }

    private SortedMap<LocalDate, Double> shareBySeason(int[] days) {
        var shares = new TreeMap<LocalDate, Double>();
        for (int day : days) {
            if (day != YearsAhead.NEVER) {
                var season = terrain.dateOf(terrain.seasonFirst(terrain.seasonOf(day)));
                shares.merge(season, 1.0 / days.length, Double::sum);
            }
        }
        return shares;
    }

    private List<Route.Link> chain() {
        return usualChain().stream()
                .map(
                        turn -> {
                            var step = network.turns.get(turn);
                            return new Route.Link(
                                    step.step().code(), step.number(), decider(turn, true));
                        })
                .toList();
    }

    /** The usual chain: from what is last most often, always to what decides most often. */
    private List<Integer> usualChain() {
        var chain = new ArrayList<Integer>();
        int turn = tally.reached == 0 ? -1 : most(tally.last);
        while (turn >= 0) {
            chain.add(turn);
            int slot = decides(turn, tally.decidedOnChain[turn]);
            turn = slot < 0 ? -1 : turnBehind(slot);
        }
        Collections.reverse(chain);
        return chain;
    }

    /**
     * What decides a turn most often; on the usual chain among the draws in which the goal hangs on
     * it, so that the chain and the step say the same.
     */
    private Route.Decider decider(int turn, boolean onChain) {
        var counts = onChain ? tally.decidedOnChain[turn] : tally.decided[turn];
        int slot = decides(turn, counts);
        if (slot < 0) {
            return new Route.Decider(Cause.NOTHING, "", 0);
        }
        double all = Arrays.stream(counts).sum();
        return new Route.Decider(tally.causeOf(slot), what(slot), counts[slot] / all);
    }

    /**
     * The slot that decides a turn most often, of those that do not name a turn which is usually
     * done later: two turns that take a season from each other, now one and now the other, would
     * each be said to wait for the other one. Below 0 where none is left.
     */
    private int decides(int turn, int[] counts) {
        int most = -1;
        for (int slot = 0; slot < counts.length; slot++) {
            if (counts[slot] > (most < 0 ? 0 : counts[most])) {
                int behind = turnBehind(slot);
                if (behind < 0 || usualPlace[behind] < usualPlace[turn]) {
                    most = slot;
                }
            }
        }
        return most;
    }

    private static int most(int[] counts) {
        int most = 0;
        for (int i = 1; i < counts.length; i++) {
            most = counts[i] > counts[most] ? i : most;
        }
        return most;
    }

    private int turnBehind(int slot) {
        int by = tally.byOf(slot);
        return switch (tally.causeOf(slot)) {
            case WAIT -> -1;
            case LAG -> network.arrows.get(by).from();
            default -> by;
        };
    }

    private String what(int slot) {
        int by = tally.byOf(slot);
        if (by < 0) {
            return "";
        }
        return switch (tally.causeOf(slot)) {
            case WAIT -> draw.waits.get(by).fact();
            case LAG -> {
                var lag = network.arrows.get(by).lag();
                yield lag == null ? "repeat" : lag.key();
            }
            default -> network.turns.get(by).step().code();
        };
    }

    private record Thing(Cause cause, String what) {}

    private List<Route.Waiting> waitings() {
        var byThing = new LinkedHashMap<Thing, Double>();
        double all = 0;
        for (int slot = 0; slot < tally.waited.length; slot++) {
            double days = tally.waited[slot];
            all += days;
            if (days > 0) {
                byThing.merge(new Thing(tally.causeOf(slot), what(slot)), days, Double::sum);
            }
        }
        double total = all;
        return byThing.entrySet().stream()
                .map(
                        entry ->
                                new Route.Waiting(
                                        entry.getKey().cause(),
                                        entry.getKey().what(),
                                        entry.getValue() / tally.reached,
                                        entry.getValue() / total))
                .sorted(Comparator.comparingDouble(Route.Waiting::meanDays).reversed())
                .toList();
    }

    private List<Route.Unsaid> unsaid() {
        var unsaid = new ArrayList<Route.Unsaid>();
        for (var turn : network.turns) {
            for (var wait : turn.waits()) {
                if (wait.outlook() instanceof Outlook.Unsaid nothing) {
                    unsaid.add(
                            new Route.Unsaid(
                                    turn.step().code(),
                                    wait.fact(),
                                    wait.key(),
                                    nothing.because(),
                                    wait.ifUnsaid()));
                }
            }
        }
        return unsaid;
    }
}
