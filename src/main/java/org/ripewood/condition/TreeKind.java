package org.ripewood.condition;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.ReferenceShoots;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.course.Content;
import org.ripewood.course.Species;
import org.ripewood.sites.TreeSeason;

/**
 * What facts of a tree are derived by beside its record.
 *
 * @param shoots what its shoots are held against; null for a species the content does not have
 * @param growing days on which it grows at its site
 * @param leastWoundMm first width from which a cut counts as a wound
 * @param unsettled by technique: facts its work leaves to be measured again
 */
record TreeKind(
        @Nullable ReferenceShoots shoots,
        GrowingDays growing,
        double leastWoundMm,
        Map<String, Set<Fact>> unsettled) {

    private static final double LEAST_WOUND_MM = 8;
    private static final double LEAST_WOUND_OF_POOR_CLOSERS_MM = 5;
    private static final Set<String> POOR_CLOSERS = Set.of("slow_callus", "weak_compartment");

    /** Of a species whose shoots are held against the content's lengths alone. */
    static TreeKind of(Content content, Species species, TreeSeason season) {
        var shoots = species.shoots();
        return of(content, species, season, shoots == null ? null : ReferenceShoots.of(shoots));
    }

    static TreeKind of(
            Content content, Species species, TreeSeason season, @Nullable ReferenceShoots shoots) {
        return new TreeKind(shoots, season.growing(), leastWoundMm(species), content.unsettled());
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
