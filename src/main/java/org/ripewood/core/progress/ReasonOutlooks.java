package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.core.season.Outlook;

/** When each reason against a technique will have gone by itself. */
final class ReasonOutlooks {

    /** Several techniques ask the same of the same fact, and a forecast takes its time. */
    private record Asked(Fact fact, Requirement requirement) {}

    private final EvaluationContext moment;
    private final RunningFacts running;
    private final Map<Asked, Outlook> forecasts = new HashMap<>();

    ReasonOutlooks(EvaluationContext moment) {
        this.moment = moment;
        this.running = new RunningFacts(moment);
    }

    /**
     * The outlook of a reason that is not met or not known.
     *
     * @param reason any but {@link Reason.OfOrder} and {@link Reason.OfDevelopment}
     */
    Outlook of(Reason reason, CompiledSeason season) {
        if (reason instanceof Reason.OfCriterion criterion) {
            return criterion(criterion);
        }
        if (reason instanceof Reason.OfSeason of) {
            return season(of, season);
        }
        if (reason instanceof Reason.OfLoad load) {
            return load(load);
        }
        if (reason instanceof Reason.OfQuiet quiet) {
            return sure(moment.subject.ledger().quietFrom(quiet.required(), moment.on));
        }
        if (reason instanceof Reason.OfHeavy) {
            return sure(nextGrowingSeason(moment));
        }
        if (reason instanceof Reason.OfDose dose) {
            return sure(running.roomFor(dose.kind(), dose.limit() - dose.planned()));
        }
        if (reason instanceof Reason.OfSkill skill) {
            return unsaid("The skill of " + spoken(skill.lesson()) + " has to be shown first.");
        }
        if (reason instanceof Reason.OfNeed need) {
            return need(need);
        }
        throw new IllegalArgumentException("nothing waits for " + reason);
    }

    /**
     * A technique to be signed off first: nobody can tell when a person will do that, but when it
     * could be done is told.
     */
    static Outlook first(String technique, @Nullable Opening before) {
        var first = spoken(technique) + " has to be signed off first";
        if (before == null) {
            return unsaid(capital(first) + ".");
        }
        var outlook = before.outlook();
        if (outlook instanceof Outlook.Expected expected) {
            return unsaid(capital(first) + "; it could be done from " + expected.likely() + ".");
        }
        var now = outlook instanceof Outlook.Already;
        return unsaid(
                capital(first) + (now ? "; it can be done now." : "; it has to wait itself."));
    }

    private Outlook criterion(Reason.OfCriterion reason) {
        var fact = reason.criterion().fact();
        var evidence = reason.evidence();
        if (evidence == null || reason.look() == Reason.Look.MISSING) {
            return unsaid("Not known yet: " + fact.spoken() + "; look or measure.");
        }
        return switch (reason.look()) {
            case STALE ->
                    unsaid(
                            "The last look at %s, on %s, is too long ago; look again."
                                    .formatted(fact.spoken(), evidence.observedOn()));
            case PROVISIONAL -> unsaid("An instructor has to look at " + fact.spoken() + " first.");
            default -> notMet(fact, reason.required(), evidence);
        };
    }

    private Outlook notMet(Fact fact, Requirement required, Evidence evidence) {
        var runs = running.whenMet(required, evidence);
        return runs != null ? runs : forecast(fact, required);
    }

    private Outlook forecast(Fact fact, Requirement required) {
        return forecasts.computeIfAbsent(
                new Asked(fact, required),
                asked -> moment.subject.forecasts().whenMet(fact, required, moment.on));
    }

    private Outlook season(Reason.OfSeason reason, CompiledSeason season) {
        if (reason.truth() == Truth.UNKNOWN || season.opensByFlowersAlone()) {
            return unsaid("The season goes by the flowers; look at the flower stage.");
        }
        if (season.freeByLeaves(moment)) {
            return unsaid("The flowers close the season now; look at them again.");
        }
        int days = season.daysToOpen(moment.stagesAhead, 1);
        return days == CompiledSeason.NEVER
                ? unsaid("The season does not open within thirteen months.")
                : sure(moment.on.plusDays(days));
    }

    private Outlook load(Reason.OfLoad load) {
        if (load.truth() == Truth.UNKNOWN) {
            return unsaid("Vigour index is not known, and so is what the tree may bear; measure.");
        }
        if (load.added() > LoadBudget.MOST) {
            return unsaid("No tree may bear a load of " + load.added() + " at once.");
        }
        return load.added() > load.budget()
                ? strengthFor(load.added())
                : running.load(load.budget() - load.added());
    }

    /** The day a tree too weak for the work is strong enough, with nothing left of earlier work. */
    private Outlook strengthFor(double load) {
        var vigour = new Requirement.AtLeast(LoadBudget.vigourFor(load));
        var strong = forecast(Fact.VIGOUR_INDEX, vigour);
        var rested = running.load(0);
        if (strong instanceof Outlook.Expected first && rested instanceof Outlook.Expected then) {
            return DaysAhead.of(first, moment.on)
                    .orLater(DaysAhead.of(then, moment.on))
                    .outlook(moment.on);
        }
        return rested instanceof Outlook.Unsaid ? rested : strong;
    }

    private static Outlook need(Reason.OfNeed need) {
        var missing = need.missing().stream().map(Fact::spoken).collect(Collectors.joining(", "));
        return unsaid("Whether the tree needs it is not known; look at: " + missing + ".");
    }

    static LocalDate nextGrowingSeason(EvaluationContext moment) {
        var latitude = moment.subject.ledger().latitudeDegrees();
        return GrowingSeason.of(moment.on, latitude).firstDay().plusYears(1);
    }

    static Outlook sure(LocalDate day) {
        return Outlook.Expected.on(day);
    }

    private static Outlook unsaid(String because) {
        return new Outlook.Unsaid(because);
    }

    private static String spoken(String code) {
        return code.replace('_', ' ');
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
