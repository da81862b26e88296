package org.ripewood.materials;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.ContainerSizes;
import org.ripewood.core.supply.Span;
import org.ripewood.core.supply.WireMetal;

/** What is known of an item beyond its name and amount. */
public sealed interface StockDetail {

    /**
     * A container.
     *
     * @param material such as stoneware; null when nobody said
     * @param sizes inside; no top dressing
     * @param massKg empty; null when nobody weighed it
     */
    record Container(
            ContainerUse use,
            @Nullable String material,
            ContainerSizes sizes,
            @Nullable Double massKg)
            implements StockDetail {}

    /**
     * A component of mixes; what nobody measured is null.
     *
     * @param capacityShare container capacity, 0 to 1
     * @param airShare air space, 0 to 1
     */
    record Substrate(
            @Nullable Span dryKgPerLitre,
            @Nullable Span capacityShare,
            @Nullable Span airShare,
            @Nullable Double bagLitres)
            implements StockDetail {}

    /** A recipe. */
    record Mix(List<Part> parts) implements StockDetail {
        public Mix {
            parts = List.copyOf(parts);
        }
    }

    /** So many parts by volume of a substrate in stock. */
    record Part(long substrateId, String substrate, double parts) {}

    /** Wire. */
    record Wire(WireMetal metal, double gaugeMm) implements StockDetail {}

    /** A tool or another supply, of which nothing more is known. */
    record Plain() implements StockDetail {}
}
