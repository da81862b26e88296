package org.ripewood.records;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

@ApplicationScoped
class WorkDoneRows implements PanacheRepositoryBase<WorkDoneEntity, Long> {}
