package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How a technique stands for a tree on a day.
 *
 * <p>The verdict is known from the start; reasons are made when they are first read, since most
 * readers want those of a few techniques. Threads may share it.
 */
public final class Standing {

    private final String technique;
    private final LocalDate on;
    private final Verdict verdict;

    /** Who can make the reasons, and of what; null when they were there from the start. */
    private final @Nullable CompiledTechnique rules;

    private final @Nullable EvaluationContext moment;

    private volatile @Nullable List<Reason> reasons;

    /**
     * @param reasons all of them, met and unmet, in the order they were asked
     */
    public Standing(String technique, LocalDate on, Verdict verdict, List<Reason> reasons) {
        this.technique = technique;
        this.on = on;
        this.verdict = verdict;
        this.rules = null;
        this.moment = null;
        this.reasons = List.copyOf(reasons);
    }

    Standing(CompiledTechnique rules, EvaluationContext moment, Verdict verdict) {
        this.technique = rules.rule().code();
        this.on = moment.on;
        this.verdict = verdict;
        this.rules = rules;
        this.moment = moment;
    }

    public String technique() {
        return technique;
    }

    public LocalDate on() {
        return on;
    }

    public Verdict verdict() {
        return verdict;
    }

    /** All of them, met and unmet, in the order they were asked. */
    public List<Reason> reasons() {
        var known = reasons;
        if (known == null) {
            known = told(true);
            reasons = known;
        }
        return known;
    }

    /** The reasons that keep it from being READY. */
    public List<Reason> against() {
        var known = reasons;
        if (known == null) {
            return told(false);
        }
        if (known.size() == 1) { // most often a verdict that needs no weighing
            return known.get(0).truth() == Truth.YES ? List.of() : known;
        }
        var against = new ArrayList<>(known);
        against.removeIf(reason -> reason.truth() == Truth.YES);
        return Collections.unmodifiableList(against);
    }

    private List<Reason> told(boolean all) {
        var told = new ArrayList<Reason>();
        var tree = Objects.requireNonNull(moment);
        synchronized (tree) { // which keeps what several techniques ask
            Objects.requireNonNull(rules).tell(told, tree, verdict, all);
        }
        return Collections.unmodifiableList(told);
    }

    /** Whether its season is known to be closed; a season nobody can tell is not known to be. */
    public boolean outOfSeason() {
        return against().stream()
                .anyMatch(
                        reason -> reason instanceof Reason.OfSeason && reason.truth() == Truth.NO);
    }

    /** How near it is as a whole: the mean over its reasons, 1 when there are none. */
    public double howFar() {
        return reasons().stream().mapToDouble(Reason::howFar).average().orElse(1);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        // asked of itself it need not make its reasons
        return this == other
                || (other instanceof Standing standing
                        && technique.equals(standing.technique)
                        && on.equals(standing.on)
                        && verdict == standing.verdict
                        && reasons().equals(standing.reasons()));
    }

    @Override
    public int hashCode() {
        return Objects.hash(technique, on, verdict, reasons());
    }

    @Override
    public String toString() {
        return "%s on %s: %s %s".formatted(technique, on, verdict, reasons());
    }
}
