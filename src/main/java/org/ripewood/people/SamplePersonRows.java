package org.ripewood.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

@ApplicationScoped
class SamplePersonRows implements PanacheRepositoryBase<SamplePersonEntity, Long> {

    List<SamplePersonEntity> ofCourse(long courseId) {
        return list("courseId", courseId);
    }
}
