package org.ripewood.aftercare;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;

/** The words kept. */
@ApplicationScoped
class WordRows implements PanacheRepositoryBase<WordEntity, Long> {

    /** The latest word on each task of these trees, of those spoken for days up to this one. */
    Map<TaskKey, WordEntity> latest(Collection<Long> treeIds, LocalDate on) {
        var latest = new HashMap<TaskKey, WordEntity>();
        if (!treeIds.isEmpty()) {
            list("treeId in ?1 and onDay <= ?2 order by number", treeIds, on)
                    .forEach(word -> latest.put(word.key(), word));
        }
        return latest;
    }
}
