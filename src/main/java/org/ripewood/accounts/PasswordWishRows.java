package org.ripewood.accounts;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

@ApplicationScoped
class PasswordWishRows implements PanacheRepositoryBase<PasswordWishEntity, Long> {}
