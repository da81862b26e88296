package org.ripewood.condition;

import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.TreeRecord;

/** What the tree stands in, and for how long; nothing while no container is entered. */
final class ContainerFacts {

    private static final Comparator<ContainerStay> BY_DAY =
            Comparator.comparing(ContainerStay::since).thenComparingLong(ContainerStay::id);

    private ContainerFacts() {}

    static List<Evidence> of(TreeRecord record) {
        return record.containers().stream()
                .max(BY_DAY)
                .map(stay -> told(record, stay))
                .orElse(List.of());
    }

    private static List<Evidence> told(TreeRecord record, ContainerStay stay) {
        var from = "container since " + stay.since();
        return List.of(
                Evidence.derived(Fact.CONTAINER_KIND, Value.of(stay.kind()), record.on(), from),
                Derived.number(
                        Fact.MONTHS_IN_CONTAINER,
                        (double) ChronoUnit.MONTHS.between(stay.since(), record.on()),
                        record.on(),
                        Source.DERIVED,
                        from));
    }
}
