package org.ripewood.web.photos;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.photos.Photo;
import org.ripewood.platform.Paged;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;

/**
 * What the page of a tree's photos shows.
 *
 * @param all to choose two of
 * @param removed marks of those taken away
 * @param names of those who took them away, by id
 */
record PhotosPageModel(
        Tree tree,
        Paged<Photo> photos,
        List<Photo> all,
        @Nullable Comparison comparison,
        List<Photo> removed,
        Map<Long, String> names,
        PhotoLists lists,
        FormState upload) {

    public String name(@Nullable Long personId) {
        return personId == null ? "" : names.getOrDefault(personId, "");
    }
}
