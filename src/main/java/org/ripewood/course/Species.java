package org.ripewood.course;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.ShootLengths;
import org.ripewood.core.progress.Traits;

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
        ShootLengths shoots,
        String shootsSource,
        List<Toxicity> toxicity,
        String text) {

    /** A part that can harm, how, and how to avoid it. Absence of an entry never means safe. */
    public record Toxicity(String parts, String effect, String avoid, String source) {}

    public String code() {
        return traits.species();
    }
}
