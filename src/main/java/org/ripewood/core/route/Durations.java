package org.ripewood.core.route;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Traits;

/**
 * What routes take years from, as course content says it.
 *
 * @param changes how long things take that only work and time change; of two that speak of a tree
 *     the one told for its species or group goes first, and of equals the first
 * @param spread how much years and people differ from what is usual
 */
public record Durations(List<SlowChange> changes, Spread spread) {

    /** Nothing takes time but what is forecast, and all years are alike. */
    public static final Durations NONE = new Durations(List.of(), Spread.NONE);

    public Durations {
        changes =
                changes.stream().sorted(Comparator.comparing(change -> !change.special())).toList();
    }

    /**
     * How long a fact takes after a work.
     *
     * @param work its code; empty for any work that is not named
     */
    Optional<SlowChange> after(String work, Fact fact, Traits traits) {
        return changes.stream()
                .filter(change -> change.fact() == fact && change.speaksOf(traits))
                .filter(
                        change ->
                                work.isEmpty()
                                        ? change.after().isEmpty()
                                        : change.after().contains(work))
                .findFirst();
    }

    /** How long a fact takes by itself, or by whatever work; empty when nothing is said. */
    Optional<SlowChange> of(Fact fact, Traits traits) {
        return changes.stream()
                .filter(change -> change.fact() == fact && change.speaksOf(traits))
                .min(Comparator.comparing(change -> !change.after().isEmpty()));
    }
}
