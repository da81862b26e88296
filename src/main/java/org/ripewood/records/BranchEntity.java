package org.ripewood.records;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "branch")
class BranchEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "branch_seq")
    @SequenceGenerator(name = "branch_seq", sequenceName = "branch_seq", allocationSize = 50)
    Long id;

    long treeId;
    String name;
    String role;
    @Nullable Double heightMm;
    @Nullable Double bearingDegrees;
    LocalDate enteredOn;
    @Nullable LocalDate removedOn;
    long byId;
    Instant recordedAt;

    Branch toBranch(@Nullable Double diameterMm, @Nullable Double trunkAtNodeMm) {
        return new Branch(
                id,
                treeId,
                name,
                BranchRole.valueOf(role),
                heightMm,
                bearingDegrees,
                removedOn,
                diameterMm,
                trunkAtNodeMm);
    }
}
