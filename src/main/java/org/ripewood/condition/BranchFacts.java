package org.ripewood.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ripewood.core.growth.Proportion;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.records.Branch;
import org.ripewood.records.BranchRole;
import org.ripewood.records.Observation;
import org.ripewood.records.Readings;
import org.ripewood.records.TreeRecord;

/** The branches of the design: how many, and whether one is too thick for its trunk. */
final class BranchFacts {

    private BranchFacts() {}

    static List<Evidence> of(TreeRecord record) {
        var primary =
                record.branches().stream()
                        .filter(branch -> branch.role() == BranchRole.PRIMARY)
                        .toList();
        var evidence = new ArrayList<Evidence>();
        evidence.add(
                Derived.number(
                        Fact.PRIMARY_BRANCHES,
                        primary.size(),
                        record.on(),
                        Source.DERIVED,
                        "branches entered"));
        evidence.addAll(girth(record, primary));
        return evidence;
    }

    /**
     * The largest ratio is known only when every primary branch was measured: the one nobody
     * measured may be the thickest.
     */
    private static List<Evidence> girth(TreeRecord record, List<Branch> primary) {
        var readings = new ArrayList<Observation>();
        double largest = Double.NaN;
        for (var branch : primary) {
            var diameter = latest(record, Fact.BRANCH_DIAMETER_MM, branch);
            var trunk = latest(record, Fact.TRUNK_AT_BRANCH_MM, branch);
            if (diameter.isEmpty() || trunk.isEmpty()) {
                return List.of();
            }
            readings.add(diameter.get());
            readings.add(trunk.get());
            double ratio = Proportion.of(amount(diameter.get()), amount(trunk.get()));
            if (Double.isNaN(ratio)) {
                return List.of();
            }
            largest = Double.isNaN(largest) ? ratio : Math.max(largest, ratio);
        }
        if (Double.isNaN(largest)) {
            return List.of();
        }
        return List.of(
                Derived.number(
                        Fact.GIRTH_RATIO_MAX,
                        largest,
                        Derived.oldest(readings.stream().map(Observation::observedOn)),
                        Derived.sourceOf(readings.stream().map(Observation::source).toList()),
                        "diameters of branches and trunk at their nodes"));
    }

    private static Optional<Observation> latest(TreeRecord record, Fact fact, Branch branch) {
        return Readings.latest(
                record.seen(fact).filter(seen -> Objects.equals(seen.branchId(), branch.id())));
    }

    private static double amount(Observation seen) {
        return ((Value.Number) seen.value()).amount();
    }
}
