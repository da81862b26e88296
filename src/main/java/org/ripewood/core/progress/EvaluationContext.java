package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A tree on a day, with what several techniques ask for worked out once. */
final class EvaluationContext {

    final CompiledTechnique[] techniques;
    final Subject subject;
    final Facts facts;
    final LocalDate on;
    final long epochDay;
    final int stage;
    final StagesAhead stagesAhead;
    final double loadLeft;
    final double vigour;
    final double loadBudget;
    final int daysSinceHeavy;
    final int heavyThisSeason;
    final double foliageTaken;
    final double rootTaken;
    private final @Nullable LocalDate[] doneOn;
    private final @Nullable Truth[] needs;
    private final @Nullable Reason.Look[] looks;
    private @Nullable List<Reason> materialNeeds;

    /** By fact: growing days since it was seen, plus one; 0 where nobody has asked. */
    private final Map<Fact, Long> grown = new EnumMap<>(Fact.class);

    /**
     * @param positions technique code to the position that other methods go by
     * @param techniques by position
     * @param asks how many different things their criteria ask
     */
    EvaluationContext(
            Subject subject,
            LocalDate on,
            Map<String, Integer> positions,
            CompiledTechnique[] techniques,
            int asks) {
        this.techniques = techniques;
        this.looks = new Reason.Look[asks];
        this.subject = subject;
        this.facts = subject.facts();
        this.on = on;
        this.epochDay = on.toEpochDay();
        this.stage = subject.stages().stageOn(on);
        this.stagesAhead = new StagesAhead(subject.stages(), on, subject.place());
        var ledger = subject.ledger();
        this.loadLeft = ledger.loadLeft(on);
        this.vigour = facts.number(Fact.VIGOUR_INDEX);
        this.loadBudget = LoadBudget.of(vigour);
        this.daysSinceHeavy = ledger.daysSinceHeavy(on);
        this.heavyThisSeason = ledger.heavyThisSeason(on);
        this.foliageTaken = ledger.takenThisSeason(DoseRule.Kind.FOLIAGE, on);
        this.rootTaken = ledger.takenThisSeason(DoseRule.Kind.ROOT, on);
        this.doneOn = doneOn(subject, on, positions);
        this.needs = new Truth[positions.size()];
    }

    private static @Nullable LocalDate[] doneOn(
            Subject subject, LocalDate on, Map<String, Integer> positions) {
        var doneOn = new @Nullable LocalDate[positions.size()];
        for (var signedOff : subject.signedOff().entrySet()) {
            var position = positions.get(signedOff.getKey());
            if (position != null && !signedOff.getValue().isAfter(on)) {
                doneOn[position] = signedOff.getValue();
            }
        }
        return doneOn;
    }

    /** The day a technique was last signed off, up to the day asked for; null when it was not. */
    @Nullable LocalDate doneOn(int position) {
        return doneOn[position];
    }

    /** Quiet after heavy work, asked for in days. */
    Reason quiet(int required) {
        return new Reason.OfQuiet(daysSinceHeavy, required, quietFor(required));
    }

    /** Whether it has been quiet for so many days, or for a growing season where one is meant. */
    boolean quietFor(int required) {
        return daysSinceHeavy >= required || !subject.ledger().quietFrom(required, on).isAfter(on);
    }

    /** What a dose takes beside what has been taken, against what the tree may lose. */
    Reason dose(DoseRule rule) {
        var own = rule.forTree(subject.traits(), vigour);
        var taken = own.kind() == DoseRule.Kind.FOLIAGE ? foliageTaken : rootTaken;
        return new Reason.OfDose(own.kind(), taken, own.typicalShare(), own.limitShare());
    }

    /** Days since evidence was seen; evidence from after the day counts as not there. */
    long ageDays(Facts.Seen seen) {
        return epochDay - seen.epochDay();
    }

    /**
     * Days that count since evidence was seen, by what it ages by.
     *
     * @param seen what the tree's facts hold, so that each fact is counted once
     */
    long age(Facts.Seen seen, Criterion.Ages ages) {
        if (ages != Criterion.Ages.GROWTH) {
            return ages == Criterion.Ages.DAYS ? ageDays(seen) : 0;
        }
        var evidence = seen.evidence();
        var known = grown.get(evidence.fact());
        if (known == null) {
            known = subject.growing().between(evidence.observedOn(), on);
            grown.put(evidence.fact(), known);
        }
        return known;
    }

    /**
     * How a tree stands to what a criterion asks, worked out once.
     *
     * @param number of what is asked, the same wherever it is asked
     */
    Reason.Look look(int number, CompiledCriterion.Ask ask) {
        var known = looks[number];
        if (known == null) {
            known = ask.look(this);
            looks[number] = known;
        }
        return known;
    }

    /** One reason for each technique that makes the material and is still needed. */
    List<Reason> materialNeeds(int[] development) {
        var known = materialNeeds;
        if (known == null) {
            known = new ArrayList<>();
            for (int position : development) {
                if (techniques[position].isStillNeeded(this)) {
                    known.add(techniques[position].asNeed());
                }
            }
            materialNeeds = known;
        }
        return known;
    }

    /** Whether a condition holds; several techniques may wait for the same one to be needed. */
    Truth needed(int position, @Nullable Condition condition) {
        var known = needs[position];
        if (known == null) {
            known = condition == null ? Truth.YES : condition.holds(facts);
            needs[position] = known;
        }
        return known;
    }
}
