package org.ripewood.standing;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A verdict as it was when someone acted on it, with all its reasons as JSON; never changed. */
@Entity
@Table(name = "decision")
class DecisionEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "decision_seq")
    @SequenceGenerator(name = "decision_seq", sequenceName = "decision_seq", allocationSize = 50)
    @Nullable Long id;

    long treeId;
    LocalDate onDay;
    String contentRevision;
    String standing;
    long byId;
    Instant decidedAt;
}
