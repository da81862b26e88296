package org.ripewood.materials;

/** Something to be entered into stock, or to be said anew of what is there. */
public sealed interface NewStock
        permits NewStockContainer,
                NewStockSubstrate,
                NewStockMix,
                NewStockWire,
                NewStockTool,
                NewStockSupply {

    StockKind kind();

    /** What people call it; one of each name in a kind. */
    String name();
}
