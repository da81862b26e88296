package org.ripewood.web.photos;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.photos.Photo;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.Typed;

/**
 * What the page of one photo shows.
 *
 * @param mayChange whether the reader may change what is said of it, and take it away
 */
record PhotoSheet(
        Tree tree,
        Photo photo,
        Map<Long, String> names,
        boolean mayChange,
        PhotoLists lists,
        Typed change,
        Typed typed) {

    public String name(@Nullable Long personId) {
        return personId == null ? "" : names.getOrDefault(personId, "");
    }
}
