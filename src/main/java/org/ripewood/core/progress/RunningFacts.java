package org.ripewood.core.progress;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Outlook;

/** Facts that change by themselves in a way that is known: clocks and the ledgers of work. */
final class RunningFacts {

    /** As the reason for doses: a thousandth is not a breach. */
    private static final double SLACK = 1e-3;

    private static final String CLOCK = "days_since_";

    private final EvaluationContext moment;

    RunningFacts(EvaluationContext moment) {
        this.moment = moment;
    }

    /** When a running fact that is not met will be; null when the fact does not run. */
    @Nullable Outlook whenMet(Requirement required, Evidence evidence) {
        var fact = evidence.fact();
        if (fact == Fact.WIRE_DAYS || fact.code().startsWith(CLOCK)) {
            return clock(required, evidence);
        }
        if (fact == Fact.MONTHS_IN_CONTAINER) {
            return months(required, evidence);
        }
        if (!(required instanceof Requirement.AtMost most)) {
            return null;
        }
        return switch (fact) {
            case RECOVERY_LOAD -> load(most.bound());
            case HEAVY_WORKS_THIS_SEASON, ROOT_REMOVED_SHARE -> season(most.bound());
            case FOLIAGE_REMOVED_SHARE ->
                    most.bound() >= 0
                            ? ReasonOutlooks.sure(roomFor(DoseRule.Kind.FOLIAGE, most.bound()))
                            : null;
            default -> null;
        };
    }

    /** A day of the calendar is a day of the clock; only the work itself turns it back. */
    private Outlook clock(Requirement required, Evidence evidence) {
        if (required instanceof Requirement.AtLeast least
                && evidence.value() instanceof Value.Number shown) {
            double toGo = Math.min(least.bound() - shown.amount(), WorkLedger.NEVER_DAYS);
            var days = (long) Math.ceil(toGo);
            var day = evidence.observedOn().plusDays(days);
            return ReasonOutlooks.sure(day.isBefore(moment.on) ? moment.on : day);
        }
        var since = evidence.fact().spoken();
        return new Outlook.Unsaid("Too many " + since + ": that has to be done again first.");
    }

    /** Months go by as days do, as long as the tree stays where it is. */
    private static @Nullable Outlook months(Requirement required, Evidence evidence) {
        return required instanceof Requirement.AtLeast least
                        && evidence.value() instanceof Value.Number shown
                ? ReasonOutlooks.sure(
                        evidence.observedOn()
                                .plusMonths((long) Math.ceil(least.bound() - shown.amount())))
                : null;
    }

    /** When no more load than this is left of earlier work. */
    Outlook load(double most) {
        return moment.subject
                .ledger()
                .dayWithLoadAtMost(most, moment.on)
                .map(ReasonOutlooks::sure)
                .orElseGet(
                        () -> new Outlook.Unsaid("The tree does not recover from earlier work."));
    }

    /**
     * The first day on which no more than a share has been taken: with the next growing season, or
     * before it when all foliage is new by then.
     */
    LocalDate roomFor(DoseRule.Kind kind, double most) {
        var ledger = moment.subject.ledger();
        var next = ReasonOutlooks.nextGrowingSeason(moment);
        return kind == DoseRule.Kind.FOLIAGE
                ? ledger.inNewLeafOn(moment.on)
                        .filter(day -> day.isBefore(next))
                        .filter(day -> ledger.takenThisSeason(kind, day) <= most + SLACK)
                        .orElse(next)
                : next;
    }

    /** What adds up over a growing season begins again at nothing. */
    private @Nullable Outlook season(double most) {
        LocalDate next = ReasonOutlooks.nextGrowingSeason(moment);
        return most >= 0 ? ReasonOutlooks.sure(next) : null;
    }
}
