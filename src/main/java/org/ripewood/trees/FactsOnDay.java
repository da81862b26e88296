package org.ripewood.trees;

import java.util.ArrayList;
import java.util.List;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;

/** Everything known of a tree on a day: what was seen, and what follows from the record. */
final class FactsOnDay {

    private static final List<Fact> WISHES =
            List.of(Fact.values()).stream().filter(fact -> fact.untilSaid() != null).toList();

    private FactsOnDay() {}

    static Facts of(TreeRecord record) {
        var evidence = new ArrayList<>(seen(record));
        var seen = Facts.of(evidence);
        evidence.addAll(VigourFacts.of(seen));
        evidence.addAll(TrunkFacts.of(record, seen));
        evidence.addAll(WoundFacts.of(record));
        evidence.addAll(BranchFacts.of(record));
        evidence.addAll(WireFacts.of(record));
        evidence.addAll(ContainerFacts.of(record));
        evidence.addAll(WorkFacts.of(record));
        evidence.addAll(untilSaid(record, seen));
        return Facts.of(evidence);
    }

    /** Readings of wounds, branches and heights speak of the tree only through what follows. */
    private static List<Evidence> seen(TreeRecord record) {
        return record.observations().stream()
                .filter(seen -> seen.fact().scope() == Fact.Scope.TREE)
                .map(
                        seen ->
                                new Evidence(
                                        seen.fact(),
                                        seen.value(),
                                        seen.observedOn(),
                                        seen.source(),
                                        record.nameOf(seen.byId()),
                                        seen.id()))
                .toList();
    }

    /** What counts while nobody has said otherwise, whenever that was. */
    private static List<Evidence> untilSaid(TreeRecord record, Facts seen) {
        var evidence = new ArrayList<Evidence>();
        for (var wish : WISHES) {
            var value = wish.untilSaid();
            if (value != null && seen.find(wish) == null) {
                evidence.add(
                        Evidence.derived(wish, value, record.tree().cameOn(), "nothing said yet"));
            }
        }
        return evidence;
    }
}
