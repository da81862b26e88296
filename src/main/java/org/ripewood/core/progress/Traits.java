package org.ripewood.core.progress;

import java.util.Set;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.WorkClocks;

/**
 * What rules ask of a species.
 *
 * @param species its code
 * @param groups the groups it belongs to, its habit's among them
 * @param maxRootShare most of the roots that may go in one growing season, 0 to 1
 * @param recovery how fast it recovers from work
 * @param clocks when it bears each kind of work
 */
public record Traits(
        String species,
        Habit habit,
        Set<String> groups,
        double maxRootShare,
        Recovery.Pace recovery,
        WorkClocks clocks) {

    public Traits {
        groups = Set.copyOf(groups);
        if (!(maxRootShare > 0 && maxRootShare <= 1)) {
            throw new IllegalArgumentException(
                    "the root share must lie above 0 and up to 1, found " + maxRootShare);
        }
    }

    /** Traits of a kind that recovers as most do, of whose seasons nothing is said. */
    public Traits(String species, Habit habit, Set<String> groups, double maxRootShare) {
        this(species, habit, groups, maxRootShare, Recovery.Pace.USUAL, WorkClocks.NONE);
    }

    boolean isAnyOf(Set<String> wantedSpecies, Set<String> wantedGroups) {
        return wantedSpecies.contains(species) || wantedGroups.stream().anyMatch(groups::contains);
    }
}
