package org.ripewood.web.trees;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.PageRequest;
import org.ripewood.trees.TreeLists;

/** Which trees of the list are asked for, and in what order; nothing is needed. */
record TreeListFilter(
        @Nullable @Size(max = 60) String species,
        @Nullable @Min(1) Long keeper,
        TreeLists.@Nullable Order order,
        @Nullable @Min(0) @Max(1_000_000) Integer page) {

    static final TreeListFilter ALL = new TreeListFilter(null, null, null, null);

    private static final int ON_A_PAGE = 50;

    TreeLists.Asked asked() {
        return new TreeLists.Asked(
                species == null || species.isBlank() ? null : species,
                keeper,
                order == null ? TreeLists.Order.NAME : order);
    }

    PageRequest rows() {
        return new PageRequest(page == null ? 0 : page, ON_A_PAGE);
    }
}
