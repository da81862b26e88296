package org.ripewood.records;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Recovery;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.sites.Site;
import org.ripewood.trees.Tree;

/**
 * What the record of a tree tells on a day: entries of that day and before that stand.
 *
 * @param everyBranch also those taken off by then, in the order they were entered
 * @param names of everybody who made an entry, by id
 */
public record TreeRecord(
        Tree tree,
        Site site,
        LocalDate on,
        List<Observation> observations,
        List<Wound> wounds,
        List<Branch> everyBranch,
        List<ContainerStay> containers,
        List<WorkDone> works,
        Map<Long, String> names) {

    /** Loads and shares are sums of fractions, which differ in the last digit by their order. */
    private static final Comparator<WorkDone> BY_DAY =
            Comparator.comparing(WorkDone::doneOn).thenComparingLong(WorkDone::id);

    public TreeRecord {
        observations = List.copyOf(observations);
        wounds = List.copyOf(wounds);
        everyBranch = List.copyOf(everyBranch);
        containers = List.copyOf(containers);
        works = works.stream().sorted(BY_DAY).toList();
        names = Map.copyOf(names);
    }

    /** Branches on the tree that day. */
    public List<Branch> branches() {
        return everyBranch.stream()
                .filter(branch -> branch.removedOn() == null || branch.removedOn().isAfter(on))
                .toList();
    }

    public Stream<Observation> seen(Fact fact) {
        return observations.stream().filter(seen -> seen.fact() == fact);
    }

    public String nameOf(long personId) {
        return names.getOrDefault(personId, "someone no longer here");
    }

    /**
     * The work done on it.
     *
     * @param renewing techniques after which all foliage is new growth
     */
    public WorkLedger ledger(Recovery recovery, Set<String> renewing) {
        return new WorkLedger(
                works.stream().map(WorkDone::work).toList(), site.latitude(), recovery, renewing);
    }
}
