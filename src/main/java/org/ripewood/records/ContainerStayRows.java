package org.ripewood.records;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

@ApplicationScoped
class ContainerStayRows implements PanacheRepositoryBase<ContainerStayEntity, Long> {}
