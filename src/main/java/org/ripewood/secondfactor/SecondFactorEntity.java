package org.ripewood.secondfactor;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.ripewood.audit.NotAudited;

/** What a person's app shares with the service; on once a first code showed it. */
@Entity
@NotAudited
@Table(name = "second_factor")
class SecondFactorEntity {

    @Id long personId;

    String sealedSecret;
    @Nullable Instant onSince;
    long lastStep;
}
