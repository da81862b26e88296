package org.ripewood.web.photos;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.photos.Photo;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;

/**
 * What the page of one photo shows.
 *
 * @param mayChange whether the reader may change what is said of it, and take it away
 */
record PhotoPageModel(
        Tree tree,
        Photo photo,
        Map<Long, String> names,
        boolean mayChange,
        PhotoLists lists,
        FormState change,
        FormState typed) {

    public String name(@Nullable Long personId) {
        return personId == null ? "" : names.getOrDefault(personId, "");
    }
}
