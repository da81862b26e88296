package org.ripewood.aftercare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.MeasuringDay.Subject;
import org.ripewood.condition.TreeState;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.Content;

/**
 * When wounds and trunks are to be measured again.
 *
 * <p>Taken from two facts the tree's state has anyway: the openings of its wounds, as old as the
 * oldest of their latest looks, and the thickness of its base. Each counts as long as the strictest
 * criterion in the content lets it. What is too old already is no day to come; the checklist says
 * what waits for it.
 */
final class MeasuringDays {

    /** So far ahead a day to measure is told. */
    static final int AHEAD_DAYS = 60;

    private static final Set<Fact> WOUNDS =
            Set.of(
                    Fact.LARGEST_OPENING_MM,
                    Fact.SMALLEST_CLOSURE_PERCENT,
                    Fact.OPEN_WOUNDS,
                    Fact.WOUND_STALLED);
    private static final Set<Fact> TRUNK = Set.of(Fact.TRUNK_BASE_MM, Fact.TRUNK_BASE_SHARE);

    private final @Nullable Criterion wounds;
    private final @Nullable Criterion trunk;

    private MeasuringDays(@Nullable Criterion wounds, @Nullable Criterion trunk) {
        this.wounds = wounds;
        this.trunk = trunk;
    }

    static MeasuringDays by(Content content) {
        return new MeasuringDays(strictest(content, WOUNDS), strictest(content, TRUNK));
    }

    /** The criterion on one of these facts that takes evidence for the shortest time. */
    private static @Nullable Criterion strictest(Content content, Set<Fact> facts) {
        return content.techniques().values().stream()
                .flatMap(technique -> technique.rule().criteria().stream())
                .filter(criterion -> facts.contains(criterion.fact()))
                .filter(criterion -> criterion.freshDays() != null)
                .min(Comparator.comparing(c -> Objects.requireNonNull(c.freshDays())))
                .orElse(null);
    }

    List<MeasuringDay> of(TreeState state) {
        var days = new ArrayList<MeasuringDay>();
        // a wound too narrow to count as open is looked at until it has closed
        if (state.facts().number(Fact.LARGEST_OPENING_MM) > 0) {
            add(days, state, Subject.WOUNDS, Fact.LARGEST_OPENING_MM, wounds);
        }
        add(days, state, Subject.TRUNK, Fact.TRUNK_BASE_MM, trunk);
        return days;
    }

    private static void add(
            List<MeasuringDay> days,
            TreeState state,
            Subject subject,
            Fact fact,
            @Nullable Criterion strictest) {
        var seen = state.facts().find(fact);
        var by =
                seen == null || strictest == null
                        ? null
                        : strictest.goodUntil(seen.observedOn(), state.growing());
        if (seen != null && by != null) {
            if (!by.isBefore(state.on()) && !by.isAfter(state.on().plusDays(AHEAD_DAYS))) {
                days.add(
                        new MeasuringDay(
                                state.tree().id(),
                                state.tree().label(),
                                subject,
                                seen.observedOn(),
                                by));
            }
        }
    }
}
