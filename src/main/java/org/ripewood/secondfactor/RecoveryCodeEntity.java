package org.ripewood.secondfactor;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.ripewood.audit.NotAudited;

/** A code of a person's sheet. */
@Entity
@NotAudited
@Table(name = "recovery_code")
class RecoveryCodeEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "recovery_code_seq")
    @SequenceGenerator(
            name = "recovery_code_seq",
            sequenceName = "recovery_code_seq",
            allocationSize = 50)
    Long id;

    long personId;
    String letter;
    String codeHash;
    @Nullable Instant usedAt;
}
