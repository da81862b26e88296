package org.ripewood.sessions;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** The waits kept, longest first; those that ended stay. */
@ApplicationScoped
class WaitBook implements PanacheRepositoryBase<WaitEntity, Long> {

    /** Who waits. */
    List<WaitEntity> of(long sessionId) {
        return list("sessionId = ?1 and waitsFor is not null order by since, id", sessionId);
    }

    /** With which a tree waits. */
    List<WaitEntity> ofTree(long treeId) {
        return list("treeId = ?1 and waitsFor is not null order by id", treeId);
    }
}
