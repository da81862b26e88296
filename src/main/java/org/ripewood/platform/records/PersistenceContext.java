package org.ripewood.platform.records;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;

/** What a transaction has read and written so far and still holds in memory. */
@ApplicationScoped
public class PersistenceContext {

    private final EntityManager entityManager;

    PersistenceContext(EntityManager entityManager) {
        this.entityManager = entityManager;
    }

    /**
     * Writes what is open and lets go of it. Before every query all that is held is compared with
     * what was read; in a transaction that enters thousands of records that grows with the square.
     */
    public void putAway() {
        entityManager.flush();
        entityManager.clear();
    }
}
