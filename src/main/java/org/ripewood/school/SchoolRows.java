package org.ripewood.school;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

@ApplicationScoped
class SchoolRows implements PanacheRepositoryBase<SchoolEntity, Integer> {}
