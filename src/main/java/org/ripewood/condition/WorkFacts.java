package org.ripewood.condition;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.records.Clocks;
import org.ripewood.records.TreeRecord;

/** What the ledgers of work say: load, doses, and the days since each kind of work. */
final class WorkFacts {

    private WorkFacts() {}

    static List<Evidence> of(TreeRecord record, WorkLedger ledger) {
        var on = record.on();
        var evidence = new ArrayList<Evidence>();
        evidence.add(told(record, Fact.RECOVERY_LOAD, ledger.loadLeft(on)));
        evidence.add(told(record, Fact.DAYS_SINCE_HEAVY_WORK, ledger.daysSinceHeavy(on)));
        evidence.add(told(record, Fact.HEAVY_WORKS_THIS_SEASON, ledger.heavyThisSeason(on)));
        evidence.add(
                told(
                        record,
                        Fact.FOLIAGE_REMOVED_SHARE,
                        ledger.takenThisSeason(DoseRule.Kind.FOLIAGE, on)));
        evidence.add(
                told(
                        record,
                        Fact.ROOT_REMOVED_SHARE,
                        ledger.takenThisSeason(DoseRule.Kind.ROOT, on)));
        Clocks.FACTS.forEach(
                (clock, fact) -> evidence.add(told(record, fact, daysSince(record, clock))));
        return evidence;
    }

    private static double daysSince(TreeRecord record, String clock) {
        return record.works().stream()
                .filter(work -> clock.equals(work.clock()))
                .mapToLong(work -> ChronoUnit.DAYS.between(work.doneOn(), record.on()))
                .filter(days -> days >= 0)
                .min()
                .orElse(WorkLedger.NEVER_DAYS);
    }

    private static Evidence told(TreeRecord record, Fact fact, double amount) {
        return Derived.number(fact, amount, record.on(), Source.DERIVED, "work done");
    }
}
