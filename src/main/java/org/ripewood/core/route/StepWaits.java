package org.ripewood.core.route;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ripewood.core.progress.Opening;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Subject;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.season.Outlook;

/**
 * What one step waits for: what growing brings by itself, what another step of the route brings or
 * undoes, and what has to be taken for granted because nothing of that can be said.
 */
final class StepWaits {

    private final Subject subject;
    private final LocalDate on;
    private final Durations durations;
    private final FactWorks works;
    private final List<StepAhead> first;
    private final StepAhead step;

    final List<Wait> waits = new ArrayList<>();
    final List<Lag> lags = new ArrayList<>();

    /**
     * @param first the steps that come before this one
     */
    StepWaits(
            Subject subject,
            LocalDate on,
            Durations durations,
            FactWorks works,
            List<StepAhead> first,
            StepAhead step) {
        this.subject = subject;
        this.on = on;
        this.durations = durations;
        this.works = works;
        this.first = first;
        this.step = step;
    }

    /** Adds what is no fact: a lesson, a need nobody knows of, a load nobody can reckon. */
    void addOthers() {
        for (var wait : step.waits()) {
            var reason = wait.reason();
            if (wait.outlook() instanceof Outlook.Unsaid && isOther(reason)) {
                waits.add(new Wait(reason.key(), reason.key(), wait.outlook(), assumption(wait)));
            }
        }
    }

    private static boolean isOther(Reason reason) {
        return reason instanceof Reason.OfSkill
                || reason instanceof Reason.OfNeed
                || (reason instanceof Reason.OfLoad load && load.truth() == Truth.UNKNOWN);
    }

    private static Wait.Assumption assumption(Opening.Wait wait) {
        return wait.reason().truth() == Truth.UNKNOWN
                ? Wait.Assumption.MET_WHEN_LOOKED_AT
                : Wait.Assumption.MET_NEXT_SEASON;
    }

    /** Adds what a demand has to wait for. */
    void add(Demand demand) {
        boolean met = demand.truth() == Truth.YES;
        boolean brought = false;
        boolean lost = false;
        boolean intended = false;
        for (var other : first) {
            var does = works.of(other, demand);
            var slow = works.slow(other, demand.fact());
            boolean loses = does == FactWorks.Kind.LOSES;
            boolean touches = does != FactWorks.Kind.NOTHING;
            if (touches && slow.isPresent() && (!met || loses)) {
                var takes = slow.get().towards(demand.requirement(), FactWorks.left(other, demand));
                lags.add(takes.after(other.code(), demand.fact().code()));
                brought = true;
            }
            if (FactWorks.startsClock(other, demand)) {
                lags.add(clock(other, demand));
                brought = true;
            }
            brought |= does == FactWorks.Kind.BRINGS;
            lost |= loses;
            intended |= does == FactWorks.Kind.PURPOSE;
        }
        if (standsStill(demand)) {
            waits.add(
                    new Wait(
                            demand.fact().code(),
                            demand.key(),
                            Objects.requireNonNull(demand.outlook()),
                            Wait.Assumption.NEVER_MET));
        } else if (met) {
            if (lost && !brought) {
                assume(demand, "Earlier work on the route changes it; it is looked at again then.");
            }
        } else {
            addUnmet(demand, brought, intended);
        }
    }

    /** Whether a wound is too wide and its own forecast gives no day: no guess is made instead. */
    private static boolean standsStill(Demand demand) {
        return FactWorks.WOUND_FACTS.contains(demand.fact())
                && demand.truth() == Truth.NO
                && demand.outlook() instanceof Outlook.Unsaid;
    }

    private static Lag clock(StepAhead other, Demand demand) {
        double bound = ((Requirement.AtLeast) demand.requirement()).bound();
        int days = (int) Math.max(0, Math.min(Lag.LONGEST_DAYS, Math.ceil(bound)));
        return Lag.sure(other.code(), demand.fact().code(), days);
    }

    private void addUnmet(Demand demand, boolean brought, boolean intended) {
        var outlook = demand.outlook();
        if (demand.truth() == Truth.NO && outlook instanceof Outlook.Expected) {
            waits.add(wait(demand, outlook));
            return;
        }
        if (brought) {
            return;
        }
        var slow = durations.of(demand.fact(), subject.traits());
        if (demand.truth() == Truth.NO && slow.isPresent()) {
            var takes = slow.get().towards(demand.requirement(), demand.value());
            waits.add(wait(demand, takes.from(on, gone(slow.get()))));
        } else if (!intended) {
            var because =
                    outlook instanceof Outlook.Unsaid unsaid
                            ? unsaid.because()
                            : "Nobody has said how it stands.";
            assume(demand, because);
        }
    }

    /** Days since the latest of the works it begins with; 0 where none was done. */
    private long gone(SlowChange change) {
        return change.after().stream()
                .map(subject.signedOff()::get)
                .filter(day -> day != null && !day.isAfter(on))
                .mapToLong(day -> ChronoUnit.DAYS.between(day, on))
                .min()
                .orElse(0);
    }

    private void assume(Demand demand, String because) {
        waits.add(wait(demand, new Outlook.Unsaid(because)));
    }

    private static Wait wait(Demand demand, Outlook outlook) {
        return new Wait(
                demand.fact().code(),
                demand.key(),
                outlook,
                demand.truth() == Truth.NO
                        ? Wait.Assumption.MET_NEXT_SEASON
                        : Wait.Assumption.MET_WHEN_LOOKED_AT);
    }
}
