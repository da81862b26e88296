package org.ripewood.core.progress;

import java.util.List;
import java.util.Set;

/**
 * How much of the foliage or of the roots a technique takes.
 *
 * @param typicalShare what it usually takes, 0 to 1 of the whole
 * @param limitShare most that may go in one growing season, this work included
 * @param limits other limits for some trees: the first that fits counts
 * @param startsAnew whether all foliage that comes after it is new growth, so that the season's
 *     count begins again once the tree is in leaf
 */
public record DoseRule(
        Kind kind, double typicalShare, double limitShare, List<Limit> limits, boolean startsAnew) {

    /** What is taken away. */
    public enum Kind {
        FOLIAGE,
        ROOT
    }

    /**
     * Another limit for some species.
     *
     * @param fromVigour vigour index from which it counts; 0 for any tree, known or not
     */
    public record Limit(Set<String> species, Set<String> groups, double share, double fromVigour) {
        public Limit {
            species = Set.copyOf(species);
            groups = Set.copyOf(groups);
            if (!(share >= 0 && share <= 1 && fromVigour >= 0 && fromVigour <= 100)) {
                throw new IllegalArgumentException(
                        "a limit lies between 0 and 1 and counts from a vigour of 0 to 100, found %s from %s"
                                .formatted(share, fromVigour));
            }
        }

        private boolean fits(Traits traits, double vigour) {
            return traits.isAnyOf(species, groups) && (fromVigour == 0 || vigour >= fromVigour);
        }
    }

    public DoseRule {
        limits = List.copyOf(limits);
        if (!(typicalShare >= 0 && typicalShare <= limitShare && limitShare <= 1)) {
            throw new IllegalArgumentException(
                    "shares must run 0 <= typical <= limit <= 1, found %s and %s"
                            .formatted(typicalShare, limitShare));
        }
    }

    /** A rule with one limit for every tree. */
    public DoseRule(Kind kind, double typicalShare, double limitShare) {
        this(kind, typicalShare, limitShare, List.of(), false);
    }

    /**
     * The rule as it stands for one tree: with its own limit, for roots at most what its species
     * bears, and taking no more than that.
     *
     * @param vigour 0 to 100; NaN when not known, which then meets no limit that asks for some
     */
    public DoseRule forTree(Traits traits, double vigour) {
        double own = limitOf(traits, vigour);
        double limit = kind == Kind.ROOT ? Math.min(own, traits.maxRootShare()) : own;
        return new DoseRule(kind, Math.min(typicalShare, limit), limit, List.of(), startsAnew);
    }

    private double limitOf(Traits traits, double vigour) {
        for (var limit : limits) {
            if (limit.fits(traits, vigour)) {
                return limit.share();
            }
        }
        return limitShare;
    }
}
