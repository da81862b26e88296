package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.PlaceYear;
import org.ripewood.core.season.StageClock;

/**
 * A tree as the engine sees it.
 *
 * @param facts observed and derived, as of the day asked for
 * @param signedOff technique code to the day it was last done and signed off
 * @param skills lessons whose skill the keeper has shown; null when the keeper is no student
 * @param stages the tree's growth stage by day
 * @param place the usual weather of where it stands
 * @param forecasts when what is not yet so will be
 * @param growing days on which it grows, by which evidence grows old
 */
public record Subject(
        Traits traits,
        Facts facts,
        WorkLedger ledger,
        Map<String, LocalDate> signedOff,
        @Nullable Set<String> skills,
        StageClock stages,
        PlaceYear place,
        Forecasts forecasts,
        GrowingDays growing) {

    public Subject {
        signedOff = Map.copyOf(signedOff);
        skills = skills == null ? null : Set.copyOf(skills);
    }

    /**
     * A tree of which no year is known: it grows every day, at a place of which nothing is known.
     */
    public Subject(
            Traits traits,
            Facts facts,
            WorkLedger ledger,
            Map<String, LocalDate> signedOff,
            @Nullable Set<String> skills,
            StageClock stages,
            Forecasts forecasts) {
        this(
                traits,
                facts,
                ledger,
                signedOff,
                skills,
                stages,
                PlaceYear.ANY,
                forecasts,
                GrowingDays.EVERY_DAY);
    }

    /** The same, of which nothing is forecast. */
    public Subject(
            Traits traits,
            Facts facts,
            WorkLedger ledger,
            Map<String, LocalDate> signedOff,
            @Nullable Set<String> skills,
            StageClock stages) {
        this(traits, facts, ledger, signedOff, skills, stages, Forecasts.NONE);
    }

    /** The same tree, were its facts these. */
    public Subject with(Facts changed) {
        return new Subject(
                traits, changed, ledger, signedOff, skills, stages, place, forecasts, growing);
    }

    /** The same tree, were a technique signed off on a day. */
    public Subject withSignedOff(String technique, LocalDate day) {
        var then = new HashMap<>(signedOff);
        then.put(technique, day);
        return new Subject(traits, facts, ledger, then, skills, stages, place, forecasts, growing);
    }
}
