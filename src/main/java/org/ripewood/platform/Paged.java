package org.ripewood.platform;

import java.util.List;

/** One page of a list. */
public record Paged<T>(List<T> items, int page, int size, long total) {

    public Paged {
        items = List.copyOf(items);
    }

    public static <T> Paged<T> of(List<T> items, PageRequest request, long total) {
        return new Paged<>(items, request.page(), request.size(), total);
    }

    public boolean hasNext() {
        return (long) (page + 1) * size < total;
    }

    public boolean hasPrevious() {
        return page > 0;
    }
}
