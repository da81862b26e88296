package org.ripewood.steps;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.course.Technique;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewWound;
import org.ripewood.records.Observations;
import org.ripewood.records.Wound;
import org.ripewood.records.Wounds;

/**
 * Wounds that reports speak of. Most techniques make one; those that are needed because of a wound
 * tend it, and their report is a new reading of a wound that is there.
 */
@ApplicationScoped
class WoundsReported {

    private static final Set<Fact> CALLS_FOR_TENDING =
            Set.of(Fact.FRESH_WOUNDS, Fact.WOUND_STALLED);

    private final Wounds woundsOfSchool;
    private final Observations observations;

    WoundsReported(Wounds woundsOfSchool, Observations observations) {
        this.woundsOfSchool = woundsOfSchool;
        this.observations = observations;
    }

    /**
     * Goes on only when a wound to be tended is there.
     *
     * @throws Refused 400 otherwise, naming the wounds
     */
    void check(Actor actor, long treeId, Technique technique, @Nullable String place) {
        if (place == null || !tends(technique)) {
            return;
        }
        var wounds = woundsOfSchool.of(actor, treeId);
        if (find(wounds, place).isEmpty()) {
            var places = wounds.stream().map(Wound::place).distinct().toList();
            throw Refused.invalid(
                    "woundPlace",
                    "This tree has no wound “%s”; expected %s.%s"
                            .formatted(
                                    place,
                                    places.isEmpty()
                                            ? "a wound to be entered first"
                                            : Wording.list(places, "or"),
                                    Suggestion.maybe(places, place)));
        }
    }

    void record(
            Actor actor,
            long treeId,
            Technique technique,
            Step.WoundMade reported,
            LocalDate doneOn,
            String note) {
        var tended =
                tends(technique)
                        ? find(woundsOfSchool.of(actor, treeId), reported.place())
                        : Optional.<Wound>empty();
        if (tended.isPresent()) {
            observations.observe(
                    actor, treeId, reading(tended.get().id(), reported.widthMm(), doneOn, note));
        } else {
            woundsOfSchool.add(actor, treeId, wound(technique, reported, doneOn));
        }
    }

    private static NewObservation reading(long woundId, double widthMm, LocalDate on, String note) {
        return new NewObservation(
                Fact.WOUND_OPEN_MM.code(),
                Double.toString(widthMm),
                on,
                note,
                woundId,
                null,
                null,
                null);
    }

    private static NewWound wound(Technique technique, Step.WoundMade reported, LocalDate doneOn) {
        return new NewWound(
                reported.place(),
                doneOn,
                reported.widthMm(),
                reported.lengthMm(),
                null,
                null,
                makesDeadwood(technique));
    }

    private static Optional<Wound> find(List<Wound> wounds, String place) {
        return wounds.stream()
                .filter(wound -> fold(wound.place()).equals(fold(place)))
                .reduce((earlier, later) -> later);
    }

    private static String fold(String place) {
        return place.strip().toLowerCase(Locale.ROOT);
    }

    private static boolean tends(Technique technique) {
        var neededWhen = technique.rule().neededWhen();
        var tends = new AtomicBoolean();
        if (neededWhen != null) {
            neededWhen.eachFact(
                    fact -> tends.compareAndSet(false, CALLS_FOR_TENDING.contains(fact)));
        }
        return tends.get();
    }

    /** Wood bared on purpose is not to close, so it must not hold other work back. */
    private static boolean makesDeadwood(Technique technique) {
        return technique.effects().stream()
                .anyMatch(
                        effect ->
                                effect.fact() == Fact.DEADWOOD_PRESENT
                                        && effect.value().equals(Value.of(true)));
    }
}
