package org.ripewood.core.growth;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;

/**
 * How far a year's growth strays from a mean year's, as a share of it: several sizes, and how
 * likely each is believed.
 */
public final class YearSpread {

    private static final double[] SHARES = {0.1, 0.27, 0.6};
    private static final double[] BELIEVED = {0.3, 0.32, 0.38};

    /**
     * Nothing known of the place's years: 0.3 in the mean, and anything from nearly alike to years
     * of which some bring next to nothing (common practice, no source).
     */
    public static final YearSpread UNKNOWN = new YearSpread(SHARES, BELIEVED);

    /**
     * Of trunks: a trunk's girth sums up more than one year's callus does, so that its years differ
     * by less; 0.23 in the mean (common practice, no source).
     */
    static final YearSpread OF_TRUNKS = new YearSpread(SHARES, new double[] {0.5, 0.35, 0.15});

    private final double[] shares;
    private final double[] weights;

    private YearSpread(double[] shares, double[] weights) {
        this.shares = shares;
        this.weights = weights;
    }

    /** Years that differ by this much, for sure; 0 for not at all. */
    public static YearSpread exactly(double share) {
        if (!(share >= 0 && Double.isFinite(share))) {
            throw new IllegalArgumentException("a spread is 0 or more, found " + share);
        }
        return new YearSpread(new double[] {share}, new double[] {1});
    }

    int sizes() {
        return shares.length;
    }

    double share(int size) {
        return shares[size];
    }

    double weight(int size) {
        return weights[size];
    }

    /** The mean of what is believed. */
    public double mean() {
        double mean = 0;
        for (int i = 0; i < shares.length; i++) {
            mean += weights[i] * shares[i];
        }
        return mean;
    }

    /**
     * What wounds say of the years they closed in.
     *
     * <p>Formula: each size is weighed by how likely it makes the readings of all wounds, each
     * counted by the share {@code years / wound-years}: wounds of the same years had the same good
     * and bad ones, so that each year is heard once. Edge cases: the order does not matter; nothing
     * seen, unchanged; only one size believed, unchanged. Source: common practice, no source.
     */
    public YearSpread learn(Collection<YearEvidence> wounds) {
        var years = new HashSet<Integer>();
        int woundYears = 0;
        var logs = new double[shares.length];
        for (var wound : wounds) {
            years.addAll(wound.years());
            woundYears += wound.years().size();
            for (int i = 0; i < logs.length; i++) {
                logs[i] += wound.logEvidence(shares[i]);
            }
        }
        if (woundYears == 0) {
            return this;
        }
        double heard = (double) years.size() / woundYears;
        double most = Arrays.stream(logs).max().orElseThrow();
        var learnt = new double[weights.length];
        for (int i = 0; i < weights.length; i++) {
            learnt[i] = weights[i] * Math.exp(heard * (logs[i] - most));
        }
        double total = Arrays.stream(learnt).sum();
        return new YearSpread(shares, Arrays.stream(learnt).map(one -> one / total).toArray());
    }
}
