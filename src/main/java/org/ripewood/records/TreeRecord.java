package org.ripewood.records;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Recovery;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.sites.Site;
import org.ripewood.trees.Tree;

/**
 * What the record of a tree tells on a day: entries of that day and before that stand.
 *
 * @param branches those on the tree that day
 * @param names of everybody who made an entry, by id
 */
public record TreeRecord(
        Tree tree,
        Site site,
        LocalDate on,
        List<Observation> observations,
        List<Wound> wounds,
        List<Branch> branches,
        List<ContainerStay> containers,
        List<WorkDone> works,
        Map<Long, String> names) {

    /** Loads and shares are sums of fractions, which differ in the last digit by their order. */
    private static final Comparator<WorkDone> BY_DAY =
            Comparator.comparing(WorkDone::doneOn).thenComparingLong(WorkDone::id);

    public TreeRecord {
        observations = List.copyOf(observations);
        wounds = List.copyOf(wounds);
        branches = List.copyOf(branches);
        containers = List.copyOf(containers);
        works = works.stream().sorted(BY_DAY).toList();
        names = Map.copyOf(names);
    }

    public Stream<Observation> seen(Fact fact) {
        return observations.stream().filter(seen -> seen.fact() == fact);
    }

    public String nameOf(long personId) {
        return names.getOrDefault(personId, "someone no longer here");
    }

    public WorkLedger ledger(Recovery recovery) {
        return new WorkLedger(
                works.stream().map(WorkDone::work).toList(), site.latitude(), recovery);
    }
}
