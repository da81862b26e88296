package org.ripewood.accounts;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A person's link to their calendar; without a hash it is revoked. */
@Entity
@Table(name = "calendar_link")
class CalendarLinkEntity {

    @Id long personId;

    String seed;
    @Nullable String tokenHash;
    @Nullable Instant madeAt;
}
