package org.ripewood.steps;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Who did what with a step when; never changed. */
@Entity
@Table(name = "step_event")
class EventEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "step_event_seq")
    @SequenceGenerator(
            name = "step_event_seq",
            sequenceName = "step_event_seq",
            allocationSize = 50)
    @Nullable Long id;

    long stepId;

    @Enumerated(EnumType.STRING)
    StepState became;

    long byId;
    Instant happenedAt;
    @Nullable String note;

    Step.Event told() {
        return new Step.Event(became, byId, happenedAt, note);
    }
}
