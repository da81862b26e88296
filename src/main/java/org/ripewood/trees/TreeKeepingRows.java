package org.ripewood.trees;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

@ApplicationScoped
class TreeKeepingRows implements PanacheRepositoryBase<TreeKeepingEntity, Long> {}
