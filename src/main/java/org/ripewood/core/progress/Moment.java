package org.ripewood.core.progress;

import java.time.LocalDate;

/** A tree on a day, with what several techniques ask for worked out once. */
final class Moment {

    final Subject subject;
    final Facts facts;
    final LocalDate on;
    final long epochDay;
    final int stage;
    final double loadLeft;
    final double loadBudget;
    final int daysSinceHeavy;
    final int heavyThisSeason;
    final double foliageTaken;
    final double rootTaken;

    Moment(Subject subject, LocalDate on) {
        this.subject = subject;
        this.facts = subject.facts();
        this.on = on;
        this.epochDay = on.toEpochDay();
        this.stage = subject.stages().stageOn(on);
        var ledger = subject.ledger();
        this.loadLeft = ledger.loadLeft(on);
        this.loadBudget = LoadBudget.of(facts.number(Fact.VIGOUR_INDEX));
        this.daysSinceHeavy = ledger.daysSinceHeavy(on);
        this.heavyThisSeason = ledger.heavyThisSeason(on);
        this.foliageTaken = ledger.takenThisSeason(DoseRule.Kind.FOLIAGE, on);
        this.rootTaken = ledger.takenThisSeason(DoseRule.Kind.ROOT, on);
    }

    double taken(DoseRule.Kind kind) {
        return kind == DoseRule.Kind.FOLIAGE ? foliageTaken : rootTaken;
    }

    /** Days since evidence was seen; evidence from after the day counts as not there. */
    long ageDays(Evidence evidence) {
        return epochDay - evidence.observedOn().toEpochDay();
    }
}
