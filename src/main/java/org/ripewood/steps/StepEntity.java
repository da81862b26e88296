package org.ripewood.steps;

import static java.util.Objects.requireNonNull;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A technique assigned for a tree. */
@Entity
@Table(name = "step")
public class StepEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "step_seq")
    @SequenceGenerator(name = "step_seq", sequenceName = "step_seq", allocationSize = 50)
    public @Nullable Long id;

    @Version long version;
    public long treeId;
    public String technique;

    @Enumerated(EnumType.STRING)
    public StepState state;

    public long assignedById;
    public LocalDate assignedOn;
    public @Nullable LocalDate fromDay;
    public @Nullable LocalDate untilDay;
    public @Nullable String note;
    public @Nullable Long decisionId;

    /** As reported last, or as found. */
    public @Nullable LocalDate doneOn;

    public @Nullable Instant reportedAt;

    /** Tree and technique while open, null afterwards; unique in the database. */
    @Nullable String openFor;

    StepBrief brief() {
        return new StepBrief(
                id(),
                version,
                treeId,
                technique,
                state,
                assignedById,
                assignedOn,
                fromDay,
                untilDay,
                note,
                decisionId,
                doneOn,
                reportedAt);
    }

    public long id() {
        return requireNonNull(id);
    }

    void become(StepState next) {
        state = next;
        openFor = next.isOpen() ? treeId + "/" + technique : null;
    }
}
