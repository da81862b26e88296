package org.ripewood.api.trees;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.OutlookAnswer;
import org.ripewood.condition.Trunk;
import org.ripewood.core.growth.TaperProfile;
import org.ripewood.core.growth.Thickening;

/**
 * A trunk and how it thickens.
 *
 * @param profile diameters that count, lowest first
 * @param bulges places where it is thicker than below by more than measuring explains
 * @param form what the thickening is told by
 * @param radialMmPerYear what the base gains in radius in a mean year
 * @param radialSdMm its standard deviation
 * @param baseAsPlanned when the base is as thick as planned; null when nothing is planned
 */
record TrunkAnswer(
        List<TaperProfile.Reading> profile,
        List<TaperProfile.Bulge> bulges,
        @Nullable Double heightMm,
        @Nullable Double plannedBaseMm,
        Thickening.Form form,
        double radialMmPerYear,
        double radialSdMm,
        @Nullable OutlookAnswer baseAsPlanned) {

    static TrunkAnswer of(Trunk trunk) {
        var increment = trunk.base().increment();
        var planned = trunk.baseAsPlanned();
        return new TrunkAnswer(
                trunk.profile().readings(),
                trunk.profile().bulges(),
                trunk.heightMm(),
                trunk.plannedBaseMm(),
                trunk.base().form(),
                increment.radialMm(),
                increment.sdMm(),
                planned == null ? null : OutlookAnswer.of(planned));
    }
}
