package org.ripewood.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

@ApplicationScoped
class SampleRows implements PanacheRepositoryBase<SampleCourseEntity, Long> {

    /** Whoever adds a sample waits here for whoever is adding one. */
    void waitForOthers() {
        getEntityManager()
                .createNativeQuery("select id from school where id = 1 for update")
                .getSingleResult();
    }
}
