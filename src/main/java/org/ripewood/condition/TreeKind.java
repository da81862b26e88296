package org.ripewood.condition;

import java.util.Set;
import org.ripewood.core.growth.ShootLengths;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.course.Species;
import org.ripewood.sites.TreeSeason;

/**
 * What facts of a tree are derived by beside its record.
 *
 * @param shoots what its species makes in a season
 * @param growing days on which it grows at its site
 * @param leastWoundMm first width from which a cut counts as a wound
 */
record TreeKind(ShootLengths shoots, GrowingDays growing, double leastWoundMm) {

    private static final double LEAST_WOUND_MM = 8;
    private static final double LEAST_WOUND_OF_POOR_CLOSERS_MM = 5;
    private static final Set<String> POOR_CLOSERS = Set.of("slow_callus", "weak_compartment");

    static TreeKind of(Species species, TreeSeason season) {
        return new TreeKind(species.shoots(), season.growing(), leastWoundMm(species));
    }

    /**
     * Narrower cuts close by themselves in a season and are not measured: 8 mm, and 5 mm for kinds
     * that close slowly or wall off badly (common practice, no source).
     */
    private static double leastWoundMm(Species species) {
        return species.traits().groups().stream().anyMatch(POOR_CLOSERS::contains)
                ? LEAST_WOUND_OF_POOR_CLOSERS_MM
                : LEAST_WOUND_MM;
    }
}
