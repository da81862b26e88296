package org.ripewood.core.growth;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How much longer or shorter the healthy shoots of a school's trees of a kind are than its content
 * says, in pots or in the ground.
 *
 * @param factor what the content's lengths are multiplied by; 1 while {@link #isEnough} is not so
 * @param trees how many trees it rests on; each counts once, however often it was measured
 * @param keepers how many persons keep them
 * @param seasons how many growing seasons they were measured in
 */
public record SchoolLevel(double factor, int trees, int keepers, int seasons) {

    /** Nothing measured yet. */
    public static final SchoolLevel NONE = new SchoolLevel(1, 0, 0, 0);

    /** Fewer trees say nothing of a kind, and what they say could be read back to one of them. */
    public static final int FEWEST_TREES = 5;

    /** As many trees of a single keeper count; fewer tell of that keeper's care. */
    public static final int FEWEST_OF_ONE_KEEPER = 12;

    /** Standard deviation of the content's own value, as a logarithm: about 22 %. */
    static final double CONTENT_SD = 0.2;

    /** Between healthy trees of a kind, as a logarithm: a factor of about 1.6. */
    static final double TREE_SD = 0.45;

    /** Between growing seasons, as a logarithm: about 16 %. All trees share a dry year. */
    static final double SEASON_SD = 0.15;

    /** The variance of a median of normal values is π/2 times that of their mean. */
    private static final double MEDIAN_LOSS = Math.PI / 2;

    /** No tree's middle counts as further from the content than ten times: a slip of a unit. */
    private static final double FURTHEST = Math.log(10);

    public SchoolLevel {
        if (!(factor > 0 && Double.isFinite(factor))
                || trees < 0
                || keepers < 0
                || keepers > trees
                || seasons < 0) {
            throw new IllegalArgumentException(
                    "a factor above 0 of trees, keepers and seasons, found %s of %d, %d, %d"
                            .formatted(factor, trees, keepers, seasons));
        }
    }

    /**
     * The level that the content's value and measured shoots together tell.
     *
     * <p>Formula: a tree's own level is the median over its seasons of {@code ln(mm / healthyMm)};
     * m is the median over n trees. The content's value is a prior, normal with mean 0 and variance
     * τ² = {@value #CONTENT_SD}²; m is taken as normal about the school's true level with variance
     * v = (π/2) σ²/n + ω²/T, with σ = {@value #TREE_SD} between trees and ω = {@value #SEASON_SD}
     * between seasons. The level is the posterior mean {@code m τ² / (τ² + v)}, held within {@code
     * ±most}; the factor is its exponential. So with many seasons the content counts as about eight
     * trees. T is the effective number of seasons {@code (Σ w)² / Σ w²}, where each tree shares a
     * weight of 1 among its seasons.
     *
     * <p>Edge cases: fewer than {@value #FEWEST_TREES} trees, or fewer than {@value
     * #FEWEST_OF_ONE_KEEPER} of a single keeper, leave the factor at 1; the order of the samples
     * does not matter; a longer shoot never lowers the factor. Source: shrinkage of a normal mean
     * with known variances, Gelman et al. 2013, Bayesian Data Analysis, 3rd ed., 2.5; effective
     * number, Kish 1965, Survey Sampling; the median's variance is a standard result (all from
     * memory). The standard deviations are common practice, no source.
     *
     * @param samples of healthy trees of one kind, all in pots or all in the ground
     * @param healthyMm what the content says of a healthy tree there, above 0
     * @param most how far from the content the logarithm of the factor may be, 0 or more
     */
    static SchoolLevel of(Collection<ShootSample> samples, double healthyMm, double most) {
        // Sums differ in the last digit by their order, so there is one.
        var byTree =
                samples.stream()
                        .sorted(
                                Comparator.comparingLong(ShootSample::tree)
                                        .thenComparingInt(ShootSample::season))
                        .collect(
                                Collectors.groupingBy(
                                        ShootSample::tree, TreeMap::new, Collectors.toList()))
                        .values();
        int keepers = (int) samples.stream().mapToLong(ShootSample::keeper).distinct().count();
        int seasons = (int) samples.stream().mapToInt(ShootSample::season).distinct().count();
        int trees = byTree.size();
        var counted = new SchoolLevel(1, trees, Math.min(keepers, trees), seasons);
        if (!counted.isEnough()) {
            return counted;
        }
        double middle = median(byTree.stream().mapToDouble(of -> ofTree(of, healthyMm)).toArray());
        double variance =
                MEDIAN_LOSS * TREE_SD * TREE_SD / trees
                        + SEASON_SD * SEASON_SD / effectiveSeasons(byTree);
        double content = CONTENT_SD * CONTENT_SD;
        double level = middle * content / (content + variance);
        double held = Math.max(-most, Math.min(most, level));
        return new SchoolLevel(Math.exp(held), trees, counted.keepers(), seasons);
    }

    /** Whether there are enough trees, of enough keepers, for the school's record to count. */
    public boolean isEnough() {
        return trees >= (keepers > 1 ? FEWEST_TREES : FEWEST_OF_ONE_KEEPER);
    }

    private static double ofTree(List<ShootSample> seasons, double healthyMm) {
        double middle =
                median(
                        seasons.stream()
                                .mapToDouble(one -> Math.log(one.mm() / healthyMm))
                                .toArray());
        return Math.max(-FURTHEST, Math.min(FURTHEST, middle));
    }

    private static double effectiveSeasons(Collection<List<ShootSample>> byTree) {
        var weights = new TreeMap<Integer, Double>();
        for (var tree : byTree) {
            tree.forEach(one -> weights.merge(one.season(), 1.0 / tree.size(), Double::sum));
        }
        double sum = 0;
        double squares = 0;
        for (double weight : weights.values()) {
            sum += weight;
            squares += weight * weight;
        }
        return sum * sum / squares;
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        int middle = values.length / 2;
        return values.length % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
    }
}
