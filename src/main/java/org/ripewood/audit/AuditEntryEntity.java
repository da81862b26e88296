package org.ripewood.audit;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** An entry as it is read; the ledger writes it. */
@Entity
@Immutable
@NotAudited
@Table(name = "audit_entry")
class AuditEntryEntity {

    @Id Long id;

    Instant happenedAt;
    @Nullable Long personId;
    String door;

    @Enumerated(EnumType.STRING)
    Deed deed;
}
