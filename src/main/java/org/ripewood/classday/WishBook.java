package org.ripewood.classday;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.Map;

/** The wishes kept. */
@ApplicationScoped
class WishBook implements PanacheRepositoryBase<DayWishEntity, Long> {

    /** What was said last of each technique, by tree. */
    Map<Long, Map<String, DayWish>> of(long sessionId) {
        var wishes = new HashMap<Long, Map<String, DayWish>>();
        for (var said : list("sessionId = ?1 order by id", sessionId)) {
            var ofTree = wishes.computeIfAbsent(said.treeId, any -> new HashMap<>());
            if (said.wish == DayWish.NONE) {
                ofTree.remove(said.technique);
            } else {
                ofTree.put(said.technique, said.wish);
            }
        }
        return wishes;
    }
}
