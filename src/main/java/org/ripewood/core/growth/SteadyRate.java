package org.ripewood.core.growth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ripewood.core.growth.SeasonShare.Believed;

/**
 * A width that falls at a rate of its own but for the seasons, learnt from readings of known error.
 *
 * <p>Without seasons it is {@code y = a − b x} with a flat prior on a and a normal one on b cut off
 * at 0. With them each year's rate strays from b by a share of it, in years gone by as in years to
 * come, so that the width ahead starts from where it was last seen and not from a line that it has
 * left. Nobody knows by what share years stray, how long nothing moves at first, nor whether growth
 * slows down: of each several cases are weighed by what the readings say, and all are kept. b is
 * integrated over numerically.
 */
final class SteadyRate {

    /**
     * How years differ.
     *
     * @param spread how far one year's rate strays, as a share of it
     * @param pace the rate by which what years gone by strayed is sized and cases are weighed;
     *     neither the readings nor the belief about this width, so that a belief in a higher rate
     *     never leads to a lower one and quick years count as much as slow ones
     * @param paceSd how widely rates lie about it
     * @param year growth-time of a mean year
     */
    record Seasons(YearSpread spread, double pace, double paceSd, double year) {}

    /** A case of how growth-time counts, and how likely it is believed. */
    record Case(Pace pace, double weight) {}

    /** A case less likely than this is left out. */
    private static final double LEAST_WEIGHT = 0.002;

    private static final double SURE_SDS = 8;

    /** Nothing is looked for beyond so many mean years after the last reading. */
    private static final double FURTHEST_YEARS = 300;

    private static final double EXACT_TO = 1e-5;
    private static final double TINY = 1e-15;

    private final double lastX;
    private final double year;
    private final Pace[] paces;
    private final SeasonShare[] parts;
    private final double[] weights;

    /**
     * Learns from readings.
     *
     * @param believed b, with its standard deviation (infinite for no belief)
     * @throws IllegalArgumentException when neither readings nor belief say anything of b
     */
    SteadyRate(Readings readings, Believed believed, Seasons seasons, List<Case> cases) {
        lastX = readings.lastX();
        year = seasons.year();
        var walks = walks(readings, seasons, cases);
        var likely = weighed(walks, seasons, cases);
        int kept = (int) Arrays.stream(likely).filter(weight -> weight > 0).count();
        parts = new SeasonShare[kept];
        paces = new Pace[kept];
        weights = new double[kept];
        int sizes = seasons.spread().sizes();
        for (int i = 0, at = 0; i < likely.length; i++) {
            if (likely[i] > 0) {
                double share = seasons.spread().share(i % sizes);
                parts[at] = new SeasonShare(share, walks.get(i), believed);
                paces[at] = cases.get(i / sizes).pace();
                weights[at++] = likely[i];
            }
        }
    }

    private static List<SeasonWalk> walks(Readings readings, Seasons seasons, List<Case> cases) {
        var walks = new ArrayList<SeasonWalk>();
        for (var one : cases) {
            for (int size = 0; size < seasons.spread().sizes(); size++) {
                double straying = seasons.spread().share(size) * seasons.pace();
                walks.add(SeasonWalk.along(readings, one.pace(), straying, seasons.year()));
            }
        }
        return walks;
    }

    /** How likely each case is with each share; 0 for those left out. */
    private static double[] weighed(List<SeasonWalk> walks, Seasons seasons, List<Case> cases) {
        var logs = logEvidence(walks, seasons);
        double most = Arrays.stream(logs).max().orElseThrow();
        var weights = new double[logs.length];
        int sizes = seasons.spread().sizes();
        double total = 0;
        for (int i = 0; i < logs.length; i++) {
            double before = cases.get(i / sizes).weight() * seasons.spread().weight(i % sizes);
            weights[i] = before * Math.exp(logs[i] - most);
            total += weights[i];
        }
        double left = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = weights[i] < LEAST_WEIGHT * total ? 0 : weights[i];
            left += weights[i];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= left;
        }
        return weights;
    }

    private static double[] logEvidence(List<SeasonWalk> walks, Seasons seasons) {
        var believed = new Believed(seasons.pace(), seasons.paceSd());
        return walks.stream()
                .mapToDouble(walk -> SeasonShare.logEvidence(walk, believed))
                .toArray();
    }

    /**
     * Logarithm of how well a steady rate explains readings, all cases and shares regarded: for
     * comparing one way of having grown with another.
     */
    static double logEvidence(Readings readings, Seasons seasons, List<Case> cases) {
        var logs = logEvidence(walks(readings, seasons, cases), seasons);
        double most = Arrays.stream(logs).max().orElseThrow();
        int sizes = seasons.spread().sizes();
        double total = 0;
        for (int i = 0; i < logs.length; i++) {
            double before = cases.get(i / sizes).weight() * seasons.spread().weight(i % sizes);
            total += before * Math.exp(logs[i] - most);
        }
        return most + Math.log(total);
    }

    /** Mean of the rate after the last reading, the cut at 0 regarded. */
    double rate() {
        return moment(1);
    }

    /** Standard deviation of the rate after the last reading, the cut at 0 regarded. */
    double rateSd() {
        double mean = rate();
        return Math.sqrt(Math.max(0, moment(2) - mean * mean));
    }

    private double moment(int power) {
        double moment = 0;
        for (int i = 0; i < parts.length; i++) {
            moment += weights[i] * Math.pow(paces[i].at(lastX), power) * parts[i].moment(power);
        }
        return moment;
    }

    /** How likely it is that growth does not go on at one rate. */
    double unsteady() {
        double unsteady = 0;
        for (int i = 0; i < parts.length; i++) {
            unsteady += paces[i].steady() ? 0 : weights[i];
        }
        return unsteady;
    }

    /** The probability that the width is at most {@code y} at {@code x}. */
    double probabilityAtMost(double y, double x) {
        double probability = 0;
        for (int i = 0; i < parts.length; i++) {
            probability += weights[i] * parts[i].probabilityAtMost(y, parts[i].ahead(x));
        }
        // weights add up to 1 but for rounding
        return Math.min(1, probability);
    }

    /** The x by which the width has fallen to {@code y} with this probability, or infinity. */
    double reaching(double y, double probability) {
        if (probabilityAtMost(y, 0) >= probability) {
            return 0;
        }
        double furthest = lastX + FURTHEST_YEARS * year;
        double low = 0;
        double high = Math.min(furthest, firstGuess(y));
        while (probabilityAtMost(y, high) < probability) {
            if (!(high < furthest)) {
                return Double.POSITIVE_INFINITY;
            }
            low = high;
            high = Math.min(2 * high, furthest);
        }
        // In log-odds the way is nearly straight, so that few steps find it.
        double wanted = logOdds(probability);
        return Crossing.of(
                x -> logOdds(probabilityAtMost(y, x)) - wanted, low, high, EXACT_TO * high);
    }

    private double firstGuess(double y) {
        int likeliest = 0;
        for (int i = 0; i < parts.length; i++) {
            likeliest = weights[i] > weights[likeliest] ? i : likeliest;
        }
        var now = parts[likeliest].ahead(lastX);
        double rate = parts[likeliest].middleRate();
        double left = now.level() + rate * now.perRate() - y;
        return lastX + Math.max(year / 16, paces[likeliest].lag() + left / rate);
    }

    private static double logOdds(double probability) {
        double held = Math.max(TINY, Math.min(1 - TINY, probability));
        return Math.log(held / (1 - held));
    }

    /** The width that is not exceeded at {@code x} with this probability. */
    double widthAt(double x, double probability) {
        var there = new SeasonWalk.Ahead[parts.length];
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < parts.length; i++) {
            there[i] = parts[i].ahead(x);
            var reach = parts[i].reach(there[i], SURE_SDS);
            low = Math.min(low, reach[0]);
            high = Math.max(high, reach[1]);
        }
        double wanted = logOdds(probability);
        return Crossing.of(
                y -> logOdds(probabilityAtMost(y, there)) - wanted,
                low,
                high,
                EXACT_TO * (high - low));
    }

    private double probabilityAtMost(double y, SeasonWalk.Ahead[] there) {
        double probability = 0;
        for (int i = 0; i < parts.length; i++) {
            probability += weights[i] * parts[i].probabilityAtMost(y, there[i]);
        }
        return Math.min(1, probability);
    }
}
