package org.ripewood.condition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.core.growth.ClosingBelief;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.records.Observation;
import org.ripewood.records.TreeRecord;

/** Everything known of a tree on a day: what was seen, and what follows from the record. */
public final class FactsOnDay {

    private static final List<Fact> WISHES =
            List.of(Fact.values()).stream().filter(fact -> fact.untilSaid() != null).toList();

    private final TreeRecord record;
    private final TreeKind kind;
    private final List<Evidence> observed;
    private final Facts seen;

    FactsOnDay(TreeRecord record, TreeKind kind) {
        this.record = record;
        this.kind = kind;
        this.observed = observed(record, unsettledOn());
        this.seen = Facts.of(observed);
        addVigour();
    }

    /**
     * A ratio that a series tells stands in place of one that was reckoned by hand; a judgement
     * that says more than was seen allows, in place of itself.
     */
    private void addVigour() {
        var found = VigourFacts.of(record, seen, kind);
        if (found.told().stream().anyMatch(told -> told.fact() == Fact.SHOOT_EXTENSION_RATIO)) {
            observed.removeIf(entered -> entered.fact() == Fact.SHOOT_EXTENSION_RATIO);
        }
        var held = found.held();
        if (held != null) {
            observed.removeIf(entered -> entered.fact() == Fact.VIGOUR_INDEX);
            observed.add(held);
        }
        observed.addAll(found.told());
    }

    /** The vigour index, which recovery and closing go by; NaN when it is not known. */
    double vigour() {
        return Facts.of(observed).number(Fact.VIGOUR_INDEX);
    }

    /**
     * All facts.
     *
     * @param ledger of the tree's work
     * @param growth of its kind at its site
     * @param closing what is believed of how its kind closes wounds
     */
    public Facts all(WorkLedger ledger, GrowthDays growth, ClosingBelief closing) {
        var evidence = new ArrayList<>(observed);
        evidence.addAll(TrunkFacts.of(record, seen));
        evidence.addAll(WoundFacts.of(record, growth, closing, kind.leastWoundMm()));
        evidence.addAll(BranchFacts.of(record));
        evidence.addAll(WireFacts.of(record));
        evidence.addAll(ContainerFacts.of(record));
        evidence.addAll(WorkFacts.of(record, ledger));
        evidence.addAll(untilSaid());
        return Facts.of(evidence);
    }

    /** Readings of wounds, branches and heights speak of the tree only through what follows. */
    private static List<Evidence> observed(TreeRecord record, Map<Fact, LocalDate> unsettledOn) {
        return record.observations().stream()
                .filter(seen -> seen.fact().scope() == Fact.Scope.TREE)
                .filter(seen -> isSettled(seen, unsettledOn))
                .map(
                        seen ->
                                new Evidence(
                                        seen.fact(),
                                        seen.value(),
                                        seen.observedOn(),
                                        seen.source(),
                                        record.nameOf(seen.byId()),
                                        seen.id()))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    /** By fact: the last day of work that left it to be measured again. */
    private Map<Fact, LocalDate> unsettledOn() {
        var last = new EnumMap<Fact, LocalDate>(Fact.class);
        for (var work : record.works()) {
            for (var fact : kind.unsettled().getOrDefault(work.work().technique(), Set.of())) {
                last.merge(fact, work.doneOn(), (one, other) -> one.isBefore(other) ? other : one);
            }
        }
        return last;
    }

    /** What was seen on the day of the work itself was seen before it. */
    private static boolean isSettled(Observation seen, Map<Fact, LocalDate> unsettledOn) {
        var work = unsettledOn.get(seen.fact());
        return work == null || seen.observedOn().isAfter(work);
    }

    /** What counts while nobody has said otherwise, whenever that was. */
    private List<Evidence> untilSaid() {
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
