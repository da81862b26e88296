package org.ripewood.web.stock;

import java.util.List;
import org.ripewood.materials.StockItem;
import org.ripewood.platform.Paged;
import org.ripewood.web.kit.FormState;

/**
 * All that the page of a shelf shows.
 *
 * @param tabs every shelf, with how many things are on it
 * @param substrates what mixes can be made of
 */
record StockPageModel(
        StockCategory shelf,
        List<Tab> tabs,
        Paged<StockItem> items,
        List<StockItem> substrates,
        FormState typed) {

    /** A shelf and how many things are on it. */
    public record Tab(StockCategory shelf, long count) {}
}
