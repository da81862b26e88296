package org.ripewood.core.route;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.progress.Value;

/**
 * How long a fact takes to become what is asked of it, when only work and time change it.
 *
 * @param after codes of the works it begins with; none when it goes on by itself
 * @param species with {@code groups}: whom it is told for; both empty means every species
 * @param each for a number: what it has to gain or lose for {@code takes} to go by once, 0 when
 *     {@code takes} is all of it
 * @param takes how long it takes
 */
public record SlowChange(
        Fact fact,
        Set<String> after,
        Set<String> species,
        Set<String> groups,
        double each,
        Seasons takes) {

    public SlowChange {
        after = Set.copyOf(after);
        species = Set.copyOf(species);
        groups = Set.copyOf(groups);
        if (!(each >= 0 && each < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("each must be 0 or more, found " + each);
        }
    }

    /** Whether it is told for the species. */
    boolean speaksOf(Traits traits) {
        return (species.isEmpty() && groups.isEmpty())
                || species.contains(traits.species())
                || traits.groups().stream().anyMatch(groups::contains);
    }

    /** Whether it is told for some species only. */
    boolean special() {
        return !species.isEmpty() || !groups.isEmpty();
    }

    /**
     * How long it takes from a value to what is asked.
     *
     * @param now null when it is not known: then as from the least there can be
     */
    Seasons towards(Requirement asked, @Nullable Value now) {
        if (each == 0) {
            return takes;
        }
        double from = now instanceof Value.Number number ? number.amount() : Double.NaN;
        double gap = gap(asked, from);
        return takes.times(Math.max(1, Math.ceil(gap / each)));
    }

    private double gap(Requirement asked, double from) {
        if (asked instanceof Requirement.AtLeast least) {
            return least.bound() - (Double.isNaN(from) ? fact.least() : from);
        }
        if (asked instanceof Requirement.AtMost most) {
            return (Double.isNaN(from) ? most.bound() + each : from) - most.bound();
        }
        return each;
    }
}
