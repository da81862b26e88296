package org.ripewood.audit;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** Changed rows as they are read. */
@Entity
@Immutable
@NotAudited
@Table(name = "audit_change")
class AuditChangeEntity {

    /** Which change of an entry it is, counted from 0. */
    @Embeddable
    record Place(long entryId, int position) {}

    @EmbeddedId Place place;

    String thing;

    @Enumerated(EnumType.STRING)
    Change.Kind kind;

    @Nullable Long firstId;
    @Nullable Long lastId;
    int amount;

    Change toRecord() {
        return new Change(thing, kind, firstId, lastId, amount);
    }
}
