package org.ripewood.accounts;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

@ApplicationScoped
class CalendarLinkRows implements PanacheRepositoryBase<CalendarLinkEntity, Long> {}
