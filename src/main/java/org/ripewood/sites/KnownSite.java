package org.ripewood.sites;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A site and what is known of it.
 *
 * @param basis what its season is worked out from
 * @param readings its daily readings; null when it has none
 * @param species codes of the species that stand there, the most frequent first
 */
public record KnownSite(
        Site site, SeasonBasis basis, @Nullable ReadingsKnown readings, List<String> species) {

    public KnownSite {
        species = List.copyOf(species);
    }
}
