package org.ripewood.photos;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;

/** One photo of each of many trees, for a list; no reach is asked. */
@ApplicationScoped
@Transactional
public class FrontPhotosUnchecked {

    private final PhotoRows rows;

    FrontPhotosUnchecked(PhotoRows rows) {
        this.rows = rows;
    }

    /**
     * Ids of photos by tree, in one query: the one from the front that was sent last, else the one
     * that was sent last at all. Trees without a photo are left out.
     */
    public Map<Long, Long> of(Collection<Long> treeIds) {
        var found = new HashMap<Long, Long>();
        if (!treeIds.isEmpty()) {
            rows.shownOf(treeIds)
                    .forEach(
                            one -> {
                                var front = one.front();
                                found.put(one.treeId(), front == null ? one.last() : front);
                            });
        }
        return found;
    }
}
