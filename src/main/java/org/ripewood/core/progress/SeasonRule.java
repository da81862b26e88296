package org.ripewood.core.progress;

import java.util.List;
import java.util.Set;
import org.ripewood.core.season.StageRange;

/**
 * When in the year a technique may be done, in growth stages.
 *
 * @param windows the first whose species or groups hold the species counts; empty means any time
 * @param avoid stages in which it must not be done all the same
 */
public record SeasonRule(List<Window> windows, List<Avoid> avoid, String why) {

    /** Open stages; no groups and no species means everybody else. */
    public record Window(Set<String> species, Set<String> groups, List<StageRange> stages) {
        public Window {
            species = Set.copyOf(species);
            groups = Set.copyOf(groups);
            stages = List.copyOf(stages);
        }

        boolean speaksOf(Traits traits) {
            return (species.isEmpty() && groups.isEmpty()) || traits.isAnyOf(species, groups);
        }
    }

    /** Closed stages; no groups and no species means every species. */
    public record Avoid(
            Set<String> species, Set<String> groups, List<StageRange> stages, String why) {
        public Avoid {
            species = Set.copyOf(species);
            groups = Set.copyOf(groups);
            stages = List.copyOf(stages);
        }

        boolean speaksOf(Traits traits) {
            return (species.isEmpty() && groups.isEmpty()) || traits.isAnyOf(species, groups);
        }
    }

    public SeasonRule {
        windows = List.copyOf(windows);
        avoid = List.copyOf(avoid);
    }

    /**
     * The growth stages, 0 to 99, in which it may be done on a species, flowers left out of
     * account; none when only flowers open it.
     */
    public Set<Integer> openStages(Traits traits) {
        return CompiledSeason.compile(this, traits).freeStages();
    }
}
