package org.ripewood.materials;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.ripewood.core.supply.Held;
import org.ripewood.core.supply.Mix;
import org.ripewood.core.supply.OfferedContainer;
import org.ripewood.core.supply.Substrate;
import org.ripewood.core.supply.WireMetal;

/**
 * The stock at the end of a day, in the terms of the arithmetic of materials.
 *
 * @param containers those entered, with how many there are; by name
 * @param substrates by name
 * @param mixes by their names
 * @param wires by metal and thickness
 * @param tools how many there are, by their names
 * @param held everything that has an amount, by kind and name
 */
public record StockSnapshot(
        LocalDate day,
        List<Offered> containers,
        List<Substrate> substrates,
        Map<String, Mix> mixes,
        List<WireHeld> wires,
        Map<String, Integer> tools,
        List<Held> held) {

    /** A container and what it is for. */
    public record Offered(ContainerUse use, OfferedContainer container) {}

    /** Wire of one metal and thickness. */
    public record WireHeld(WireMetal metal, double gaugeMm, double grams) {}

    public StockSnapshot {
        containers = List.copyOf(containers);
        substrates = List.copyOf(substrates);
        mixes = Map.copyOf(mixes);
        wires = List.copyOf(wires);
        tools = Map.copyOf(tools);
        held = List.copyOf(held);
    }
}
