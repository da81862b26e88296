package org.ripewood.trees;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

@ApplicationScoped
class ObservationRows implements PanacheRepositoryBase<ObservationEntity, Long> {}
