package org.ripewood.web.stock;

import java.util.List;
import java.util.Optional;
import org.ripewood.materials.NewStock;
import org.ripewood.materials.NewStockContainer;
import org.ripewood.materials.NewStockMix;
import org.ripewood.materials.NewStockSubstrate;
import org.ripewood.materials.NewStockSupply;
import org.ripewood.materials.NewStockTool;
import org.ripewood.materials.NewStockWire;
import org.ripewood.materials.StockKind;
import org.ripewood.web.kit.TextFormat;

/** A kind of stock as the pages speak of it: its word in an address, its titles and its form. */
public enum StockCategory {
    CONTAINERS(StockKind.CONTAINER, "a container", NewStockContainer.class),
    SUBSTRATES(StockKind.SUBSTRATE, "a substrate", NewStockSubstrate.class),
    MIXES(StockKind.MIX, "a mix", NewStockMix.class),
    WIRES(StockKind.WIRE, "a wire", NewStockWire.class),
    TOOLS(StockKind.TOOL, "a tool", NewStockTool.class),
    SUPPLIES(StockKind.SUPPLY, "a supply", NewStockSupply.class);

    private final StockKind kind;
    private final String one;
    private final Class<? extends NewStock> form;

    StockCategory(StockKind kind, String one, Class<? extends NewStock> form) {
        this.kind = kind;
        this.one = one;
        this.form = form;
    }

    static StockCategory of(StockKind kind) {
        return List.of(values()).stream()
                .filter(shelf -> shelf.kind == kind)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no shelf for " + kind));
    }

    /** The one with that word in its address. */
    static Optional<StockCategory> find(String word) {
        return List.of(values()).stream().filter(shelf -> shelf.word().equals(word)).findFirst();
    }

    public StockKind kind() {
        return kind;
    }

    public String word() {
        return TextFormat.small(this);
    }

    public String title() {
        return TextFormat.titled(this);
    }

    /** Such as {@code a container}. */
    public String one() {
        return one;
    }

    /** What the amount found is asked for with. */
    public String counting() {
        return kind.unit().isEmpty() ? "Amount found" : "Found, " + kind.unit();
    }

    /** Whether there is an amount of it; a mix is a recipe. */
    public boolean counted() {
        return kind != StockKind.MIX;
    }

    Class<? extends NewStock> form() {
        return form;
    }
}
