package org.ripewood.course;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.ShootLengths;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.season.Habit;

/**
 * A species: what the engine needs ({@code traits}) and what people read; each figure with its
 * source.
 */
public record Species(
        Traits traits,
        String latin,
        String common,
        String flushes,
        int zoneMin,
        int zoneMax,
        String zoneSource,
        List<String> repottingStages,
        String repottingSource,
        int repotYoungFromYears,
        int repotYoungToYears,
        int repotOldFromYears,
        int repotOldToYears,
        String callusPace,
        String callusNote,
        String callusSource,
        String compartmentStrength,
        String compartmentSource,
        String backbudding,
        String maxRootShareSource,
        String defoliation,
        String defoliationNote,
        String defoliationSource,
        double baseCelsius,
        String baseCelsiusSource,
        @Nullable Double rootKillCelsius,
        @Nullable String rootKillSource,
        @Nullable ShootLengths shoots,
        String shootsSource,
        List<Toxicity> toxicity,
        String text) {

    /** A part that can harm, how, and how to avoid it. Absence of an entry never means safe. */
    public record Toxicity(String parts, String effect, String avoid, String source) {}

    /**
     * Stands for a species that records name and the content does not have. Nothing is said of it,
     * and no technique is for it; the figures that have to be there are never told.
     */
    static Species notInContent(String code) {
        return new Species(
                new Traits(code, Habit.DECIDUOUS, Set.of(), 1),
                code,
                "kind not in the content: " + code,
                NOTHING_SAID,
                1,
                13,
                NOTHING_SAID,
                List.of(),
                NOTHING_SAID,
                1,
                1,
                1,
                1,
                "moderate",
                NOTHING_SAID,
                NOTHING_SAID,
                NOTHING_SAID,
                NOTHING_SAID,
                NOTHING_SAID,
                NOTHING_SAID,
                NOTHING_SAID,
                NOTHING_SAID,
                NOTHING_SAID,
                USUAL_BASE_CELSIUS,
                NOTHING_SAID,
                null,
                null,
                null,
                NOTHING_SAID,
                List.of(),
                "The course content does not have this kind, or no longer. So no technique is judged or"
                        + " proposed for the tree, its wounds are forecast at a moderate pace and its"
                        + " year is taken to be that of a deciduous tree; its record goes on.");
    }

    private static final String NOTHING_SAID = "";

    /** What many woody plants of cool winters start growing at (common practice). */
    private static final double USUAL_BASE_CELSIUS = 5;

    public String code() {
        return traits.species();
    }
}
