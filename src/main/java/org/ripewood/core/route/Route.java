package org.ripewood.core.route;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ripewood.core.season.Outlook;

/**
 * The years from today's facts to a goal stage, as many draws have it.
 *
 * @param from the first day
 * @param goalStageOrder the stage whose steps are the goal
 * @param goal when the last of them is done; already, when nothing is left to do
 * @param steps the turns still ahead, what comes first standing first
 * @param chain what usually decides the goal's day, first step first
 * @param waitings what time goes by for along the chains of all draws, longest first
 * @param unsaid what the route had to take for granted
 * @param draws how many draws
 * @param seed from which the same route comes again
 */
public record Route(
        LocalDate from,
        int goalStageOrder,
        Outlook goal,
        List<Step> steps,
        List<Link> chain,
        List<Waiting> waitings,
        List<Unsaid> unsaid,
        int draws,
        long seed) {

    /**
     * When one turn of a step is likely to be done.
     *
     * @param turn 1 for the first
     * @param when 10, 50 and 90 % of the draws
     * @param shareBySeason first day of a growing season to the share of draws that do it then
     * @param onChain share of draws in which the goal's day hangs on it
     * @param decider what decides its day most often
     * @param assumed whether it, or a step before it, rests on something taken for granted
     */
    public record Step(
            String code,
            int turn,
            int stageOrder,
            Outlook when,
            SortedMap<LocalDate, Double> shareBySeason,
            double onChain,
            Decider decider,
            boolean assumed) {
        public Step {
            shareBySeason = new TreeMap<>(shareBySeason);
        }

        @Override
        public SortedMap<LocalDate, Double> shareBySeason() {
            return new TreeMap<>(shareBySeason);
        }
    }

    /**
     * What decides a day.
     *
     * @param what the fact or lag waited for, "repeat" for time between turns, or the code of the
     *     step in the way; empty for none, or for work done before the route
     * @param share of the draws
     */
    public record Decider(Cause cause, String what, double share) {}

    /**
     * One step of the usual chain.
     *
     * @param decider what put it where it is, among the draws in which the goal hangs on it
     */
    public record Link(String code, int turn, Decider decider) {}

    /**
     * Time that goes by for one thing.
     *
     * @param what as in {@link Decider}; for a season the step that waits for it
     * @param meanDays over the draws that reach the goal
     * @param share of all the time to the goal, 0 to 1
     */
    public record Waiting(Cause cause, String what, double meanDays, double share) {}

    /**
     * Something taken for granted.
     *
     * @param code of the step
     * @param fact what is waited for, as {@link Wait} names it
     * @param key of the wait
     * @param because why nothing can be said
     */
    public record Unsaid(
            String code, String fact, String key, String because, Wait.Assumption assumption) {}

    public Route {
        steps = List.copyOf(steps);
        chain = List.copyOf(chain);
        waitings = List.copyOf(waitings);
        unsaid = List.copyOf(unsaid);
    }

    /**
     * Draws enough for days good to a few weeks: an error of about 1.6 % of probability at half.
     */
    public static final int USUAL_DRAWS = 1_000;

    /** More draws than this only take memory. */
    public static final int MOST_DRAWS = 100_000;

    /**
     * Simulates the way to a goal stage.
     *
     * <p>In each draw every wait and lag gets its length from one random number per fact, and the
     * works are placed one after the other: after what comes first, in their growth stages, one
     * heavy work in a growing season, with quiet and recovery in between and the season's doses
     * kept. Each turn's 10, 50 and 90 % days are the least days by which so many of the draws have
     * done it. Nothing is told beyond {@link Outlook#REACH_YEARS} years.
     *
     * <p>Vigour, content and place are taken to stay as they are; what a work will change in the
     * tree is known only as far as lags tell it. Method: event-driven Monte Carlo over a precedence
     * network (as in van Slyke 1963, "Monte Carlo methods and the PERT problem"), placing by serial
     * priority rule.
     *
     * @param steps all techniques of the tree, done ones and those not needed too, in any order
     * @param goalStageOrder steps up to this stage, and what they come after, are on the way
     * @param draws 1 to {@value #MOST_DRAWS}
     * @throws IllegalArgumentException when steps share a code or go in a circle, or draws are out
     *     of range
     */
    public static Route simulate(
            RouteStart start, List<RouteStep> steps, int goalStageOrder, int draws, long seed) {
        if (!(draws >= 1 && draws <= MOST_DRAWS)) {
            throw new IllegalArgumentException(
                    "draws run from 1 to %d, found %d".formatted(MOST_DRAWS, draws));
        }
        var network = PrecedenceGraph.towards(goalStageOrder, steps);
        var terrain = new YearsAhead(start);
        var draw = new RandomDraw(network, terrain, start.spread(), seed);
        var walk = new SimulationRun(start, network, terrain, draw);
        var tally = new Tally(network, draw, draws);
        for (int number = 0; number < draws; number++) {
            walk.go(number);
            tally.count(walk, number);
        }
        return new RouteSummary(network, terrain, draw, tally).route(goalStageOrder, draws, seed);
    }

    /** The same with more that was taken for granted. */
    Route alsoUnsaid(List<Unsaid> more) {
        var all = new ArrayList<>(unsaid);
        all.addAll(more);
        return new Route(from, goalStageOrder, goal, steps, chain, waitings, all, draws, seed);
    }

    /** The next turn of a step, if it is still ahead. */
    public Optional<Step> find(String code) {
        return steps.stream().filter(step -> step.code().equals(code)).findFirst();
    }
}
