package org.ripewood.aftercare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.ripewood.aftercare.MeasuringDay.Subject;
import org.ripewood.condition.TreeState;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.Evidence;
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

    private final OptionalInt woundsFreshDays;
    private final OptionalInt trunkFreshDays;

    private MeasuringDays(OptionalInt woundsFreshDays, OptionalInt trunkFreshDays) {
        this.woundsFreshDays = woundsFreshDays;
        this.trunkFreshDays = trunkFreshDays;
    }

    static MeasuringDays by(Content content) {
        return new MeasuringDays(strictest(content, WOUNDS), strictest(content, TRUNK));
    }

    private static OptionalInt strictest(Content content, Set<Fact> facts) {
        return content.techniques().values().stream()
                .flatMap(technique -> technique.rule().criteria().stream())
                .filter(criterion -> facts.contains(criterion.fact()))
                .map(Criterion::freshDays)
                .mapToInt(days -> days == null ? Integer.MAX_VALUE : days)
                .filter(days -> days < Integer.MAX_VALUE)
                .min();
    }

    List<MeasuringDay> of(TreeState state) {
        var days = new ArrayList<MeasuringDay>();
        // a wound too narrow to count as open is looked at until it has closed
        if (state.facts().number(Fact.LARGEST_OPENING_MM) > 0) {
            add(days, state, Subject.WOUNDS, Fact.LARGEST_OPENING_MM, woundsFreshDays);
        }
        add(days, state, Subject.TRUNK, Fact.TRUNK_BASE_MM, trunkFreshDays);
        return days;
    }

    private static void add(
            List<MeasuringDay> days,
            TreeState state,
            Subject subject,
            Fact fact,
            OptionalInt freshDays) {
        var seen = state.facts().find(fact);
        if (seen != null && freshDays.isPresent()) {
            var by = staleAfter(seen, freshDays.getAsInt());
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

    private static LocalDate staleAfter(Evidence seen, int freshDays) {
        return seen.observedOn().plusDays(freshDays);
    }
}
