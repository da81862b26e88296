package org.ripewood.steps;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A reason an instructor let pass. */
@Entity
@Table(name = "step_waiver")
public class WaiverEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "step_waiver_seq")
    @SequenceGenerator(
            name = "step_waiver_seq",
            sequenceName = "step_waiver_seq",
            allocationSize = 50)
    @Nullable Long id;

    public long stepId;
    public String reasonKey;
    public String why;
    public long byId;
    public LocalDate waivedOn;

    Step.Waiver told() {
        return new Step.Waiver(reasonKey, why, byId, waivedOn);
    }
}
